package studio.laydown

import android.app.Activity
import android.os.Build
import android.window.OnBackInvokedCallback
import android.window.OnBackInvokedDispatcher

/**
 * The system's way back from Android 13 on. The system asks beforehand whether the app takes it: while it [isTaken], [goBack] is called;
 * else the system itself leads out of the app, and shows where to while the finger still moves. Before Android 13 there is no such question,
 * and [Activity.onBackPressed] is called.
 */
class SystemBack(private val activity: Activity, goBack: () -> Unit) {
    private val since13 = if (Build.VERSION.SDK_INT >= 33) Since13(goBack) else null

    var isTaken: Boolean = false
        set(taken) {
            if (taken == field) return
            field = taken
            since13?.let { if (taken) it.register(activity) else it.unregister(activity) }
        }

    /** Apart, since older systems do not have what it is made of. */
    private class Since13(private val goBack: () -> Unit) {
        private val callback = OnBackInvokedCallback { goBack() }

        fun register(activity: Activity) =
            activity.onBackInvokedDispatcher.registerOnBackInvokedCallback(OnBackInvokedDispatcher.PRIORITY_DEFAULT, callback)

        fun unregister(activity: Activity) = activity.onBackInvokedDispatcher.unregisterOnBackInvokedCallback(callback)
    }
}

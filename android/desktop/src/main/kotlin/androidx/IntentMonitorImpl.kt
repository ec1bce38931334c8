/* The monitor that Robolectric's instrumentation makes and feeds. */
package androidx.test.internal.runner.intent

import android.content.Intent
import androidx.test.runner.intent.IntentCallback
import androidx.test.runner.intent.IntentMonitor
import java.util.concurrent.CopyOnWriteArrayList

/** Passes each intent on to those who signed up. */
class IntentMonitorImpl : IntentMonitor {
    private val callbacks = CopyOnWriteArrayList<IntentCallback>()

    override fun addIntentCallback(callback: IntentCallback) {
        callbacks.add(callback)
    }

    override fun removeIntentCallback(callback: IntentCallback) {
        callbacks.remove(callback)
    }

    fun signalIntent(intent: Intent) {
        callbacks.forEach { it.onIntentSent(intent) }
    }
}

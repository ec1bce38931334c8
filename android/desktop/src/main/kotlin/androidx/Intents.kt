/* Stand-ins for androidx.test.runner.intent. Nothing is stubbed here: the phone answers intents itself (see Tasks). */
package androidx.test.runner.intent

import android.app.Instrumentation
import android.content.Intent

/** Told of each intent an app sends. */
fun interface IntentCallback {
    fun onIntentSent(intent: Intent)
}

/** Where those who want to see intents sign up. */
interface IntentMonitor {
    fun addIntentCallback(callback: IntentCallback)
    fun removeIntentCallback(callback: IntentCallback)
}

/** Answers an intent in place of the app it is meant for. */
fun interface IntentStubber {
    fun getActivityResultForIntent(intent: Intent): Instrumentation.ActivityResult?
}

/** Saves the monitor that Robolectric registers. */
object IntentMonitorRegistry {
    private var current: IntentMonitor? = null

    @JvmStatic
    fun registerInstance(monitor: IntentMonitor?) {
        current = monitor
    }

    @JvmStatic
    fun getInstance(): IntentMonitor = checkNotNull(current) { "no Robolectric test is running" }
}

/** No stubber is ever loaded. */
object IntentStubberRegistry {
    @JvmStatic
    fun isLoaded(): Boolean = false

    @JvmStatic
    fun getInstance(): IntentStubber = error("no intent stubber is loaded")
}

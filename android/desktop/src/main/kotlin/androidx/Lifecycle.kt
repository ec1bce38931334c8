/*
 * Stand-ins for androidx.test.runner.lifecycle: Robolectric asks here which activities are started before it sends a
 * touch or takes a picture.
 */
package androidx.test.runner.lifecycle

import android.app.Activity
import android.app.Application

/** Where an activity is in its life; the order is that of the life. */
enum class Stage { PRE_ON_CREATE, CREATED, STARTED, RESUMED, PAUSED, STOPPED, RESTARTED, DESTROYED }

/** Where an application is in its life. */
enum class ApplicationStage { PRE_ON_CREATE, CREATED }

/** Told of each change of an activity's stage. */
fun interface ActivityLifecycleCallback {
    fun onActivityLifecycleChanged(activity: Activity, stage: Stage)
}

/** Told of each change of the application's stage. */
fun interface ApplicationLifecycleCallback {
    fun onApplicationLifecycleChanged(app: Application, stage: ApplicationStage)
}

/** Answers which activity is at which stage. */
interface ActivityLifecycleMonitor {
    fun addLifecycleCallback(callback: ActivityLifecycleCallback)
    fun removeLifecycleCallback(callback: ActivityLifecycleCallback)
    fun getLifecycleStageOf(activity: Activity): Stage
    fun getActivitiesInStage(stage: Stage): Collection<Activity>
}

/** Answers at which stage the application is. */
interface ApplicationLifecycleMonitor {
    fun addLifecycleCallback(callback: ApplicationLifecycleCallback)
    fun removeLifecycleCallback(callback: ApplicationLifecycleCallback)
    fun getApplicationStage(app: Application): ApplicationStage
}

/** Saves the monitor that Robolectric registers. */
object ActivityLifecycleMonitorRegistry {
    private var current: ActivityLifecycleMonitor? = null

    @JvmStatic
    fun registerInstance(monitor: ActivityLifecycleMonitor?) {
        current = monitor
    }

    @JvmStatic
    fun getInstance(): ActivityLifecycleMonitor = checkNotNull(current) { "no Robolectric test is running" }
}

/** Saves the monitor that Robolectric registers. */
object ApplicationLifecycleMonitorRegistry {
    private var current: ApplicationLifecycleMonitor? = null

    @JvmStatic
    fun registerInstance(monitor: ApplicationLifecycleMonitor?) {
        current = monitor
    }

    @JvmStatic
    fun getInstance(): ApplicationLifecycleMonitor = checkNotNull(current) { "no Robolectric test is running" }
}

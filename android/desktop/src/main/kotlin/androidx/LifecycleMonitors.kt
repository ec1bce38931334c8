/* The monitors that Robolectric's instrumentation makes and feeds. */
package androidx.test.internal.runner.lifecycle

import android.app.Activity
import android.app.Application
import androidx.test.runner.lifecycle.ActivityLifecycleCallback
import androidx.test.runner.lifecycle.ActivityLifecycleMonitor
import androidx.test.runner.lifecycle.ApplicationLifecycleCallback
import androidx.test.runner.lifecycle.ApplicationLifecycleMonitor
import androidx.test.runner.lifecycle.ApplicationStage
import androidx.test.runner.lifecycle.Stage
import java.util.WeakHashMap
import java.util.concurrent.CopyOnWriteArrayList

/** Tracks each activity's stage from what the instrumentation signals. */
class ActivityLifecycleMonitorImpl : ActivityLifecycleMonitor {
    private val stages = WeakHashMap<Activity, Stage>()
    private val callbacks = CopyOnWriteArrayList<ActivityLifecycleCallback>()

    override fun addLifecycleCallback(callback: ActivityLifecycleCallback) {
        callbacks.add(callback)
    }

    override fun removeLifecycleCallback(callback: ActivityLifecycleCallback) {
        callbacks.remove(callback)
    }

    override fun getLifecycleStageOf(activity: Activity): Stage =
        synchronized(stages) { requireNotNull(stages[activity]) { "unknown activity: $activity" } }

    override fun getActivitiesInStage(stage: Stage): Collection<Activity> =
        synchronized(stages) { stages.filterValues { it == stage }.keys.toList() }

    fun signalLifecycleChange(stage: Stage, activity: Activity) {
        synchronized(stages) { stages[activity] = stage }
        callbacks.forEach { it.onActivityLifecycleChanged(activity, stage) }
    }
}

/** Tracks the application's stage from what the instrumentation signals. */
class ApplicationLifecycleMonitorImpl : ApplicationLifecycleMonitor {
    private val stages = WeakHashMap<Application, ApplicationStage>()
    private val callbacks = CopyOnWriteArrayList<ApplicationLifecycleCallback>()

    override fun addLifecycleCallback(callback: ApplicationLifecycleCallback) {
        callbacks.add(callback)
    }

    override fun removeLifecycleCallback(callback: ApplicationLifecycleCallback) {
        callbacks.remove(callback)
    }

    override fun getApplicationStage(app: Application): ApplicationStage =
        synchronized(stages) { requireNotNull(stages[app]) { "unknown application: $app" } }

    fun signalLifecycleChange(app: Application, stage: ApplicationStage) {
        synchronized(stages) { stages[app] = stage }
        callbacks.forEach { it.onApplicationLifecycleChanged(app, stage) }
    }
}

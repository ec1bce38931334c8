package studio.laydown.setup

import android.app.job.JobInfo
import android.app.job.JobParameters
import android.app.job.JobScheduler
import android.app.job.JobService
import android.content.ComponentName
import android.content.Context
import studio.laydown.LaydownApplication
import java.time.Duration

/**
 * The system starts this now and then, whether or not the app is open, so that a backup that is due is made. It runs in the app's
 * own process and goes through the same [BackupsByThemselves], so that the two never meet in the studio's file.
 */
class BackupJob : JobService() {
    override fun onStartJob(params: JobParameters): Boolean {
        (application as LaydownApplication).backups.run { jobFinished(params, false) }
        return true
    }

    /** The phone needs its strength: what is not finished is due all the same, the next time. */
    override fun onStopJob(params: JobParameters) = false

    companion object {
        private const val ID = 1
        private val EVERY: Duration = Duration.ofHours(12)

        /**
         * Has the system start the job from time to time. After the phone was switched off it does so again only once the app has been
         * opened; until then nothing new can have come, and so the app needs no leave to start by itself.
         */
        fun schedule(context: Context) {
            val scheduler = checkNotNull(context.getSystemService(JobScheduler::class.java)) { "every phone has a scheduler" }
            if (scheduler.getPendingJob(ID) != null) return
            val job = JobInfo.Builder(ID, ComponentName(context, BackupJob::class.java))
            scheduler.schedule(job.setPeriodic(EVERY.toMillis()).setRequiresBatteryNotLow(true).build())
        }
    }
}

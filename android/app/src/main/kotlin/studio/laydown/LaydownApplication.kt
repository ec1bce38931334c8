package studio.laydown

import android.app.Application
import android.content.res.Configuration
import studio.laydown.core.BUILD_STAMP
import studio.laydown.core.Now
import studio.laydown.core.Studio
import studio.laydown.core.buildStamp
import studio.laydown.core.recoverStudio
import studio.laydown.core.setLanguage
import studio.laydown.core.uniffiEnsureInitialized
import studio.laydown.setup.BackupJob
import studio.laydown.setup.BackupsByThemselves
import studio.laydown.sync.SyncRunner
import studio.laydown.sync.Secrets
import java.io.File
import java.time.Clock

/** The app: one studio, kept in one file, worked on by one thread. */
open class LaydownApplication : Application() {
    /** Tells the time; asked anew for each call, so that a change of time zone is seen. */
    var clock: () -> Clock = Clock::systemDefaultZone

    /** Loads the library and answers with its build stamp. */
    var library: () -> String = {
        uniffiEnsureInitialized()
        buildStamp()
    }

    /** What this start found, for whoever is asked why the app does not open. */
    val report: StartupReport by lazy { StartupReport(this, File(filesDir, FILE)) { clock().instant() } }

    /** What the system does when a thread ends by a failure. */
    private var system: Thread.UncaughtExceptionHandler? = null

    /** The way to the studio. Opened by the first question; a question after a failure opens it again. */
    val work: StudioWork by lazy { StudioWork(::openStudio, ::recover) { clock() } }

    /** What commands have answered and no page has shown yet. */
    val answers = Answers()

    /** What is secret about the place the sync location. */
    val secrets: Secrets by lazy { Secrets(File(noBackupFilesDir, SECRETS)) }

    /** The meeting of the phones, if one is under way. */
    val sync: SyncRunner by lazy { SyncRunner(this, work, secrets) }

    /** Makes the backups that are made by themselves. */
    val backups: BackupsByThemselves by lazy { BackupsByThemselves(this, work) }

    override fun onCreate() {
        super.onCreate()
        system = Thread.getDefaultUncaughtExceptionHandler()
        Thread.setDefaultUncaughtExceptionHandler(reporting(system))
        BackupJob.schedule(this)
    }

    override fun onConfigurationChanged(newConfig: Configuration) {
        super.onConfigurationChanged(newConfig)
        // Until the library is loaded there is nothing to tell.
        if (speaks) speak(newConfig)
    }

    /** Whether the core was told the phone's languages. */
    @Volatile private var speaks = false

    /** Has the core speak the first of the phone's languages that it knows, as the app's own labels do. */
    private fun speak(configuration: Configuration) {
        val locales = configuration.locales
        setLanguage(List(locales.size()) { locales[it].toLanguageTag() })
        speaks = true
    }

    private fun openStudio(now: Now): Studio = try {
        report.reached(StartupStep.LIBRARY)
        val stamp = loadLibrary()
        report.loaded(stamp)
        // Generated code that belongs to another library would read its records wrongly, field by field.
        if (stamp != BUILD_STAMP) throw LibraryMismatch()
        speak(resources.configuration)
        report.reached(StartupStep.STUDIO)
        val studio = Studio.openHere(File(filesDir, FILE).path, File(noBackupFilesDir, MARK).path, now)
        report.reached(StartupStep.OPEN)
        studio
    } catch (problem: Throwable) {
        report.failed(problem)
        throw problem
    }

    /** A library of another processor, or one that this Android cannot load, is an error of the linker and no exception. */
    private fun loadLibrary(): String = try {
        library()
    } catch (problem: LinkageError) {
        throw LibraryNotLoaded(problem)
    }

    /** Writes down what ends the app, and leaves ending it to the [system]. */
    fun reporting(system: Thread.UncaughtExceptionHandler?) = Thread.UncaughtExceptionHandler { thread, problem ->
        report.failed(problem)
        system?.uncaughtException(thread, problem)
    }

    private fun recover(now: Now): String = recoverStudio(File(filesDir, FILE).path, File(noBackupFilesDir, MARK).path, now)

    override fun onTerminate() {
        work.close()
        Thread.setDefaultUncaughtExceptionHandler(system)
        super.onTerminate()
    }

    companion object {
        private const val FILE = "studio.laydown"
        private const val SECRETS = "secrets"

        /** By this a studio knows that it is still on the phone it was made on. */
        const val MARK = "this_phone"
    }
}

/** The library on this phone is not the one that this shell was built with. */
class LibraryMismatch : Exception()

/** The library on this phone cannot be loaded. */
class LibraryNotLoaded(cause: LinkageError) : Exception(cause)

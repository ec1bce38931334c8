package studio.laydown

import android.app.Application
import android.os.Build
import android.system.Os
import android.system.OsConstants
import studio.laydown.core.BUILD_STAMP
import studio.laydown.core.StudioException
import java.io.File
import java.io.RandomAccessFile
import java.time.Instant

/** How far a start of the app came. */
enum class StartupStep(val words: String) {
    LIBRARY("loading the library"),
    STUDIO("opening the studio"),
    OPEN("the studio is open"),
}

/**
 * What this start of the app found, in a file that a person can send to whoever built the app: how far it came, which builds belong
 * together, which phone it is, what failed. Nothing of the studio is in it. Of a failure it has the kind and the places in the code, and the
 * words only where they are the system's own about a library or class that it cannot load.
 *
 * The file lies where a computer on the cable can read it, for an app that does not open at all.
 */
class StartupReport(private val app: Application, private val studio: File, private val now: () -> Instant) {
    private val file: File by lazy { File(app.getExternalFilesDir(null) ?: app.filesDir, NAME) }

    /** What the last start said of how far it came, unless its studio opened. */
    private val before: String? by lazy {
        val reached = runCatching { file.useLines { lines -> lines.firstOrNull { it.startsWith(REACHED) } } }.getOrNull()
        reached?.removePrefix(REACHED)?.takeIf { it != StartupStep.OPEN.words }
    }
    private var step = StartupStep.LIBRARY
    private var library = "not loaded"
    private var failure: Throwable? = null

    /** Writes down that the app has come to [step]: if the system ends the app in the middle of it, the next start knows where. */
    @Synchronized
    fun reached(step: StartupStep) {
        this.step = step
        if (step == StartupStep.OPEN) failure = null
        write()
    }

    /** Writes down which build the library is that was loaded. */
    @Synchronized
    fun loaded(stamp: String) {
        library = stamp
        write()
    }

    /** Writes down what went wrong. A class that failed to load once fails the second time without saying why: then the first counts. */
    @Synchronized
    fun failed(problem: Throwable) {
        if (failure == null || problem.causes().none { it is NoClassDefFoundError }) failure = problem
        write()
    }

    /** The report as it is now. */
    @Synchronized
    fun text(): String = buildString {
        appendLine("laydown start-up report")
        appendLine("Written: ${now()}")
        appendLine("App: ${app.packageManager.getPackageInfo(app.packageName, 0).versionName}")
        appendLine(REACHED + step.words)
        before?.let { appendLine("The start before ended at: $it") }
        appendLine("Build of the screens: $BUILD_STAMP")
        appendLine("Build of the library: $library")
        appendLine("Schema of the studio's file: ${schema()}")
        appendLine("Phone: ${Build.MANUFACTURER} ${Build.MODEL}, Android ${Build.VERSION.RELEASE} (API ${Build.VERSION.SDK_INT})")
        appendLine("Processor: ${Build.SUPPORTED_ABIS.joinToString()}, pages of ${Os.sysconf(OsConstants._SC_PAGESIZE)} bytes")
        appendLine("Last error: ${failure?.let(::describe) ?: "none"}")
        appendLine("Nothing of your studio is in this report.")
    }

    /** A studio's file is SQLite's, whose header has the version at byte 60 (sqlite.org/fileformat2.html, the database header). */
    private fun schema(): String {
        if (!studio.exists()) return "no file yet"
        val version = runCatching {
            RandomAccessFile(studio, "r").use {
                it.seek(60)
                it.readInt()
            }
        }
        return version.fold({ "$it" }, { "cannot be read" })
    }

    private fun write() {
        // The app opens without its report: a full card must not keep a potter from weighing.
        runCatching {
            file.parentFile?.mkdirs()
            // Whole or not at all: whoever reads it meanwhile, and a phone that dies meanwhile, finds the report before.
            val next = File(file.path + ".new").apply { writeText(text()) }
            check(next.renameTo(file))
        }
    }

    private companion object {
        const val NAME = "start-up-report.txt"
        const val REACHED = "Reached: "
        const val FRAMES = 12

        fun Throwable.causes() = generateSequence(this) { it.cause }.take(8)

        fun describe(problem: Throwable): String = problem.causes().joinToString("\nBecause of: ") { cause ->
            val words = if (cause is LinkageError && cause.message != null) ": ${cause.message}" else ""
            val kind = if (cause is StudioException) "StudioException.${cause.javaClass.simpleName}" else cause.javaClass.name
            kind + words + cause.stackTrace.take(FRAMES).joinToString("") { "\n  at $it" }
        }
    }
}

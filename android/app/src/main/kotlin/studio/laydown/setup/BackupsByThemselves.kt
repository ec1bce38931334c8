package studio.laydown.setup

import android.content.Context
import android.net.Uri
import studio.laydown.StudioWork
import studio.laydown.core.BackupTask
import studio.laydown.core.BackupTrouble
import studio.laydown.core.Now
import studio.laydown.core.Studio
import studio.laydown.core.StudioException
import java.io.File

/**
 * Makes the backups that are made by themselves. The core says when, and what becomes of which file; this reaches the folder. For
 * the app in front and for the system's job alike, one run after the other. Called on the main thread.
 */
class BackupsByThemselves(private val context: Context, private val work: StudioWork) {
    /** What came of a run: whether a backup was made, or why one that was asked for could not even be begun. */
    class Outcome(val made: Boolean, val refused: StudioException? = null)

    /** On its way there and back. A folder of its own, since the pages clear theirs. */
    private val onTheWay = File(context.noBackupFilesDir, "backup")

    private class Run(val asked: Boolean, val done: (Outcome) -> Unit)

    /** The run under way, and those that wait for it to end. */
    private val runs = ArrayDeque<Run>()

    /** Makes the backup that is due, or with [asked] one in any case; [done] hears when all of it has ended. */
    fun run(asked: Boolean = false, done: (Outcome) -> Unit = {}) {
        runs += Run(asked, done)
        if (runs.size == 1) begin()
    }

    private fun begin() {
        val asked = runs.first().asked
        work.ask({ now -> backupDue(now, asked) }) { due ->
            due.fold(
                { task -> if (task == null) end(Outcome(made = false)) else make(task) },
                // A studio that cannot be opened says so on every page.
                { end(Outcome(made = false, it as? StudioException)) },
            )
        }
    }

    private fun make(task: BackupTask) {
        val folder = Folder(context, Uri.parse(task.place))
        // Before the work of making one: a folder that is gone would have it made in vain.
        io({
            folder.name()
            onTheWay.deleteRecursively()
            onTheWay.mkdirs()
            File(onTheWay, task.name)
        }) { file -> inBackground({ backUp(file.path) }) { put(task, folder, file) } }
    }

    private fun put(task: BackupTask, folder: Folder, file: File) {
        val copy = File(onTheWay, "read-again.zip")
        io({ folder.put(file, ZIP, copy) }) { made ->
            work.inBackground({ now -> automaticBackupDone(now, task.place, made.toString(), copy.path) }) { checked ->
                checked.fold({ old -> removeOld(folder, old) }) { problem ->
                    // What did not arrive whole is of no use; the core has remembered it.
                    io({ folder.remove(made) }) { refusedBy(problem) }
                }
            }
        }
    }

    private fun removeOld(folder: Folder, old: List<String>) = io({ old.filter { folder.remove(Uri.parse(it)) } }) { gone ->
        inBackground({ now -> backupsRemoved(now, gone) }) { end(Outcome(made = true)) }
    }

    private fun failed(trouble: BackupTrouble) =
        work.ask({ now -> backupFailed(now, trouble) }) { saved -> end(Outcome(made = false, saved.exceptionOrNull() as? StudioException)) }

    /** What the studio refused: that the phone is full is told apart, since there is something to do about it. */
    private fun refusedBy(problem: Throwable) = when (problem) {
        is StudioException.Refused -> end(Outcome(made = false))
        is StudioException.Full -> failed(BackupTrouble.PHONE_FULL)
        is StudioException -> failed(BackupTrouble.NOT_MADE)
        else -> throw problem
    }

    private fun <T> inBackground(call: Studio.(Now) -> T, then: (T) -> Unit) = work.inBackground(call) { result -> result.fold(then, ::refusedBy) }

    private fun <T> io(reach: () -> T, then: (T) -> Unit) = work.io(reach) { result ->
        result.fold(then) { problem ->
            if (problem is FolderTrouble) failed(problem.trouble) else throw problem
        }
    }

    private fun end(outcome: Outcome) {
        onTheWay.deleteRecursively()
        runs.removeFirst().done(outcome)
        if (runs.isNotEmpty()) begin()
    }

    private companion object {
        const val ZIP = "application/zip"
    }
}

package studio.laydown.house

import android.content.ActivityNotFoundException
import android.content.Intent
import android.net.Uri
import android.os.Bundle
import studio.laydown.Answer
import studio.laydown.ColumnPage
import studio.laydown.MainActivity
import studio.laydown.PageKind
import studio.laydown.Place
import studio.laydown.R
import studio.laydown.core.BackupView
import studio.laydown.core.Note
import studio.laydown.core.Now
import studio.laydown.core.Studio
import studio.laydown.core.StudioException
import studio.laydown.core.Tone
import studio.laydown.picture.Pictures
import studio.laydown.picture.copy
import studio.laydown.picture.share
import studio.laydown.putButton
import studio.laydown.putNote
import studio.laydown.putSentence
import java.io.File
import java.io.FileNotFoundException
import java.io.IOException

/** Everything into one file that lies elsewhere, and such a file taken in again. What takes long happens beside the weighing. */
class BackupPage(host: MainActivity) : ColumnPage(host) {
    override val title: CharSequence = host.getText(R.string.backup)

    /** What another app is asked for. */
    private enum class Asked { NOTHING, PLACE, BACKUP }

    private val pictures = Pictures(host)
    private var shown: BackupView? = null
    private var asked = Asked.NOTHING

    /** The backup that was made and waits for its place. */
    private var made: File? = null
    private var working = false

    /** What came of the last thing done. */
    private var said: Note? = null

    override fun open(saved: Bundle) {
        asked = saved.getString(ASKED)?.let(Asked::valueOf) ?: Asked.NOTHING
        made = saved.getString(MADE)?.let(::File)
        saved.getString(SAID)?.let { said = Note(Tone.valueOf(saved.getString(TONE, Tone.PLAIN.name)), it) }
        super.open(saved)
    }

    override fun save(into: Bundle) {
        super.save(into)
        into.putString(ASKED, asked.name)
        into.putString(MADE, made?.path)
        into.putString(SAID, said?.text)
        into.putString(TONE, said?.tone?.name)
    }

    override fun refresh() = show({ now -> backup(now) }, ::render)

    private fun render(view: BackupView) {
        shown = view
        fill {
            putSentence(view.intro)
            putSentence(view.last)
            view.notes.forEach { putNote(it) }
            said?.let { putNote(it) }
            if (working) putSentence(host.getText(R.string.backup_working))
            val ways = listOf(
                putButton(R.layout.main_button, host.getText(R.string.back_up)) { make(::askForPlace) },
                putButton(R.layout.add, host.getText(R.string.send_backup)) { make(::send) },
                putButton(R.layout.add, host.getText(R.string.take_in)) { askForBackup() },
                putButton(R.layout.add, host.getText(R.string.import_sheet)) { host.go(Place(PageKind.IMPORT)) },
            )
            ways.forEach { it.isEnabled = !working }
        }
    }

    // ---- making one ----

    private fun make(then: (File) -> Unit) {
        val name = shown?.name ?: return
        begin()
        pictures.clear()
        val file = pictures.place(name)
        aside({ backUp(file.path) }) {
            made = file
            end(null)
            then(file)
        }
    }

    private fun askForPlace(file: File) = ask(
        Asked.PLACE,
        Intent(Intent.ACTION_CREATE_DOCUMENT).addCategory(Intent.CATEGORY_OPENABLE).setType(ZIP).putExtra(Intent.EXTRA_TITLE, file.name),
    )

    /** To whatever takes files: where it comes to lie is not known here, so that it does not count as a backup made. */
    private fun send(file: File) = host.share(file, ZIP, host.getText(R.string.send_backup))

    /** Copies the backup to its place and reads it from there again. */
    private fun put(into: Uri) {
        val file = made ?: return end(attention(R.string.backup_gone))
        begin()
        copying({
            val out = host.contentResolver.openOutputStream(into, "wt") ?: throw FileNotFoundException(into.toString())
            out.use { to -> file.inputStream().use { it.copyTo(to) } }
            fetch(into, "copy.zip")
        }) { copy ->
            aside({ now -> backedUp(now, copy.path) }) { end(Note(Tone.PLAIN, it)) }
        }
    }

    // ---- taking one in ----

    private fun askForBackup() = ask(
        // Some folders call a zip by no type at all.
        Asked.BACKUP, Intent(Intent.ACTION_OPEN_DOCUMENT).addCategory(Intent.CATEGORY_OPENABLE).setType("*/*"),
    )

    private fun takeIn(from: Uri) {
        begin()
        copying({ fetch(from, "taken.zip") }) { copy -> aside({ now -> takeIn(now, copy.path) }) { end(Note(Tone.PLAIN, it)) } }
    }

    private fun fetch(from: Uri, name: String): File = pictures.place(name).also { host.contentResolver.copy(from, it) }

    // ---- other apps ----

    private fun ask(what: Asked, intent: Intent) {
        asked = what
        try {
            @Suppress("DEPRECATION") // the platform has nothing else
            host.startActivityForResult(intent, Answer.CODE)
        } catch (nobody: ActivityNotFoundException) {
            asked = Asked.NOTHING
            end(attention(R.string.no_files_app))
        }
    }

    override fun answered(answer: Answer) {
        val what = asked
        asked = Asked.NOTHING
        val uri = answer.uri.takeIf { answer.given }
        when {
            what == Asked.NOTHING -> Unit
            uri == null -> end(attention(R.string.no_file))
            what == Asked.PLACE -> put(uri)
            else -> takeIn(uri)
        }
    }

    // ---- what takes long ----

    private fun begin() {
        working = true
        said = null
        refresh()
    }

    private fun end(news: Note?) {
        working = false
        if (news != null) {
            said = news
            pictures.clear()
        }
        if (!gone) refresh()
    }

    private fun attention(sentence: Int) = Note(Tone.ATTENTION, host.getString(sentence))

    private fun copying(copy: () -> File, then: (File) -> Unit) = host.work.elsewhere(copy) { copied ->
        copied.fold(then) {
            if (it !is IOException && it !is SecurityException) throw it
            end(attention(R.string.file_not_copied))
        }
    }

    private fun <T> aside(call: Studio.(Now) -> T, done: (T) -> Unit) = host.work.aside(call) { result ->
        result.fold(done) { problem ->
            if (problem is StudioException) end(Note(Tone.ATTENTION, host.sentence(problem))) else host.fail(problem)
        }
    }

    private companion object {
        const val ZIP = "application/zip"
        const val ASKED = "asked"
        const val MADE = "made"
        const val SAID = "said"
        const val TONE = "tone"
    }
}

package studio.laydown.setup

import android.content.ActivityNotFoundException
import android.content.Intent
import android.net.Uri
import android.os.Bundle
import android.view.View
import android.view.ViewGroup
import studio.laydown.ActivityResult
import studio.laydown.ColumnPage
import studio.laydown.MainActivity
import studio.laydown.PageKind
import studio.laydown.Place
import studio.laydown.R
import studio.laydown.core.BackupView
import studio.laydown.core.Export
import studio.laydown.core.Note
import studio.laydown.core.Now
import studio.laydown.core.Row
import studio.laydown.core.Studio
import studio.laydown.core.StudioException
import studio.laydown.core.Tone
import studio.laydown.folderRequest
import studio.laydown.picture.Pictures
import studio.laydown.picture.copy
import studio.laydown.picture.lay
import studio.laydown.picture.share
import studio.laydown.put
import studio.laydown.putButton
import studio.laydown.putHeading
import studio.laydown.putNote
import studio.laydown.putRow
import studio.laydown.putSentence
import java.io.File
import java.io.IOException

/**
 * Everything into one file that lies elsewhere, by hand or by itself, and such a file taken in again; and files for other programs.
 * What takes long happens beside the weighing.
 */
class BackupPage(host: MainActivity) : ColumnPage(host) {
    override val title: CharSequence = host.getText(R.string.backup)

    /** What another app is asked for. */
    private enum class Asked { NOTHING, PLACE, BACKUP, FOLDER, EXPORT_PLACE }

    private val pictures = Pictures(host)
    private var shown: BackupView? = null
    private var asked = Asked.NOTHING

    /** The file that was made and waits for its place. */
    private var made: File? = null

    /** What to say of a file for other programs once it lies in its place. */
    private var written: String? = null
    private var working = false

    /** What came of the last thing done. */
    private var said: Note? = null

    override fun open(savedState: Bundle) {
        asked = savedState.getString(ASKED)?.let(Asked::valueOf) ?: Asked.NOTHING
        made = savedState.getString(MADE)?.let(::File)
        written = savedState.getString(WRITTEN)
        savedState.getString(SAID)?.let { said = Note(Tone.valueOf(savedState.getString(TONE, Tone.PLAIN.name)), it) }
        super.open(savedState)
    }

    override fun saveState(into: Bundle) {
        super.saveState(into)
        into.putString(ASKED, asked.name)
        into.putString(MADE, made?.path)
        into.putString(WRITTEN, written)
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
            val ways = mutableListOf<View>()
            if (view.restoreFirst) ways += putIncoming()
            ways += putButton(R.layout.main_button, host.getText(R.string.back_up)) { make { askForPlace(it) } }
            ways += putButton(R.layout.add, host.getText(R.string.send_backup)) { make { send(it) } }
            putHeading(host.getText(R.string.by_itself))
            putSentence(view.byItself)
            val rhythm = put<ViewGroup>(R.layout.card)
            ways += rhythm.putRow(host.getText(R.string.how_often), view.every.first { it.chosen }.title, R.drawable.ic_down) { chooseHowOften() }
            val folder = view.place.ifEmpty { host.getText(R.string.choose_folder) }
            ways += rhythm.putRow(host.getText(R.string.backup_folder), folder, R.drawable.ic_on) { askForFolder() }
            if (view.place.isNotEmpty()) ways += putButton(R.layout.add, host.getText(R.string.back_up_there)) { backUpThere(asked = true) }
            putHeading(host.getText(R.string.for_other_programs))
            val files = put<ViewGroup>(R.layout.card)
            ways += files.putRow(host.getText(R.string.tables), host.getText(R.string.tables_detail), R.drawable.ic_down) { chooseTable() }
            ways += files.putRow(view.journal.title, view.journal.detail, R.drawable.ic_down) { chooseWay(view.journal) }
            if (!view.restoreFirst) ways += putIncoming()
            ways.forEach { it.isEnabled = !working }
        }
    }

    /** The ways in which something comes into the studio. */
    private fun ViewGroup.putIncoming(): List<View> {
        putHeading(host.getText(R.string.take_in_heading))
        return listOf(
            putButton(R.layout.add, host.getText(R.string.restore)) { askForBackup() },
            putButton(R.layout.add, host.getText(R.string.import_spreadsheet)) { host.go(Place(PageKind.IMPORT)) },
        )
    }

    // ---- making one ----

    private fun make(then: BackupPage.(File) -> Unit) {
        val name = shown?.name ?: return
        begin()
        pictures.clear()
        val file = pictures.place(name)
        inBackground({ backUp(file.path) }) {
            made = file
            end(null)
            then(file)
        }
    }

    private fun askForPlace(file: File) = ask(Asked.PLACE, created(file, ZIP))

    private fun created(file: File, type: String) =
        Intent(Intent.ACTION_CREATE_DOCUMENT).addCategory(Intent.CATEGORY_OPENABLE).setType(type).putExtra(Intent.EXTRA_TITLE, file.name)

    /** To whatever takes files: where it comes to lie is not known here, so that it does not count as a backup made. */
    private fun send(file: File) = host.share(file, ZIP, host.getText(R.string.send_backup))

    /** Copies the backup to its place and reads it from there again. */
    private fun put(into: Uri) {
        val file = made ?: return end(attention(R.string.backup_gone))
        begin()
        copying({
            host.contentResolver.lay(file, into)
            fetch(into, "copy.zip")
        }) { copy ->
            inBackground({ now -> backedUp(now, copy.path) }) { end(Note(Tone.PLAIN, it)) }
        }
    }

    // ---- by itself ----

    private fun chooseHowOften() {
        val every = shown?.every ?: return
        choose(host.getText(R.string.how_often), every) { row -> command({ now -> setBackupSchedule(now, row.id) }) { refresh() } }
    }

    private fun askForFolder() = ask(Asked.FOLDER, folderRequest())

    /** A first backup goes there at once: then one knows that the folder can be used. */
    private fun use(tree: Uri) {
        begin()
        val folder = Folder(host, tree)
        val refused: BackupPage.(Throwable) -> Unit = {
            if (it !is FolderTrouble && it !is SecurityException) throw it
            end(attention(R.string.folder_not_usable))
        }
        val named: BackupPage.(String) -> Unit = { name ->
            inBackground({ now -> setBackupFolder(now, tree.toString(), name) }) { backUpThere(asked = false) }
        }
        val work = {
            folder.persistPermission()
            folder.name()
        }
        host.work.io(work, answer(refused, done = named))
    }

    private fun backUpThere(asked: Boolean) {
        begin()
        val ended: BackupPage.(BackupsByThemselves.Outcome) -> Unit = { outcome ->
            val refused = outcome.refused
            end(
                when {
                    outcome.made -> Note(Tone.PLAIN, host.getString(R.string.backed_up_there))
                    refused != null -> Note(Tone.ATTENTION, host.sentence(refused))
                    // What went wrong stands among the notes.
                    else -> null
                },
            )
        }
        val answer = answer({ host.fail(it) }, done = ended)
        host.backups.run(asked) { answer(Result.success(it)) }
    }

    // ---- for other programs ----

    private fun chooseTable() {
        val tables = shown?.tables ?: return
        choose(host.getText(R.string.tables), tables.map { Row(it.what, it.title, it.detail, false, emptyList()) }) { row ->
            chooseWay(tables.first { it.what == row.id })
        }
    }

    private fun chooseWay(export: Export) {
        val ways = listOf(R.string.put_file, R.string.send_file).map { Row(it.toString(), host.getString(it), "", false, emptyList()) }
        choose(export.title, ways) { row -> write(export, send = row == ways.last()) }
    }

    private fun write(export: Export, send: Boolean) {
        begin()
        pictures.clear()
        val file = pictures.place(export.name)
        inBackground({ export(export.what, file.path) }) { sentence ->
            made = file
            written = sentence
            end(null)
            if (send) host.share(file, export.mediaType, host.getText(R.string.send_file)) else askForExportPlace(file, export.mediaType)
        }
    }

    private fun askForExportPlace(file: File, type: String) = ask(Asked.EXPORT_PLACE, created(file, type))

    private fun putExport(into: Uri) {
        val file = made ?: return end(attention(R.string.backup_gone))
        begin()
        copying({
            host.contentResolver.lay(file, into)
            val copy = fetch(into, "copy")
            if (!copy.isSameAs(file)) throw IOException("what was read there is not what laydown wrote")
            copy
        }) { end(Note(Tone.PLAIN, written.orEmpty())) }
    }

    // ---- taking one in ----

    private fun askForBackup() = ask(
        // Some folders call a zip by no type at all.
        Asked.BACKUP, Intent(Intent.ACTION_OPEN_DOCUMENT).addCategory(Intent.CATEGORY_OPENABLE).setType("*/*"),
    )

    private fun restore(from: Uri) {
        begin()
        copying({ fetch(from, "taken.zip") }) { copy -> inBackground({ now -> restore(now, copy.path) }) { end(Note(Tone.PLAIN, it)) } }
    }

    private fun fetch(from: Uri, name: String): File = pictures.place(name).also { host.contentResolver.copy(from, it) }

    // ---- other apps ----

    private fun ask(what: Asked, intent: Intent) {
        asked = what
        try {
            @Suppress("DEPRECATION") // the platform has nothing else
            host.startActivityForResult(intent, ActivityResult.CODE)
        } catch (nobody: ActivityNotFoundException) {
            asked = Asked.NOTHING
            end(attention(R.string.no_files_app))
        }
    }

    override fun answered(answer: ActivityResult) {
        val what = asked
        asked = Asked.NOTHING
        val uri = answer.uri.takeIf { answer.given }
        when {
            what == Asked.NOTHING -> Unit
            uri == null -> end(attention(if (what == Asked.FOLDER) R.string.no_folder else R.string.no_file))
            what == Asked.PLACE -> put(uri)
            what == Asked.FOLDER -> use(uri)
            what == Asked.EXPORT_PLACE -> putExport(uri)
            else -> restore(uri)
        }
    }

    // ---- what takes long ----

    private fun begin() {
        working = true
        said = null
        // What is said of it stands at the top.
        toTop()
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

    private fun copying(copy: () -> File, then: BackupPage.(File) -> Unit) {
        val refused: BackupPage.(Throwable) -> Unit = {
            if (it !is IOException && it !is SecurityException) throw it
            end(attention(R.string.file_not_copied))
        }
        host.work.io(copy, answer(refused, done = then))
    }

    private fun <T> inBackground(call: Studio.(Now) -> T, done: BackupPage.(T) -> Unit) {
        val refused: BackupPage.(Throwable) -> Unit = { problem ->
            if (problem is StudioException) end(Note(Tone.ATTENTION, host.sentence(problem))) else host.fail(problem)
        }
        host.work.inBackground(call, answer(refused, done = done))
    }

    private companion object {
        const val ZIP = "application/zip"
        const val ASKED = "asked"
        const val MADE = "made"
        const val WRITTEN = "written"
        const val SAID = "said"
        const val TONE = "tone"
    }
}

/** Byte for byte; as large as they may be. */
private fun File.isSameAs(other: File): Boolean = length() == other.length() && inputStream().buffered().use { ours ->
    other.inputStream().buffered().use { theirs -> generateSequence { ours.read().takeIf { it >= 0 } }.all { it == theirs.read() } }
}

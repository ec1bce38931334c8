package studio.laydown.setup

import android.content.ActivityNotFoundException
import android.content.Intent
import android.net.Uri
import android.os.Bundle
import android.view.ViewGroup
import studio.laydown.ActivityResult
import studio.laydown.ColumnPage
import studio.laydown.MainActivity
import studio.laydown.R
import studio.laydown.core.ImportView
import studio.laydown.core.Note
import studio.laydown.core.Row
import studio.laydown.core.EditorField
import studio.laydown.core.StudioException
import studio.laydown.core.Tone
import studio.laydown.core.Value
import studio.laydown.picture.Pictures
import studio.laydown.picture.copy
import studio.laydown.put
import studio.laydown.putButton
import studio.laydown.putHeading
import studio.laydown.putNote
import studio.laydown.putRow
import studio.laydown.putSentence
import java.io.File
import java.io.IOException

/** A potter's own spreadsheet: what its columns hold, what taking it in would do, and taking it in. */
class ImportPage(host: MainActivity) : ColumnPage(host) {
    override val title: CharSequence = host.getText(R.string.import_spreadsheet)

    private val pictures = Pictures(host)
    private var file: File? = null

    /** What was chosen, by the keys of columns and questions. */
    private val chosen = LinkedHashMap<String, String>()
    private var trouble = ""
    private var working = false

    override fun open(savedState: Bundle) {
        file = savedState.getString(FILE)?.let(::File)
        savedState.getBundle(CHOSEN)?.let { saved -> saved.keySet().forEach { chosen[it] = saved.getString(it, "") } }
        super.open(savedState)
    }

    override fun saveState(into: Bundle) {
        super.saveState(into)
        into.putString(FILE, file?.path)
        into.putBundle(CHOSEN, Bundle().apply { chosen.forEach(::putString) })
    }

    override fun refresh() {
        val editor = file ?: return fill { putBeginning() }
        val values = values()
        show({ now -> runCatching { import(now, editor.path, values) } }) { read ->
            read.fold(::render) { problem ->
                if (problem !is StudioException.Refused) return@show host.fail(problem)
                file = null
                report(host.sentence(problem))
            }
        }
    }

    /** Before there is a sheet that can be read. */
    private fun ViewGroup.putBeginning() {
        putSentence(host.getText(R.string.import_intro))
        putTrouble()
        putButton(R.layout.main_button, host.getText(R.string.choose_spreadsheet)) { ask() }
    }

    private fun render(view: ImportView) = fill {
        putSentence(view.intro)
        putTrouble()
        if (view.questions.isNotEmpty()) putFields(R.string.import_questions, view.questions)
        putFields(R.string.import_columns, view.columns)
        putHeading(view.found)
        view.notes.forEach { putNote(it) }
        putButton(R.layout.main_button, view.takeInLabel) { restore() }.isEnabled = view.canTakeIn && !working
        if (view.readings.isNotEmpty()) {
            putHeading(host.getText(R.string.import_readings))
            val card = put<ViewGroup>(R.layout.card)
            for (row in view.readings) card.putRow(row.title, row.detail, null) {}
        }
        if (view.rowErrors.isNotEmpty()) {
            putHeading(host.getText(R.string.import_row_errors))
            view.rowErrors.forEach { putNote(Note(Tone.ATTENTION, it)) }
        }
        putButton(R.layout.add, host.getText(R.string.choose_another_spreadsheet)) { ask() }
    }

    private fun ViewGroup.putTrouble() {
        if (trouble.isNotEmpty()) putNote(Note(Tone.ATTENTION, trouble))
    }

    private fun ViewGroup.putFields(heading: Int, fields: List<EditorField>) {
        putHeading(host.getText(heading))
        val card = put<ViewGroup>(R.layout.card)
        for (field in fields) {
            val taken = field.items.firstOrNull { it.code == field.text }?.name.orEmpty()
            val detail = listOf(taken, field.refusal.ifEmpty { field.help }).filter { it.isNotEmpty() }.joinToString("\n")
            card.putRow(field.label, detail, R.drawable.ic_down) {
                choose(field.label, field.items.map { Row(it.code, it.name, it.detail, it.code == field.text, emptyList()) }) { row ->
                    chosen[field.key] = row.id
                    trouble = ""
                    refresh()
                }
            }
        }
    }

    private fun values() = chosen.map { (key, text) -> Value(key, text) }

    private fun restore() {
        val editor = file ?: return
        val values = values()
        working = true
        trouble = ""
        save({ now -> importSpreadsheet(now, editor.path, values) }, refused = { refuse(it) }) {
            working = false
            refresh()
        }
    }

    private fun refuse(problem: Throwable) {
        working = false
        if (problem !is StudioException.Refused) return host.fail(problem)
        report(host.sentence(problem))
    }

    // ---- the file ----

    private fun ask() {
        try {
            @Suppress("DEPRECATION") // the platform has nothing else
            // Spreadsheets call a CSV by many types, or by none.
            host.startActivityForResult(Intent(Intent.ACTION_OPEN_DOCUMENT).addCategory(Intent.CATEGORY_OPENABLE).setType("*/*"), ActivityResult.CODE)
        } catch (nobody: ActivityNotFoundException) {
            report(R.string.no_files_app)
        }
    }

    override fun answered(answer: ActivityResult) {
        val uri = answer.uri.takeIf { answer.given } ?: return report(R.string.no_file)
        host.work.io({ fetch(uri) }) { fetched ->
            fetched.fold({ editor ->
                file = editor
                chosen.clear()
                trouble = ""
                if (!gone) refresh()
            }) {
                if (it !is IOException && it !is SecurityException) throw it
                report(R.string.spreadsheet_not_copied)
            }
        }
    }

    private fun fetch(from: Uri): File = pictures.place(EDITOR).also { host.contentResolver.copy(from, it) }

    private fun report(sentence: Int) = report(host.getString(sentence))

    private fun report(sentence: String) {
        trouble = sentence
        if (!gone) refresh()
    }

    private companion object {
        const val EDITOR = "sheet.csv"
        const val FILE = "file"
        const val CHOSEN = "chosen"
    }
}

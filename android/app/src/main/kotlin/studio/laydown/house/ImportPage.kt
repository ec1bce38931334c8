package studio.laydown.house

import android.content.ActivityNotFoundException
import android.content.Intent
import android.net.Uri
import android.os.Bundle
import android.view.ViewGroup
import studio.laydown.Answer
import studio.laydown.ColumnPage
import studio.laydown.MainActivity
import studio.laydown.R
import studio.laydown.core.ImportView
import studio.laydown.core.Note
import studio.laydown.core.Row
import studio.laydown.core.SheetField
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
    override val title: CharSequence = host.getText(R.string.import_sheet)

    private val pictures = Pictures(host)
    private var file: File? = null

    /** What was chosen, by the keys of columns and questions. */
    private val chosen = LinkedHashMap<String, String>()
    private var trouble = ""
    private var working = false

    override fun open(saved: Bundle) {
        file = saved.getString(FILE)?.let(::File)
        saved.getBundle(CHOSEN)?.let { kept -> kept.keySet().forEach { chosen[it] = kept.getString(it, "") } }
        super.open(saved)
    }

    override fun save(into: Bundle) {
        super.save(into)
        into.putString(FILE, file?.path)
        into.putBundle(CHOSEN, Bundle().apply { chosen.forEach(::putString) })
    }

    override fun refresh() {
        val sheet = file ?: return fill { putBeginning() }
        val values = values()
        show({ now -> runCatching { import(now, sheet.path, values) } }) { read ->
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
        putButton(R.layout.main_button, host.getText(R.string.choose_sheet)) { ask() }
    }

    private fun render(view: ImportView) = fill {
        putSentence(view.intro)
        putTrouble()
        if (view.questions.isNotEmpty()) putFields(R.string.import_questions, view.questions)
        putFields(R.string.import_columns, view.columns)
        putHeading(view.found)
        view.notes.forEach { putNote(it) }
        putButton(R.layout.main_button, view.takeInLabel) { takeIn() }.isEnabled = view.canTakeIn && !working
        if (view.readings.isNotEmpty()) {
            putHeading(host.getText(R.string.import_readings))
            val card = put<ViewGroup>(R.layout.card)
            for (row in view.readings) card.putRow(row.title, row.detail, null) {}
        }
        if (view.complaints.isNotEmpty()) {
            putHeading(host.getText(R.string.import_complaints))
            view.complaints.forEach { putNote(Note(Tone.ATTENTION, it)) }
        }
        putButton(R.layout.add, host.getText(R.string.choose_another_sheet)) { ask() }
    }

    private fun ViewGroup.putTrouble() {
        if (trouble.isNotEmpty()) putNote(Note(Tone.ATTENTION, trouble))
    }

    private fun ViewGroup.putFields(heading: Int, fields: List<SheetField>) {
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

    private fun takeIn() {
        val sheet = file ?: return
        val values = values()
        working = true
        trouble = ""
        keep({ now -> takeInSheet(now, sheet.path, values) }, refused = ::refuse) {
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
            host.startActivityForResult(Intent(Intent.ACTION_OPEN_DOCUMENT).addCategory(Intent.CATEGORY_OPENABLE).setType("*/*"), Answer.CODE)
        } catch (nobody: ActivityNotFoundException) {
            report(R.string.no_files_app)
        }
    }

    override fun answered(answer: Answer) {
        val uri = answer.uri.takeIf { answer.given } ?: return report(R.string.no_file)
        host.work.elsewhere({ fetch(uri) }) { fetched ->
            fetched.fold({ sheet ->
                file = sheet
                chosen.clear()
                trouble = ""
                if (!gone) refresh()
            }) {
                if (it !is IOException && it !is SecurityException) throw it
                report(R.string.sheet_not_copied)
            }
        }
    }

    private fun fetch(from: Uri): File = pictures.place(SHEET).also { host.contentResolver.copy(from, it) }

    private fun report(sentence: Int) = report(host.getString(sentence))

    private fun report(sentence: String) {
        trouble = sentence
        if (!gone) refresh()
    }

    private companion object {
        const val SHEET = "sheet.csv"
        const val FILE = "file"
        const val CHOSEN = "chosen"
    }
}

package studio.laydown.sheet

import android.app.AlertDialog
import android.os.Bundle
import android.os.Handler
import android.os.Looper
import android.view.View
import android.view.ViewGroup
import android.widget.Button
import android.widget.TextView
import studio.laydown.MainActivity
import studio.laydown.Page
import studio.laydown.R
import studio.laydown.core.FieldKind
import studio.laydown.core.SheetEntry
import studio.laydown.core.SheetField
import studio.laydown.core.SheetKind
import studio.laydown.core.SheetView
import studio.laydown.core.StudioException
import studio.laydown.core.Value
import studio.laydown.get
import studio.laydown.putNote
import studio.laydown.views
import studio.laydown.words

/** Anything that is filled in: the core says which fields there are and what follows from what is entered. */
class SheetScreen(host: MainActivity, private val kind: SheetKind, private val id: String, private val subject: String) : Page(host) {
    override val view: View = host.views(R.layout.sheet)
    override val title: CharSequence = ""

    /** What has been entered here, by the fields' keys. */
    private val entered = linkedMapOf<String, String>()
    private val fields = linkedMapOf<String, FieldView>()
    private val list = view.get<ViewGroup>(R.id.fields)
    private val later = Handler(Looper.getMainLooper())
    private var keepLabel = ""
    private var keeping = false

    override fun open(saved: Bundle) {
        for (key in saved.keySet()) saved.getString(key)?.let { entered[key] = it }
        view.get<View>(R.id.keep).setOnClickListener { keepIt() }
        view.get<View>(R.id.remove).setOnClickListener { if (!keeping) keep({ now -> remove(now, kind, id) }, ::refuse, host::leavePage) }
        refresh()
    }

    override fun save(into: Bundle) {
        into.clear()
        entered.forEach(into::putString)
    }

    override fun pause() = later.removeCallbacksAndMessages(null)

    override fun refresh() {
        val entry = entry()
        show({ now -> sheet(now, entry) }, ::render)
    }

    override fun back(): Boolean {
        if (entered.isEmpty() || keepLabel.isEmpty()) return false
        AlertDialog.Builder(host)
            .setTitle(R.string.keep_or_throw)
            .setMessage(R.string.keep_or_throw_detail)
            .setPositiveButton(keepLabel) { _, _ -> keepIt() }
            .setNegativeButton(R.string.throw_away) { _, _ -> host.leavePage() }
            .setNeutralButton(R.string.stay, null)
            .show()
        return true
    }

    private fun entry() = SheetEntry(kind, id, subject, entered.map { (key, text) -> Value(key, text) })

    /** Something was entered: what follows is asked for at once, or, while one types, once the fingers pause. */
    private fun enter(field: SheetField, text: String) {
        entered[field.key] = text
        view.get<TextView>(R.id.refusal).words("")
        later.removeCallbacksAndMessages(null)
        val typed = field.kind == FieldKind.TEXT || field.kind == FieldKind.NUMBER
        if (typed) later.postDelayed(::refresh, PAUSE_MS) else refresh()
    }

    private fun keepIt() {
        if (keeping) return
        keeping = true
        val entry = entry()
        keep({ now -> keepSheet(now, entry) }, ::refuse) {
            if (kind == SheetKind.PREFERENCE) host.readPreferences()
            host.leavePage()
        }
    }

    /** What could not be kept: said beside its field, or above the button if it is about several. All that was entered stays. */
    private fun refuse(problem: Throwable) {
        keeping = false
        val sentence = host.sentence(problem)
        val field = (problem as? StudioException.Refused)?.let { fields[it.field] }
        if (field == null) {
            view.get<TextView>(R.id.refusal).words(sentence)
        } else {
            field.refuse(sentence)
            field.focus()
        }
    }

    private fun render(sheet: SheetView) {
        host.nameIt(sheet.title)
        keepLabel = sheet.keepLabel
        renderFields(sheet.fields)
        val results = view.get<ViewGroup>(R.id.results)
        results.removeAllViews()
        sheet.results.forEach(results::putNote)
        results.visibility = if (sheet.results.isEmpty()) View.GONE else View.VISIBLE
        view.get<Button>(R.id.keep).words(sheet.keepLabel)
        view.get<Button>(R.id.remove).words(sheet.removeLabel)
    }

    /** Fields come and go with what is entered. Those that stay keep their views, and so the cursor. */
    private fun renderFields(wanted: List<SheetField>) {
        val keys = wanted.associateBy { it.key }
        for ((key, view) in fields.toMap()) {
            if (keys[key]?.kind == view.kind) continue
            list.removeView(view.root)
            fields.remove(key)
        }
        wanted.forEachIndexed { at, field ->
            val view = fields.getOrPut(field.key) { FieldView.of(host, field.kind) { enter(field, it) } }
            if (view.root.parent == null) list.addView(view.root, at)
            view.show(field)
        }
    }

    private companion object {
        const val PAUSE_MS = 150L
    }
}

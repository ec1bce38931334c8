package studio.laydown.editor

import android.app.AlertDialog
import android.graphics.Rect
import android.os.Bundle
import android.os.Handler
import android.os.Looper
import android.view.View
import android.view.ViewGroup
import android.view.inputmethod.InputMethodManager
import android.widget.Button
import android.widget.TextView
import studio.laydown.ActivityResult
import studio.laydown.MainActivity
import studio.laydown.Page
import studio.laydown.PageKind
import studio.laydown.Place
import studio.laydown.R
import studio.laydown.core.FieldKind
import studio.laydown.core.Now
import studio.laydown.core.Redrawn
import studio.laydown.core.EditorEntry
import studio.laydown.core.EditorField
import studio.laydown.core.EditorKind
import studio.laydown.core.EditorView
import studio.laydown.core.Studio
import studio.laydown.core.StudioException
import studio.laydown.core.Touch
import studio.laydown.core.Value
import studio.laydown.drawing.DrawingPanel
import studio.laydown.get
import studio.laydown.sync.FolderChooser
import studio.laydown.onceLaidOut
import studio.laydown.picture.Photographer
import studio.laydown.putNote
import studio.laydown.showIf
import studio.laydown.views
import studio.laydown.words
import java.io.File

/** Anything that is filled in: the core says which fields there are and what follows from what is entered. */
class EditorScreen(host: MainActivity, private val kind: EditorKind, private val id: String, private val subject: String) :
    Page(host), DrawingPanel.Listener {
    override val view: View = host.views(R.layout.editor)
    override val title: CharSequence = ""

    private val entered = Entered(host.secrets.typed)
    private val fields = linkedMapOf<String, FieldView>()
    private val list = view.get<ViewGroup>(R.id.fields)
    private val results = view.get<ViewGroup>(R.id.results)

    /** The column that what follows stands in when nothing is drawn; the same as the fields' when the phone stands. */
    private val resultsAtHome = results.parent as ViewGroup
    private val resultsBelowFields = resultsAtHome === list.parent
    private val drawing = DrawingPanel(host, this, R.string.point_away)
    private val photographer = Photographer(host, ::photograph, ::reportPicture)
    private val folders = FolderChooser(host, host.work, ::takeFolder) { view.get<TextView>(R.id.refusal).words(host.getText(it)) }

    /** What was done to the drawing and waits for the answer to what was done before it. */
    private val touches = ArrayDeque<Pair<Touch, Gesture>>()
    private var touching = false
    private var gesture = Gesture(entered.begin())

    /** Whether what came of a picture is still to be brought into sight. */
    private var newsOfPicture = false

    /** How often something was entered or undone other than by a touch. */
    private var entries = 0
    private val later = Handler(Looper.getMainLooper())
    private var saveLabel = ""

    /** By this what is new is known when it is saved again. */
    private var draft = ""
    private var saving = false
    private var saveNext = false

    override fun open(savedState: Bundle) {
        // What was typed on another editor, or before the last throwing away, is no business of this one.
        if (savedState.isEmpty) host.secrets.typed.clear()
        entered.restore(savedState)
        draft = savedState.getString(DRAFT, "")
        folders.restore(savedState)
        view.get<View>(R.id.save).setOnClickListener { saveIt() }
        view.get<View>(R.id.history).apply {
            // What is half entered here waits until one comes back.
            showIf(this@EditorScreen.id.isNotEmpty())
            setOnClickListener { host.go(Place(PageKind.HISTORY, this@EditorScreen.id)) }
        }
        view.get<View>(R.id.remove).setOnClickListener { if (!saving) save({ now -> remove(now, kind, id) }, { refuse(it) }) { host.leavePage() } }
        refresh()
        savedState.getBundle(PHOTOGRAPHER)?.let(photographer::restore)
    }

    override fun saveState(into: Bundle) {
        entered.saveState(into)
        into.putString(DRAFT, draft)
        folders.saveState(into)
        into.putBundle(PHOTOGRAPHER, photographer.saveState())
    }

    override fun answered(answer: ActivityResult) {
        if (!folders.answered(answer)) photographer.answered(answer)
    }

    override fun pause() = later.removeCallbacksAndMessages(null)

    override fun refresh() {
        val entry = entry()
        show({ now -> editor(now, entry) }, ::render)
    }

    override fun back(): Boolean {
        if (entered.isEmpty || saveLabel.isEmpty()) return false
        AlertDialog.Builder(host)
            .setTitle(R.string.save_or_throw)
            .setMessage(R.string.save_or_throw_detail)
            .setPositiveButton(saveLabel) { _, _ -> saveIt() }
            .setNegativeButton(R.string.throw_away) { _, _ -> leaveForGood() }
            .setNeutralButton(R.string.stay, null)
            .show()
        return true
    }

    private fun entry() = EditorEntry(kind, id, subject, entered.values(), draft)

    /** Something was entered: what follows is asked for at once, or, while one types, once the fingers pause. */
    private fun enter(field: EditorField, text: String) {
        if (field.kind == FieldKind.SECRET) entered.typeSecret(field.key, text) else entered.type(field.key, text)
        entries++
        view.get<TextView>(R.id.refusal).words("")
        later.removeCallbacksAndMessages(null)
        // An answer under way would put back what was just taken away.
        overtake()
        val typed = field.kind in TYPED
        if (typed) later.postDelayed(::refresh, PAUSE_MS) else refresh()
    }

    private fun saveIt() {
        if (saving) return
        // What the finger did last belongs to it.
        saveNext = touching
        if (touching) return
        saving = true
        val entry = entry()
        val secret = fields.filterValues { it.kind == FieldKind.SECRET }.keys.toSet()
        val typed = host.secrets.typed.toMap()
        save({ now -> saveRecord(now, entry).also { if (kind == EditorKind.SYNC_LOCATION) host.secrets.save(secret, typed) } }, { refuse(it) }) {
            if (kind == EditorKind.PREFERENCE) host.readPreferences()
            leaveForGood()
            if (id.isEmpty()) next(it.id)?.let(host::go)
        }
    }

    /** Where something new leads once it is saved under [saved]. */
    private fun next(saved: String): Place? = when (kind) {
        // A firing that is begun is loaded next.
        EditorKind.FIRING -> Place(PageKind.FIRING, saved)
        // A new lot is looked at.
        EditorKind.BUCKET, EditorKind.MIX -> Place(PageKind.BUCKET, saved)
        // What was thinned is checked.
        EditorKind.THIN -> Place.editor(EditorKind.CHECK, subject = subject)
        else -> null
    }

    private fun leaveForGood() {
        photographer.clear()
        host.secrets.typed.clear()
        host.leavePage()
    }

    // ---- the drawing and the photograph ----

    override val ticks: Boolean get() = host.preferences.tick

    override fun begin() {
        gesture = Gesture(entered.begin())
        // What a table's cell shows while one types in it would not follow the finger.
        view.findFocus()?.let {
            it.clearFocus()
            host.getSystemService(InputMethodManager::class.java).hideSoftInputFromWindow(it.windowToken, 0)
        }
    }

    /** Of the places that a finger passes through only the newest is asked about. */
    override fun touch(touch: Touch) {
        if (touch is Touch.Move && (touches.lastOrNull()?.first as? Touch.Move)?.grip == touch.grip) touches.removeLast()
        touches.addLast(touch to gesture)
        if (!touching) nextTouch()
    }

    private fun nextTouch() {
        val (touch, gesture) = touches.removeFirstOrNull() ?: return
        val from = gesture.from ?: entry().also { gesture.from = it }
        touching = true
        fun next() {
            touching = false
            nextTouch()
            if (saveNext && !touching) saveIt()
        }
        redraw({ now -> touch(now, from, touch) }, { entered.put(it, gesture.step) }, ::next) { problem ->
            next()
            refuse(problem)
        }
    }

    override fun undo() {
        touches.clear()
        entered.undo()
        entries++
        refresh()
    }

    private fun reportPicture() {
        newsOfPicture = true
        photoField?.let(::showPicture)
    }

    private fun photograph(file: File) {
        if (gone) return
        val entry = entry()
        val take = { values: List<Value> -> values.forEach { entered.type(it.key, it.text) } }
        redraw({ now -> photograph(now, entry, file.path) }, take, photographer::done) { photographer.done(host.sentence(it)) }
    }

    /** Has the core enter something itself, and shows the editor with it. */
    private fun redraw(
        call: Studio.(Now) -> Redrawn, take: (List<Value>) -> Unit, done: () -> Unit, refused: (Throwable) -> Unit,
    ) {
        later.removeCallbacksAndMessages(null)
        val before = entries
        host.work.ask(call) { result ->
            // It keeps nothing: what was touched before the phone was turned is touched again.
            if (gone) return@ask
            val redrawn = result.getOrElse { return@ask refused(it) }
            take(redrawn.values)
            // If something was entered meanwhile, the editor that came does not know it.
            if (entries == before) {
                overtake()
                render(redrawn.view)
            } else {
                refresh()
            }
            done()
        }
    }

    /** What could not be kept: said beside its field, or above the button if it is about several. All that was entered stays. */
    private fun refuse(problem: Throwable) {
        saving = false
        val sentence = host.sentence(problem)
        val field = (problem as? StudioException.Refused)?.let { fields[it.field] }
        if (field == null) {
            view.get<TextView>(R.id.refusal).words(sentence)
        } else {
            field.refuse(sentence)
            field.focus()
        }
    }

    // ---- what is shown ----

    private fun render(editor: EditorView) {
        host.nameIt(editor.title)
        saveLabel = editor.saveLabel
        draft = editor.draft
        results.removeAllViews()
        editor.results.forEach(results::putNote)
        results.showIf(editor.results.isNotEmpty())
        renderFields(editor.fields)
        editor.drawing?.let { drawing.show(it, entered.canUndo) }
        arrange(editor)
        view.get<Button>(R.id.save).words(editor.saveLabel)
        view.get<Button>(R.id.remove).words(editor.removeLabel)
        photoField?.let(::showPicture)
    }

    private val photoField: PhotoFieldView? get() = fields.values.firstNotNullOfOrNull { it as? PhotoFieldView }

    /** Says how far a picture has come; if there is news, brings it into sight: one comes back from the camera to see that. */
    private fun showPicture(field: PhotoFieldView) {
        field.report(photographer.working, photographer.trouble)
        if (!newsOfPicture) return
        newsOfPicture = false
        val news = if (photographer.working || photographer.trouble.isNotEmpty()) field.root else drawing.root
        list.onceLaidOut { news.requestRectangleOnScreen(Rect(0, 0, news.width, news.height), true) }
    }

    /** Fields come and go with what is entered. Those that stay keep their views, and so the cursor. */
    private fun renderFields(wanted: List<EditorField>) {
        val keys = wanted.associateBy { it.key }
        for ((key, view) in fields.toMap()) {
            if (keys[key]?.kind == view.kind) continue
            list.removeView(view.root)
            fields.remove(key)
        }
        for (field in wanted) {
            val view = fields.getOrPut(field.key) {
                FieldView.of(host, field.kind, { enter(field, it) }, ::askForPicture) { folders.ask(field.key) }
            }
            // The core never says a secret again: what is being typed stands there.
            view.show(if (field.kind == FieldKind.SECRET) field.copy(text = entered.secret(field.key)) else field)
        }
    }

    private fun takeFolder(field: String, folder: String) {
        if (gone) return
        view.get<TextView>(R.id.refusal).words("")
        entered.type(field, folder)
        entries++
        overtake()
        refresh()
    }

    private fun askForPicture(way: String) {
        photographer.ask(way, entered.values().mapTo(mutableSetOf()) { it.text })
        photoField?.let(::showPicture)
    }

    /** The fields one under the other, the drawing below its own, and, if there is room for it only there, what follows below the drawing. */
    private fun arrange(editor: EditorView) {
        val drawn = editor.drawing
        val order = editor.fields.flatMap { field ->
            val beside = listOfNotNull(drawing.root, results.takeIf { resultsBelowFields })
            listOfNotNull(fields[field.key]?.root) + if (field.key == drawn?.below) beside else emptyList()
        }
        if (drawing.root !in order) list.removeView(drawing.root)
        if (results !in order) results.moveTo(resultsAtHome, if (resultsBelowFields) resultsAtHome.indexOfChild(list) + 1 else 0)
        order.forEachIndexed { at, view -> if (list.getChildAt(at) !== view) view.moveTo(list, at) }
    }

    private fun View.moveTo(column: ViewGroup, at: Int) {
        if (parent === column && column.indexOfChild(this) == at) return
        (parent as? ViewGroup)?.removeView(this)
        column.addView(this, at)
    }

    /**
     * One thing that a finger does, from taking hold to letting go. Each place it passes through is calculated from what stood there when
     * it took hold, and so in the drawing as it was then: a drawing that grew under the finger would carry it along.
     */
    private class Gesture(val step: Entered.Step) {
        var from: EditorEntry? = null
    }

    private companion object {
        const val PAUSE_MS = 150L
        const val PHOTOGRAPHER = "photographer"
        const val DRAFT = "draft"
        val TYPED = setOf(FieldKind.TEXT, FieldKind.LINES, FieldKind.EXACT, FieldKind.SECRET, FieldKind.NUMBER, FieldKind.TABLE)
    }
}

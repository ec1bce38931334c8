package studio.laydown.kiln

import android.os.Bundle
import android.view.View
import android.view.ViewGroup
import android.widget.Button
import android.widget.EditText
import android.widget.LinearLayout
import android.widget.Switch
import android.widget.TextView
import studio.laydown.ActivityResult
import studio.laydown.Column
import studio.laydown.UndoBar
import studio.laydown.UndoState
import studio.laydown.MainActivity
import studio.laydown.Page
import studio.laydown.PageKind
import studio.laydown.Place
import studio.laydown.R
import studio.laydown.Role
import studio.laydown.core.Choice
import studio.laydown.core.FaultChip
import studio.laydown.core.CommandResult
import studio.laydown.core.Assessment
import studio.laydown.core.AssessmentView
import studio.laydown.core.Note
import studio.laydown.core.Now
import studio.laydown.core.Studio
import studio.laydown.core.StudioException
import studio.laydown.core.Tone
import studio.laydown.core.Touch
import studio.laydown.core.faultSketch
import studio.laydown.drawing.DrawingPanel
import studio.laydown.drawing.DrawingView
import studio.laydown.get
import studio.laydown.onTyped
import studio.laydown.picture.Photographer
import studio.laydown.put
import studio.laydown.putButton
import studio.laydown.putHeading
import studio.laydown.putLines
import studio.laydown.putNote
import studio.laydown.putRow
import studio.laydown.putSentence
import studio.laydown.showIf
import studio.laydown.tellAs
import studio.laydown.toggle
import studio.laydown.views
import java.io.File

/** One piece after the firing beside its record. Every tap is kept at once; what is written, when one goes on or away. */
class AssessmentPage(host: MainActivity, private val firingId: String, private var pieceId: String) : Page(host), DrawingPanel.Listener {
    override val view: View = host.views(R.layout.look)
    override val title: CharSequence = ""

    private val column = Column(host)
    private val photographer = Photographer(host, ::savePhoto, ::showPicture)
    private val saved = UndoBar(view.get(R.id.saved), next = {}, toggleUndo = ::toggleUndo)
    private var shown: AssessmentView? = null
    private var parts: Parts? = null

    /** What is written and not kept; null when all is. */
    private var written: String? = null

    /** Why the last thing could not be done; said until the next one. */
    private var refusal = ""

    override fun open(savedState: Bundle) {
        // Nothing can be tapped before it is known which piece it is about.
        view.visibility = View.INVISIBLE
        view.get<ViewGroup>(R.id.look_column).addView(column.view)
        savedState.getString(PIECE)?.let { pieceId = it }
        saved.state = savedState.getBundle(SAVED)?.let(UndoState::read)
        written = savedState.getString(WRITTEN)
        column.restore(savedState)
        view.get<View>(R.id.look_photograph).setOnClickListener { photographer.ask(Photographer.CAMERA, emptySet()) }
        view.get<View>(R.id.look_next).setOnClickListener { shown?.let { if (it.next.isEmpty()) host.leavePage() else goTo(it.next) } }
        view.get<View>(R.id.look_previous).setOnClickListener { shown?.let { if (it.previous.isNotEmpty()) goTo(it.previous) } }
        refresh()
        savedState.getBundle(PHOTOGRAPHER)?.let(photographer::restore)
    }

    override fun saveState(into: Bundle) {
        into.putString(PIECE, pieceId)
        into.putString(WRITTEN, written)
        into.putBundle(SAVED, saved.state?.saveState())
        into.putBundle(PHOTOGRAPHER, photographer.saveState())
        column.saveState(into)
    }

    override fun answered(answer: ActivityResult) = photographer.answered(answer)

    override fun pause() = saveWritten()

    override fun refresh() {
        val piece = pieceId
        show({ now -> assessment(now, firingId, piece) }) {
            pieceId = it.piece
            render(it)
        }
    }

    private fun goTo(piece: String) {
        saveWritten()
        refusal = ""
        saved.state = null
        pieceId = piece
        column.toTop()
        refresh()
    }

    /** Shown above the ways on, which stay where the thumb knows them. */
    override fun showSaved(saved: UndoState): Boolean {
        this.saved.state = saved
        return true
    }

    private fun toggleUndo(state: UndoState): Unit = command(toggle(state), { refuse(it) }) {
        saved.state = it
        refresh()
    }

    // ---- what is said of the piece ----

    private fun say(look: Assessment) {
        saveWritten()
        val piece = pieceId
        act { now -> assess(now, firingId, piece, look) }
    }

    /** Saves something and shows the piece with it; what is refused is said on the page. */
    private fun act(call: Studio.(Now) -> CommandResult) = save(call, { refuse(it) }) {
        refusal = ""
        refresh()
    }

    private fun refuse(problem: Throwable) {
        if (problem !is StudioException.Refused && problem !is StudioException.Full) return host.fail(problem)
        refusal = host.sentence(problem)
        refresh()
    }

    /** What was written is kept without a word, so that nobody is stopped by it. */
    private fun saveWritten() {
        val text = written ?: return
        val piece = pieceId
        written = null
        command({ now -> assess(now, firingId, piece, Assessment.Note(text)) }, { problem ->
            written = text
            refuse(problem)
        }) {}
    }

    // ---- the photograph ----

    private fun savePhoto(file: File) {
        if (gone) return
        val piece = pieceId
        command(
            { now -> savePhoto(now, piece, firingId, file.path) }, { photographer.done(host.sentence(it)) }, elsewhere = { tell(UndoState(it)) },
        ) { saved ->
            photographer.done()
            refusal = ""
            host.tell(UndoState(saved))
            refresh()
        }
    }

    private fun showPicture() {
        shown?.let(::render)
    }

    // ---- what is shown ----

    private fun render(look: AssessmentView) {
        view.visibility = View.VISIBLE
        host.nameIt(look.title)
        view.get<Button>(R.id.look_photograph).isEnabled = !photographer.working
        view.get<Button>(R.id.look_next).setText(if (look.next.isEmpty()) R.string.last_piece else R.string.next_piece)
        view.get<View>(R.id.look_previous).showIf(look.previous.isNotEmpty())
        if (shown?.piece != look.piece) {
            column.fill { parts = Parts(this, look) }
        }
        shown = look
        parts?.show(look)
    }

    /** The views of one piece. They are made once, and only what they show changes: a thumb may already be on its way to the next. */
    private inner class Parts(column: ViewGroup, look: AssessmentView) {
        private val head = column.putColumn()
        private val questions = look.questions.map { question ->
            AnswersView(column, question.label, question.choices) { say(Assessment.Thickness(question.zone, it.code)) }
        }
        private val liking = AnswersView(column, host.getText(R.string.liking), stars(look)) { say(Assessment.Liking(it.code.toUByte())) }
        private val faults = column.run {
            putHeading(host.getText(R.string.faults))
            put<ViewGroup>(R.layout.chips).let { chips -> look.faults.map { chips.putFault(it) } }
        }
        private val panel = DrawingPanel(host, this@AssessmentPage, R.string.where_away, once = true).also { column.addView(it.root) }
        private val hints = column.putColumn()
        private val note = column.run {
            putHeading(host.getText(R.string.note))
            putNoteLine(look)
        }
        private val control = column.putSwitch(R.string.control_piece) { say(Assessment.Control(it)) }
        private val again = column.putSwitch(R.string.fire_again) { say(Assessment.Again(it)) }
        private var headShown: List<Any> = emptyList()

        init {
            control.showIf(look.canBeControl)
            column.putButton(R.layout.add, host.getText(R.string.from_pictures)) { photographer.ask(Photographer.GALLERY, emptySet()) }
            column.put<View>(R.layout.gap)
            val card = column.put<ViewGroup>(R.layout.card)
            card.putRow(host.getText(R.string.compare), host.getText(R.string.compare_detail), R.drawable.ic_on) {
                saveWritten()
                host.go(Place(PageKind.COMPARE, look.compare))
            }
            card.putRow(host.getText(R.string.share_piece), host.getText(R.string.share_piece_detail), R.drawable.ic_on) {
                saveWritten()
                host.go(Place(PageKind.CONTACT_SHEET, firingId, subject = look.piece))
            }
        }

        fun show(look: AssessmentView) {
            showHead(look)
            questions.zip(look.questions).forEach { (view, question) -> view.show(question.choices) }
            liking.show(stars(look))
            faults.zip(look.faults).forEach { (chip, fault) ->
                chip.isSelected = fault.on
                chip.tellAs(Role.CHECK, fault.on)
                chip.contentDescription = if (fault.on) host.getString(R.string.fault_chosen, fault.name) else fault.name
                chip.tooltipText = fault.about
            }
            panel.root.showIf(look.drawing != null)
            look.drawing?.let { panel.show(it, canUndo = false) }
            hints.removeAllViews()
            for (fault in look.faults) if (fault.on) hints.putNote(Note(Tone.PLAIN, fault.hint))
            look.notes.forEach { hints.putNote(it) }
            if (written == null && note.text.toString() != look.note) note.setText(look.note)
            control.isChecked = look.control
            again.isChecked = look.again
        }

        /** What stands above the answers only changes when there is something else to show: it would move them. */
        private fun showHead(look: AssessmentView) {
            val wanted = listOf(look.place, look.record, look.photos, refusal, photographer.trouble, photographer.working)
            if (wanted == headShown) return
            headShown = wanted
            head.removeAllViews()
            head.putSentence(look.place)
            for (trouble in listOf(refusal, photographer.trouble)) if (trouble.isNotEmpty()) head.putNote(Note(Tone.ATTENTION, trouble))
            if (photographer.working) head.putSentence(host.getText(R.string.picture_being_saved))
            head.putLines(look.record)
            head.putPhotos(host, look.photos) { photo -> act { now -> removePhoto(now, photo.id) } }
        }
    }

    private fun stars(look: AssessmentView) = (1..MOST_LIKED).map { Choice(it.toString(), it.toString(), it == look.liking.toInt()) }

    private fun ViewGroup.putColumn(): ViewGroup = LinearLayout(context).also {
        it.orientation = LinearLayout.VERTICAL
        addView(it)
    }

    private fun ViewGroup.putFault(fault: FaultChip): View = put<View>(R.layout.fault).apply {
        get<DrawingView>(R.id.fault_sketch).drawing = faultSketch(fault.code)
        get<TextView>(R.id.fault_name).text = fault.name
        setOnClickListener { say(Assessment.Fault(fault.code, !isSelected)) }
    }

    private fun ViewGroup.putNoteLine(look: AssessmentView): EditText = put<EditText>(R.layout.text_line).apply {
        isSaveEnabled = false
        hint = host.getText(R.string.note_hint)
        setText(written ?: look.note)
        onTyped { text -> written = text.takeIf { it != shown?.note } }
        setOnFocusChangeListener { _, focused -> if (!focused) saveWritten() }
    }

    private fun ViewGroup.putSwitch(words: Int, toggled: (Boolean) -> Unit): Switch {
        put<View>(R.layout.gap)
        return put<Switch>(R.layout.editor_switch).apply {
            isSaveEnabled = false
            setText(words)
            setOnClickListener { toggled(isChecked) }
        }
    }

    // ---- where a fault is ----

    override val ticks: Boolean get() = host.preferences.tick

    override fun touch(touch: Touch) = say(Assessment.Where(touch))

    private companion object {
        const val MOST_LIKED = 5
        const val PIECE = "piece"
        const val SAVED = "kept"
        const val WRITTEN = "written"
        const val PHOTOGRAPHER = "photographer"
    }
}

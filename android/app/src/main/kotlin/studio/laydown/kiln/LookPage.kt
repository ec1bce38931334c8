package studio.laydown.kiln

import android.os.Bundle
import android.view.View
import android.view.ViewGroup
import android.widget.Button
import android.widget.EditText
import android.widget.Switch
import studio.laydown.Answer
import studio.laydown.Column
import studio.laydown.KeptState
import studio.laydown.MainActivity
import studio.laydown.Page
import studio.laydown.R
import studio.laydown.core.Choice
import studio.laydown.core.Kept
import studio.laydown.core.Look
import studio.laydown.core.LookView
import studio.laydown.core.Note
import studio.laydown.core.Now
import studio.laydown.core.Studio
import studio.laydown.core.StudioException
import studio.laydown.core.Tone
import studio.laydown.core.Touch
import studio.laydown.drawing.DrawingPanel
import studio.laydown.get
import studio.laydown.onTyped
import studio.laydown.picture.Photographer
import studio.laydown.put
import studio.laydown.putButton
import studio.laydown.putHeading
import studio.laydown.putLines
import studio.laydown.putNote
import studio.laydown.putSentence
import studio.laydown.views
import java.io.File

/** One piece after the firing beside its record. Every tap is kept at once; what is written, when one goes on or away. */
class LookPage(host: MainActivity, private val firingId: String, private var pieceId: String) : Page(host), DrawingPanel.Listener {
    override val view: View = host.views(R.layout.look)
    override val title: CharSequence = ""

    private val column = Column(host)
    private val photographer = Photographer(host, ::keepPhoto, ::showPicture)
    private var shown: LookView? = null

    /** What is written and not kept; null when all is. */
    private var written: String? = null

    /** Why the last thing could not be done; said until the next one. */
    private var refusal = ""

    override fun open(saved: Bundle) {
        // Nothing can be tapped before it is known which piece it is about.
        view.visibility = View.INVISIBLE
        view.get<ViewGroup>(R.id.look_column).addView(column.view)
        saved.getString(PIECE)?.let { pieceId = it }
        written = saved.getString(WRITTEN)
        column.restore(saved)
        view.get<View>(R.id.look_photograph).setOnClickListener { photographer.ask(Photographer.CAMERA, emptySet()) }
        view.get<View>(R.id.look_next).setOnClickListener { shown?.let { if (it.next.isEmpty()) host.leavePage() else goTo(it.next) } }
        view.get<View>(R.id.look_previous).setOnClickListener { shown?.let { if (it.previous.isNotEmpty()) goTo(it.previous) } }
        refresh()
        saved.getBundle(PHOTOGRAPHER)?.let(photographer::restore)
    }

    override fun save(into: Bundle) {
        into.putString(PIECE, pieceId)
        into.putString(WRITTEN, written)
        into.putBundle(PHOTOGRAPHER, photographer.save())
        column.save(into)
    }

    override fun answered(answer: Answer) = photographer.answered(answer)

    override fun pause() = keepWritten()

    override fun refresh() {
        val piece = pieceId
        show({ now -> lookAt(now, firingId, piece) }) {
            pieceId = it.piece
            render(it)
        }
    }

    private fun goTo(piece: String) {
        keepWritten()
        refusal = ""
        pieceId = piece
        column.toTop()
        refresh()
    }

    // ---- what is said of the piece ----

    private fun say(look: Look) {
        keepWritten()
        val piece = pieceId
        act { now -> look(now, firingId, piece, look) }
    }

    /** Keeps something and shows the piece with it; what is refused is said on the page. */
    private fun act(call: Studio.(Now) -> Kept) = keep(call, ::refuse) {
        refusal = ""
        refresh()
    }

    private fun refuse(problem: Throwable) {
        if (problem !is StudioException.Refused && problem !is StudioException.Full) return host.fail(problem)
        refusal = host.sentence(problem)
        refresh()
    }

    /** What was written is kept without a word, so that nobody is stopped by it. */
    private fun keepWritten() {
        val text = written ?: return
        val piece = pieceId
        written = null
        command({ now -> look(now, firingId, piece, Look.Note(text)) }, { problem ->
            written = text
            refuse(problem)
        }) {}
    }

    // ---- the photograph ----

    private fun keepPhoto(file: File) {
        if (gone) return
        val piece = pieceId
        val done = { kept: Kept ->
            photographer.done()
            refusal = ""
            host.tell(KeptState(kept))
            refresh()
        }
        command({ now -> keepPhoto(now, piece, firingId, file.path) }, { photographer.done(host.sentence(it)) }, done)
    }

    private fun showPicture() {
        shown?.let(::render)
    }

    // ---- what is shown ----

    private fun render(look: LookView) {
        shown = look
        view.visibility = View.VISIBLE
        host.nameIt(look.title)
        view.get<Button>(R.id.look_photograph).isEnabled = !photographer.working
        view.get<Button>(R.id.look_next).setText(if (look.next.isEmpty()) R.string.last_piece else R.string.next_piece)
        view.get<View>(R.id.look_previous).visibility = if (look.previous.isEmpty()) View.GONE else View.VISIBLE
        column.fill {
            putSentence(look.place)
            for (trouble in listOf(refusal, photographer.trouble)) if (trouble.isNotEmpty()) putNote(Note(Tone.ATTENTION, trouble))
            if (photographer.working) putSentence(host.getText(R.string.picture_being_kept))
            putLines(look.record)
            putPhotos(host, look.photos) { photo -> act { now -> takePhotoOff(now, photo.id) } }
            for (question in look.questions) {
                putAnswers(question.label, question.choices) { say(Look.Thickness(question.zone, it.code)) }
            }
            val stars = (1..MOST_LIKED).map { Choice(it.toString(), it.toString(), it == look.liking.toInt()) }
            putAnswers(host.getText(R.string.liking), stars) { say(Look.Liking(it.code.toUByte())) }
            putFaults(look)
            look.notes.forEach { putNote(it) }
            putHeading(host.getText(R.string.note))
            putNoteLine(look)
            put<View>(R.layout.gap)
            putSwitch(R.string.control_piece, look.control) { say(Look.Control(it)) }
            put<View>(R.layout.gap)
            putSwitch(R.string.fire_again, look.again) { say(Look.Again(it)) }
            putButton(R.layout.add, host.getText(R.string.from_pictures)) { photographer.ask(Photographer.GALLERY, emptySet()) }
        }
    }

    private fun ViewGroup.putFaults(look: LookView) {
        putHeading(host.getText(R.string.faults))
        val chips = put<ViewGroup>(R.layout.chips)
        for (fault in look.faults) {
            chips.put<Button>(R.layout.chip).apply {
                text = fault.name
                isSelected = fault.on
                if (fault.on) contentDescription = "${fault.name}, ${host.getText(R.string.chosen)}"
                setOnClickListener { say(Look.Fault(fault.code, !fault.on)) }
            }
        }
        look.drawing?.let {
            val panel = DrawingPanel(host, this@LookPage, R.string.where_away, once = true)
            addView(panel.root)
            panel.show(it, canUndo = false)
        }
        for (fault in look.faults) if (fault.on) putNote(Note(Tone.PLAIN, fault.hint))
    }

    private fun ViewGroup.putNoteLine(look: LookView) {
        put<EditText>(R.layout.text_line).apply {
            isSaveEnabled = false
            hint = host.getText(R.string.note_hint)
            setText(written ?: look.note)
            onTyped { written = it.takeIf { it != look.note } }
            setOnFocusChangeListener { _, focused -> if (!focused) keepWritten() }
        }
    }

    private fun ViewGroup.putSwitch(words: Int, on: Boolean, turned: (Boolean) -> Unit) = put<Switch>(R.layout.sheet_switch).apply {
        isSaveEnabled = false
        setText(words)
        isChecked = on
        setOnClickListener { turned(isChecked) }
    }

    // ---- where a fault is ----

    override val ticks: Boolean get() = host.preferences.tick

    override fun begin() = Unit

    override fun undo() = Unit

    override fun touch(touch: Touch) = say(Look.Where(touch))

    private companion object {
        const val MOST_LIKED = 5
        const val PIECE = "piece"
        const val WRITTEN = "written"
        const val PHOTOGRAPHER = "photographer"
    }
}

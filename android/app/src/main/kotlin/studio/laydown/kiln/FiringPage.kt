package studio.laydown.kiln

import android.app.AlertDialog
import android.os.Bundle
import android.view.View
import android.view.ViewGroup
import android.widget.TextView
import studio.laydown.ColumnPage
import studio.laydown.MainActivity
import studio.laydown.PageKind
import studio.laydown.Place
import studio.laydown.R
import studio.laydown.Role
import studio.laydown.core.FiringView
import studio.laydown.core.CommandResult
import studio.laydown.core.Note
import studio.laydown.core.Now
import studio.laydown.core.Row
import studio.laydown.core.EditorKind
import studio.laydown.core.ShelfView
import studio.laydown.core.Studio
import studio.laydown.core.StudioException
import studio.laydown.core.ChecklistItem
import studio.laydown.core.Tone
import studio.laydown.core.Touch
import studio.laydown.drawing.DrawingPanel
import studio.laydown.get
import studio.laydown.put
import studio.laydown.putButton
import studio.laydown.putHeading
import studio.laydown.putLines
import studio.laydown.putNote
import studio.laydown.putRow
import studio.laydown.putSentence
import studio.laydown.tellAs
import studio.laydown.words

/** One firing: loaded shelf by shelf, then fired, then looked at piece by piece. */
class FiringPage(host: MainActivity, private val firingId: String) : ColumnPage(host), DrawingPanel.Listener {
    override val title: CharSequence = ""

    /** Why the last thing could not be done; said until the next one. */
    private var refusal = ""

    /** The waiting pieces that are ticked, to be loaded together. */
    private val ticked = mutableSetOf<String>()

    override fun open(savedState: Bundle) {
        ticked += savedState.getStringArrayList(TICKED).orEmpty()
        super.open(savedState)
    }

    override fun saveState(into: Bundle) {
        super.saveState(into)
        into.putStringArrayList(TICKED, ArrayList(ticked))
    }

    override fun refresh() = show({ now -> firing(now, firingId) }, ::render)

    private fun render(firing: FiringView) {
        host.nameIt(firing.title)
        fill {
            putSentence(firing.state)
            if (refusal.isNotEmpty()) putNote(Note(Tone.ATTENTION, refusal))
            if (firing.lookLabel.isNotEmpty()) putButton(R.layout.main_button, firing.lookLabel) { host.go(Place(PageKind.LOOK, firingId)) }
            firing.notes.forEach { putNote(it) }
            if (firing.before.isNotEmpty()) putBefore(firing.before)
            // Cones are placed once the ware stands; after the firing they are read first.
            if (!firing.isLoading) putCones(firing)
            if (firing.waiting.isNotEmpty()) putWaiting(firing)
            if (firing.isLoading) putAdd(firing)
            firing.shelves.forEach { putShelf(it) }
            if (firing.isLoading) putCones(firing) else putAdd(firing)
            if (firing.pieces.isNotEmpty()) putPieces(firing)
            putButton(R.layout.add, firing.next) { askNext(firing) }
            put<View>(R.layout.gap)
            putLines(firing.lines)
            put<View>(R.layout.gap)
            val card = put<ViewGroup>(R.layout.card)
            card.putRow(host.getText(R.string.change), host.getText(R.string.change_firing), R.drawable.ic_on) {
                host.go(Place.editor(EditorKind.FIRING, firingId))
            }
            if (!firing.isLoading && firing.pieces.isNotEmpty()) {
                card.putRow(host.getText(R.string.contact_sheet), host.getText(R.string.contact_sheet_detail), R.drawable.ic_on) {
                    host.go(Place(PageKind.CONTACT_SHEET, firingId))
                }
            }
            if (firing.earlier.isNotEmpty()) putEarlier(firing.earlier)
        }
    }

    private fun ViewGroup.putCones(firing: FiringView) {
        val cones = firing.cones ?: return
        put<View>(R.layout.gap)
        put<ViewGroup>(R.layout.card).putRow(cones.title, cones.detail, R.drawable.ic_on) { host.go(Place.editor(cones.editor, firingId)) }
    }

    private fun ViewGroup.putAdd(firing: FiringView) {
        if (firing.addLabel.isEmpty()) return
        put<View>(R.layout.gap)
        putButton(R.layout.add, firing.addLabel) { host.go(Place.editor(EditorKind.PIECE, subject = firingId)) }
    }

    private fun ViewGroup.putBefore(ticks: List<ChecklistItem>) {
        putHeading(host.getText(R.string.before_kiln))
        val card = put<ViewGroup>(R.layout.card)
        for (tick in ticks) {
            card.putTick(tick.text, "") { act { now -> setChecklistItem(now, firingId, tick.code, !tick.done) } }.showTick(tick.text, tick.done)
        }
    }

    /** What waits, each with a tick, and one button that loads what is ticked; all of it on any shelf while nothing is. */
    private fun ViewGroup.putWaiting(firing: FiringView) {
        putHeading(firing.waitingLabel)
        val card = put<ViewGroup>(R.layout.card)
        val all = firing.waiting.flatMap { it.pieces }
        ticked.retainAll(all.toSet())
        // The views stay, so that neither a finger nor whoever listens loses the place.
        val shows = mutableListOf<() -> Unit>()
        fun tick(title: String, detail: String, pieces: List<String>) {
            val row = card.putTick(title, detail) {
                if (ticked.containsAll(pieces)) ticked.removeAll(pieces.toSet()) else ticked += pieces
                shows.forEach { it() }
            }
            shows += { row.showTick(title, ticked.containsAll(pieces)) }
        }
        if (firing.waiting.size > 1) tick(host.getString(R.string.tick_all), "", all)
        for (group in firing.groups) tick(group.title, "", group.pieces)
        for (row in firing.waiting) {
            tick(if (row.pieces.size > 1) "${row.pieces.size} × ${row.title}" else row.title, row.detail, row.pieces)
        }
        val button = card.putButton(R.layout.add_row, "") {
            if (ticked.isEmpty()) act { now -> loadAll(now, firingId) } else chooseShelf(firing)
        }
        shows += {
            button.setText(if (ticked.isEmpty()) R.string.load_all else R.string.load_ticked)
            button.isEnabled = ticked.isNotEmpty() || firing.isLoading
        }
        shows.forEach { it() }
    }

    private fun ViewGroup.putTick(title: String, detail: String, press: () -> Unit): View = put<View>(R.layout.tick).apply {
        get<TextView>(R.id.tick_text).text = title
        get<TextView>(R.id.tick_detail).words(detail)
        setOnClickListener { press() }
    }

    private fun View.showTick(title: String, done: Boolean) {
        get<View>(R.id.tick_mark).isSelected = done
        contentDescription = listOf(title, get<TextView>(R.id.tick_detail).text, host.getText(if (done) R.string.done else R.string.to_do))
            .filter { it.isNotEmpty() }.joinToString(" ")
        tellAs(Role.CHECK, done)
    }

    /** A single shelf is not asked for; of one run of equal pieces all or one can be put on it. */
    private fun chooseShelf(firing: FiringView) {
        val rows = firing.waiting.filter { row -> row.pieces.any { it in ticked } }
        val pieces = rows.flatMap { it.pieces }
        val run = rows.size == 1 && pieces.size > 1
        val shelves = firing.shelves
        if (!run && shelves.size == 1) return load(pieces, shelves.single().number)
        val choices = shelves.flatMap { shelf ->
            val all = Row("${shelf.number} all", shelf.title, if (run) host.getString(R.string.all_of_them, pieces.size) else "", false, emptyList())
            if (run) listOf(all, all.copy(id = "${shelf.number} one", detail = host.getString(R.string.one_of_them))) else listOf(all)
        }
        choose(host.getText(R.string.which_shelf), choices) { row ->
            val (shelf, many) = row.id.split(' ')
            load(if (many == "all") pieces else pieces.take(1), shelf.toUInt())
        }
    }

    private fun load(pieces: List<String>, shelf: UInt) = act { now -> load(now, firingId, pieces, shelf) }

    private fun ViewGroup.putShelf(shelf: ShelfView) {
        putHeading(shelf.title)
        val panel = DrawingPanel(host, this@FiringPage, R.string.take_out, once = true, holdToLift = true)
        addView(panel.root)
        panel.show(shelf.drawing, canUndo = false)
    }

    private fun ViewGroup.putPieces(firing: FiringView) {
        putHeading(host.getText(R.string.pieces))
        val card = put<ViewGroup>(R.layout.card)
        for (piece in firing.pieces) {
            card.putRow(piece.title, piece.detail, if (piece.lookedAt) R.drawable.ic_check else R.drawable.ic_on) {
                host.go(if (firing.isLoading) Place(PageKind.PIECE, piece.piece) else Place(PageKind.LOOK, firingId, subject = piece.piece))
            }
        }
    }

    private fun ViewGroup.putEarlier(firings: List<Row>) {
        putHeading(host.getText(R.string.earlier_firings))
        val card = put<ViewGroup>(R.layout.card)
        for (row in firings) card.putRow(row.title, row.detail, R.drawable.ic_on) { host.go(Place(PageKind.FIRING, row.id)) }
    }

    private fun askNext(firing: FiringView) {
        if (firing.nextQuestion.isEmpty()) return advance()
        AlertDialog.Builder(host)
            .setTitle(firing.next)
            .setMessage(firing.nextQuestion)
            .setPositiveButton(R.string.yes) { _, _ -> advance() }
            .setNegativeButton(R.string.not_yet, null)
            .show()
    }

    /** What is to be done next stands at the top. */
    private fun advance() = act(done = { toTop() }) { now -> advance(now, firingId) }

    // ---- the plan of a shelf ----

    override val ticks: Boolean get() = host.preferences.tick

    override fun touch(touch: Touch) = when (touch) {
        is Touch.Move -> act { now -> place(now, firingId, touch.grip, touch.to) }
        is Touch.Remove -> act { now -> takeOut(now, firingId, touch.grip) }
        // A bare spot of a shelf means nothing.
        is Touch.Add -> Unit
    }

    /** Saves something and shows the firing with it; what is refused is said on the page. */
    private fun act(done: FiringPage.() -> Unit = {}, call: Studio.(Now) -> CommandResult) = save(call, { refuse(it) }) {
        refusal = ""
        done()
        refresh()
    }

    private fun refuse(problem: Throwable) {
        if (problem !is StudioException.Refused) return host.fail(problem)
        refusal = host.sentence(problem)
        refresh()
    }

    private companion object {
        const val TICKED = "ticked"
    }
}

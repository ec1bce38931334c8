package studio.laydown

import android.os.Bundle
import android.view.View
import android.view.ViewGroup
import android.widget.Button
import android.widget.TextView
import studio.laydown.core.CommandResult
import studio.laydown.core.NextCoat
import studio.laydown.core.Now
import studio.laydown.core.Studio

/**
 * What was kept last, and whether it has been undone again. [undo] is the token that does the opposite. [next] may follow on it, and
 * [again] on its being undone.
 */
data class UndoState(
    val sentence: String, val undo: String, val next: List<NextCoat>, val isUndone: String? = null, val again: List<NextCoat> = emptyList(),
) {
    constructor(saved: CommandResult) : this(saved.sentence, saved.undo, saved.next)

    /** After the command was undone or done again, with [answer]. */
    fun toggled(answer: CommandResult) =
        copy(undo = answer.undo, isUndone = if (isUndone == null) answer.sentence else null, again = answer.next)

    fun saveState() = Bundle().apply {
        putString("sentence", sentence)
        putString("undo", undo)
        putString("taken_back", isUndone)
        putBundle("next", next.saveState())
        putBundle("again", again.saveState())
    }

    companion object {
        fun read(savedState: Bundle) = UndoState(
            savedState.getString("sentence", ""), savedState.getString("undo", ""), readNextCoats(savedState.getBundle("next")),
            savedState.getString("taken_back"), readNextCoats(savedState.getBundle("again")),
        )
    }
}

private fun List<NextCoat>.saveState() = Bundle().apply {
    putStringArrayList("labels", ArrayList(map { it.label }))
    putParcelableArrayList("entries", ArrayList(map { it.entry.saveState() }))
}

private fun readNextCoats(savedState: Bundle?): List<NextCoat> {
    if (savedState == null) return emptyList()
    return savedState.getStringArrayList("labels").orEmpty().zip(savedState.bundles("entries").map(::readWeighEntry), ::NextCoat)
}

/** The bar that says what was kept, takes it back, does it again, and leads to what may follow. */
class UndoBar(
    private val root: View, private val nextButton: Int = R.layout.next_coat, private val next: (NextCoat) -> Unit, private val toggleUndo: (UndoState) -> Unit,
) {
    var state: UndoState? = null
        set(value) {
            field = value
            root.visibility = if (value == null) View.GONE else View.VISIBLE
            if (value != null) render(value)
        }

    init {
        root.get<Button>(R.id.saved_undo).setOnClickListener { state?.let(toggleUndo) }
    }

    private fun render(state: UndoState) {
        root.get<TextView>(R.id.saved_sentence).text = state.isUndone ?: state.sentence
        root.get<Button>(R.id.saved_undo).apply {
            setText(if (state.isUndone == null) R.string.undo else R.string.do_again)
            showIf(state.undo.isNotEmpty())
        }
        val buttons = root.get<ViewGroup>(R.id.saved_next)
        buttons.removeAllViews()
        for (coat in if (state.isUndone == null) state.next else state.again) {
            val button = buttons.put<Button>(nextButton)
            button.text = coat.label
            button.setOnClickListener { next(coat) }
        }
    }
}

/** Undoes what [state] says was kept, or does it again. */
fun toggle(state: UndoState): Studio.(Now) -> UndoState = { now -> state.toggled(undo(now, state.undo)) }

package studio.laydown

import android.os.Bundle
import android.view.View
import android.view.ViewGroup
import android.widget.Button
import android.widget.TextView
import studio.laydown.core.Kept
import studio.laydown.core.NextCoat
import studio.laydown.core.Now
import studio.laydown.core.Studio

/** What was kept last, and whether it has been taken back again. [undo] is the token that does the opposite. */
data class KeptState(val sentence: String, val undo: String, val next: List<NextCoat>, val takenBack: String? = null) {
    constructor(kept: Kept) : this(kept.sentence, kept.undo, kept.next)

    /** After the command was taken back or done again, with [answer]. */
    fun turned(answer: Kept) = copy(undo = answer.undo, takenBack = if (takenBack == null) answer.sentence else null)

    fun save() = Bundle().apply {
        putString("sentence", sentence)
        putString("undo", undo)
        putString("taken_back", takenBack)
        putStringArrayList("labels", ArrayList(next.map { it.label }))
        putParcelableArrayList("entries", ArrayList(next.map { it.entry.save() }))
    }

    companion object {
        fun read(saved: Bundle): KeptState {
            val labels = saved.getStringArrayList("labels").orEmpty()
            val entries = saved.bundles("entries").map(::readWeighEntry)
            val next = labels.zip(entries, ::NextCoat)
            return KeptState(saved.getString("sentence", ""), saved.getString("undo", ""), next, saved.getString("taken_back"))
        }
    }
}

/** The bar that says what was kept, takes it back, does it again, and leads to what may follow. */
class KeptBar(private val root: View, private val next: (NextCoat) -> Unit, private val turn: (KeptState) -> Unit) {
    var state: KeptState? = null
        set(value) {
            field = value
            root.visibility = if (value == null) View.GONE else View.VISIBLE
            if (value != null) render(value)
        }

    init {
        root.get<Button>(R.id.kept_undo).setOnClickListener { state?.let(turn) }
    }

    private fun render(state: KeptState) {
        root.get<TextView>(R.id.kept_sentence).text = state.takenBack ?: state.sentence
        root.get<Button>(R.id.kept_undo).apply {
            setText(if (state.takenBack == null) R.string.undo else R.string.do_again)
            showIf(state.undo.isNotEmpty())
        }
        val buttons = root.get<ViewGroup>(R.id.kept_next)
        buttons.removeAllViews()
        if (state.takenBack != null) return
        for (coat in state.next) {
            val button = buttons.put<Button>(R.layout.next_coat)
            button.text = coat.label
            button.setOnClickListener { next(coat) }
        }
    }
}

/** Takes back what [state] says was kept, or does it again. */
fun turn(state: KeptState): Studio.(Now) -> KeptState = { now -> state.turned(undo(now, state.undo)) }

package studio.laydown.weigh

import android.text.InputType
import android.view.ViewGroup
import android.widget.EditText
import android.widget.TextView
import studio.laydown.MainActivity
import studio.laydown.R
import studio.laydown.Sheet
import studio.laydown.core.PiecesToGlazeView
import studio.laydown.core.WeighEntry
import studio.laydown.get
import studio.laydown.onTyped
import studio.laydown.put
import studio.laydown.putRow
import studio.laydown.words

/**
 * Picks the piece that a further coat goes onto, by the code on its foot or from the list, in [sheet]. [ask] asks the studio for the
 * pieces with the code typed so far; [picked] is given the entry to go on with.
 */
class PiecePicker(
    private val host: MainActivity, private val sheet: Sheet, into: ViewGroup,
    private val ask: (code: String, answered: (PiecesToGlazeView) -> Unit) -> Unit, private val picked: (WeighEntry) -> Unit,
) {
    private val view = into.put<ViewGroup>(R.layout.piece_picker)
    private val code = view.get<EditText>(R.id.picker_code)

    init {
        code.isSaveEnabled = false
        code.inputType = InputType.TYPE_CLASS_TEXT or InputType.TYPE_TEXT_FLAG_CAP_CHARACTERS or InputType.TYPE_TEXT_FLAG_NO_SUGGESTIONS
        code.onTyped { show(it) }
        show("")
    }

    private fun show(typed: String) = ask(typed) { pieces ->
        // An answer to what was typed before is out of date.
        if (code.text.toString() == typed) render(pieces)
    }

    private fun render(pieces: PiecesToGlazeView) {
        view.get<TextView>(R.id.picker_nothing).words(pieces.nothing)
        val found = view.get<ViewGroup>(R.id.picker_found)
        found.removeAllViews()
        for (group in pieces.groups) {
            if (group.heading.isNotEmpty()) found.put<TextView>(R.layout.picker_heading).text = group.heading
            for (piece in group.pieces) {
                found.putRow(piece.title, piece.detail, R.drawable.ic_on, piece.outline) {
                    sheet.close()
                    picked(piece.entry)
                }
            }
        }
    }
}

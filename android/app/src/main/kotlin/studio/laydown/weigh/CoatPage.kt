package studio.laydown.weigh

import android.app.AlertDialog
import android.view.View
import android.view.ViewGroup
import studio.laydown.ColumnPage
import studio.laydown.MainActivity
import studio.laydown.PageKind
import studio.laydown.Place
import studio.laydown.R
import studio.laydown.core.CoatView
import studio.laydown.core.EditorKind
import studio.laydown.put
import studio.laydown.putButton
import studio.laydown.putLines
import studio.laydown.putRow

/** The record of one coat, and the marks a potter puts on it afterwards. */
class CoatPage(host: MainActivity, private val coatId: String) : ColumnPage(host) {
    override val title: CharSequence = ""

    override fun refresh() = show({ now -> coat(now, coatId) }, ::render)

    private fun render(coat: CoatView) {
        host.nameIt(coat.title)
        fill {
            putLines(coat.lines)
            put<View>(R.layout.gap)
            put<ViewGroup>(R.layout.card).putRow(host.getText(R.string.whole_piece), host.getText(R.string.whole_piece_detail), R.drawable.ic_on) {
                host.go(Place(PageKind.PIECE, coat.piece))
            }
            putButton(R.layout.add, host.getText(R.string.correct_coat)) { host.go(Place.editor(EditorKind.COAT, coatId)) }
            putButton(R.layout.add, coat.controlLabel) { askControl(coat) }
            putButton(R.layout.add, host.getText(R.string.its_history)) { host.go(Place(PageKind.HISTORY, coatId)) }
            putButton(R.layout.away, host.getText(R.string.take_back)) {
                save({ now -> removeCoat(now, coatId) }, done = { host.leavePage() })
            }
        }
    }

    private fun askControl(coat: CoatView) {
        if (coat.controlQuestion.isEmpty()) return turnControl(coat)
        AlertDialog.Builder(host)
            .setTitle(coat.controlLabel)
            .setMessage(coat.controlQuestion)
            .setPositiveButton(R.string.yes) { _, _ -> turnControl(coat) }
            .setNegativeButton(R.string.not_yet, null)
            .show()
    }

    private fun turnControl(coat: CoatView) = save({ now -> setControl(now, coatId, !coat.control) }, done = { refresh() })
}

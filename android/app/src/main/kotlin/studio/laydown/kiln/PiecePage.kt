package studio.laydown.kiln

import android.view.View
import android.view.ViewGroup
import studio.laydown.ColumnPage
import studio.laydown.MainActivity
import studio.laydown.PageKind
import studio.laydown.Place
import studio.laydown.R
import studio.laydown.core.EditorKind
import studio.laydown.core.PieceView
import studio.laydown.put
import studio.laydown.putButton
import studio.laydown.putHeading
import studio.laydown.putLines
import studio.laydown.putRow
import studio.laydown.putSentence

/** The life of one piece: its coats, its firings, its photographs. */
class PiecePage(host: MainActivity, private val pieceId: String) : ColumnPage(host) {
    override val title: CharSequence = ""

    override fun refresh() = show({ now -> piece(now, pieceId) }, ::render)

    private fun render(piece: PieceView) {
        host.nameIt(piece.title)
        fill {
            putPhotos(host, piece.photos, captions = true) { photo -> save({ now -> removePhoto(now, photo.id) }, done = { refresh() }) }
            if (piece.coats.isNotEmpty()) {
                putHeading(host.getText(R.string.as_weighed))
                putLines(piece.coats)
                if (piece.dryLabel.isNotEmpty()) putButton(R.layout.add, piece.dryLabel) { host.go(Place.editor(EditorKind.DRY_WEIGHT, pieceId)) }
            }
            putHeading(host.getText(R.string.fired))
            if (piece.firings.isEmpty()) {
                putSentence(piece.unfired)
            } else {
                val card = put<ViewGroup>(R.layout.card)
                for (row in piece.firings) card.putRow(row.title, row.detail, R.drawable.ic_on) { host.go(Place(PageKind.FIRING, row.id)) }
            }
            put<View>(R.layout.gap)
            val card = put<ViewGroup>(R.layout.card)
            card.putRow(host.getText(R.string.compare), host.getText(R.string.compare_detail), R.drawable.ic_on) {
                host.go(Place(PageKind.COMPARE, pieceId))
            }
            if (piece.isUnweighed) {
                card.putRow(host.getText(R.string.change), host.getText(R.string.change_piece), R.drawable.ic_on) {
                    host.go(Place.editor(EditorKind.PIECE, pieceId))
                }
            }
        }
    }
}

package studio.laydown.kiln

import android.view.View
import android.view.ViewGroup
import studio.laydown.ColumnPage
import studio.laydown.MainActivity
import studio.laydown.PageKind
import studio.laydown.Place
import studio.laydown.R
import studio.laydown.core.KilnView
import studio.laydown.core.Note
import studio.laydown.core.EditorKind
import studio.laydown.core.Tone
import studio.laydown.put
import studio.laydown.putButton
import studio.laydown.putHeading
import studio.laydown.putNote
import studio.laydown.putRow
import studio.laydown.putSentence

/** The Kiln screen: what waits, the firings, and the way to a piece of old. */
class KilnScreen(host: MainActivity) : ColumnPage(host) {
    override val title: CharSequence = host.getText(R.string.tab_kiln)

    override fun refresh() = show({ now -> kiln(now) }, ::render)

    private fun render(view: KilnView) = fill {
        putSentence(view.waiting)
        if (view.dryLabel.isNotEmpty()) putButton(R.layout.add, view.dryLabel) { host.go(Place.editor(EditorKind.DRY_WEIGHT)) }
        if (view.hasKiln) {
            putButton(R.layout.add, host.getText(R.string.begin_firing)) { host.go(Place.editor(EditorKind.FIRING)) }
        } else {
            putButton(R.layout.add, host.getText(R.string.add_kiln)) { host.go(Place.editor(EditorKind.KILN)) }
            putSentence(host.getText(R.string.add_kiln_detail))
        }
        put<ViewGroup>(R.layout.card).putRow(host.getText(R.string.find_pieces), host.getText(R.string.find_pieces_detail), R.drawable.ic_on) {
            host.go(Place(PageKind.FIND))
        }
        putHeading(host.getText(R.string.firings))
        if (view.firings.isEmpty()) {
            putSentence(view.empty)
        } else {
            val card = put<ViewGroup>(R.layout.card)
            for (row in view.firings) card.putRow(row.title, row.detail, R.drawable.ic_on) { host.go(Place(PageKind.FIRING, row.id)) }
        }
        put<View>(R.layout.gap)
        for (caution in view.cautions) putNote(Note(Tone.WARNING, caution))
    }
}

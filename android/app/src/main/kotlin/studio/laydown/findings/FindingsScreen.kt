package studio.laydown.findings

import android.view.ViewGroup
import studio.laydown.ColumnPage
import studio.laydown.MainActivity
import studio.laydown.PageKind
import studio.laydown.Place
import studio.laydown.R
import studio.laydown.core.FindingsView
import studio.laydown.put
import studio.laydown.putNote
import studio.laydown.putRow
import studio.laydown.putSentence

/** The Findings screen: each glaze with what its fired pots say, in a sentence. */
class FindingsScreen(host: MainActivity) : ColumnPage(host) {
    override val title: CharSequence = host.getText(R.string.tab_findings)

    override fun refresh() = show({ now -> findings(now) }, ::render)

    private fun render(view: FindingsView) = fill {
        if (view.empty.isNotEmpty()) putSentence(view.empty)
        if (view.glazes.isNotEmpty()) {
            val card = put<ViewGroup>(R.layout.card)
            for (row in view.glazes) {
                card.putRow(row.title, row.detail, R.drawable.ic_on) { host.go(Place(PageKind.GLAZE_FINDINGS, row.id)) }
            }
        }
        view.notes.forEach { putNote(it) }
    }
}

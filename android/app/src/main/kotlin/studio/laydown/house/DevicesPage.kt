package studio.laydown.house

import android.view.View
import android.view.ViewGroup
import studio.laydown.ColumnPage
import studio.laydown.MainActivity
import studio.laydown.PageKind
import studio.laydown.Place
import studio.laydown.R
import studio.laydown.core.DevicesView
import studio.laydown.core.SheetKind
import studio.laydown.put
import studio.laydown.putNote
import studio.laydown.putRow
import studio.laydown.putSentence

/** The phones of the studio, and how they come to agree. */
class DevicesPage(host: MainActivity) : ColumnPage(host) {
    override val title: CharSequence = host.getText(R.string.devices)

    override fun refresh() = show({ now -> devices(now) }, ::render)

    private fun render(view: DevicesView) = fill {
        putSentence(view.intro)
        view.notes.forEach { putNote(it) }
        val card = put<ViewGroup>(R.layout.card)
        for (row in view.devices) {
            // Only one's own name can be set here.
            card.putRow(row.title, row.detail, R.drawable.ic_on.takeIf { row.chosen }) {
                if (row.chosen) host.go(Place.sheet(SheetKind.PREFERENCE))
            }
        }
        put<View>(R.layout.gap)
        put<ViewGroup>(R.layout.card).putRow(host.getText(R.string.backup), host.getText(R.string.backup_for_others), R.drawable.ic_on) {
            host.go(Place(PageKind.BACKUP))
        }
    }
}

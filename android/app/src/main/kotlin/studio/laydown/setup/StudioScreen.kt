package studio.laydown.setup

import android.view.View
import android.view.ViewGroup
import studio.laydown.ColumnPage
import studio.laydown.MainActivity
import studio.laydown.PageKind
import studio.laydown.Place
import studio.laydown.R
import studio.laydown.core.SetupView
import studio.laydown.core.Section
import studio.laydown.core.EditorKind
import studio.laydown.put
import studio.laydown.putButton
import studio.laydown.putHeading
import studio.laydown.putRow
import studio.laydown.putSentence

/** The Studio screen: everything that is set up once and used for years. */
class StudioScreen(host: MainActivity) : ColumnPage(host) {
    override val title: CharSequence = host.getText(R.string.tab_studio)

    override fun refresh() = show({ now -> setup(now) }, ::render)

    private fun render(setup: SetupView) = fill {
        if (setup.meanwhile.isNotEmpty()) {
            put<ViewGroup>(R.layout.card).putRow(host.getText(R.string.meanwhile), setup.meanwhile, R.drawable.ic_on) {
                host.go(Place(PageKind.MEANWHILE))
            }
        }
        for (section in setup.sections) {
            putSection(section)
            if (section.editor == EditorKind.FORM) putCompare()
        }
        put<View>(R.layout.gap)
        put<View>(R.layout.gap)
        val card = put<ViewGroup>(R.layout.card)
        card.putRow(host.getText(R.string.backup), setup.backup, R.drawable.ic_on) { host.go(Place(PageKind.BACKUP)) }
        card.putRow(host.getText(R.string.devices), host.getText(R.string.devices_detail), R.drawable.ic_on) { host.go(Place(PageKind.DEVICES)) }
        card.putRow(host.getText(R.string.archived), host.getText(R.string.archived_detail), R.drawable.ic_on) { host.go(Place(PageKind.ARCHIVED)) }
        card.putRow(host.getText(R.string.preferences), host.getText(R.string.preferences_detail), R.drawable.ic_on) {
            host.go(Place.editor(EditorKind.PREFERENCE))
        }
        card.putRow(host.getText(R.string.cautions), host.getText(R.string.cautions_detail), R.drawable.ic_on) {
            host.go(Place(PageKind.CAUTIONS))
        }
    }

    /** What the forms are compared by stands right under them. */
    private fun ViewGroup.putCompare() {
        put<View>(R.layout.gap)
        put<ViewGroup>(R.layout.card).putRow(host.getText(R.string.sizes), host.getText(R.string.sizes_detail), R.drawable.ic_on) {
            host.go(Place(PageKind.SIZES))
        }
    }

    private fun ViewGroup.putSection(section: Section) {
        putHeading(section.title)
        if (section.rows.isEmpty()) putSentence(section.empty)
        val card = put<ViewGroup>(R.layout.card)
        for (row in section.rows) {
            card.putRow(row.title, row.detail, R.drawable.ic_on, row.outline) { host.go(Place.editor(section.editor, row.id)) }
        }
        card.putButton(R.layout.add_row, section.addLabel) { host.go(Place.editor(section.editor)) }
    }
}

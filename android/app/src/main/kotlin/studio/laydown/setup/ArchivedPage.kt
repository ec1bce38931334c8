package studio.laydown.setup

import android.app.AlertDialog
import android.view.ViewGroup
import studio.laydown.ColumnPage
import studio.laydown.MainActivity
import studio.laydown.R
import studio.laydown.core.ArchivedRow
import studio.laydown.core.ArchivedView
import studio.laydown.put
import studio.laydown.putHeading
import studio.laydown.putRow
import studio.laydown.putSentence

/** What was archived or removed, each with the way back. */
class ArchivedPage(host: MainActivity) : ColumnPage(host) {
    override val title: CharSequence = host.getText(R.string.archived)

    override fun refresh() = show({ now -> archived(now) }, ::render)

    private fun render(view: ArchivedView) = fill {
        if (view.nothing.isNotEmpty()) putSentence(view.nothing)
        for (section in view.sections) {
            putHeading(section.title)
            val card = put<ViewGroup>(R.layout.card)
            for (row in section.rows) card.putRow(row.title, row.detail, R.drawable.ic_on) { ask(row) }
        }
    }

    private fun ask(row: ArchivedRow) {
        AlertDialog.Builder(host)
            .setTitle(row.title)
            .setMessage(row.detail)
            .setPositiveButton(R.string.bring_back) { _, _ -> save({ now -> unarchive(now, row.kind, row.id) }, done = { refresh() }) }
            .setNegativeButton(R.string.close, null)
            .show()
    }
}

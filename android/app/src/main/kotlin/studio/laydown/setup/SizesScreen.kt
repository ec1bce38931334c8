package studio.laydown.setup

import android.os.Bundle
import android.view.View
import android.view.ViewGroup
import android.widget.TextView
import studio.laydown.ColumnPage
import studio.laydown.MainActivity
import studio.laydown.OutlineView
import studio.laydown.R
import studio.laydown.core.Row
import studio.laydown.core.SizeRow
import studio.laydown.core.SizesView
import studio.laydown.get
import studio.laydown.put
import studio.laydown.putHeading
import studio.laydown.putRow
import studio.laydown.putSentence

/** What every form should take, going by one amount that is known to be right. */
class SizesScreen(host: MainActivity) : ColumnPage(host) {
    override val title: CharSequence = host.getText(R.string.sizes)

    /** The id of the amount gone by; empty for the newest. */
    private var known = ""

    override fun open(savedState: Bundle) {
        known = savedState.getString(KNOWN, "")
        super.open(savedState)
    }

    override fun saveState(into: Bundle) {
        super.saveState(into)
        into.putString(KNOWN, known)
    }

    override fun refresh() {
        val asked = known
        show({ now -> sizes(now, asked) }, ::render)
    }

    private fun render(view: SizesView) = fill {
        view.known.firstOrNull { it.chosen }?.let { chosen ->
            putHeading(host.getText(R.string.known))
            val card = put<ViewGroup>(R.layout.card)
            card.putRow(chosen.title, chosen.detail, R.drawable.ic_down, chosen.outline) { choose(view.known) }
        }
        putSentence(view.intro)
        if (view.sizes.isEmpty()) return@fill
        put<View>(R.layout.gap)
        val card = put<ViewGroup>(R.layout.card)
        for (size in view.sizes) card.putSize(size)
    }

    private fun choose(rows: List<Row>) {
        choose(host.getText(R.string.choose_known), rows) {
            known = it.id
            refresh()
        }
    }

    private fun ViewGroup.putSize(size: SizeRow) = put<View>(R.layout.size).run {
        get<OutlineView>(R.id.size_outline).outline = size.outline
        get<TextView>(R.id.size_title).text = size.title
        get<TextView>(R.id.size_wet).text = size.wet
        get<TextView>(R.id.size_span).text = host.getString(R.string.right_is, size.span)
        get<TextView>(R.id.size_reason).text = size.reason
    }

    private companion object {
        const val KNOWN = "known"
    }
}

package studio.laydown.weigh

import android.view.View
import android.view.ViewGroup
import android.widget.ImageView
import studio.laydown.ColumnPage
import studio.laydown.MainActivity
import studio.laydown.PageKind
import studio.laydown.Place
import studio.laydown.R
import studio.laydown.core.EvidenceRow
import studio.laydown.core.WhyTargetView
import studio.laydown.kiln.picture
import studio.laydown.put
import studio.laydown.putButton
import studio.laydown.putNote
import studio.laydown.putRow
import studio.laydown.putSentence
import studio.laydown.views

/** Why a target is what it is: each piece of evidence with its weight, which opens, and can be left out. */
class WhyPage(host: MainActivity, private val target: String) : ColumnPage(host) {
    override val title: CharSequence = ""

    override fun refresh() = show({ now -> whyTarget(now, target) }, ::render)

    private fun render(view: WhyTargetView) {
        host.nameIt(view.title)
        fill {
            view.answer.forEach { putSentence(it) }
            view.notes.forEach { putNote(it) }
            view.rows.forEach { putEvidence(it) }
        }
    }

    private fun ViewGroup.putEvidence(row: EvidenceRow) {
        put<View>(R.layout.gap)
        val title = listOf(row.weight, row.title).filter(String::isNotEmpty).joinToString(" · ")
        val card = put<ViewGroup>(R.layout.card)
        val line = card.putRow(title, row.detail, if (row.piece.isEmpty()) null else R.drawable.ic_on) {
            if (row.piece.isNotEmpty()) host.go(Place(PageKind.PIECE, row.piece))
        }
        picture(row.photo, PREVIEW_PX)?.let { taken ->
            val photo = host.views(R.layout.row_photo, line as ViewGroup) as ImageView
            photo.setImageBitmap(taken)
            line.addView(photo, 0)
        }
        if (row.toggle.isEmpty()) return
        card.putButton(R.layout.card_action, row.toggle) {
            save({ now -> setCounts(now, target, row.firing, row.piece, !row.counts) }, done = { refresh() })
        }
    }

    private companion object {
        const val PREVIEW_PX = 240
    }
}

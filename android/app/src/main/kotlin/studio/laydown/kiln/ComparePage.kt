package studio.laydown.kiln

import android.graphics.Typeface
import android.os.Bundle
import android.view.View
import android.view.ViewGroup
import android.widget.ImageView
import android.widget.TextView
import studio.laydown.ColumnPage
import studio.laydown.MainActivity
import studio.laydown.R
import studio.laydown.core.CompareLine
import studio.laydown.core.CompareView
import studio.laydown.get
import studio.laydown.put
import studio.laydown.putHeading
import studio.laydown.putRow
import studio.laydown.showIf

/** Two pieces side by side. */
class ComparePage(host: MainActivity, private val pieceId: String) : ColumnPage(host) {
    override val title: CharSequence = host.getText(R.string.compare)

    /** The id of the other piece; empty for a control piece. */
    private var other = ""

    override fun open(savedState: Bundle) {
        other = savedState.getString(OTHER, "")
        super.open(savedState)
    }

    override fun saveState(into: Bundle) {
        super.saveState(into)
        into.putString(OTHER, other)
    }

    override fun refresh() {
        val asked = other
        show({ now -> compare(now, pieceId, asked) }, ::render)
    }

    private fun render(view: CompareView) = fill {
        putHeading(host.getText(R.string.beside))
        put<ViewGroup>(R.layout.card).putRow(view.rightTitle, "", R.drawable.ic_down) { choose(view) }
        put<View>(R.layout.gap)
        val heads = put<View>(R.layout.compare_heads)
        heads.show(R.id.left_photo, view.leftPhoto, R.string.left_photo)
        heads.show(R.id.right_photo, view.rightPhoto, R.string.right_photo)
        heads.get<TextView>(R.id.left_title).text = view.leftTitle
        heads.get<TextView>(R.id.right_title).text = view.rightTitle
        put<View>(R.layout.gap)
        val card = put<ViewGroup>(R.layout.card)
        for (line in view.lines) card.putLine(line)
    }

    private fun View.show(id: Int, file: String, name: Int) = get<ImageView>(id).apply {
        showIf(file.isNotEmpty())
        setImageBitmap(picture(file, resources.displayMetrics.widthPixels / 2))
        contentDescription = host.getText(name)
    }

    private fun ViewGroup.putLine(line: CompareLine) = put<View>(R.layout.compare_line).run {
        get<TextView>(R.id.compare_label).text = if (line.differs) host.getString(R.string.differs, line.label) else line.label
        for ((id, words) in listOf(R.id.compare_left to line.left, R.id.compare_right to line.right)) {
            get<TextView>(id).apply {
                text = words
                if (line.differs) setTypeface(typeface, Typeface.BOLD)
            }
        }
    }

    private fun choose(view: CompareView) {
        choose(host.getText(R.string.compare_with), view.others) {
            other = it.id
            refresh()
        }
    }

    private companion object {
        const val OTHER = "other"
    }
}

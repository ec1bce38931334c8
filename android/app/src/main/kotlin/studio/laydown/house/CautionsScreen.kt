package studio.laydown.house

import android.os.Bundle
import android.view.View
import studio.laydown.Column
import studio.laydown.MainActivity
import studio.laydown.Page
import studio.laydown.R
import studio.laydown.putHeading
import studio.laydown.putSentence

/** Every caution in full. */
class CautionsScreen(host: MainActivity) : Page(host) {
    private val column = Column(host)
    override val view: View get() = column.view
    override val title: CharSequence = host.getText(R.string.cautions)

    override fun open(saved: Bundle) {
        column.restore(saved)
        refresh()
    }

    override fun save(into: Bundle) = column.save(into)

    override fun refresh() = show({ now -> house(now) }) { house ->
        column.fill {
            for (caution in house.cautions) {
                putHeading(caution.title)
                putSentence(caution.text)
            }
        }
    }
}

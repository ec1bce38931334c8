package studio.laydown.setup

import studio.laydown.ColumnPage
import studio.laydown.MainActivity
import studio.laydown.R
import studio.laydown.putHeading
import studio.laydown.putSentence

/** Every caution in full. */
class CautionsScreen(host: MainActivity) : ColumnPage(host) {
    override val title: CharSequence = host.getText(R.string.cautions)

    override fun refresh() = show({ now -> setup(now) }) { setup ->
        fill {
            for (caution in setup.cautions) {
                putHeading(caution.title)
                putSentence(caution.text)
            }
        }
    }
}

package studio.laydown.weigh

import studio.laydown.ColumnPage
import studio.laydown.MainActivity
import studio.laydown.R
import studio.laydown.core.CoatView
import studio.laydown.putButton
import studio.laydown.putLines

/** The record of one coat, and the marks a potter puts on it afterwards. */
class CoatPage(host: MainActivity, private val coatId: String) : ColumnPage(host) {
    override val title: CharSequence = ""

    override fun refresh() = show({ now -> coat(now, coatId) }, ::render)

    private fun render(coat: CoatView) {
        host.nameIt(coat.title)
        fill {
            putLines(coat.lines)
            putButton(R.layout.add, coat.controlLabel) { keep({ now -> setControl(now, coatId, !coat.control) }, done = ::refresh) }
            putButton(R.layout.away, host.getText(R.string.take_back)) {
                keep({ now -> takeBackCoat(now, coatId) }, done = host::leavePage)
            }
        }
    }
}

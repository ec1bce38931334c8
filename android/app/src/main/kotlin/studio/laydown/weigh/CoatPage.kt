package studio.laydown.weigh

import android.os.Bundle
import android.view.View
import studio.laydown.Column
import studio.laydown.MainActivity
import studio.laydown.Page
import studio.laydown.R
import studio.laydown.core.CoatView
import studio.laydown.putButton
import studio.laydown.putLines

/** The record of one coat, and the marks a potter puts on it afterwards. */
class CoatPage(host: MainActivity, private val coatId: String) : Page(host) {
    private val column = Column(host)
    override val view: View get() = column.view
    override val title: CharSequence = ""

    override fun open(saved: Bundle) = refresh()

    override fun refresh() = show({ now -> coat(now, coatId) }, ::render)

    private fun render(coat: CoatView) {
        host.nameIt(coat.title)
        column.fill {
            putLines(coat.lines)
            putButton(R.layout.add, coat.controlLabel) { keep({ now -> setControl(now, coatId, !coat.control) }, done = ::refresh) }
            putButton(R.layout.away, host.getText(R.string.take_back)) {
                keep({ now -> takeBackCoat(now, coatId) }, done = host::leavePage)
            }
        }
    }
}

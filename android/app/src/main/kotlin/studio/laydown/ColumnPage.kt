package studio.laydown

import android.os.Bundle
import android.view.View
import android.view.ViewGroup

/** A page that is one scrolling column, filled anew with each answer, and found again where it was left. */
abstract class ColumnPage(host: MainActivity) : Page(host) {
    private val column = Column(host)
    final override val view: View get() = column.view

    override fun open(savedState: Bundle) {
        column.restore(savedState)
        refresh()
    }

    override fun saveState(into: Bundle) = column.saveState(into)

    /** What is filled in next is shown from its beginning. */
    protected fun toTop() = column.toTop()

    protected fun fill(build: ViewGroup.() -> Unit) = column.fill(build)
}

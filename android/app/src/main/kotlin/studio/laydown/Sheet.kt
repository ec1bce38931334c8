package studio.laydown

import android.app.Dialog
import android.view.Gravity
import android.view.ViewGroup
import android.view.WindowManager.LayoutParams
import android.widget.TextView

/** What comes up from below over the page, into reach of the thumb, and moves nothing of it. [fill] puts into it what it holds. */
class Sheet(host: MainActivity, title: CharSequence, fill: ViewGroup.(Sheet) -> Unit) {
    private val dialog = Dialog(host, R.style.Laydown_Chooser)
    private val view = host.views(R.layout.chooser)

    init {
        put(title, fill)
        dialog.setContentView(view)
        checkNotNull(dialog.window) { "a dialog has a window" }.apply {
            setGravity(Gravity.BOTTOM)
            setLayout(LayoutParams.MATCH_PARENT, LayoutParams.WRAP_CONTENT)
        }
    }

    /** Puts something else into it, where it is. */
    fun put(title: CharSequence, fill: ViewGroup.(Sheet) -> Unit) {
        view.get<TextView>(R.id.chooser_title).text = title
        val rows = view.get<ViewGroup>(R.id.chooser_rows)
        rows.removeAllViews()
        rows.fill(this)
    }

    fun show(closed: () -> Unit) {
        dialog.setOnDismissListener { closed() }
        dialog.show()
    }

    /** Closes it as the person does who is done with it. */
    fun close() = dialog.dismiss()

    /** Closes it without a word, as when the page goes. */
    fun drop() {
        dialog.setOnDismissListener(null)
        dialog.dismiss()
    }
}

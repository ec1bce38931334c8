package studio.laydown

import android.app.Dialog
import android.view.Gravity
import android.view.ViewGroup
import android.view.WindowManager.LayoutParams
import android.widget.Button
import android.widget.TextView
import studio.laydown.core.Row

/** The list that a choice opens. It comes up from below, into reach of the thumb. [add] names the way to one that is not in it. */
class Chooser(
    host: MainActivity, title: CharSequence, rows: List<Row>, add: CharSequence? = null, picked: (Row) -> Unit, adding: () -> Unit = {},
) {
    private val dialog = Dialog(host, R.style.Laydown_Chooser)

    init {
        val view = host.views(R.layout.chooser)
        view.get<TextView>(R.id.chooser_title).text = title
        val list = view.get<ViewGroup>(R.id.chooser_rows)
        for (row in rows) {
            val item = list.putRow(row.title, row.detail, R.drawable.ic_check.takeIf { row.chosen }, row.outline) {
                dialog.dismiss()
                picked(row)
            }
            item.isSelected = row.chosen
            if (row.chosen) item.contentDescription = listOf(row.title, row.detail, host.getString(R.string.chosen)).joinToString(", ")
        }
        if (add != null) {
            list.put<Button>(R.layout.chooser_add).apply {
                text = add
                setOnClickListener {
                    dialog.dismiss()
                    adding()
                }
            }
        }
        dialog.setContentView(view)
        checkNotNull(dialog.window) { "a dialog has a window" }.apply {
            setGravity(Gravity.BOTTOM)
            setLayout(LayoutParams.MATCH_PARENT, LayoutParams.WRAP_CONTENT)
        }
    }

    fun show(closed: () -> Unit) {
        dialog.setOnDismissListener { closed() }
        dialog.show()
    }

    /** Closes it without a word, as when the page goes. */
    fun drop() {
        dialog.setOnDismissListener(null)
        dialog.dismiss()
    }
}

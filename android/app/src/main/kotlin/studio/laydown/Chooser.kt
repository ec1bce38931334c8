package studio.laydown

import android.view.ViewGroup
import android.widget.Button
import studio.laydown.core.Row

/** The list that a choice opens. [add] names the way to one that is not in it. */
fun chooser(
    host: MainActivity, title: CharSequence, rows: List<Row>, add: CharSequence? = null, picked: (Row) -> Unit, adding: () -> Unit = {},
) = Sheet(host, title) { sheet ->
    putChoices(host, sheet, rows, picked)
    if (add != null) {
        put<Button>(R.layout.chooser_add).apply {
            text = add
            setOnClickListener {
                sheet.close()
                adding()
            }
        }
    }
}

/** Rows of which one is chosen; tapping one closes the [sheet] that they are in. */
fun ViewGroup.putChoices(host: MainActivity, sheet: Sheet, rows: List<Row>, picked: (Row) -> Unit) {
    for (row in rows) {
        val item = putRow(row.title, row.detail, R.drawable.ic_check.takeIf { row.chosen }, row.outline) {
            sheet.close()
            picked(row)
        }
        item.isSelected = row.chosen
        item.tellAs(Role.RADIO, row.chosen)
        if (row.chosen) item.contentDescription = listOf(row.title, row.detail, host.getString(R.string.chosen)).joinToString(", ")
    }
}

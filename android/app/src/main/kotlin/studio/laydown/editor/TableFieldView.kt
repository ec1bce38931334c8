package studio.laydown.editor

import android.content.Context
import android.view.View
import android.view.ViewGroup
import android.view.inputmethod.InputMethodManager
import android.widget.EditText
import android.widget.TextView
import studio.laydown.R
import studio.laydown.core.FieldKind
import studio.laydown.core.EditorField
import studio.laydown.get
import studio.laydown.onTyped
import studio.laydown.put
import studio.laydown.putButton
import studio.laydown.views

/** A table of numbers, one row under the other. Its text has a line for each row, and tabs between the cells. */
class TableFieldView(private val context: Context, private val entered: (String) -> Unit) : FieldView(context, FieldKind.TABLE) {
    private val view = context.views(R.layout.editor_table, input)
    private val head = view.get<ViewGroup>(R.id.table_head)
    private val rows = view.get<ViewGroup>(R.id.table_rows)
    private var columns: List<String> = emptyList()
    private var shown = ""

    /** Whether something was typed that the core has not answered to. */
    private var ahead = false
    private var filling = false

    init {
        input.addView(view)
        view.get<ViewGroup>(R.id.table_card).putButton(R.layout.add_row, context.getText(R.string.row_add)) { add() }
    }

    override fun fill(field: EditorField) {
        if (field.columns != columns) {
            columns = field.columns
            head.removeAllViews()
            rows.removeAllViews()
            for (column in columns) head.put<TextView>(R.layout.editor_table_column).text = column
        }
        if (field.text == shown) {
            ahead = false
            return
        }
        // While one types, what stands there is newer than what the core has seen.
        if (ahead && view.hasFocus()) return
        shown = field.text
        ahead = false
        val lines = field.text.lines()
        while (rows.childCount > lines.size) rows.removeViewAt(rows.childCount - 1)
        while (rows.childCount < lines.size) putRow()
        filling = true
        lines.forEachIndexed { at, line ->
            val texts = line.split(TAB)
            cells(rows.getChildAt(at)).forEachIndexed { column, cell ->
                val text = texts.getOrElse(column) { "" }
                if (text != cell.text.toString()) cell.setText(text)
            }
        }
        filling = false
    }

    private fun putRow() {
        val row = rows.put<View>(R.layout.editor_table_row)
        val line = row.get<ViewGroup>(R.id.row_cells)
        for (column in columns) {
            val cell = line.put<EditText>(R.layout.editor_table_cell)
            cell.takeNumbers()
            cell.readWith { context.getString(R.string.cell_is, column, rows.indexOfChild(row) + 1) }
            cell.onTyped { tell() }
        }
        row.get<View>(R.id.row_away).setOnClickListener {
            view.findFocus()?.clearFocus()
            rows.removeView(row)
            number()
            tell()
        }
        number()
    }

    private fun add() {
        putRow()
        tell()
        val cell = cells(rows.getChildAt(rows.childCount - 1)).firstOrNull() ?: return
        cell.requestFocus()
        context.getSystemService(InputMethodManager::class.java).showSoftInput(cell, 0)
    }

    private fun number() {
        for (at in 0 until rows.childCount) {
            val row = rows.getChildAt(at)
            row.get<TextView>(R.id.row_number).text = "${at + 1}"
            row.get<View>(R.id.row_away).contentDescription = context.getString(R.string.row_away, at + 1)
        }
    }

    private fun tell() {
        if (filling) return
        val text = (0 until rows.childCount).joinToString("\n") { at ->
            cells(rows.getChildAt(at)).joinToString(TAB) { it.text.toString().replace(TAB, " ") }
        }
        if (text == shown) return
        shown = text
        ahead = true
        entered(text)
    }

    private fun cells(row: View): List<EditText> {
        val line = row.get<ViewGroup>(R.id.row_cells)
        return (0 until line.childCount).map { line.getChildAt(it) as EditText }
    }

    private companion object {
        const val TAB = "\t"
    }
}

package studio.laydown.editor

import android.content.Context
import android.view.View
import android.widget.Button
import android.widget.TextView
import studio.laydown.R
import studio.laydown.core.FieldKind
import studio.laydown.core.EditorField
import studio.laydown.get
import studio.laydown.views
import studio.laydown.words

/** A folder: what it is called, and the way to another. What stands in the field has its name on the first line. */
class FolderFieldView(context: Context, ask: () -> Unit) : FieldView(context, FieldKind.FOLDER) {
    private val view: View = context.views(R.layout.editor_folder, input)

    init {
        input.addView(view)
        view.get<Button>(R.id.folder_choose).setOnClickListener { ask() }
    }

    override fun fill(field: EditorField) {
        view.get<TextView>(R.id.folder_name).words(field.text.substringBefore('\n'))
        view.get<Button>(R.id.folder_choose).setText(if (field.text.isEmpty()) R.string.choose_folder else R.string.choose_another_folder)
    }
}

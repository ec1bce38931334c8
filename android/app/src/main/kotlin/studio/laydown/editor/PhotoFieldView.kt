package studio.laydown.editor

import android.content.Context
import android.view.View
import android.view.ViewGroup
import android.widget.Button
import studio.laydown.R
import studio.laydown.core.FieldKind
import studio.laydown.core.Item
import studio.laydown.core.EditorField
import studio.laydown.get
import studio.laydown.putButton
import studio.laydown.showIf
import studio.laydown.views

/** A photograph: the ways to get one. The picture itself is the editor's drawing. [ask] is given the code of a way. */
class PhotoFieldView(context: Context, private val ask: (String) -> Unit) : FieldView(context, FieldKind.PHOTO) {
    private val view = context.views(R.layout.editor_photo, input)
    private val ways = view.get<ViewGroup>(R.id.photo_ways)
    private var items: List<Item> = emptyList()
    private var refusal = ""

    init {
        input.addView(view)
    }

    override fun fill(field: EditorField) {
        refusal = field.refusal
        if (field.items == items) return
        items = field.items
        ways.removeAllViews()
        for (item in items) ways.putButton(R.layout.editor_photo_way, item.name) { ask(item.code) }
    }

    /** Shows that a picture is in work, or why there is none. */
    fun report(working: Boolean, trouble: String) {
        view.get<View>(R.id.photo_working).showIf(working)
        for (at in 0 until ways.childCount) (ways.getChildAt(at) as Button).isEnabled = !working
        refuse(trouble.ifEmpty { refusal })
    }
}

package studio.laydown.editor

import android.app.DatePickerDialog
import android.content.Context
import android.graphics.Rect
import android.text.InputType
import android.text.method.TextKeyListener
import android.view.Gravity
import android.view.View
import android.view.ViewGroup
import android.view.accessibility.AccessibilityNodeInfo
import android.view.inputmethod.EditorInfo
import android.view.inputmethod.InputMethodManager
import android.widget.Button
import android.widget.EditText
import android.widget.FrameLayout
import android.widget.ImageView
import android.widget.LinearLayout
import android.widget.Switch
import android.widget.TextView
import studio.laydown.OutlineView
import studio.laydown.R
import studio.laydown.Role
import studio.laydown.core.FieldKind
import studio.laydown.core.Item
import studio.laydown.core.EditorField
import studio.laydown.get
import studio.laydown.onTyped
import studio.laydown.put
import studio.laydown.showIf
import studio.laydown.tellAs
import studio.laydown.views
import studio.laydown.words
import java.util.Calendar
import java.util.Locale

/** One field of an editor as it is filled in. It stays the same view as long as the field is there, so that the cursor stays too. */
abstract class FieldView(context: Context, val kind: FieldKind) {
    /** The whole field. */
    val root: View = context.views(R.layout.editor_field)
    protected val input: FrameLayout = root.get(R.id.field_input)

    /** Shows the field as the core sees it. */
    fun show(field: EditorField) {
        root.get<TextView>(R.id.field_label).showIf(kind != FieldKind.SWITCH)
        root.get<TextView>(R.id.field_label).text = field.label
        root.get<TextView>(R.id.field_help).words(field.help)
        refuse(field.refusal)
        fill(field)
    }

    /** Says beside the field what is wrong with it. */
    fun refuse(sentence: String) {
        root.get<TextView>(R.id.field_refusal_text).text = sentence
        root.get<View>(R.id.field_refusal).showIf(sentence.isNotEmpty())
    }

    /** Goes to the field to fill it in. */
    open fun focus() {
        root.requestRectangleOnScreen(Rect(0, 0, root.width, root.height), false)
    }

    protected abstract fun fill(field: EditorField)

    companion object {
        /**
         * The view for a field of this kind; [entered] is told each change, [ask] by which way a picture is wanted, and [askForFolder]
         * that a folder is.
         */
        fun of(
            context: Context, kind: FieldKind, entered: (String) -> Unit, ask: (String) -> Unit, askForFolder: () -> Unit,
        ): FieldView = when (kind) {
            FieldKind.TEXT, FieldKind.LINES, FieldKind.EXACT, FieldKind.SECRET, FieldKind.NUMBER -> TextFieldView(context, kind, entered)
            FieldKind.FOLDER -> FolderFieldView(context, askForFolder)
            FieldKind.TABLE -> TableFieldView(context, entered)
            FieldKind.PHOTO -> PhotoFieldView(context, ask)
            FieldKind.CHOICE -> ChoiceFieldView(context, entered)
            FieldKind.OUTLINE -> OutlineFieldView(context, entered)
            FieldKind.SWITCH -> SwitchFieldView(context, entered)
            FieldKind.DAY -> DayFieldView(context, entered)
        }
    }
}

private const val DIGITS = InputType.TYPE_CLASS_NUMBER or InputType.TYPE_NUMBER_FLAG_DECIMAL

/** The keyboard is asked for digits, yet no character is turned away: the core says what it can read. */
internal fun EditText.takeNumbers() {
    keyListener = TextKeyListener.getInstance(false, TextKeyListener.Capitalize.NONE)
    setRawInputType(DIGITS)
}

/** Has the field read out with what it asks for. */
internal fun EditText.readWith(words: () -> String) {
    accessibilityDelegate = object : View.AccessibilityDelegate() {
        override fun onInitializeAccessibilityNodeInfo(host: View, info: AccessibilityNodeInfo) {
            super.onInitializeAccessibilityNodeInfo(host, info)
            info.hintText = words()
        }
    }
}

/** So many lines of a field of several lines are seen at least. */
private const val LINES = 4
private const val HIDDEN = InputType.TYPE_CLASS_TEXT or InputType.TYPE_TEXT_VARIATION_PASSWORD
private const val SEEN = InputType.TYPE_CLASS_TEXT or InputType.TYPE_TEXT_VARIATION_VISIBLE_PASSWORD

/**
 * Letters, or a quantity: digits come up first, but "1 lb 2 oz" and "40 Bé" can be written too. Or a secret, in dots as long as one does
 * not ask to see it.
 */
private class TextFieldView(context: Context, kind: FieldKind, entered: (String) -> Unit) : FieldView(context, kind) {
    private val line = context.views(R.layout.editor_text, input)
    private val text = line.get<EditText>(R.id.text)
    private val letters = line.get<Button>(R.id.letters)
    private var shown = ""
    private var label = ""

    init {
        input.addView(line)
        text.readWith { listOfNotNull(label, text.hint?.ifEmpty { null }).joinToString(", ") }
        text.isSaveEnabled = false
        when (kind) {
            FieldKind.NUMBER -> {
                text.takeNumbers()
                letters.setOnClickListener { turnKeyboard() }
                text.setOnFocusChangeListener { _, focused -> letters.showIf(focused) }
            }
            FieldKind.SECRET -> {
                text.inputType = HIDDEN
                text.imeOptions = text.imeOptions or EditorInfo.IME_FLAG_NO_PERSONALIZED_LEARNING
                letters.setText(R.string.show_secret)
                letters.setOnClickListener { turnSecret() }
            }
            FieldKind.LINES -> {
                text.isSingleLine = false
                text.inputType = InputType.TYPE_CLASS_TEXT or InputType.TYPE_TEXT_FLAG_MULTI_LINE or InputType.TYPE_TEXT_FLAG_CAP_SENTENCES
                text.imeOptions = EditorInfo.IME_FLAG_NO_EXTRACT_UI
                text.minLines = LINES
                text.gravity = Gravity.TOP or Gravity.START
            }
            FieldKind.EXACT ->
                text.inputType = InputType.TYPE_CLASS_TEXT or InputType.TYPE_TEXT_VARIATION_URI or InputType.TYPE_TEXT_FLAG_NO_SUGGESTIONS
            else -> text.inputType = InputType.TYPE_CLASS_TEXT or InputType.TYPE_TEXT_FLAG_CAP_SENTENCES
        }
        text.onTyped {
            if (kind == FieldKind.SECRET) letters.showIf(it.isNotEmpty())
            if (it != shown) {
                shown = it
                entered(it)
            }
        }
    }

    private fun turnKeyboard() {
        val toLetters = text.inputType == DIGITS
        text.setRawInputType(if (toLetters) InputType.TYPE_CLASS_TEXT else DIGITS)
        letters.setText(if (toLetters) R.string.digits else R.string.letters)
        text.requestFocus()
        text.context.getSystemService(InputMethodManager::class.java).apply {
            restartInput(text)
            showSoftInput(text, 0)
        }
    }

    /** What is typed now can be looked at; what was kept before is nowhere to be seen. */
    private fun turnSecret() {
        val seen = text.inputType == SEEN
        val at = text.selectionEnd
        text.inputType = if (seen) HIDDEN else SEEN
        text.setSelection(at)
        letters.setText(if (seen) R.string.show_secret else R.string.hide_secret)
    }

    override fun fill(field: EditorField) {
        text.hint = field.hint
        label = field.label
        // While one types, what stands there is newer than what the core has seen.
        if (field.text == shown || text.hasFocus() && shown.isNotEmpty()) return
        shown = field.text
        text.setText(field.text)
    }

    override fun focus() {
        super.focus()
        text.requestFocus()
    }
}

/** One of the items, one under the other, each with what it means. */
private class ChoiceFieldView(context: Context, private val entered: (String) -> Unit) : FieldView(context, FieldKind.CHOICE) {
    private val card = context.views(R.layout.card, input) as ViewGroup
    private var items: List<Item> = emptyList()

    init {
        input.addView(card)
    }

    override fun fill(field: EditorField) {
        if (field.items != items) {
            items = field.items
            card.removeAllViews()
            items.forEach(::putItem)
        }
        items.forEachIndexed { at, item -> card.getChildAt(at).mark(item.code == field.text) }
    }

    private fun putItem(item: Item) {
        val row = card.put<View>(R.layout.editor_choice)
        row.get<TextView>(R.id.choice_name).text = item.name
        row.get<TextView>(R.id.choice_detail).words(item.detail)
        row.setOnClickListener {
            for (at in 0 until card.childCount) card.getChildAt(at).mark(card.getChildAt(at) === row)
            entered(item.code)
        }
    }

    private fun View.mark(chosen: Boolean) {
        isSelected = chosen
        tellAs(Role.RADIO, chosen)
        get<View>(R.id.choice_mark).isSelected = chosen
    }
}

/** One of the outlines, picked by looking. */
private class OutlineFieldView(context: Context, private val entered: (String) -> Unit) : FieldView(context, FieldKind.OUTLINE) {
    private val grid = LinearLayout(context).apply { orientation = LinearLayout.VERTICAL }
    private val cells = mutableListOf<View>()
    private var items: List<Item> = emptyList()

    init {
        // The cells have margins of 4 dp of their own.
        val margin = (-4 * context.resources.displayMetrics.density).toInt()
        val room = FrameLayout.LayoutParams(ViewGroup.LayoutParams.MATCH_PARENT, ViewGroup.LayoutParams.WRAP_CONTENT)
        room.setMargins(margin, margin, margin, margin)
        input.addView(grid, room)
    }

    override fun fill(field: EditorField) {
        if (field.items != items) {
            items = field.items
            grid.removeAllViews()
            cells.clear()
            val across = grid.resources.getInteger(R.integer.outlines_across)
            items.chunked(across).forEach { putLine(it, across) }
        }
        items.forEachIndexed { at, item -> mark(cells[at], item.code == field.text) }
    }

    private fun putLine(items: List<Item>, across: Int) {
        val line = LinearLayout(grid.context).apply { isBaselineAligned = false }
        grid.addView(line)
        for (item in items) {
            val cell = line.put<View>(R.layout.editor_outline)
            cells += cell
            cell.get<OutlineView>(R.id.outline_drawing).outline = item.outline
            cell.get<TextView>(R.id.outline_name).text = item.name
            cell.setOnClickListener {
                cells.forEach { mark(it, it === cell) }
                entered(item.code)
            }
        }
        // An unfinished line keeps the width of its cells.
        repeat(across - items.size) {
            val room = LinearLayout.LayoutParams(0, 1, 1f)
            room.marginStart = cells[0].marginAtStart
            room.marginEnd = room.marginStart
            line.addView(View(line.context), room)
        }
    }

    private fun mark(cell: View, chosen: Boolean) {
        cell.isSelected = chosen
        cell.tellAs(Role.RADIO, chosen)
        cell.get<ImageView>(R.id.outline_mark).visibility = if (chosen) View.VISIBLE else View.INVISIBLE
    }

    private val View.marginAtStart: Int get() = (layoutParams as LinearLayout.LayoutParams).marginStart
}

/** A day, picked from the platform's calendar. */
private class DayFieldView(context: Context, private val entered: (String) -> Unit) : FieldView(context, FieldKind.DAY) {
    private val button = context.views(R.layout.editor_day, input) as Button
    private var shown = ""

    init {
        input.addView(button)
        button.setOnClickListener {
            // As ISO 8601 writes it; a text that is no day opens the calendar at today.
            val (year, month, day) = shown.split('-').mapNotNull { it.toIntOrNull() }.takeIf { it.size == 3 } ?: today()
            DatePickerDialog(context, { _, y, m, d -> entered("%04d-%02d-%02d".format(Locale.ROOT, y, m + 1, d)) }, year, month - 1, day).show()
        }
    }

    private fun today() = Calendar.getInstance().run { listOf(get(Calendar.YEAR), get(Calendar.MONTH) + 1, get(Calendar.DAY_OF_MONTH)) }

    override fun fill(field: EditorField) {
        shown = field.text
        val words = field.items.firstOrNull()?.name.orEmpty().ifEmpty { field.text }
        button.text = words
        button.contentDescription = "${field.label}, $words"
    }
}

/** Yes or no. */
private class SwitchFieldView(context: Context, entered: (String) -> Unit) : FieldView(context, FieldKind.SWITCH) {
    private val switch = context.views(R.layout.editor_switch, input) as Switch

    init {
        input.addView(switch)
        switch.isSaveEnabled = false
        switch.setOnClickListener { entered(if (switch.isChecked) YES else NO) }
    }

    override fun fill(field: EditorField) {
        switch.text = field.label
        switch.isChecked = field.text == YES
    }

    private companion object {
        const val YES = "yes"
        const val NO = "no"
    }
}

package studio.laydown

import android.content.Context
import android.content.res.ColorStateList
import android.os.Bundle
import android.text.Editable
import android.text.TextWatcher
import android.view.LayoutInflater
import android.view.View
import android.view.ViewGroup
import android.view.ViewTreeObserver
import android.view.accessibility.AccessibilityNodeInfo
import android.widget.Button
import android.widget.CheckBox
import android.widget.EditText
import android.widget.ImageView
import android.widget.RadioButton
import android.widget.ScrollView
import android.widget.TextView
import studio.laydown.core.Line
import studio.laydown.core.Note
import studio.laydown.core.Point
import studio.laydown.core.Tone

/** The view of this id, which the layout is known to hold. */
fun <T : View> View.get(id: Int): T = checkNotNull(findViewById<T>(id)) { "the layout lacks ${resources.getResourceEntryName(id)}" }

/** Adds the views of [layout] at the end and answers with their root. */
fun <T : View> ViewGroup.put(layout: Int): T {
    LayoutInflater.from(context).inflate(layout, this, true)
    @Suppress("UNCHECKED_CAST") // the caller names the layout and its root together
    return getChildAt(childCount - 1) as T
}

/** The views of [layout], not yet anywhere. */
fun Context.views(layout: Int, parent: ViewGroup? = null): View = LayoutInflater.from(this).inflate(layout, parent, false)

fun View.showIf(shown: Boolean) {
    visibility = if (shown) View.VISIBLE else View.GONE
}

/** Does [work] when everything that has changed has found its place, and before it is drawn. */
fun View.onceLaidOut(work: () -> Unit) {
    val once = object : ViewTreeObserver.OnPreDrawListener {
        override fun onPreDraw(): Boolean {
            viewTreeObserver.removeOnPreDrawListener(this)
            work()
            return true
        }
    }
    viewTreeObserver.addOnPreDrawListener(once)
    invalidate()
}

/** What something that is tapped is, for whoever has the screen read out: one of several answers, a tick of its own, or a tab. */
enum class Role(val view: String) { RADIO(RadioButton::class.java.name), CHECK(CheckBox::class.java.name), TAB("android.app.ActionBar\$Tab") }

/** Has this read out as what it is, and whether it is [chosen]. */
fun View.tellAs(role: Role, chosen: Boolean) {
    accessibilityDelegate = object : View.AccessibilityDelegate() {
        override fun onInitializeAccessibilityNodeInfo(host: View, info: AccessibilityNodeInfo) {
            super.onInitializeAccessibilityNodeInfo(host, info)
            info.className = role.view
            info.isSelected = chosen
            info.isCheckable = role != Role.TAB
            info.isChecked = chosen && role != Role.TAB
        }
    }
}

/** Shows [words], or gives the room away if there are none. */
fun TextView.words(words: CharSequence) {
    text = words
    showIf(words.isNotEmpty())
}

fun ViewGroup.putHeading(words: CharSequence) {
    put<TextView>(R.layout.heading).text = words
}

fun ViewGroup.putSentence(words: CharSequence) {
    put<TextView>(R.layout.sentence).text = words
}

fun ViewGroup.putButton(layout: Int, words: CharSequence, press: () -> Unit): Button = put<Button>(layout).apply {
    text = words
    setOnClickListener { press() }
}

/** A row of a list that leads somewhere. [mark] is the drawing at its end; the [outline] of a form is drawn at its start. */
fun ViewGroup.putRow(
    title: CharSequence, detail: CharSequence, mark: Int?, outline: List<Point> = emptyList(), press: () -> Unit,
): View = put<View>(R.layout.row).apply {
    get<OutlineView>(R.id.row_outline).apply {
        showIf(outline.isNotEmpty())
        this.outline = outline
    }
    get<TextView>(R.id.row_title).text = title
    get<TextView>(R.id.row_detail).words(detail)
    get<ImageView>(R.id.row_mark).apply {
        showIf(mark != null)
        if (mark != null) setImageResource(mark)
    }
    setOnClickListener { press() }
}

/** A sentence with the mark of its tone: a shape and a word for whoever listens, and a colour besides. */
fun ViewGroup.putNote(note: Note) {
    val view = put<View>(R.layout.note)
    note.show(view.get(R.id.note_mark), view.get(R.id.note_text))
}

/** Shows a note in these two views. */
fun Note.show(mark: ImageView, words: TextView) {
    val context = mark.context
    mark.setImageResource(tone.mark)
    mark.imageTintList = ColorStateList.valueOf(context.getColor(tone.ink))
    words.text = text
    words.contentDescription = when (tone) {
        Tone.PLAIN -> text
        Tone.ATTENTION -> context.getString(R.string.note_attention, text)
        Tone.WARNING -> context.getString(R.string.note_warning, text)
    }
}

/** The mark of a tone. */
val Tone.mark: Int
    get() = when (this) {
        Tone.PLAIN -> R.drawable.ic_note
        Tone.ATTENTION -> R.drawable.ic_attention
        Tone.WARNING -> R.drawable.ic_warning
    }

/** The colour of a tone's mark. */
val Tone.ink: Int
    get() = when (this) {
        Tone.PLAIN -> R.color.quiet
        Tone.ATTENTION -> R.color.attention
        Tone.WARNING -> R.color.warning
    }

/** The lines of a record. */
fun ViewGroup.putLines(lines: List<Line>) {
    if (lines.isEmpty()) return
    val card = put<ViewGroup>(R.layout.card)
    for (line in lines) {
        val view = card.put<View>(R.layout.line)
        view.get<TextView>(R.id.line_label).text = line.label
        view.get<TextView>(R.id.line_value).text = line.value
    }
}

/** Hands [typed] what stands in the field after each change. */
fun EditText.onTyped(typed: (String) -> Unit) = addTextChangedListener(object : TextWatcher {
    override fun beforeTextChanged(s: CharSequence?, start: Int, count: Int, after: Int) = Unit
    override fun onTextChanged(s: CharSequence?, start: Int, before: Int, count: Int) = Unit
    override fun afterTextChanged(s: Editable) = typed(s.toString())
})

/** A page that is one scrolling column. Remembers how far it was scrolled. */
class Column(context: Context) {
    val view: View = context.views(R.layout.scroll)
    private val scroll = view.get<ScrollView>(R.id.scroll)
    private val column = view.get<ViewGroup>(R.id.column)
    private var wanted = 0

    /** Fills the column anew, staying where one was. */
    fun fill(build: ViewGroup.() -> Unit) {
        val at = maxOf(scroll.scrollY, wanted)
        wanted = 0
        column.removeAllViews()
        column.build()
        scroll.post { scroll.scrollTo(0, at) }
    }

    /** What is shown next is shown from its beginning. */
    fun toTop() = scroll.scrollTo(0, 0)

    fun saveState(into: Bundle) = into.putInt(SCROLLED, scroll.scrollY)

    fun restore(from: Bundle) {
        wanted = from.getInt(SCROLLED)
    }

    private companion object {
        const val SCROLLED = "scrolled"
    }
}

package studio.laydown.kiln

import android.graphics.Bitmap
import android.os.Bundle
import android.os.Handler
import android.os.Looper
import android.text.InputType
import android.view.View
import android.view.ViewGroup
import android.widget.Button
import android.widget.EditText
import android.widget.ImageView
import android.widget.ScrollView
import android.widget.TextView
import studio.laydown.Column
import studio.laydown.MainActivity
import studio.laydown.Page
import studio.laydown.PageKind
import studio.laydown.Place
import studio.laydown.R
import studio.laydown.core.Filter
import studio.laydown.core.PiecesView
import studio.laydown.core.StudioException
import studio.laydown.core.Value
import studio.laydown.get
import studio.laydown.onTyped
import studio.laydown.put
import studio.laydown.putRow
import studio.laydown.putSentence
import studio.laydown.showIf
import studio.laydown.views
import studio.laydown.words

/** Finds pieces by the code on their foot, or by what is known of them. */
class FindPage(host: MainActivity) : Page(host) {
    override val view: View = host.views(R.layout.find)
    override val title: CharSequence = host.getText(R.string.find_pieces)

    private val column = Column(host)
    private val code = view.get<EditText>(R.id.find_code)
    private val wanted = linkedMapOf<String, String>()
    private val later = Handler(Looper.getMainLooper())
    private val thumbnails = mutableMapOf<String, Bitmap?>()

    /** How many are asked for; 0 for the first page. */
    private var limit = 0u

    /** How many to ask for to see more; 0 where all are listed. */
    private var more = 0u
    private var asking = false

    override fun open(savedState: Bundle) {
        view.get<ViewGroup>(R.id.find_column).addView(column.view)
        savedState.getBundle(WANTED)?.let { was -> for (key in was.keySet()) wanted[key] = was.getString(key, "") }
        column.restore(savedState)
        code.isSaveEnabled = false
        code.inputType = InputType.TYPE_CLASS_TEXT or InputType.TYPE_TEXT_FLAG_CAP_CHARACTERS or InputType.TYPE_TEXT_FLAG_NO_SUGGESTIONS
        code.setText(wanted[CODE].orEmpty())
        code.onTyped {
            wanted[CODE] = it
            later.removeCallbacksAndMessages(null)
            later.postDelayed(::lookAnew, PAUSE_MS)
        }
        view.get<EditText>(R.id.find_note).apply {
            isSaveEnabled = false
            setText(wanted[NOTE].orEmpty())
            onTyped {
                wanted[NOTE] = it
                later.removeCallbacksAndMessages(null)
                later.postDelayed(::lookAnew, PAUSE_MS)
            }
        }
        column.view.get<ScrollView>(R.id.scroll).setOnScrollChangeListener { _, _, _, _, _ -> askForMore() }
        refresh()
    }

    override fun saveState(into: Bundle) {
        into.putBundle(WANTED, Bundle().apply { for ((key, text) in wanted) putString(key, text) })
        column.saveState(into)
    }

    override fun pause() {
        later.removeCallbacksAndMessages(null)
        super.pause()
    }

    override fun refresh() {
        val asked = wanted.map { (key, text) -> Value(key, text) }
        val most = limit
        show({ now -> runCatching { findPieces(now, asked, most) } }) { it.fold(::render, ::refuse) }
    }

    private fun refuse(problem: Throwable) {
        if (problem !is StudioException.Refused) return host.fail(problem)
        // While one still types, the code is short, and nothing is wrong with that.
        view.get<TextView>(R.id.find_refusal).words(host.sentence(problem))
        column.view.showIf(false)
    }

    private fun render(pieces: PiecesView) {
        view.get<TextView>(R.id.find_refusal).words("")
        column.view.showIf(true)
        column.fill {
            val chips = put<ViewGroup>(R.layout.chips)
            for (filter in pieces.filters) {
                chips.put<Button>(R.layout.chip).apply {
                    val isSet = filter.rows.firstOrNull()?.chosen == false
                    text = if (isSet) filter.chosen else filter.label
                    isSelected = isSet
                    contentDescription = host.getString(R.string.answer_is, filter.label, filter.chosen)
                    setOnClickListener { choose(filter) }
                }
            }
            putSentence(pieces.found)
            if (pieces.pieces.isEmpty()) return@fill
            val list = put<ViewGroup>(R.layout.card)
            for (piece in pieces.pieces) {
                val picture = thumbnail(piece.photo)
                val row = list.putRow(piece.title, piece.detail, R.drawable.ic_on, if (picture == null) piece.outline else emptyList()) {
                    host.go(Place(PageKind.PIECE, piece.id))
                }
                row.get<ImageView>(R.id.row_photo).apply {
                    showIf(picture != null)
                    setImageBitmap(picture)
                }
            }
        }
        more = pieces.more
        asking = false
        // All that is listed may fit on the screen.
        column.view.post(::askForMore)
    }

    /** Read once, however often more is asked for. */
    private fun thumbnail(file: String): Bitmap? =
        if (file.isEmpty()) null else thumbnails.getOrPut(file) { picture(file, THUMBNAIL_PX) }

    /** More is listed before one comes to the end. */
    private fun askForMore() {
        val scroll = column.view.get<ScrollView>(R.id.scroll)
        val left = scroll.getChildAt(0).height - scroll.height - scroll.scrollY
        if (gone || asking || more == 0u || left > scroll.height) return
        asking = true
        limit = more
        refresh()
    }

    /** Something else is looked for, from the first page on. */
    private fun lookAnew() {
        limit = 0u
        refresh()
    }

    private fun choose(filter: Filter) {
        choose(filter.label, filter.rows) {
            wanted[filter.key] = it.id
            lookAnew()
        }
    }

    private companion object {
        const val CODE = "code"
        const val NOTE = "note"
        const val THUMBNAIL_PX = 192
        const val WANTED = "wanted"
        const val PAUSE_MS = 150L
    }
}

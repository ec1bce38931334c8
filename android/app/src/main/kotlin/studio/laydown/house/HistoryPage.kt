package studio.laydown.house

import android.view.ViewGroup
import studio.laydown.ColumnPage
import studio.laydown.MainActivity
import studio.laydown.PageKind
import studio.laydown.Place
import studio.laydown.R
import studio.laydown.core.Doing
import studio.laydown.core.HistoryView
import studio.laydown.core.Row
import studio.laydown.put
import studio.laydown.putRow
import studio.laydown.putSentence

/** What was done lately, or all that was ever said of the [thing] with this id; each can be taken back, and done again. */
class HistoryPage(host: MainActivity, private val thing: String) : ColumnPage(host) {
    override val title: CharSequence = ""

    override fun refresh() = show({ now -> if (thing.isEmpty()) doings(now) else history(now, thing) }, ::render)

    private fun render(history: HistoryView) {
        host.nameIt(history.title)
        fill {
            putSentence(history.intro)
            if (history.doings.isEmpty()) return@fill
            val card = put<ViewGroup>(R.layout.card)
            for (doing in history.doings) {
                val mark = when {
                    doing.takenBack -> R.drawable.ic_away
                    doing.token.isNotEmpty() || thing.isEmpty() -> R.drawable.ic_on
                    else -> null
                }
                card.putRow(doing.title, doing.detail, mark) { ask(doing) }
            }
        }
    }

    private fun ask(doing: Doing) {
        val turn = row(TURN, if (doing.takenBack) R.string.do_it_again else R.string.take_it_back).takeIf { doing.token.isNotEmpty() }
        val history = row(HISTORY, R.string.its_history).takeIf { thing.isEmpty() }
        val ways = listOfNotNull(turn, history)
        if (ways.isEmpty()) return
        choose(doing.title, ways) { way ->
            if (way.id == TURN) turn(doing) else host.go(Place(PageKind.HISTORY, doing.thing))
        }
    }

    private fun row(id: String, words: Int) = Row(id, host.getString(words), "", false, emptyList())

    private fun turn(doing: Doing) =
        keep({ now -> if (doing.takenBack) redo(now, doing.token) else undo(now, doing.token) }, done = ::refresh)

    private companion object {
        const val TURN = "turn"
        const val HISTORY = "history"
    }
}

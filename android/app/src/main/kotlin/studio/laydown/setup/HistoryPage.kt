package studio.laydown.setup

import android.view.ViewGroup
import studio.laydown.ColumnPage
import studio.laydown.MainActivity
import studio.laydown.PageKind
import studio.laydown.Place
import studio.laydown.R
import studio.laydown.core.HistoryEntry
import studio.laydown.core.HistoryView
import studio.laydown.core.Row
import studio.laydown.put
import studio.laydown.putRow
import studio.laydown.putSentence

/** Recent changes, or all that was ever said of the [thing] with this id; each can be undone, and done again. */
class HistoryPage(host: MainActivity, private val thing: String) : ColumnPage(host) {
    override val title: CharSequence = ""

    override fun refresh() = show({ now -> if (thing.isEmpty()) recentChanges(now) else history(now, thing) }, ::render)

    private fun render(history: HistoryView) {
        host.nameIt(history.title)
        fill {
            putSentence(history.intro)
            if (history.recentChanges.isEmpty()) return@fill
            val card = put<ViewGroup>(R.layout.card)
            for (entry in history.recentChanges) {
                val mark = when {
                    entry.isUndone -> R.drawable.ic_away
                    entry.token.isNotEmpty() || thing.isEmpty() -> R.drawable.ic_on
                    else -> null
                }
                card.putRow(entry.title, entry.detail, mark) { ask(entry) }
            }
        }
    }

    private fun ask(entry: HistoryEntry) {
        val toggleUndo = row(TURN, if (entry.isUndone) R.string.do_it_again else R.string.take_it_back).takeIf { entry.token.isNotEmpty() }
        val history = row(HISTORY, R.string.its_history).takeIf { thing.isEmpty() }
        val ways = listOfNotNull(toggleUndo, history)
        if (ways.isEmpty()) return
        choose(entry.title, ways) { way ->
            if (way.id == TURN) toggleUndo(entry) else host.go(Place(PageKind.HISTORY, entry.thing))
        }
    }

    private fun row(id: String, words: Int) = Row(id, host.getString(words), "", false, emptyList())

    private fun toggleUndo(entry: HistoryEntry) =
        save({ now -> if (entry.isUndone) redo(now, entry.token) else undo(now, entry.token) }, done = { refresh() })

    private companion object {
        const val TURN = "turn"
        const val HISTORY = "history"
    }
}

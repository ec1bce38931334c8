package studio.laydown.setup

import studio.laydown.ColumnPage
import studio.laydown.MainActivity
import studio.laydown.R
import studio.laydown.core.ClashAnswer
import studio.laydown.core.ClashView
import studio.laydown.core.MeanwhileView
import studio.laydown.core.Note
import studio.laydown.core.Tone
import android.view.ViewGroup
import studio.laydown.putButton
import studio.laydown.putHeading
import studio.laydown.putNote
import studio.laydown.putSentence

/** What other phones did meanwhile, said once; and where two phones disagree, which of them counts. */
class MeanwhilePage(host: MainActivity) : ColumnPage(host) {
    override val title: CharSequence = host.getText(R.string.meanwhile)

    override fun refresh() = show({ now -> meanwhile(now) }, ::render)

    /** What was shown is not said again. */
    override fun pause() {
        super.pause()
        host.work.ask({ now -> meanwhileRead(now) }) { result -> result.onFailure(host::fail) }
    }

    private fun render(view: MeanwhileView) = fill {
        if (view.nothing.isNotEmpty()) putSentence(view.nothing)
        view.clashes.forEach { putClash(it) }
        for (news in view.news) putNote(Note(Tone.PLAIN, news))
    }

    private fun ViewGroup.putClash(clash: ClashView) {
        putHeading(clash.title)
        putSentence(if (clash.oursCounts) host.getString(R.string.what_counts_now, clash.ours) else clash.ours)
        putSentence(if (clash.oursCounts) clash.theirs else host.getString(R.string.what_counts_now, clash.theirs))
        putAnswer(clash, R.string.keep_ours, ClashAnswer.OURS)
        putAnswer(clash, R.string.take_theirs, ClashAnswer.THEIRS)
        if (clash.both.isNotEmpty()) {
            putAnswer(clash, R.string.keep_both, ClashAnswer.BOTH)
            putSentence(clash.both)
        }
    }

    private fun ViewGroup.putAnswer(clash: ClashView, words: Int, answer: ClashAnswer) =
        putButton(R.layout.add, host.getText(words)) { save({ now -> settleClash(now, clash.id, answer) }, done = { refresh() }) }
}

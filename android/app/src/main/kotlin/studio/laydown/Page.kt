package studio.laydown

import android.net.Uri
import android.os.Bundle
import android.view.KeyEvent
import android.view.View
import studio.laydown.core.CommandResult
import studio.laydown.core.Now
import studio.laydown.core.Row
import studio.laydown.core.Studio

/** What another app answered: whether it gave what it was asked for, and where that lies if it says so. */
class ActivityResult(val given: Boolean, val uri: Uri?) {
    companion object {
        /** The code of every request to another app: a page waits for one answer at a time. */
        const val CODE = 1
    }
}

/** One page of the app: a controller of plain views, made when the page comes to the front and dropped when it leaves. */
abstract class Page(protected val host: MainActivity) {
    /** The page's views. */
    abstract val view: View

    /** What stands in the bar above the page; null for a page without one. */
    open val title: CharSequence? = null

    /** By this the page is known again after it was made anew; given with its place. */
    lateinit var name: String

    private var latest = 0
    private var chooser: Sheet? = null

    /** Whether the page has been left, so that nothing is shown on it any more. */
    protected var gone = false
        private set

    /** The page is in front, and [saved] is what it saved when it was left, if it was. */
    abstract fun open(savedState: Bundle)

    /** Writes down what must survive a rotation, a page on top of this one, or the end of the process. */
    open fun saveState(into: Bundle) = Unit

    /** The app goes out of sight, or another page comes. */
    open fun pause() {
        chooser?.drop()
        chooser = null
    }

    /** The app comes back into sight with this page in front. */
    open fun resume() = Unit

    /** Asks for the page's data again: something may have changed. */
    abstract fun refresh()

    /** A key of a keyboard is pressed that nothing on the page has taken; true if the page does something with it. */
    open fun key(event: KeyEvent): Boolean = false

    /** The way back is asked for; true if the page deals with it itself. */
    open fun back(): Boolean = false

    /** Shows what was kept in a place of the page's own; false to have it shown under the page. */
    open fun showSaved(saved: UndoState): Boolean = false

    /** Another app that was asked for something has answered. */
    open fun answered(answer: ActivityResult) = Unit

    /** Ends the page: answers that are still on their way are dropped. */
    fun leave() {
        pause()
        gone = true
    }

    /** Asks the studio for a view. Only the answer to the last question is shown: older ones are about what stood there before. */
    protected fun <T> show(call: Studio.(Now) -> T, render: (T) -> Unit) {
        val mine = ++latest
        host.work.ask(call) { result ->
            if (!gone && mine == latest) result.fold(render, host::fail)
        }
    }

    /** What is still asked for is about what stood there before, and its answer is not shown. */
    protected fun overtake() {
        latest++
    }

    /** Has one of [rows] chosen from a list that comes up from below; it goes when the page does. */
    protected fun choose(title: CharSequence, rows: List<Row>, picked: (Row) -> Unit) {
        chooser = chooser(host, title, rows, picked = picked).also { it.show { chooser = null } }
    }

    /**
     * Gives the studio a command. What came of it goes to this page, or to the one that was made anew in its place when the phone was
     * turned: [done] and [refused] are called on whichever it is. Where another page is in front by then, [elsewhere] is.
     */
    protected fun <P : Page, T> P.command(
        call: Studio.(Now) -> T, refused: P.(Throwable) -> Unit = { host.fail(it) }, elsewhere: MainActivity.(T) -> Unit = {}, done: P.(T) -> Unit,
    ) {
        host.work.ask(call, answer(refused, elsewhere, done))
    }

    /** What is to be done with the result of what was asked for from this page, as [command] says. */
    protected fun <P : Page, T> P.answer(
        refused: P.(Throwable) -> Unit, elsewhere: MainActivity.(T) -> Unit = {}, done: P.(T) -> Unit,
    ): (Result<T>) -> Unit {
        val answers = host.answers
        val asked = this.name
        return { result ->
            val show = { page: Page ->
                // The page of one name is of one kind, however often it is made.
                @Suppress("UNCHECKED_CAST")
                val made = page as P
                result.fold({ made.done(it) }, { made.refused(it) })
            }
            answers.arrive(asked, show) { activity -> result.fold({ activity.elsewhere(it) }, activity::tellProblem) }
        }
    }

    /** Gives a command that keeps something, then tells what was kept under the page that is in front by then. */
    protected fun <P : Page> P.save(
        call: Studio.(Now) -> CommandResult, refused: P.(Throwable) -> Unit = { host.fail(it) }, done: P.(CommandResult) -> Unit,
    ) = command(call, refused, { tell(UndoState(it)) }) { saved ->
        done(saved)
        // Behind the page that `done` asked for: what is tapped next is then the new page, and not one about to go.
        val answers = host.answers
        host.work.ask({ saved }) { answers.arrive { it.tell(UndoState(saved)) } }
    }
}

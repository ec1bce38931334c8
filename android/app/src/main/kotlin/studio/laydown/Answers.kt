package studio.laydown

/**
 * What commands have answered, and what they could not do, until it is shown. Pages and the activity around them come and go as the
 * phone is turned; the app stays, and the answers with it. Used on the main thread.
 */
class Answers {
    private class Answer(val page: String, val show: (Page) -> Unit, val elsewhere: (MainActivity) -> Unit)

    private val waiting = ArrayDeque<Answer>()
    private var front: MainActivity? = null

    /**
     * Has an answer shown by the page named [page] if it is in front, and [elsewhere] if another is; once there is one at all.
     */
    fun arrive(page: String, show: (Page) -> Unit, elsewhere: (MainActivity) -> Unit) {
        waiting.addLast(Answer(page, show, elsewhere))
        deliver()
    }

    /** As [arrive], for what no page waits for. */
    fun arrive(show: (MainActivity) -> Unit) = arrive(NOBODY, {}, show)

    /** [activity] has a page in front. */
    fun opened(activity: MainActivity) {
        front = activity
        deliver()
    }

    /** [activity] has none any more. */
    fun closed(activity: MainActivity) {
        if (front === activity) front = null
    }

    private fun deliver() {
        while (true) {
            val activity = front ?: return
            val answer = waiting.removeFirstOrNull() ?: return
            val page = activity.pageNamed(answer.page)
            if (page == null) answer.elsewhere(activity) else answer.show(page)
        }
    }

    private companion object {
        const val NOBODY = ""
    }
}

package studio.laydown.desktop

/** One picture of the screen, encoded. */
internal class Frame(val number: Int, val type: String, val bytes: ByteArray)

/** What else there is to know about the phone, as JSON. */
internal class State(val number: Int, val json: String)

/** The latest picture and state, handed from the phone's thread to those that wait for something newer. */
internal class Frames {
    private val lock = Object()
    private var frame = Frame(0, "", ByteArray(0))
    private var state = State(0, "{}")
    private var askedAt = System.nanoTime()

    /** Whether anybody has asked for a picture of late: if not, none need be made. */
    val watched: Boolean get() = synchronized(lock) { System.nanoTime() - askedAt < UNWATCHED_AFTER_NS }

    fun show(type: String, bytes: ByteArray) = synchronized(lock) {
        frame = Frame(frame.number + 1, type, bytes)
        lock.notifyAll()
    }

    fun tell(json: String) = synchronized(lock) {
        if (json != state.json) {
            state = State(state.number + 1, json)
            lock.notifyAll()
        }
    }

    /** The first picture newer than [after]; null if there is none for [ms]. */
    fun frameAfter(after: Int, ms: Long): Frame? = await(ms) { frame.takeIf { it.number > after } }

    /** The first state newer than [after]; null if there is none for [ms]. */
    fun stateAfter(after: Int, ms: Long): State? = await(ms) { state.takeIf { it.number > after } }

    private fun <T : Any> await(ms: Long, find: () -> T?): T? = synchronized(lock) {
        val end = System.nanoTime() + ms * 1_000_000
        askedAt = System.nanoTime()
        var found = find()
        while (found == null) {
            val left = (end - System.nanoTime()) / 1_000_000
            if (left <= 0) return null
            lock.wait(left)
            found = find()
        }
        askedAt = System.nanoTime()
        found
    }

    private companion object {
        const val UNWATCHED_AFTER_NS = 15_000_000_000L
    }
}

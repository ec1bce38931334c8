package studio.laydown.weigh

import android.os.Handler
import android.os.Looper

/** Decides when a verdict is said: when the digits have rested, or when Save is pressed, and never twice for one reading. */
class Speaker(private val say: (String) -> Unit) {
    private val later = Handler(Looper.getMainLooper())
    private var waiting: String? = null
    private var said: String? = null
    private var armed = false

    /** The potter changed something: what was about to be said is out of date, and what comes of it will be said. */
    fun changed() {
        hush()
        armed = true
    }

    /** Nothing more is said until something changes. */
    fun hush() {
        later.removeCallbacksAndMessages(null)
        waiting = null
        armed = false
    }

    /** The reading has the verdict [words]. Said only if it comes of a change: not again when the page is shown anew. */
    fun verdict(words: String) {
        if (!armed) return
        later.removeCallbacksAndMessages(null)
        waiting = words
        later.postDelayed(::now, REST_MS)
    }

    /** The digits rest, or the reading is being kept: say it if it has not been said. */
    fun now() {
        val words = waiting
        hush()
        if (words == null || words == said) return
        said = words
        say(words)
    }

    /** The next reading begins; its verdict is said even if it is the same. */
    fun next() {
        hush()
        said = null
    }

    private companion object {
        const val REST_MS = 900L
    }
}

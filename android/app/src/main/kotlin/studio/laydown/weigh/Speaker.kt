package studio.laydown.weigh

import android.os.Handler
import android.os.Looper

/** Decides when a verdict is said: when the digits have rested, or when Keep is pressed, and never twice for one reading. */
class Speaker(private val say: (String) -> Unit) {
    private val later = Handler(Looper.getMainLooper())
    private var waiting: String? = null
    private var said: String? = null

    /** The digits changed: what was about to be said is out of date. */
    fun typed() {
        later.removeCallbacksAndMessages(null)
        waiting = null
    }

    /** The reading has the verdict [words]. */
    fun verdict(words: String) {
        typed()
        waiting = words
        later.postDelayed(::now, REST_MS)
    }

    /** The reading is being kept: say it at once if it has not been said. */
    fun now() {
        val words = waiting
        typed()
        if (words == null || words == said) return
        said = words
        say(words)
    }

    /** The next reading begins; its verdict is said even if it is the same. */
    fun next() {
        typed()
        said = null
    }

    private companion object {
        const val REST_MS = 900L
    }
}

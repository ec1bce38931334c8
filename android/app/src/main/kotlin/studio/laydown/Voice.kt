package studio.laydown

import android.content.Context
import android.speech.tts.TextToSpeech

/** The phone's own voice. It takes a moment to wake; what is said meanwhile is said once it has. */
class Voice(private val context: Context) {
    private var engine: TextToSpeech? = null
    private var waiting: String? = null

    fun say(words: String) {
        val engine = engine ?: TextToSpeech(context, ::awake).also { engine = it }
        if (engine.speak(words, TextToSpeech.QUEUE_FLUSH, null, words) != TextToSpeech.SUCCESS) waiting = words
    }

    fun shutdown() {
        engine?.shutdown()
        engine = null
    }

    private fun awake(status: Int) {
        val words = waiting ?: return
        waiting = null
        // A phone without a voice stays silent: the verdict is on the screen.
        if (status == TextToSpeech.SUCCESS) engine?.speak(words, TextToSpeech.QUEUE_FLUSH, null, words)
    }
}

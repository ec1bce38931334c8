package studio.laydown.drawing

import android.content.Context
import android.view.HapticFeedbackConstants
import android.view.View
import android.widget.Button
import android.widget.TextView
import studio.laydown.R
import studio.laydown.core.Drawing
import studio.laydown.core.Grip
import studio.laydown.core.Spot
import studio.laydown.core.Touch
import studio.laydown.get
import studio.laydown.showIf
import studio.laydown.views

/** A drawing with what belongs to it: the name of what is held above it, and below it the ways to take something back. */
class DrawingPanel(
    context: Context,
    private val listener: Listener,
    /** What taking away what was tapped is called. */
    awayWords: Int,
    /** Whether a drag is told once, when the finger lets go; until then only what is held moves. */
    private val once: Boolean = false,
    /** Whether a grip is only lifted by a finger that rests on it. */
    holdToLift: Boolean = false,
) : DrawingView.Touched {
    /** Is told what the potter does here. */
    interface Listener {
        /** Whether taking hold is to be felt. */
        val ticks: Boolean

        /** A new thing is begun, which one Undo undoes. */
        fun begin() = Unit

        /** What is done. While a grip is dragged, many times. */
        fun touch(touch: Touch)

        /** The last thing is to be undone; not asked where [show] says that nothing can be. */
        fun undo() = Unit
    }

    val root: View = context.views(R.layout.drawing)
    private val view = root.get<DrawingView>(R.id.drawing)
    private val words = root.get<TextView>(R.id.drawing_words)
    private val name = root.get<TextView>(R.id.drawing_name)
    private val undo = root.get<Button>(R.id.drawing_undo)
    private val away = root.get<Button>(R.id.drawing_away)
    private var held = false
    private var carried: Touch.Move? = null
    private var canUndo = false

    init {
        view.touched = this
        view.holdToLift = holdToLift
        undo.setOnClickListener {
            view.chosen = null
            listener.undo()
        }
        away.setText(awayWords)
        away.setOnClickListener {
            val key = view.chosen ?: return@setOnClickListener
            view.chosen = null
            listener.begin()
            listener.touch(Touch.Remove(key))
        }
    }

    /** Shows the drawing; [canUndo] if something done to it can be undone. */
    fun show(drawing: Drawing, canUndo: Boolean) {
        view.drawing = drawing
        words.text = drawing.words
        this.canUndo = canUndo
        render()
    }

    private fun render() {
        val grip = view.drawing?.grips?.firstOrNull { it.key == view.chosen }
        if (grip == null) view.chosen = null
        name.text = grip?.name
        name.visibility = if (grip != null) View.VISIBLE else View.INVISIBLE
        words.visibility = if (grip == null) View.VISIBLE else View.INVISIBLE
        // Nothing comes or goes under the finger.
        if (held) return
        undo.showIf(canUndo)
        away.showIf(grip != null && grip.removable)
        root.get<View>(R.id.drawing_acts).showIf(canUndo || grip != null && grip.removable)
    }

    override fun hold(grip: Grip) {
        held = true
        view.chosen = grip.key
        if (listener.ticks) view.performHapticFeedback(HapticFeedbackConstants.LONG_PRESS)
        listener.begin()
        render()
    }

    override fun drag(key: String, to: Spot) {
        val move = Touch.Move(key, to)
        if (!once) return listener.touch(move)
        carried = move
        view.carried = to
    }

    override fun letGo() {
        held = false
        view.chosen = null
        view.carried = null
        render()
        carried?.let(listener::touch)
        carried = null
    }

    override fun tap(grip: Grip) {
        view.chosen = grip.key.takeIf { it != view.chosen }
        render()
    }

    override fun tap(at: Spot) {
        if (view.chosen != null) {
            // Beside what was chosen: it is let go, and nothing is added by the way.
            view.chosen = null
            return render()
        }
        listener.begin()
        listener.touch(Touch.Add(at))
    }
}

package studio.laydown.desktop

import android.os.Looper
import android.os.SystemClock
import android.view.InputDevice
import android.view.InputEvent
import android.view.KeyCharacterMap
import android.view.KeyEvent
import android.view.MotionEvent
import org.robolectric.Shadows.shadowOf
import org.robolectric.shadows.ShadowUiAutomation
import java.time.Duration

/** A finger, a wheel and a keyboard: events as the hardware sends them, in pixels of the screen. */
internal class Hand {
    private var downAt = 0L

    fun down(x: Float, y: Float) {
        downAt = SystemClock.uptimeMillis()
        touch(MotionEvent.ACTION_DOWN, x, y)
    }

    fun move(x: Float, y: Float) = touch(MotionEvent.ACTION_MOVE, x, y)

    fun up(x: Float, y: Float) = touch(MotionEvent.ACTION_UP, x, y)

    /** Drags over [ms], one move a frame; rests before lifting unless it is a [fling]. */
    fun drag(fromX: Float, fromY: Float, toX: Float, toY: Float, ms: Long, fling: Boolean) {
        val steps = (ms / FRAME).coerceAtLeast(2)
        down(fromX, fromY)
        for (i in 1..steps) {
            pass(FRAME)
            move(fromX + (toX - fromX) * i / steps, fromY + (toY - fromY) * i / steps)
        }
        if (!fling) {
            pass(REST)
            move(toX, toY)
        }
        up(toX, toY)
    }

    /**
     * Turns a wheel by [lines] over a point of this window, down if negative. As from a touch screen and straight to the window:
     * Robolectric has no cursor, and a mouse's events would all arrive at its corner.
     */
    fun wheel(window: Window, x: Float, y: Float, lines: Float) {
        val finger = MotionEvent.PointerProperties().apply { id = 0 }
        val at = MotionEvent.PointerCoords()
        at.x = x - window.bounds.left
        at.y = y - window.bounds.top
        at.setAxisValue(MotionEvent.AXIS_VSCROLL, lines)
        val now = SystemClock.uptimeMillis()
        val event = MotionEvent.obtain(
            now, now, MotionEvent.ACTION_SCROLL, 1, arrayOf(finger), arrayOf(at), 0, 0, 1f, 1f, 0, 0,
            InputDevice.SOURCE_TOUCHSCREEN, 0,
        )
        window.root.dispatchGenericMotionEvent(event)
        event.recycle()
    }

    /** Presses and lifts one key, by Android's key code. */
    fun key(code: Int) {
        send(KeyEvent(KeyEvent.ACTION_DOWN, code))
        send(KeyEvent(KeyEvent.ACTION_UP, code))
    }

    /** Types any text, as a hardware keyboard where it has the character and as an input method where it has not. */
    fun type(text: String) {
        val keyboard = KeyCharacterMap.load(KeyCharacterMap.VIRTUAL_KEYBOARD)
        for (point in text.codePoints()) {
            val letter = String(Character.toChars(point))
            // Outside ASCII the key map answers with keys that do nothing, so those go as characters.
            val keys = if (point < 128) keyboard.getEvents(letter.toCharArray()) else null
            if (keys != null) {
                keys.forEach(::send)
            } else {
                send(KeyEvent(SystemClock.uptimeMillis(), letter, KeyCharacterMap.VIRTUAL_KEYBOARD, 0))
            }
        }
    }

    private fun touch(action: Int, x: Float, y: Float) {
        val event = MotionEvent.obtain(downAt, SystemClock.uptimeMillis(), action, x, y, 0)
        event.source = InputDevice.SOURCE_TOUCHSCREEN
        send(event)
        event.recycle()
    }

    private fun send(event: InputEvent) {
        ShadowUiAutomation.injectInputEvent(event)
    }

    private fun pass(ms: Long) = shadowOf(Looper.getMainLooper()).idleFor(Duration.ofMillis(ms))

    private companion object {
        const val FRAME = 16L
        const val REST = 200L
    }
}

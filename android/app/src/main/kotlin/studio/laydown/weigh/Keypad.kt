package studio.laydown.weigh

import android.view.HapticFeedbackConstants
import android.view.View
import android.widget.Button
import studio.laydown.R
import studio.laydown.get

/** A key of the keypad. */
sealed interface Key {
    /** A digit or the decimal mark. */
    data class Mark(val mark: String) : Key

    /** Takes the last digit away. */
    data object Delete : Key

    /** Takes all away. */
    data object Clear : Key
}

/** What stands in a field after [key] was pressed. Only the writing is looked after here; what it means, the core says. */
fun press(text: String, key: Key, decimal: String): String = when (key) {
    Key.Delete -> text.dropLast(1)
    Key.Clear -> ""
    is Key.Mark -> when {
        key.mark == decimal && text.any { it in DECIMAL_MARKS } -> text
        key.mark == decimal && text.isEmpty() -> "0$decimal"
        text == "0" && key.mark != decimal -> key.mark
        text.length >= LONGEST -> text
        else -> text + key.mark
    }
}

private const val DECIMAL_MARKS = ".,"
// A hundred kilograms to the hundredth of a gram; more is a thumb resting on a key.
private const val LONGEST = 8

/** The keys, wired: big enough for a wet thumb, and felt if the phone is to tick. */
class Keypad(private val root: View, private val pressed: (Key) -> Unit) {
    var ticks = false

    /** The decimal mark, as the potter writes it. */
    var decimal = ""
        set(value) {
            field = value
            root.get<Button>(R.id.key_point).text = value
        }

    init {
        for (id in DIGITS) {
            val button = root.get<Button>(id)
            button.setOnClickListener { press(it, Key.Mark(button.text.toString())) }
        }
        root.get<View>(R.id.key_point).setOnClickListener { press(it, Key.Mark(decimal)) }
        root.get<View>(R.id.key_delete).apply {
            setOnClickListener { press(it, Key.Delete) }
            setOnLongClickListener {
                press(it, Key.Clear)
                true
            }
        }
    }

    private fun press(view: View, key: Key) {
        if (ticks) view.performHapticFeedback(HapticFeedbackConstants.KEYBOARD_TAP)
        pressed(key)
    }

    private companion object {
        val DIGITS = listOf(
            R.id.key_0, R.id.key_1, R.id.key_2, R.id.key_3, R.id.key_4,
            R.id.key_5, R.id.key_6, R.id.key_7, R.id.key_8, R.id.key_9,
        )
    }
}

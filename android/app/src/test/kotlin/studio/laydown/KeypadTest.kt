package studio.laydown

import org.junit.Assert.assertEquals
import org.junit.Test
import studio.laydown.weigh.Key
import studio.laydown.weigh.press

/** What the keys write; what it means is the core's business. */
class KeypadTest {
    @Test
    fun writesDigitsAndOneMark() = assertEquals("19.4", keys("19..4"))

    @Test
    fun writesTheUsersOwnMark() = assertEquals("19,4", keys("19,4", decimal = ","))

    @Test
    fun aMarkOfTheOtherKindIsStillTheOnlyOne() = assertEquals("19,45", keys(",5", decimal = ".", from = "19,4"))

    @Test
    fun aMarkAloneBeginsWithNought() = assertEquals("0.5", keys(".5"))

    @Test
    fun noughtIsNoFirstDigit() = assertEquals("7", keys("007"))

    @Test
    fun aTouchThatRestsStopsAtEightSigns() = assertEquals("11111111", keys("1".repeat(20)))

    @Test
    fun deleteTakesTheLastAndClearTakesAll() {
        assertEquals("19.", press("19.4", Key.Delete, "."))
        assertEquals("", press("", Key.Delete, "."))
        assertEquals("", press("19.4", Key.Clear, "."))
    }

    private fun keys(pressed: String, decimal: String = ".", from: String = ""): String =
        pressed.fold(from) { text, sign -> press(text, Key.Mark(if (sign.isDigit()) sign.toString() else decimal), decimal) }
}

package studio.laydown

import android.os.PowerManager
import android.view.WindowManager
import org.junit.Assert.assertEquals
import org.junit.Assert.assertFalse
import org.junit.Assert.assertTrue
import org.junit.Test
import org.junit.runner.RunWith
import org.robolectric.RobolectricTestRunner
import org.robolectric.Shadows.shadowOf
import studio.laydown.core.VerdictKind
import studio.laydown.desktop.Look
import studio.laydown.desktop.Phone
import studio.laydown.weigh.GaugeView
import studio.laydown.weigh.VerdictMark
import studio.laydown.weigh.ink

/** The main job, as a potter does it on the phone, with the real core. */
@RunWith(RobolectricTestRunner::class)
class WeighTest {
    @Test
    fun aPieceIsDigitsAndSave() = weighing { phone ->
        phone.key("20.9")
        phone.until("WITHIN")
        phone.tap("Save")
        phone.await("what was kept") { phone.said("Saved: Breakfast mug, inside, 20.9 g, within.") != null }
        phone.await("the digits to go") { phone.reading("Coat, after tare") == "" }
    }

    @Test
    fun saveIsUndoneAndDoneAgain() = weighing { phone ->
        phone.key("20.9")
        phone.until("WITHIN")
        phone.tap("Save")
        phone.touch("Undo")
        phone.until("Undone.")
        phone.tap(R.id.saved_sentence)
        phone.until("3 coats today, 1 within.")
        phone.back()
        phone.tap("Redo")
        phone.await("what was kept") { phone.said("Saved: Breakfast mug, inside, 20.9 g, within.") != null }
        phone.key("1")
        phone.await("the bar to go") { !phone.shows("Undo") }
        phone.tap("Delete a digit; hold to clear")
        phone.await("the count after") { phone.shows("4 coats today, 2 within.") }
    }

    @Test
    fun whatWasSavedStaysSaidUntilTheNextDigit() = weighing { phone ->
        phone.key("20.9")
        phone.until("WITHIN")
        phone.tap("Save")
        phone.until("Undo")
        phone.rotate()
        phone.until("Undo")
        phone.key("1")
        phone.await("the bar to go") { !phone.shows("Undo") }
    }

    @Test
    fun theScreenStaysOnUnlessTheBatteryIsSaved() = weighing { phone ->
        fun staysOn() = phone.activity.window.attributes.flags and WindowManager.LayoutParams.FLAG_KEEP_SCREEN_ON != 0
        assertTrue(staysOn())
        shadowOf(phone.activity.getSystemService(PowerManager::class.java)).setIsPowerSaveMode(true)
        phone.rotate()
        phone.until("Save")
        assertFalse(staysOn())
    }

    @Test
    fun theOutsideFollowsTheInside() = weighing { phone ->
        phone.key("20.9")
        phone.until("WITHIN")
        phone.tap("Save")
        phone.touch("Outside of this piece")
        // It says which piece this is, and that the wall is damp by now.
        phone.await("the piece") { phone.texts().any { it.startsWith("Zone: Outside, ") } }
        phone.await("the note") { phone.texts().any { it.startsWith("Note: ") && "Its wall is still wet" in it } }
    }

    @Test
    fun aPieceIsComeBackToFromTheListInTwoTaps() = weighing { phone ->
        phone.tap("Zone: Inside. Tap to change.")
        phone.until("Insides waiting for outsides")
        phone.touch("Ash white inside, 20 min ago")
        phone.await("the piece") { phone.texts().any { it.startsWith("Zone: Outside, ") } }
        val code = phone.texts().first { it.startsWith("Zone: Outside, ") }.removePrefix("Zone: Outside, ").take(5)
        phone.await("the wall") { phone.texts().any { "$code was glazed inside 20 min ago. Its wall is still wet" in it } }
        phone.key("18.1")
        phone.touch("Save")
        phone.await("what was kept") { phone.texts().any { it.startsWith("Saved: Breakfast mug $code, outside, 18.1 g") } }
    }

    @Test
    fun aPieceIsComeBackToByTheCodeOnItsFoot() = weighing { phone ->
        phone.tap("Zone: Inside. Tap to change.")
        phone.until("Insides waiting for outsides")
        val pieces = { phone.texts().filter { it.startsWith("Breakfast mug, ") } }
        val code = pieces()[1].removePrefix("Breakfast mug, ")
        phone.tap(R.id.picker_code)
        phone.type(code.lowercase())
        phone.await("that piece alone") { pieces() == listOf("Breakfast mug, $code") }
        phone.touch("Breakfast mug, $code")
        phone.until("Zone: Outside, $code. Tap to change.")
        // A slip is said, and no other piece is offered for it.
        phone.tap("Zone: Outside, $code. Tap to change.")
        phone.until("New piece")
        phone.tap(R.id.picker_code)
        phone.type(code.reversed())
        phone.await("no piece") { pieces().isEmpty() && !phone.shows("New piece") }
    }

    @Test
    fun anUndoneCoatIsWeighedAgainOnItsPiece() = weighing { phone ->
        phone.key("20.9")
        phone.until("WITHIN")
        phone.tap("Save")
        phone.await("the code") { phone.texts().any { "Mark " in it } }
        val code = phone.texts().first { "Mark " in it }.substringAfter("Mark ").take(5)
        phone.touch("Undo")
        phone.until("Weigh $code again")
        phone.rotate()
        phone.touch("Weigh $code again")
        phone.until("Zone: Inside, $code. Tap to change.")
        phone.key("19.9")
        phone.until("WITHIN")
        phone.tap("Save")
        phone.await("the same code") { phone.texts().any { "19.9 g, within. Mark $code on the foot" in it } }
    }

    @Test
    fun eachZoneBringsItsGlazeBack() = weighing { phone ->
        phone.tap("Zone: Inside. Tap to change.")
        phone.touch("Outside")
        phone.until("Zone: Outside. Tap to change.")
        phone.tap("Glaze, bucket: Ash white, First bucket. Tap to change.")
        phone.touch("Iron red")
        phone.until("Glaze, bucket: Iron red, First bucket. Tap to change.")
        for ((from, to, glaze) in listOf(Triple("Outside", "Inside", "Ash white"), Triple("Inside", "Outside", "Iron red"))) {
            phone.tap("Zone: $from. Tap to change.")
            phone.touch(to)
            phone.until("Glaze, bucket: $glaze, First bucket. Tap to change.")
        }
    }

    @Test
    fun anotherFormHasAnotherAim() = weighing { phone ->
        val before = phone.aim()
        phone.tap("Form: Breakfast mug. Tap to change.")
        phone.touch("Soup bowl")
        phone.until("Form: Soup bowl. Tap to change.")
        assertFalse("$before is the mug's", before == phone.aim())
    }

    @Test
    fun twoWeightsAreTakenOneAfterTheOther() = weighing { phone ->
        phone.tap(ScreensTest.WAY)
        phone.until("Bare piece  g")
        phone.key("412.3")
        phone.touch("Next: Glazed piece")
        phone.await("the last field") { phone.shows("Save") }
        phone.key("433.2")
        phone.until("WITHIN")
        phone.tap("Save")
        phone.await("what was kept") { phone.said("Saved: Breakfast mug, inside, 20.9 g, within.") != null }
        // The way stays for the next piece, and its bare weight comes first.
        phone.await("the first field again") { phone.shows("Next: Glazed piece") }
        assertEquals("", phone.reading("Bare piece"))
    }

    @Test
    fun aGlazedWeightUnderTheBareOneIsRefusedAndStays() = weighing { phone ->
        phone.tap(ScreensTest.WAY)
        phone.until("Bare piece  g")
        phone.key("412.3")
        phone.touch("Next: Glazed piece")
        phone.await("the last field") { phone.shows("Save") }
        phone.key("402.0")
        phone.await("the sentence") { phone.texts().any { it.startsWith("It weighs less glazed") } }
        phone.tap("Save")
        phone.idle(500)
        assertFalse(phone.shows("Undo"))
        assertEquals("402.0", phone.reading("Glazed piece"))
    }

    @Test
    fun aSlipIsAskedAboutAndMendedInOneTap() = weighing { phone ->
        phone.key("209")
        phone.until("Did you mean 20.9 g?")
        phone.tap("Save")
        phone.idle(500)
        assertFalse("nothing is saved before it is answered", phone.shows("Undo"))
        phone.touch("20.9 g")
        phone.until("WITHIN")
        assertEquals("20.9", phone.reading("Coat, after tare"))
    }

    @Test
    fun aReadingThatIsRightIsSavedAfterItsQuestion() = weighing { phone ->
        phone.key("41.0")
        phone.await("the question") { phone.texts().any { "twice the aim" in it } }
        phone.rotate()
        phone.touch("It is right")
        phone.until("OVER")
        phone.tap("Save as it is")
        phone.await("what was kept") { phone.said("Saved: Breakfast mug, inside, 41.0 g, over.") != null }
    }

    @Test
    fun aGuessHasItsOwnMarkAndIsNeverGreen() = weighing { phone ->
        phone.tap("Form: Breakfast mug. Tap to change.")
        phone.touch("Soup bowl")
        phone.until("Form: Soup bowl. Tap to change.")
        phone.tap("Glaze, bucket: Ash white, First bucket. Tap to change.")
        phone.touch("Iron red")
        phone.key("35.0")
        phone.await("a guess") { phone.texts().any { it.endsWith("YOUR FIRST GUESS") } }
        val mark = phone.activity.findViewById<VerdictMark>(R.id.verdict_mark)
        assertEquals(VerdictKind.GUESS, mark.kind)
        assertTrue(mark.contentDescription.endsWith("YOUR FIRST GUESS"))
        val inks = VerdictKind.entries.groupBy { phone.activity.getColor(it.ink) }.values.filter { it.size > 1 }
        assertEquals("what is within and what is probably so share a colour, and nothing else", listOf(listOf(VerdictKind.WITHIN, VerdictKind.PROBABLY_WITHIN)), inks)
        assertTrue(phone.activity.findViewById<GaugeView>(R.id.gauge).gauge!!.guess)
    }

    @Test
    fun whatNoScaleShowsIsRefusedAndNothingIsSaved() = weighing { phone ->
        phone.key("20.93")
        phone.await("the sentence") { phone.texts().any { "reads in 0.1 g steps" in it } }
        phone.tap("Save")
        phone.idle(500)
        assertFalse(phone.shows("Undo"))
        assertEquals("20.93", phone.reading("Coat, after tare"))
        phone.longTap("Delete a digit; hold to clear")
        phone.until("3 coats today, 1 within.")
    }

    @Test
    fun digitsOutliveRotationAndAnEndWithoutAWord() = weighing { phone ->
        phone.key("20.9")
        phone.until("WITHIN")
        phone.look = Look(landscape = true, night = true)
        phone.until("WITHIN")
        assertEquals("20.9", phone.reading("Coat, after tare"))
        phone.restart()
        phone.until("WITHIN")
        assertEquals("20.9", phone.reading("Coat, after tare"))
    }

    @Test
    fun theOpenListOutlivesRotation() = weighing { phone ->
        phone.tap("Form: Breakfast mug. Tap to change.")
        phone.until("Choose a form")
        phone.rotate()
        phone.until("Choose a form")
        phone.touch("Soup bowl")
        phone.until("Form: Soup bowl. Tap to change.")
    }

    @Test
    fun theVerdictIsSaidOnceWhenTheDigitsRest() = weighing { phone ->
        phone.key("20.9")
        phone.until(ON_20_9)
        assertEquals("not while one still types", emptyList<String>(), phone.said)
        phone.await("the verdict to be said") { phone.said.size == 1 }
        phone.tap("Save")
        phone.until("Undo")
        phone.idle(1_000)
        assertEquals("not twice", 1, phone.said.size)
        phone.key("20.9")
        phone.until(ON_20_9)
        phone.tap("Save")
        phone.until("Undo")
        assertEquals("the next piece anew, at once when it is saved", 2, phone.said.size)
        assertEquals(phone.said[0], phone.said[1])
    }

    @Test
    fun everyKeyIsFelt() = weighing { phone ->
        phone.key("20.9")
        assertEquals(4, phone.ticks)
    }

    @Test
    fun holdingDeleteClears() = weighing { phone ->
        phone.key("20.9")
        phone.longTap("Delete a digit; hold to clear")
        assertEquals("", phone.reading("Coat, after tare"))
    }

    @Test
    fun aCoatBecomesTheControlPieceAndIsTakenBack() = weighing { phone ->
        phone.coatOf("22.9 g")
        phone.touch("Make control piece")
        phone.until("This coat was over when weighed, and you have not said how it came out of the kiln. Let targets use it anyway?")
        phone.touch("Yes")
        phone.until("Now a control piece. Targets use it.")
        phone.until("Unmark control piece")
        phone.tap("Remove this coat")
        phone.until("Coat removed.")
        phone.tap(R.id.saved_sentence)
        phone.until("2 coats today, 1 within.")
        phone.back()
        phone.tap("Undo")
        phone.until("Undone.")
        phone.tap(R.id.saved_sentence)
        phone.until("3 coats today, 1 within.")
    }

    @Test
    fun aSavedCoatIsCorrectedFromTheRecentsAndFromItsPage() = weighing { phone ->
        phone.recent("3 coats today, 1 within.")
        val pencil = phone.texts().first { it.startsWith("Correct: Breakfast mug, ") && it.endsWith("22.9 g") }
        phone.touch(pencil)
        phone.until("Correct this coat")
        phone.fillField("Coat as weighed", "2299")
        phone.await("why it cannot be") { phone.refusals().any { "more glaze" in it } }
        phone.fillField("Coat as weighed", "22.9")
        phone.fillField("Rubbed off", "1.5")
        phone.await("the verdict") { phone.said("21.4 g in all: within.") != null }
        phone.touch("Save")
        phone.until("Coat corrected. Its history shows what it was.")
        phone.tap(R.id.saved_sentence)
        phone.until("3 coats today, 2 within.")
        phone.touch("21.4 g")
        phone.until("Rubbed off")
        phone.touch("Correct this coat")
        phone.await("the verdict") { phone.said("21.4 g in all: within.") != null }
    }

    @Test
    fun anEmptyStudioLeadsToThePieces() = Pottery.empty().use { phone ->
        phone.touch("A form")
        phone.until("New form")
        phone.back()
        phone.until("Before the first piece")
        phone.back()
        assertTrue(phone.left)
    }

    @Test
    fun whoHasAStudioIsLedToItFromTheFirstScreen() = Pottery.empty().use { phone ->
        phone.touch("Restore a backup")
        phone.until("Restore and import")
        phone.back()
        phone.touch("Join my other phones")
        phone.until("Phones in this studio")
    }

    private fun weighing(work: (Phone) -> Unit) = Pottery.furnished().use { phone ->
        phone.ready()
        phone.await("the studio") { phone.aim().isNotEmpty() }
        work(phone)
    }

    private fun Phone.aim(): String = texts().firstOrNull { it.startsWith("Aim for ") }.orEmpty()

    /** What is typed in the field of this name. */
    private fun Phone.reading(label: String): String =
        texts().single { it.startsWith("$label ") && it.endsWith(" g") }.removePrefix("$label ").removeSuffix("g").trim()

    private companion object {
        /** What is said of 20.9 g, and of nothing typed on the way there. */
        const val ON_20_9 = "0.4 g over the aim, within 19.1 to 21.9 g."
    }
}

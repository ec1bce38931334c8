package studio.laydown

import android.view.KeyEvent
import android.view.View
import android.view.accessibility.AccessibilityNodeInfo
import android.view.accessibility.AccessibilityNodeInfo.AccessibilityAction
import android.widget.CheckBox
import android.widget.RadioButton
import android.widget.TextView
import org.junit.Assert.assertEquals
import org.junit.Assert.assertFalse
import org.junit.Assert.assertTrue
import org.junit.Test
import org.junit.runner.RunWith
import org.robolectric.RobolectricTestRunner
import studio.laydown.desktop.Phone
import studio.laydown.drawing.DrawingView

/** The app for whoever has the screen read out, and for whoever works it by a keyboard. */
@RunWith(RobolectricTestRunner::class)
class ReadOutTest {
    @Test
    fun aPotOnAShelfIsFoundMovedAndTakenOutWithoutAFinger() = Pottery.loading().use { phone ->
        phone.firing()
        phone.touch("Load all waiting pieces")
        phone.await("the pots") { phone.grips().orEmpty().size == 4 }
        val view = phone.plan()
        val plan = view.createAccessibilityNodeInfo()
        assertEquals(4, plan.childCount)
        val grip = checkNotNull(phone.grips()).first()
        val node = checkNotNull(view.accessibilityNodeProvider.createAccessibilityNodeInfo(0)) { "the pot has no node" }
        assertEquals(grip.name, node.contentDescription)
        assertEquals(listOf("Move left", "Move right", "Move up", "Move down"), node.actionList.mapNotNull(AccessibilityAction::getLabel))
        assertTrue(view.accessibilityNodeProvider.performAction(0, R.id.move_down, null))
        phone.until("Moved.")
        phone.await("the new place") { phone.grips()?.first { it.key == grip.key }?.at?.let { it.y > grip.at.y } == true }
        val at = checkNotNull(phone.grips()).indexOfFirst { it.key == grip.key }
        phone.plan().accessibilityNodeProvider.performAction(at, AccessibilityNodeInfo.ACTION_CLICK, null)
        phone.touch("Remove from load")
        phone.await("one less") { phone.grips().orEmpty().size == 3 }
    }

    @Test
    fun whatAnswersAndTicksAreIsSaidWithTheirState() = Pottery.fired().use { phone ->
        phone.touch("Kiln")
        phone.touch("Firing 1: cone 6, Garden kiln")
        phone.touch("Look at the pieces: 3 left")
        phone.until("Inside: Right")
        fun node(words: String): AccessibilityNodeInfo =
            phone.window().first { it.isShown && it.contentDescription == words }.createAccessibilityNodeInfo()
        node("Inside: Right").let { assertTrue(it.className == RadioButton::class.java.name && it.isCheckable && !it.isChecked) }
        phone.touch("Inside: Right")
        phone.until("Inside: Right, chosen")
        assertTrue(node("Inside: Right, chosen").isChecked)
        node("Runs").let { assertTrue(it.className == CheckBox::class.java.name && it.isCheckable && !it.isChecked) }
    }

    @Test
    fun tabsSayWhatTheyAreAndWhichIsOpen() = Pottery.furnished().use { phone ->
        phone.ready()
        fun tab(id: Int) = phone.activity.window.decorView.get<View>(id).createAccessibilityNodeInfo()
        assertEquals("android.app.ActionBar\$Tab", tab(R.id.tab_weigh).className)
        assertTrue(tab(R.id.tab_weigh).isSelected && !tab(R.id.tab_kiln).isSelected)
        assertEquals("Weigh", phone.activity.window.decorView.get<View>(R.id.page).accessibilityPaneTitle)
    }

    @Test
    fun aKeyboardWeighsAndEnterSaves() = Pottery.furnished().use { phone ->
        phone.ready()
        phone.type("209")
        phone.press(KeyEvent.KEYCODE_DEL)
        phone.type(".9")
        phone.until("WITHIN")
        phone.press(KeyEvent.KEYCODE_ENTER)
        phone.await("what was saved") { phone.said("Saved: Breakfast mug, inside, 20.9 g, within.") != null }
        phone.type("900")
        phone.await("the refusal") { phone.texts().any { it.startsWith("900.0 g is more glaze") } }
        phone.press(KeyEvent.KEYCODE_ENTER)
        phone.idle(500)
        assertFalse(phone.shows("Undo"))
        assertEquals("900", phone.activity.window.decorView.get<TextView>(R.id.reading_text).text.toString())
    }

    private fun Phone.firing() {
        touch("Kiln")
        touch("Firing 1: cone 6, Garden kiln")
        until("Before the kiln")
    }

    private fun Phone.plan(): DrawingView = window().filterIsInstance<DrawingView>().first { it.isShown && it.drawing?.grips?.isNotEmpty() == true }
}

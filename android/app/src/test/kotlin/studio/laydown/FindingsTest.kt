package studio.laydown

import android.content.Intent
import android.net.Uri
import android.view.ViewGroup
import android.widget.Button
import android.widget.TextView
import org.junit.Assert.assertEquals
import org.junit.Assert.assertTrue
import org.junit.Test
import org.junit.runner.RunWith
import org.robolectric.RobolectricTestRunner
import org.robolectric.Shadows.shadowOf
import studio.laydown.core.Mark
import studio.laydown.desktop.Look
import studio.laydown.desktop.Phone
import studio.laydown.findings.ChartPlot
import javax.xml.parsers.DocumentBuilderFactory

/** What fired pots say of a glaze, from the tab to the button that takes it over. */
@RunWith(RobolectricTestRunner::class)
class FindingsTest {
    @Test
    fun anEmptyStudioSaysWhatToDo() = Pottery.empty().use { phone ->
        phone.touch("Findings")
        phone.await("what to do") { phone.texts().any { "tap thin, right or thick" in it } }
    }

    @Test
    fun aGlazeSaysWhereItComesOutRightAndItsChartReadsAsWords() = Pottery.taught().use { phone ->
        phone.openFindings()
        val chart = phone.chart()
        val view = checkNotNull(chart.chart)
        assertEquals(listOf(Mark.THICK, Mark.RIGHT, Mark.THIN), view.dots.map { it.mark }.distinct())
        assertEquals(view.words, chart.contentDescription)
        assertTrue(view.words, "3 thin at" in view.words && "Today's aim" in view.words)
        assertTrue(phone.texts().any { it.startsWith("Right between") })
        assertTrue(phone.all().any { it.startsWith("1 control piece, ") })
    }

    @Test
    fun theBestIsTakenOverAndTakenBack() = Pottery.taught().use { phone ->
        phone.openFindings()
        val button = phone.takes().single()
        phone.touch(button)
        phone.await("what was kept") { phone.said("Ash white now starts from") != null }
        phone.await("no button, since nothing is left to take") { phone.takes().isEmpty() }
        phone.touch("Undo")
        phone.until("Undone.")
        phone.await("the button again") { phone.takes() == listOf(button) }
    }

    @Test
    fun aPageSaysSizesSetsAndUseEachWithItsChartInWords() = Pottery.taught().use { phone ->
        phone.openFindings()
        for (title in listOf("Sizes: straight mug, inside", "Sets that match", "Use")) assertTrue(title, title in phone.all())
        assertTrue(phone.all().any { it.startsWith("Next size, ") })
        val charts = phone.window().filterIsInstance<ChartPlot>().mapNotNull { it.chart }
        val sizes = charts.single { it.title.startsWith("Sizes") }
        assertEquals(3, sizes.lines.size)
        assertTrue(sizes.words, " ml " in sizes.words && " g" in sizes.words)
        assertTrue("the faults", charts.any { it.title == "Runs" })
    }

    @Test
    fun aDriftIsAnsweredAndUndone() = Pottery.taught().use { phone ->
        phone.openFindings()
        phone.touch("Noted: start over")
        phone.await("what was noted") { phone.said("Noted. The drift count starts again.") != null }
        phone.await("no drift") { phone.window().none { it is Button && it.text == "Noted: start over" } }
        phone.touch("Undo")
        phone.until("Undone.")
        phone.await("the drift again") { phone.window().any { it is Button && it.text == "Noted: start over" } }
    }

    @Test
    fun theChartsAreSharedAsOnePicture() = Pottery.taught().use { phone ->
        phone.openFindings()
        phone.touch("Share charts")
        phone.await("the file") { shadowOf(phone.activity).peekNextStartedActivity() != null }
        val send = checkNotNull(shadowOf(phone.activity).nextStartedActivity.getParcelableExtra(Intent.EXTRA_INTENT, Intent::class.java))
        assertEquals(Intent.ACTION_SEND to "image/svg+xml", send.action to send.type)
        val uri = checkNotNull(send.getParcelableExtra(Intent.EXTRA_STREAM, Uri::class.java))
        val picture = checkNotNull(phone.activity.contentResolver.openInputStream(uri)).use {
            DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(it)
        }
        val charts = phone.window().filterIsInstance<ChartPlot>().size
        assertEquals(charts, picture.getElementsByTagName("g").length)
    }

    @Test
    fun aMovedTargetIsTakenBackInOneTap() = Pottery.taught().use { phone ->
        val keep = { phone.window().filterIsInstance<Button>().firstOrNull { it.isShown && it.text.startsWith("Keep ") }?.text?.toString() }
        phone.await("the announcement") { phone.texts().any { "After 13 fired pots: " in it } && keep() != null }
        val before = checkNotNull(keep()).removePrefix("Keep ")
        phone.touch("Keep $before")
        phone.await("the target of before") { phone.texts().any { it == before } && keep() == null }
    }

    @Test
    fun theGlazesPageIsThereAgainOnceThePhoneIsTurned() = Pottery.taught().use { phone ->
        phone.openFindings()
        phone.rotate()
        phone.await("the chart") { phone.window().any { it is ChartPlot } }
        phone.tap("Back")
        phone.until("Iron red")
    }

    /** Five places fit on the narrowest phone, in large type and at the side; a longer word ends in dots within its own place. */
    @Test
    fun fivePlacesFit() {
        for (look in listOf(Look(), Look(fontScale = 1.5f), Look.SMALL, Look(landscape = true))) {
            Pottery.empty(look).use { phone ->
                phone.until("Before the first piece")
                val tabs = TABS.map { phone.activity.findViewById<ViewGroup>(it) }
                for (tab in tabs) {
                    val words = tab.getChildAt(1) as TextView
                    assertEquals("${words.text} in $look", 0, words.layout.getEllipsisCount(0))
                    assertTrue(words.right <= tab.width && words.bottom <= tab.height)
                }
                assertEquals(listOf("Weigh", "Buckets", "Kiln", "Findings", "Studio"), tabs.map { (it.getChildAt(1) as TextView).text })
                val findings = tabs[3].getChildAt(1) as TextView
                findings.text = "Erkenntnisse aus Bränden"
                phone.idle()
                assertTrue(findings.width <= tabs[3].width && findings.lineCount == 1)
                assertEquals(emptyList<String>(), phone.audit())
            }
        }
    }

    private fun Phone.openFindings() {
        touch("Findings")
        touch("Ash white")
        await("the window") { texts().any { it.startsWith("Right between") } }
    }

    /** All that the page says, wherever it is scrolled to. */
    private fun Phone.all() = window().filterIsInstance<TextView>().map { it.text.toString() }

    private fun Phone.chart() = window().filterIsInstance<ChartPlot>().first()

    /** What the button says that takes the best over, wherever the page is scrolled to. */
    private fun Phone.takes(): List<String> =
        window().filterIsInstance<Button>().map { it.text.toString() }.filter { it.startsWith("Start from ") }

    private companion object {
        val TABS = listOf(R.id.tab_weigh, R.id.tab_buckets, R.id.tab_kiln, R.id.tab_findings, R.id.tab_studio)
    }
}

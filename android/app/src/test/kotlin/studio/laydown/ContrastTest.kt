package studio.laydown

import android.graphics.Bitmap
import android.view.View
import android.widget.Switch
import org.junit.Assert.assertEquals
import org.junit.Test
import org.junit.runner.RunWith
import org.robolectric.RobolectricTestRunner
import studio.laydown.desktop.Look
import studio.laydown.desktop.Phone
import studio.laydown.desktop.contrast
import studio.laydown.desktop.edgeOf
import studio.laydown.desktop.trackOf
import studio.laydown.findings.ChartPlot
import studio.laydown.weigh.GaugeView

/**
 * What is not text stands out at least 3 to 1 (WCAG 2.2, 1.4.11), by day and by night, measured from the dots of the screen. The audit
 * of every screen measures edges of what is tapped and all words; here are the drawings, and the figures of each kind.
 */
@RunWith(RobolectricTestRunner::class)
class ContrastTest {
    @Test
    fun byDay() = measured(Look())

    @Test
    fun byNight() = measured(Look(night = true))

    private fun measured(look: Look) {
        val figures = sortedMapOf<String, Double>()
        Pottery.taught(look).use { phone ->
            phone.await("the aim") { phone.texts().any { it.startsWith("Aim for ") } }
            phone.photographed { picture ->
                for ((name, id) in EDGES) figures[name] = checkNotNull(edgeOf(phone.part(id), picture)) { "$name has no edge" }
                figures["the line of the gauge"] = phone.part<GaugeView>(R.id.gauge).let { gauge ->
                    val dp = gauge.resources.displayMetrics.density
                    gauge.against(picture, 13 * dp, gauge.height - 12 * dp, ground = 2 * dp to gauge.height / 2f)
                }
                figures["the mark of the open tab"] = phone.part<View>(R.id.tab_weigh).let { tab ->
                    tab.against(picture, tab.width / 2f - 22 * tab.resources.displayMetrics.density, tab.height * 0.35f, ground = 2f to 2f)
                }
            }
            phone.touch("Findings")
            phone.touch("Ash white")
            phone.await("a chart") { phone.window().any { it is ChartPlot && it.isShown } }
            phone.photographed { picture ->
                val plot = phone.window().filterIsInstance<ChartPlot>().first { it.isShown }
                val dp = plot.resources.displayMetrics.density
                figures["an axis of a chart"] =
                    plot.against(picture, plot.width - 9 * dp, 8 * dp + plot.resources.getDimension(R.dimen.chart), ground = plot.width - 2 * dp to 2 * dp)
            }
            phone.back()
            phone.touch("Studio")
            phone.touch("Units, sound and touch")
            phone.await("a switch") { phone.window().any { it is Switch && it.isShown } }
            for (state in 1..2) {
                val switch = phone.window().filterIsInstance<Switch>().first { it.isShown }
                phone.scrollTo(switch.text.toString())
                phone.photographed { figures[if (switch.isChecked) "a switch that is on" else "a switch that is off"] = checkNotNull(trackOf(switch, it)) }
                if (state == 1) phone.touch(switch.text.toString())
            }
        }
        figures.forEach { (name, ratio) -> println("contrast, ${look.words}: $name %.2f".format(ratio)) }
        assertEquals(emptyMap<String, Double>(), figures.filterValues { it < 3.0 })
        assertEquals(EDGES.size + 5, figures.size)
    }

    private fun Phone.photographed(work: (Bitmap) -> Unit) {
        idle()
        val picture = picture()
        work(picture)
        picture.recycle()
    }

    private fun <T : View> Phone.part(id: Int): T = activity.window.decorView.get(id)

    /** How far the dot at [x] and [y] of this view stands out from the one at [ground]. */
    private fun View.against(picture: Bitmap, x: Float, y: Float, ground: Pair<Float, Float>): Double {
        val at = IntArray(2).also(::getLocationOnScreen)
        fun dot(x: Float, y: Float) = picture.getPixel((at[0] + x).toInt(), (at[1] + y).toInt())
        return contrast(dot(x, y), dot(ground.first, ground.second))
    }

    private companion object {
        val EDGES = listOf(
            "a key" to R.id.key_5, "a quiet key" to R.id.key_delete, "what is chosen" to R.id.choose_form, "the aim" to R.id.target,
            "the way" to R.id.way,
        )
    }
}

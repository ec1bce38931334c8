package studio.laydown.weigh

import android.content.res.Configuration
import studio.laydown.R

/**
 * How the Weigh screen is laid out so that all of it is seen at once: [layout] the whole, [upper] what is chosen and the aim, [stacked]
 * whether the bare and the glazed piece stand above one another.
 */
data class BenchShape(val layout: Int, val upper: Int, val stacked: Boolean) {
    companion object {
        // From here on letters are large: see `Configuration.fontScale`.
        private const val LARGE = 1.3f

        fun of(screen: Configuration): BenchShape {
            val (width, height) = screen.screenWidthDp to screen.screenHeightDp
            val lying = screen.orientation == Configuration.ORIENTATION_LANDSCAPE
            val large = screen.fontScale >= LARGE
            val narrow = width < 380
            val roomy = !large && if (lying) height >= 400 else !narrow && height >= 880
            val layout = when {
                lying -> R.layout.weigh_side
                height >= (if (narrow) 800 else 760) && !large -> R.layout.weigh_tall
                else -> R.layout.weigh_short
            }
            // Two fields above one another take 76 dp more, which the shortest screens do not have.
            val stacked = (large || narrow) && height >= if (lying) 360 else 670
            return BenchShape(layout, if (roomy) R.layout.weigh_upper_roomy else R.layout.weigh_upper, stacked)
        }
    }
}

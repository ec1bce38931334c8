package studio.laydown.desk

import org.junit.Assert.assertEquals
import org.junit.Test
import org.junit.runner.RunWith
import org.robolectric.Robolectric
import org.robolectric.RobolectricTestRunner
import studio.laydown.MainActivity
import studio.laydown.R
import android.widget.TextView

@RunWith(RobolectricTestRunner::class)
class BenchTest {
    @Test
    fun starts() {
        val a = Robolectric.buildActivity(MainActivity::class.java).setup().get()
        assertEquals("0 taps", a.findViewById<TextView>(R.id.count).text.toString())
    }
}

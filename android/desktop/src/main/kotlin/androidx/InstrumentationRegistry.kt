/*
 * Stand-ins for the types of androidx.test that Robolectric calls: that library is published in Google's repository only,
 * and this build uses Maven Central alone. Two of them do real work (see the lifecycle monitor); the rest are the shapes
 * Robolectric links against.
 */
package androidx.test.platform.app

import android.app.Instrumentation
import android.os.Bundle

/** Saves the instrumentation that Robolectric registers at the start of each test. */
object InstrumentationRegistry {
    private var current: Instrumentation? = null

    @JvmStatic
    fun registerInstance(instrumentation: Instrumentation?, @Suppress("unused", "UNUSED_PARAMETER") arguments: Bundle?) {
        current = instrumentation
    }

    @JvmStatic
    fun getInstrumentation(): Instrumentation = checkNotNull(current) { "no Robolectric test is running" }
}

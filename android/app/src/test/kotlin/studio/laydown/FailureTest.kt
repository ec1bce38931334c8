package studio.laydown

import org.junit.Assert.assertArrayEquals
import org.junit.Assert.assertTrue
import org.junit.Test
import org.junit.runner.RunWith
import org.robolectric.RobolectricTestRunner

/** When the studio cannot be opened, the phone says why, deletes nothing, and tries again when asked. */
@RunWith(RobolectricTestRunner::class)
class FailureTest {
    @Test
    fun aFileThatIsNoStudioIsLeftAloneAndAskedForAgain() {
        val letter = "This is a letter, and no studio at all.\n".repeat(60).toByteArray()
        val file = Pottery.file.apply { parentFile?.mkdirs() }
        file.writeBytes(letter)
        Pottery.empty().use { phone ->
            phone.until("Try again")
            assertTrue(phone.texts().toString(), phone.texts().any { "was not made by laydown" in it })
            assertArrayEquals(letter, file.readBytes())
            // The potter moves the file out of the way.
            assertTrue(file.delete())
            phone.tap("Try again")
            phone.until("Before the first piece")
        }
    }
}

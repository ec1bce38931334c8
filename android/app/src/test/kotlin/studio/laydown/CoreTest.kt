package studio.laydown

import org.junit.Assert.assertEquals
import org.junit.Assert.assertThrows
import org.junit.Assert.assertTrue
import org.junit.Before
import org.junit.Rule
import org.junit.Test
import org.junit.rules.TemporaryFolder
import org.junit.runner.RunWith
import org.robolectric.RobolectricTestRunner
import studio.laydown.core.BUILD_STAMP
import studio.laydown.core.Now
import studio.laydown.core.Studio
import studio.laydown.core.StudioException
import studio.laydown.core.buildStamp
import studio.laydown.core.uniffiEnsureInitialized
import java.io.File

/** The boundary to the core as the shell meets it: the library is the one the generated code was made from, and it answers. */
@RunWith(RobolectricTestRunner::class)
class CoreTest {
    @get:Rule
    val folder = TemporaryFolder()

    private val now = Now(unixMs = 1_780_000_000_000, utcOffsetS = 3_600)

    @Before
    fun checksums() = uniffiEnsureInitialized()

    @Test
    fun theLibraryIsTheOneTheseBindingsAreFor() = assertEquals(BUILD_STAMP, buildStamp())

    @Test
    fun aNewStudioOpensAndOpensAgain() {
        val file = File(folder.root, "studio.db")
        val first = Studio.open(file.path, now).use { it.setup(now) }
        val second = Studio.open(file.path, now).use { it.setup(now) }
        assertTrue(first.sections.isNotEmpty())
        assertEquals(first, second)
    }

    @Test
    fun aFileThatIsNoStudioIsRefusedAndLeftAlone() {
        val file = File(folder.root, "letter.db").apply { writeText("a letter to a friend, of no less than a page.\n".repeat(200)) }
        val before = file.readBytes()
        assertThrows(StudioException.NotAStudio::class.java) { Studio.open(file.path, now).close() }
        assertTrue(before.contentEquals(file.readBytes()))
    }

    @Test
    fun aClosedStudioSaysSo() {
        val studio = Studio.open(File(folder.root, "studio.db").path, now)
        studio.close()
        assertThrows(IllegalStateException::class.java) { studio.setup(now) }
    }
}

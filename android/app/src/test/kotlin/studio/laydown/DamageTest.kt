package studio.laydown

import org.junit.Assert.assertEquals
import org.junit.Assert.assertTrue
import org.junit.Test
import org.junit.runner.RunWith
import org.robolectric.RobolectricTestRunner

/** A studio whose file is damaged: that is said, what can be read is saved, and the damaged file is kept. */
@RunWith(RobolectricTestRunner::class)
class DamageTest {
    @Test
    fun whatCanBeReadIsSavedAndTheDamagedFileIsSaved() {
        Pottery.damaged().use { phone ->
            phone.await("what is wrong") { phone.said("The studio's file is damaged and was left unchanged.") != null }
            phone.touch("Save what can be read")
            phone.await("how much was saved") { phone.texts().any { "were saved" in it } }
            phone.touch("OK")
            phone.ready()
            assertTrue(phone.texts().any { it.startsWith("Form: ") })
        }
        val damaged = Pottery.file.parentFile?.listFiles().orEmpty().filter { "damaged" in it.name }
        assertEquals("${Pottery.file.parentFile?.list()?.toList()}", 1, damaged.size)
    }
}

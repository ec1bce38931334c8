package studio.laydown

import android.app.Activity
import android.content.Intent
import android.net.Uri
import org.junit.Assert.assertEquals
import org.junit.Test
import org.junit.runner.RunWith
import org.robolectric.ParameterizedRobolectricTestRunner
import org.robolectric.ParameterizedRobolectricTestRunner.Parameters
import org.robolectric.Shadows.shadowOf
import studio.laydown.desktop.Card
import studio.laydown.desktop.Look
import studio.laydown.desktop.Phone
import java.io.File
import java.util.concurrent.CountDownLatch

/**
 * Every screen and state of the app, in every look, each on a new phone: a picture of each in target/screens, and each audited
 * for size, names and words that are cut. Add a screen by adding a test: the way to it, as a potter goes there.
 */
@RunWith(ParameterizedRobolectricTestRunner::class)
class ScreensTest(private val look: Look) {
    @Test
    fun first() = screen("first", Pottery::empty) { until("Before the first piece") }

    @Test
    fun weigh() = screen("weigh") { ready() }

    @Test
    fun weighWithin() = weighed("weigh-within", "20.9", "0.4 g over the aim")

    @Test
    fun weighShort() = weighed("weigh-short", "17.2", "Add 2.0 g")

    @Test
    fun weighOver() = weighed("weigh-over", "24.0", "OVER")

    @Test
    fun weighRefused() = weighed("weigh-refused", "900", "900.0 g is more glaze")

    @Test
    fun weighTwo() = screen("weigh-two") {
        touch(WAY)
        until("Bare piece  g")
        key("412.3")
        touch("Next: Glazed piece")
        await("the last field") { shows("Save") }
        key("433.1")
        await("a verdict") { shows("WITHIN") }
    }

    @Test
    fun weighSaved() = screen("weigh-kept") {
        ready()
        key("20.9")
        await("a verdict") { shows("WITHIN") }
        tap("Save")
        until("Undo")
    }

    @Test
    fun weighChoosing() = screen("weigh-choosing") {
        ready()
        tap(R.id.choose_form)
        until("Choose a form")
    }

    @Test
    fun weighZone() = screen("weigh-zone") {
        ready()
        tap(R.id.choose_zone)
        until("Insides waiting for outsides")
    }

    @Test
    fun weighComeBack() = screen("weigh-come-back") {
        ready()
        tap(R.id.choose_zone)
        touch("Ash white inside, 20 min ago")
        await("the piece") { texts().any { it.startsWith("Zone: Outside, ") } }
    }

    @Test
    fun weighMore() = screen("weigh-target") {
        ready()
        key("20.9")
        until("WITHIN")
        tap(R.id.target)
        until("Details")
    }

    @Test
    fun weighByFiredPots() = screen("weigh-fired-pots", Pottery::taught) {
        ready()
        key("20.9")
        until("WITHIN")
        tap(R.id.target)
        until("Details")
    }

    @Test
    fun whyThisTarget() = screen("why-target", Pottery::taught) {
        ready()
        tap(R.id.target)
        touch("Why this target?")
        await("the evidence") { texts().any { it.startsWith("Percentages say") } }
    }

    @Test
    fun weighRecent() = screen("weigh-recent") {
        recent("3 coats today, 1 within.")
    }

    @Test
    fun weighTwoLarge() = screen("weigh-two-kilos") {
        ready()
        touch(WAY)
        until("Bare piece  g")
        key("1412.3")
        touch("Next: Glazed piece")
        await("the last field") { shows("Save") }
        key("1433.1")
        until("WITHIN")
    }

    @Test
    fun weighCannotTell() = weighed("weigh-cannot-tell", "19.0", "Save as it is")

    @Test
    fun coat() = screen("coat") {
        ready()
        coatOf("22.9 g")
        until("Wet weight")
    }

    @Test
    fun coatCorrect() = screen("coat-correct") {
        ready()
        coatOf("22.9 g")
        touch("Correct this coat")
        until("Coat as weighed")
    }

    @Test
    fun buckets() = screen("buckets") {
        touch("Buckets")
        until("Iron red")
    }

    @Test
    fun noBuckets() = screen("buckets-empty", Pottery::empty) {
        touch("Buckets")
        until("Add a glaze")
    }

    @Test
    fun bucket() = screen("bucket") {
        touch("Buckets")
        touch("Ash white")
        until("Thin")
    }

    @Test
    fun check() = screen("sheet-check") {
        touch("Buckets")
        touch("Ash white")
        touch("Check")
        until("Method")
    }

    @Test
    fun bucketNote() = screen("sheet-bucket-note") {
        touch("Buckets")
        touch("Ash white")
        touch("Add a note")
        until("What")
    }

    @Test
    fun mix() = screen("sheet-mix") {
        touch("Buckets")
        touch("Ash white")
        touch("Mix a new lot")
        until("How much")
    }

    @Test
    fun materials() = screen("sheet-glaze-materials") {
        touch("Studio")
        await("the glazes") { scrollTo("Add a glaze") }
        touch("Ash white")
        await("the materials") { scrollTo("Materials") }
    }

    @Test
    fun scaleTest() = screen("sheet-scale-test") {
        touch("Studio")
        await("the way to it") { scrollTo("Test a scale") }
        touch("Test a scale")
        until("Ten readings")
    }

    @Test
    fun bisqueLot() = screen("sheet-bisque-lot") {
        touch("Studio")
        await("the way to it") { scrollTo("Add a bisque lot") }
        touch("Add a bisque lot")
        await("the ways of soaking") { scrollTo("Soaked by") }
    }

    @Test
    fun tileLadder() = screen("sheet-tile-ladder") {
        touch("Studio")
        await("the way to it") { scrollTo("Plan a ladder of tiles") }
        touch("Plan a ladder of tiles")
        await("how many") { scrollTo("How many tiles") }
    }

    @Test
    fun dryWeight() = screen("sheet-dry-weight") {
        touch("Kiln")
        touch("Weigh a dry piece")
        await("what to weigh") { scrollTo("Piece, bone dry") }
    }

    @Test
    fun plateByItsWidth() = screen("sheet-form-plate") {
        touch("Studio")
        touch("Add a form")
        await("the plate") { scrollTo("Plate") }
        touch("Plate")
        await("its width") { scrollTo("Width at the widest") }
    }

    @Test
    fun kiln() = screen("kiln", Pottery::fired) {
        touch("Kiln")
        until("Start a firing")
    }

    @Test
    fun noKiln() = screen("kiln-empty", Pottery::empty) {
        touch("Kiln")
        until("Add a kiln first")
    }

    @Test
    fun newKiln() = screen("sheet-kiln", Pottery::empty) {
        touch("Kiln")
        touch("Add a kiln first")
        touch("Round shelves")
    }

    @Test
    fun firingEditor() = screen("sheet-firing", Pottery::fired) {
        firing()
        touch("Change")
        until("Top temperature, °C")
    }

    @Test
    fun loading() = screen("firing-loading", Pottery::loading) {
        firing()
        until("Before the kiln")
    }

    @Test
    fun loaded() = screen("firing-loaded", Pottery::loading) {
        firing()
        touch("Load all waiting pieces")
        await("pieces on the shelf") { grips().orEmpty().isNotEmpty() }
        drawingOnTop()
        tapGrip(checkNotNull(grips()).first().key)
    }

    @Test
    fun fired() = screen("firing-fired", Pottery::fired) {
        firing()
        until("Look at the pieces: 3 left")
    }

    @Test
    fun look() = screen("look", Pottery::fired) {
        firing()
        touch("Look at the pieces: 3 left")
        until("Next piece")
    }

    @Test
    fun looked() = screen("look-seen", Pottery::fired) {
        firing()
        touch("Look at the pieces: 3 left")
        touch("Previous piece")
        until("Photo 1 of 1. Tap to look closer.")
    }

    @Test
    fun lookFaults() = screen("look-faults", Pottery::fired) {
        firing()
        touch("Look at the pieces: 3 left")
        touch("Previous piece")
        await("the drawing") { grips().orEmpty().isNotEmpty() }
        drawingOnTop()
    }

    @Test
    fun lookEveryFault() = screen("look-every-fault", Pottery::fired) {
        firing()
        touch("Look at the pieces: 3 left")
        await("the faults") { scrollTo("Bloated") }
    }

    @Test
    fun witnessCones() = screen("sheet-witness-cones", Pottery::loading) {
        firing()
        touch("None yet. Placed beside the ware, they show how much heat it got.")
        touch("Other cones")
        fillField("Which cones", "05 06 07")
        await("the question") { scrollTo("Did you mean 5, 6, 7?") }
    }

    @Test
    fun unweighed() = screen("sheet-piece", Pottery::loading) {
        firing()
        touch("Add pieces that were not weighed")
        await("how many") { scrollTo("How many") }
    }

    @Test
    fun archived() = screen("archived", Pottery::furnished) {
        touch("Studio")
        touch("Soup bowl")
        await("the way to archive it") { scrollTo("Archive this form") }
        touch("Archive this form")
        touch("Archived")
        until("Forms")
    }

    @Test
    fun lookPhoto() = screen("look-photo", Pottery::fired) {
        firing()
        touch("Look at the pieces: 3 left")
        touch("Previous piece")
        touch("Photo 1 of 1. Tap to look closer.")
        until("Remove photo")
    }

    @Test
    fun contactSheet() = screen("contact-sheet", Pottery::fired) {
        firing()
        touch("Contact sheet")
        await("the sheet") { texts().any { it.startsWith("Firing 1: cone 6, Garden kiln, ") } }
    }

    @Test
    fun onePiece() = screen("contact-sheet-piece", Pottery::fired) {
        firing()
        touch("Look at the pieces: 3 left")
        touch("Previous piece")
        touch("This piece as a picture")
        await("the page") { texts().any { it.startsWith("Firing 1: cone 6, Garden kiln, ") && "Breakfast mug" in it } }
    }

    @Test
    fun find() = screen("find", Pottery::fired) {
        touch("Kiln")
        touch("Find a piece")
        until("Form: Any form")
    }

    @Test
    fun findRefused() = screen("find-refused", Pottery::fired) {
        touch("Kiln")
        touch("Find a piece")
        touch("Its first letters will do")
        type("3O79A")
        await("the sentence") { said("No code contains “O”") != null }
    }

    @Test
    fun piece() = screen("piece", Pottery::fired) {
        coatOf("22.9 g")
        touch("The whole piece")
        until("Firings")
    }

    @Test
    fun compare() = screen("compare", Pottery::fired) {
        coatOf("22.9 g")
        touch("The whole piece")
        touch("Compare with another piece")
        until("Side by side")
    }

    @Test
    fun findings() = screen("findings", Pottery::taught) {
        touch("Findings")
        until("Iron red")
    }

    @Test
    fun noFindings() = screen("findings-empty", Pottery::empty) {
        touch("Findings")
        await("what to do") { texts().any { "thin, right or thick" in it } }
    }

    @Test
    fun glazeFindings() = screen("findings-glaze", Pottery::taught) {
        findings("Ash white")
    }

    @Test
    fun glazeFindingsBelow() = screen("findings-glaze-below", Pottery::taught) {
        findings("Ash white")
        await("the rest of the page") { scrollTo("Last set: Breakfast mug, inside") }
    }

    @Test
    fun glazeFindingsSizes() = screen("findings-glaze-sizes", Pottery::taught) {
        findings("Ash white")
        await("the sizes") { scrollTo("Sizes: straight mug, inside") }
        scroll(0.6f)
    }

    @Test
    fun glazeFindingsDrift() = screen("findings-glaze-drift", Pottery::taught) {
        findings("Ash white")
        await("the drift") { scrollTo("Coats against aims") }
        scroll(0.6f)
    }

    @Test
    fun weighMoved() = screen("weigh-moved", Pottery::taught) {
        ready()
        await("the announcement") { texts().any { "After 13 fired pots: " in it } }
    }

    @Test
    fun studio() = screen("studio") {
        touch("Studio")
        until("Forms")
    }

    @Test
    fun backup() = screen("backup") { toBackup() }

    @Test
    fun backupByItself() = screen("backup-by-itself") {
        toBackup()
        val card = Card.insert(File(activity.cacheDir, "card").apply { mkdirs() })
        chooseCard()
        card.isIn = false
        touch("Back up there now")
        await("what went wrong") { scrollTo("Automatic backup") && said("No backup was made (") != null }
    }

    @Test
    fun backupTables() = screen("backup-tables") {
        toBackup()
        touch("Tables for a spreadsheet")
        until("One line per coat: form, glaze, weight, verdict")
    }

    @Test
    fun cautions() = screen("cautions") {
        touch("Studio")
        touch("Cautions")
        await("the cautions") { texts().any { "silica" in it } }
    }

    @Test
    fun form() = screen("sheet-form") {
        touch("Studio")
        touch("Add a form")
        until("Shape")
    }

    @Test
    fun formByPoints() = screen("sheet-form-points") {
        byPoints()
        drawingOnTop()
    }

    @Test
    fun formTable() = screen("sheet-form-table") {
        byPoints()
        touch("Add a row")
    }

    @Test
    fun formDragged() = screen("sheet-form-dragged") {
        byPoints()
        drawingOnTop()
        dragGrip("overlap", byX = 0f, byY = 0.2f)
        holdGrip("point.3", byX = -0.12f, byY = 0.05f)
        await("the point's name") { texts().any { it.startsWith("Point 4: ") } }
    }

    @Test
    fun formChosen() = screen("sheet-form-point") {
        byPoints()
        drawingOnTop()
        dragGrip("overlap", byX = 0f, byY = 0.2f)
        tapGrip("point.3")
        await("the way to take it away") { scrollTo("Remove this point") }
    }

    @Test
    fun formByPhoto() = screen("sheet-form-photo") {
        byPhoto()
        scroll()
    }

    @Test
    fun formNotTraced() = screen("sheet-form-photo-refused") {
        byPhoto()
        photograph(Picture.plain())
        await("the sentence") { refusals().isNotEmpty() }
    }

    @Test
    fun formTraced() = screen("sheet-form-photo-traced") {
        byPhoto()
        photograph(Picture.vase())
        await("the outline") { grips() != null }
    }

    @Test
    fun formMarked() = screen("sheet-form-photo-marks") {
        byPhoto()
        photograph(Picture.vase())
        await("the outline") { grips() != null }
        touch("Coin or ruler")
        await("the marks") { grips().orEmpty().size == 2 }
        drawingOnTop()
    }

    @Test
    fun recent() = screen("lately") {
        touch("Recent changes")
        until("Coat: Breakfast mug, inside, 20.9 g")
    }

    @Test
    fun recentChoosing() = screen("lately-choosing") {
        touch("Recent changes")
        touch("Coat: Breakfast mug, inside, 20.9 g")
        until("Undo")
    }

    @Test
    fun history() = screen("history") {
        touch("Studio")
        touch("Ash white")
        touch("History")
        until("Glaze: Ash white")
    }

    @Test
    fun devices() = screen("devices") {
        touch("Studio")
        touch("Phones in this studio")
        until("Sync location")
    }

    @Test
    fun placeEditor() = screen("sheet-meeting-place") {
        devicesPage()
        touch("Choose a location")
        touch("A WebDAV server")
        fillField("Address", "http://192.168.1.20/dav/studio")
        fillField("Password", "only for the sink")
        await("the warning") { said("With http:// anyone on this network") != null }
    }

    @Test
    fun placeSealed() = screen("sheet-meeting-place-sealed") {
        devicesPage()
        touch("Choose a location")
        touch("Encrypt with a passphrase")
        fillField("Passphrase", "slip")
        await("the refusal") { refusals().any { it.startsWith("Too short") } }
    }

    @Test
    fun sync() {
        val leave = CountDownLatch(1)
        Loopback { leave.await() }.use { server ->
            screen("devices-meeting") {
                devicesPage()
                meetAt(server.address)
                touch("Sync now")
                until("Stop")
            }
            leave.countDown()
        }
    }

    @Test
    fun record_sync() = screen("devices-met") {
        devicesPage()
        shelf()
        meetThere(passphrase = "slip and sieve")
        touch("Sync now")
        await("what went") { said("Last sync: 10:15. Sent: ") != null }
    }

    @Test
    fun notMet() = screen("devices-refused") {
        devicesPage()
        shelf()
        meetThere(passphrase = "slip and sieve")
        touch("Sync now")
        await("what went") { said("Last sync: 10:15. Sent: ") != null }
        touch("Change the location")
        fillField("Passphrase", "slip and seive")
        savePlace()
        touch("Sync now")
        await("the refusal") { said("Tried 10:15. ") != null }
    }

    @Test
    fun sizes() = screen("sizes") {
        touch("Studio")
        touch("Compare sizes")
        until("Based on")
    }

    @Test
    fun noSizes() = screen("sizes-empty", Pottery::empty) {
        touch("Studio")
        touch("Compare sizes")
        await("what to do") { texts().any { "control piece" in it } }
    }

    @Test
    fun formOfOld() = screen("sheet-form-kept") {
        touch("Studio")
        touch("Breakfast mug")
        until("Breakfast mug")
    }

    @Test
    fun glazeRefused() = screen("sheet-glaze-refused") {
        touch("Studio")
        touch("Add a glaze")
        touch("Save")
        await("the sentence") { texts().any { "type something" in it } }
    }

    @Test
    fun preferences() = screen("sheet-preferences") {
        touch("Studio")
        touch("Units, sound and touch")
        until("Weights")
    }

    @Test
    fun throwAway() = screen("sheet-question") {
        touch("Studio")
        touch("Add a scale")
        touch("Bench scale")
        type("Little scale")
        tap("Back")
        until("Save changes?")
    }

    @Test
    fun notAStudio() = screen("failure", { look ->
        Pottery.file.apply { parentFile?.mkdirs() }.writeText("This is a letter and no studio at all. ".repeat(40))
        Pottery.empty(look)
    }) { until("Try again") }

    @Test
    fun damaged() = screen("failure-damaged", Pottery::damaged) { until("Save what can be read") }

    @Test
    fun importing() = screen("import") {
        touch("Studio")
        touch("Backup")
        touch("Your spreadsheet")
        touch("Choose the file")
        await("the request") { request != null }
        val place = Uri.parse("content://elsewhere/readings.csv")
        val text = "Date,Form,Glaze,Side,Wet weight (g)\n2025-03-04,Breakfast mug,Ash white,inside,20.4\n2025-03-05,Tall jug,Ash white,inside,31.0\n"
        shadowOf(activity.contentResolver).registerInputStream(place, text.byteInputStream())
        answer(Activity.RESULT_OK, Intent().setData(place))
        until("Form “Tall jug”")
    }

    private fun Phone.devicesPage() {
        touch("Studio")
        touch("Phones in this studio")
        until("Choose a location")
    }

    private fun Phone.findings(glaze: String) {
        touch("Findings")
        touch(glaze)
        await("what is known of it") { texts().any { it.startsWith("Right between") } }
    }

    private fun Phone.firing() {
        touch("Kiln")
        touch("Firing 1: cone 6, Garden kiln")
    }

    private fun weighed(name: String, digits: String, said: String) = screen(name) {
        ready()
        key(digits)
        await(said) { texts().any { it.startsWith(said) } }
    }

    /** The way to a screen is told in English; once there, the phone is set to the look's language. */
    private fun screen(name: String, phone: (Look) -> Phone = Pottery::furnished, go: Phone.() -> Unit) =
        phone(look.copy(language = ENGLISH)).use {
            it.go()
            it.idle()
            if (look.language != ENGLISH) {
                it.look = look
                it.awaitWords()
            }
            it.screenshot("$name-${look.words}")
            assertEquals(emptyList<String>(), it.audit())
        }

    /** Until everything is said anew, which another thread does: the texts have stayed for a while. */
    private fun Phone.awaitWords() {
        var (before, looks) = emptyList<String>() to 0
        await("words that stay") {
            val now = texts()
            looks = if (now == before) looks + 1 else 0
            before = now
            looks > LOOKS
        }
    }

    companion object {
        /** How often the texts are found as before until they are taken to stay. */
        const val LOOKS = 60
        const val ENGLISH = "en-rGB"
        const val WAY = "How you weigh: After tare. Tap to change to: Two weights."

        @JvmStatic
        @Parameters(name = "{0}")
        fun looks(): List<Array<Any>> = Look.ALL.map { arrayOf(it) }
    }
}

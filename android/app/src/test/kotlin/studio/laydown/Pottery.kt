package studio.laydown

import org.robolectric.RuntimeEnvironment
import studio.laydown.core.CommandResult
import studio.laydown.core.Now
import studio.laydown.core.EditorEntry
import studio.laydown.core.EditorKind
import studio.laydown.core.Spot
import studio.laydown.core.Studio
import studio.laydown.core.Touch
import studio.laydown.core.Value
import studio.laydown.core.WeighEntry
import studio.laydown.core.ZoneKind
import studio.laydown.desktop.Look
import studio.laydown.desktop.NothingToTap
import studio.laydown.desktop.Phone
import studio.laydown.core.Assessment as CoreLook
import java.io.File
import java.io.RandomAccessFile
import java.time.Clock
import java.time.Duration
import java.time.Instant
import java.time.ZoneOffset

/** An invented pottery, laid out through the studio's own commands before the app opens it. Its clock stands still. */
object Pottery {
    private val today: Instant = Instant.parse("2026-11-25T10:15:00Z")

    /** The app under test, with the clock stopped. */
    private val app: LaydownApplication
        get() = (RuntimeEnvironment.getApplication() as LaydownApplication).apply { clock = { Clock.fixed(today, ZoneOffset.UTC) } }

    /** The file that the app opens. */
    val file: File get() = File(app.filesDir, "studio.laydown")

    /** A phone with nothing in its studio. */
    fun empty(look: Look = Look()): Phone {
        app
        return Phone(look)
    }

    /** The studio as this phone began it twelve days ago. */
    private fun begun(): Studio = Studio.openHere(file.path, File(app.noBackupFilesDir, LaydownApplication.MARK).path, at(Duration.ofDays(12)))

    /** A phone whose studio can weigh: two forms, two glazes, a scale, a vessel, and some coats of the last days. */
    fun furnished(look: Look = Look()): Phone {
        app
        begun().use(::furnish)
        return Phone(look)
    }

    /** The same, but its file ends within a page, as when a card is pulled while the file is copied. */
    fun damaged(look: Look = Look()): Phone {
        app
        begun().use(::furnish)
        RandomAccessFile(file, "rw").use { it.setLength(it.length() - 100) }
        return Phone(look)
    }

    /** The same with a kiln of two shelves, and a firing into which nothing has been put yet; [more] coats besides. */
    fun loading(look: Look = Look(), more: Int = 0): Phone {
        app
        begun().use {
            furnish(it)
            repeat(more) { at ->
                val ago = Duration.ofMinutes(9).minusSeconds(at.toLong())
                it.coat(it.weigh(at(ago), null).entry, "20.5", ago)
            }
            it.beginFiring()
        }
        return Phone(look)
    }

    /** The same after its firing: one piece has been looked at and photographed, three have not. */
    fun fired(look: Look = Look()): Phone {
        app
        begun().use { studio ->
            furnish(studio)
            val firing = studio.beginFiring()
            studio.loadAll(at(Duration.ofMinutes(8)), firing)
            studio.advance(at(Duration.ofMinutes(4)), firing)
            val piece = studio.firing(at(Duration.ofMinutes(3)), firing).pieces.first().piece
            val picture = File.createTempFile("fired", ".jpg", app.cacheDir).apply { writeBytes(Picture.vase()) }
            studio.savePhoto(at(Duration.ofMinutes(3)), piece, firing, picture.path)
            studio.say(firing, piece, CoreLook.Thickness("inside", "thick"))
            studio.say(firing, piece, CoreLook.Fault("running", true))
            studio.say(firing, piece, CoreLook.Where(Touch.Add(Spot(0.8, 0.9))))
            studio.say(firing, piece, CoreLook.Liking(4u))
        }
        return Phone(look)
    }

    /** A phone on which a row of mugs from thin to thick has been fired and looked at. */
    fun taught(look: Look = Look()): Phone {
        app
        begun().use { studio ->
            furnish(studio)
            val bucket = studio.buckets(at(Duration.ofDays(1))).buckets.single { it.glaze == "Ash white" }.id
            val entry = studio.weigh(at(Duration.ofDays(1)), null).entry.copy(bucket = bucket, zone = ZoneKind.INSIDE)
            val row = ROW.mapIndexed { at, (net, thickness) ->
                val ago = Duration.ofHours(20).minusMinutes(2L * at)
                studio.coat(at(ago), studio.coat(entry, net, ago).id).piece to thickness
            }
            val firing = studio.beginFiring()
            studio.load(at(Duration.ofMinutes(8)), firing, row.map { it.first }, 0u)
            studio.advance(at(Duration.ofMinutes(4)), firing)
            for ((piece, thickness) in row) {
                studio.say(firing, piece, CoreLook.Thickness("inside", thickness))
                if (thickness == "thick") studio.say(firing, piece, CoreLook.Fault("running", true))
            }
        }
        return Phone(look)
    }

    /** Wet weights, in grams, and how thick each came out. */
    private val ROW = listOf(
        "16.9" to "thin", "17.8" to "thin", "18.4" to "thin", "18.9" to "right", "19.5" to "right", "20.2" to "right", "20.3" to "right",
        "21.1" to "right", "21.8" to "right", "22.6" to "right", "23.5" to "thick", "24.2" to "thick", "25.6" to "thick",
    )

    private fun Studio.say(firing: String, piece: String, look: CoreLook) = assess(at(Duration.ofMinutes(2)), firing, piece, look)

    private fun Studio.beginFiring(): String {
        val then = Duration.ofMinutes(9)
        editor(then, EditorKind.KILN, "name" to "Garden kiln", "round" to "yes", "across" to "40 cm", "shelves" to "2")
        return editor(then, EditorKind.FIRING, "cone" to "6", "program" to "100 an hour to 600, then 150").id
    }

    private fun furnish(studio: Studio) {
        val then = Duration.ofDays(12)
        val mug = studio.editor(then, EditorKind.FORM, "name" to "Breakfast mug", "class" to "cylinder_mug", "capacity" to "350 ml").id
        studio.editor(then, EditorKind.FORM, "name" to "Soup bowl", "class" to "deep_bowl", "capacity" to "700 ml")
        studio.editor(then, EditorKind.GLAZE, "name" to "Iron red", "sensitivity" to "high")
        studio.editor(Duration.ofDays(3), EditorKind.GLAZE, "name" to "Ash white", "sensitivity" to "medium", "specific_gravity" to "1.45")
        studio.editor(then, EditorKind.SCALE, "name" to "Bench scale", "capacity" to "2000 g", "step" to "0.1 g")
        studio.editor(then, EditorKind.VESSEL, "name" to "Jam jar", "empty" to "186.4 g", "with_water" to "498.2 g")
        val bucket = studio.buckets(at(then)).buckets.single { it.glaze == "Ash white" }.id
        val entry = studio.weigh(at(then), null).entry.copy(form = mug, bucket = bucket, zone = ZoneKind.INSIDE)
        studio.coat(entry, "20.5", Duration.ofHours(50)).let { studio.setControl(at(Duration.ofHours(50)), it.id, true) }
        studio.coat(entry, "19.1", Duration.ofMinutes(30))
        studio.coat(entry, "22.9", Duration.ofMinutes(20))
        studio.coat(entry, "20.9", Duration.ofMinutes(10))
    }

    private fun Studio.coat(entry: WeighEntry, net: String, ago: Duration): CommandResult = save(at(ago), entry.copy(net = net))

    private fun Studio.editor(ago: Duration, kind: EditorKind, vararg values: Pair<String, String>): CommandResult =
        saveRecord(at(ago), EditorEntry(kind, "", "", values.map { (key, text) -> Value(key, text) }))

    private fun at(ago: Duration) = Now(today.minus(ago).toEpochMilli(), 0)
}

/** Waits until [text] can be seen: the studio answers from another thread. */
fun Phone.until(text: String) = await("\"$text\"") { shows(text) }

/** Waits until the Weigh screen takes digits. */
fun Phone.ready() = await("the Weigh screen") { texts().any { it.startsWith("Coat, after tare ") } }

/** Opens the list of the coats of late, which lies behind their [count]. */
fun Phone.recent(count: String) {
    touch(count)
    await("the coats") { texts().any { it.startsWith("Breakfast mug, ") && it.endsWith(", inside") } }
}

/** Goes from the Weigh screen to the coat of this weight. */
fun Phone.coatOf(wet: String) {
    recent("3 coats today, 1 within.")
    touch(wet)
}

/** Taps the keys of the keypad, one after the other. */
fun Phone.key(digits: String) = digits.forEach { tap(if (it == '.' || it == ',') "Decimal mark" else it.toString()) }

/**
 * Taps what is [called] so as soon as it is there and at rest, scrolling to it if it must: a finger that comes down while an
 * answer of the studio moves the page lands beside it, and no person is that fast.
 */
fun Phone.touch(called: String) = await("\"$called\" to tap") {
    try {
        val before = placeOf(called)
        Thread.sleep(REST_MS)
        idle(REST_MS)
        if (placeOf(called) != before) return@await false
        tap(called)
        true
    } catch (notYet: NothingToTap) {
        false
    }
}

private fun Phone.placeOf(called: String) = labels().filter { it.text == called }.map { it.bounds }

private const val REST_MS = 16L

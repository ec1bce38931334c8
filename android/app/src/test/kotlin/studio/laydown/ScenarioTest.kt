package studio.laydown

import org.json.JSONArray
import org.json.JSONObject
import org.junit.Assert.assertTrue
import org.junit.Test
import org.junit.runner.RunWith
import org.robolectric.RobolectricTestRunner
import studio.laydown.core.BackupTrouble
import studio.laydown.core.Field
import studio.laydown.core.Folder
import studio.laydown.core.FolderEntry
import studio.laydown.core.Assessment
import studio.laydown.core.Now
import studio.laydown.core.EditorEntry
import studio.laydown.core.EditorKind
import studio.laydown.core.SyncProgress
import studio.laydown.core.Spot
import studio.laydown.core.Stop
import studio.laydown.core.Studio
import studio.laydown.core.StudioException
import studio.laydown.core.Touch
import studio.laydown.core.Value
import studio.laydown.core.ProgressListener
import studio.laydown.core.ClashAnswer
import studio.laydown.core.TargetChoice
import studio.laydown.core.WeighMode
import studio.laydown.core.WeighEntry
import studio.laydown.core.ZoneKind
import java.io.File
import java.lang.reflect.Modifier
import java.time.Instant
import java.util.concurrent.atomic.AtomicBoolean
import kotlin.io.path.createTempDirectory
import kotlin.math.abs

/** The scenarios in tests/scenarios, played through the generated Kotlin: Rust and Swift play the same files. */
@RunWith(RobolectricTestRunner::class)
class ScenarioTest {
    @Test
    fun everyScenarioAnswersAsWritten() {
        val differences = mutableListOf<String>()
        var played = 0
        for (file in here.listFiles { file -> file.extension == "json" }!!.sorted()) {
            val scenario = JSONObject(file.readText())
            Stage(scenario.getInt("utc_offset_s")).use { stage ->
                for ((at, step) in scenario.getJSONArray("steps").all<JSONObject>().withIndex()) {
                    val (outcome, answer) = stage.play(step)
                    val place = "${file.name}, step ${at + 1} (${step.getString("call")}: ${step.optString("say")}): $outcome"
                    compare(place, if (step.has(outcome)) step.get(outcome) else "no such outcome", answer, differences)
                    played++
                }
            }
        }
        assertTrue("only $played steps were found", played > 100)
        assertTrue(differences.joinToString("\n"), differences.isEmpty())
    }

    /** The studios of one scenario, and the names it has for ids. */
    private class Stage(private val utcOffsetS: Int) : AutoCloseable {
        /** With copies of what is given, for the studio lays a smaller picture beside a picture. */
        private val folder = createTempDirectory("scenario").toFile().also { for (name in GIVEN) File(here, name).copyTo(File(it, name)) }
        private val studios = mutableMapOf<String, Studio>()
        private val names = mutableMapOf<String, String>()
        private var unixMs = 0L
        private var numbered = 0

        /** Plays one step; says whether it was answered or refused, and with what, under the scenario's names. */
        fun play(step: JSONObject): Pair<String, Any?> {
            unixMs = if (step.has("at")) Instant.parse(step.getString("at")).toEpochMilli() else unixMs + 1000
            val now = Now(unixMs, utcOffsetS)
            val with = With(eachText(step.optJSONObject("with") ?: JSONObject(), ::known) as JSONObject)
            val (outcome, answer) = try {
                val name = step.optString("studio", "studio")
                val studio = studios.getOrPut(name) { Studio.open(File(folder, "$name.laydown").path, now) }
                "answers" to studio.call(step.getString("call"), now, with)
            } catch (refused: StudioException) {
                "refuses" to seen(refused) + ("error" to refused.javaClass.simpleName)
            }
            val bind = step.optJSONObject("bind") ?: JSONObject()
            for (name in bind.keys()) names[textAt(answer, bind.getString(name))] = "$$name"
            return outcome to named(answer)
        }

        /** What [text] of the scenario stands for. */
        private fun known(text: String): String = names.entries.find { it.value == text }?.key
            ?: text.replace("\$folder", folder.path)

        /** [value] with names in place of what differs from run to run: ids, and the folder. */
        private fun named(value: Any?): Any? = when (value) {
            is String -> names[value] ?: value.replace(folder.path, "\$folder").replace(ID) { id ->
                names.getOrPut(id.value) { "$${++numbered}" }
            }
            is List<*> -> value.map(::named)
            is Map<*, *> -> value.mapValues { named(it.value) }
            else -> value
        }

        override fun close() {
            studios.values.forEach(Studio::close)
            folder.deleteRecursively()
        }
    }

    /** What a step calls with. */
    private class With(val given: JSONObject) {
        fun text(key: String): String = given.getString(key)
        fun texts(key: String): List<String> = given.getJSONArray(key).all()
        fun flag(key: String) = given.getBoolean(key)
        fun number(key: String) = given.getInt(key)
        fun of(key: String) = With(given.getJSONObject(key))
        fun spot(key: String) = of(key).run { Spot(given.getDouble("x"), given.getDouble("y")) }

        fun values(key: String): List<Value> =
            given.optJSONObject(key)?.run { keys().asSequence().sorted().map { Value(it, getString(it)) }.toList() }.orEmpty()

        inline fun <reified T : Enum<T>> oneOf(key: String): T? =
            if (given.has(key)) enumValues<T>().single { folded(it.name) == folded(text(key)) } else null

        fun weighEntry(): WeighEntry? = given.optJSONObject("entry")?.let(::With)?.run {
            fun typed(key: String) = given.optString(key)
            WeighEntry(
                typed("form"), typed("bucket"), oneOf<ZoneKind>("zone"), typed("scale"), oneOf<WeighMode>("way"), typed("piece"),
                oneOf<Field>("field") ?: Field.NET, typed("net"), typed("bare"), typed("glazed"), typed("draft"), typed("confirmed"), typed("seconds"),
            )
        }

        fun kind(): EditorKind = oneOf<EditorKind>("kind")!!

        fun editorEntry(): EditorEntry = of("entry").run {
            EditorEntry(kind(), given.optString("id"), given.optString("subject"), values("values"), given.optString("draft"))
        }

        fun touch(): Touch = of("touch").run {
            when (text("how")) {
                "move" -> Touch.Move(text("grip"), spot("to"))
                "add" -> Touch.Add(spot("at"))
                "remove" -> Touch.Remove(text("grip"))
                else -> error("no touch is called ${text("how")}")
            }
        }

        fun look(): Assessment = of("look").run {
            when (text("of")) {
                "thickness" -> Assessment.Thickness(text("zone"), text("thickness"))
                "fault" -> Assessment.Fault(text("fault"), flag("on"))
                "where" -> Assessment.Where(touch())
                "liking" -> Assessment.Liking(number("stars").toUByte())
                "note" -> Assessment.Note(text("text"))
                "control" -> Assessment.Control(flag("on"))
                "again" -> Assessment.Again(flag("on"))
                else -> error("no look is called ${text("of")}")
            }
        }
    }

    /** A folder as a shell brings it: of Kotlin's own making, so that every call for a file goes over the boundary and back. */
    private class FilesFolder(private val root: File) : Folder {
        override fun get(path: String): ByteArray? = File(root, path).takeIf(File::isFile)?.readBytes()

        override fun put(path: String, bytes: ByteArray) = File(root, path).run {
            parentFile!!.mkdirs()
            writeBytes(bytes)
        }

        override fun remove(path: String): Boolean = File(root, path).run { !exists() || delete() }

        override fun list(): List<FolderEntry> = root.walk().filter(File::isFile)
            .map { FolderEntry(it.relativeTo(root).invariantSeparatorsPath, it.length().toULong()) }.toList()
    }

    private companion object {
        val ID = Regex("[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}")

        val GIVEN = listOf("vase.png", "readings.csv")

        /** Places on a drawing or a gauge are written to a millionth of it. */
        const val FINEST = 1e-6

        /** The folder of the scenarios, wherever in the checkout this runs. */
        val here: File = generateSequence(File("").absoluteFile, File::getParentFile)
            .map { File(it, "tests/scenarios") }.first(File::isDirectory)

        @Suppress("UNCHECKED_CAST")
        fun <T> JSONArray.all(): List<T> = List(length()) { get(it) as T }

        /** A name as one word in lower case: each language writes the values of an enum in its own way. */
        fun folded(name: String) = name.replace("_", "").lowercase()

        fun eachText(value: Any, change: (String) -> String): Any = when (value) {
            is String -> change(value)
            is JSONArray -> JSONArray(value.all<Any>().map { eachText(it, change) })
            is JSONObject -> JSONObject().apply { for (key in value.keys()) put(key, eachText(value.get(key), change)) }
            else -> value
        }

        /** The text at a JSON pointer. */
        fun textAt(answer: Any?, place: String): String = place.split('/').drop(1).fold(answer) { within, part ->
            if (within is List<*>) within[part.toInt()] else (within as Map<*, *>)[part]
        } as String

        /** A record as its fields by their names in Rust, sorted; what is in them likewise. Values of enums stay what they are. */
        fun seen(record: Any): Map<String, Any?> = record.javaClass.declaredFields
            .filterNot { Modifier.isStatic(it.modifiers) || it.isSynthetic }
            .associate { field ->
                field.isAccessible = true
                field.name.replace(Regex("[A-Z]")) { "_" + it.value.lowercase() } to plain(field.get(record))
            }.toSortedMap()

        fun plain(value: Any?): Any? = when (value) {
            null, is String, is Boolean, is Number, is Enum<*> -> value
            is Unit -> null
            is List<*> -> value.map(::plain)
            else -> seen(value)
        }

        fun Studio.call(call: String, now: Now, with: With): Any? = plain(
            when (call) {
                "weigh" -> weigh(now, with.weighEntry())
                "pieces_to_glaze" -> piecesToGlaze(now, with.weighEntry()!!, with.text("code"))
                "remember" -> remember(now, with.weighEntry()!!)
                "save" -> save(now, with.weighEntry()!!)
                "coat" -> coat(now, with.text("id"))
                "set_control" -> setControl(now, with.text("id"), with.flag("control"))
                "choose_target" -> chooseTarget(now, with.text("target"), with.oneOf<TargetChoice>("choice")!!)
                "why_target" -> whyTarget(now, with.text("target"))
                "set_counts" -> setCounts(now, with.text("target"), with.text("firing"), with.text("piece"), with.flag("counts"))
                "remove_coat" -> removeCoat(now, with.text("id"))
                "undo" -> undo(now, with.text("token"))
                "redo" -> redo(now, with.text("token"))
                "recent_changes" -> recentChanges(now)
                "history" -> history(now, with.text("id"))
                "archived" -> archived(now)
                "unarchive" -> unarchive(now, with.kind(), with.text("id"))
                "meanwhile" -> meanwhile(now)
                "meanwhile_read" -> meanwhileRead(now)
                "settle_clash" -> settleClash(now, with.text("id"), with.oneOf<ClashAnswer>("answer")!!)
                "devices" -> devices(now)
                "sync_now" -> {
                    val told = AtomicBoolean()
                    val listener = object : ProgressListener {
                        override fun progress(progress: SyncProgress) = told.set(true)
                    }
                    val folder = FilesFolder(File(with.text("folder")))
                    Stop().use { syncNow(now, with.values("secrets"), with.flag("metered"), with.flag("check"), folder, null, listener, it) }
                        .also { check(told.get()) { "nobody was told how far it was" } }
                }
                "forget_sync_location" -> forgetSyncLocation(now)
                "set_up_as_new_phone" -> setUpAsNewPhone(now)
                "buckets" -> buckets(now)
                "bucket" -> bucket(now, with.text("id"))
                "setup" -> setup(now)
                "editor" -> editor(now, with.editorEntry())
                "save_record" -> saveRecord(now, with.editorEntry())
                "remove" -> remove(now, with.kind(), with.text("id"))
                "touch" -> touch(now, with.editorEntry(), with.touch())
                "photograph" -> photograph(now, with.editorEntry(), with.text("file"))
                "backup" -> backup(now)
                "back_up" -> backUp(with.text("into"))
                "backed_up" -> backedUp(now, with.text("copy"))
                "set_backup_schedule" -> setBackupSchedule(now, with.text("every"))
                "set_backup_folder" -> setBackupFolder(now, with.text("place"), with.text("called"))
                "backup_due" -> backupDue(now, with.flag("asked"))
                "automatic_backup_done" -> automaticBackupDone(now, with.text("place"), with.text("file"), with.text("copy"))
                "backups_removed" -> backupsRemoved(now, with.texts("files"))
                "backup_failed" -> backupFailed(now, with.oneOf<BackupTrouble>("trouble")!!)
                "export" -> export(with.text("what"), with.text("into"))
                "restore" -> restore(now, with.text("from"))
                "import" -> import(now, with.text("file"), with.values("chosen"))
                "import_spreadsheet" -> importSpreadsheet(now, with.text("file"), with.values("chosen"))
                "kiln" -> kiln(now)
                "firing" -> firing(now, with.text("id"))
                "load" -> load(now, with.text("firing"), with.texts("pieces"), with.number("shelf").toUInt())
                "load_all" -> loadAll(now, with.text("firing"))
                "place" -> place(now, with.text("firing"), with.text("piece"), with.spot("to"))
                "take_out" -> takeOut(now, with.text("firing"), with.text("piece"))
                "set_checklist_item" -> setChecklistItem(now, with.text("firing"), with.text("what"), with.flag("done"))
                "advance" -> advance(now, with.text("firing"))
                "assessment" -> assessment(now, with.text("firing"), with.text("piece"))
                "assess" -> assess(now, with.text("firing"), with.text("piece"), with.look())
                "save_photo" -> savePhoto(now, with.text("piece"), with.text("firing"), with.text("file"))
                "remove_photo" -> removePhoto(now, with.text("id"))
                "piece" -> piece(now, with.text("id"))
                "find_pieces" -> findPieces(now, with.values("wanted"), 0u)
                "compare" -> compare(now, with.text("left"), with.text("right"))
                "contact_sheet" -> contactSheet(now, with.text("firing"))
                "piece_sheet" -> pieceSheet(now, with.text("firing"), with.text("piece"))
                "write_pdf" -> writePdf(with.text("title"), with.texts("pages"), with.text("into"))
                "sizes" -> sizes(now, with.text("known"))
                "findings" -> findings(now)
                "glaze_findings" -> glazeFindings(now, with.text("id"))
                "answer_drift" -> answerDrift(now, with.text("id"))
                "write_charts" -> writeCharts(now, with.text("id"), with.text("into"))
                "adopt_best" -> adoptBest(now, with.text("id"), with.text("best"))
                "preferences" -> preferences()
                else -> error("no call is named $call")
            },
        )

        /** Says in [differences] where [answer] is not what was [written]. */
        fun compare(place: String, written: Any, answer: Any?, differences: MutableList<String>) {
            val same = when (answer) {
                is Map<*, *> -> written is JSONObject && written.keys().asSequence().toSet() == answer.keys
                is List<*> -> written is JSONArray && written.length() == answer.size
                is Enum<*> -> written is String && folded(written) == folded(answer.name)
                is Number -> written is Number && abs(written.toDouble() - answer.toDouble()) <= FINEST
                null -> written == JSONObject.NULL
                else -> written == answer
            }
            when {
                !same -> differences += "$place\n  written: $written\n  answer:  $answer"
                answer is Map<*, *> ->
                    for ((key, value) in answer) compare("$place.$key", (written as JSONObject).get("$key"), value, differences)
                answer is List<*> ->
                    for ((at, value) in answer.withIndex()) compare("$place[$at]", (written as JSONArray).get(at), value, differences)
            }
        }
    }
}

package studio.laydown.picture

import android.app.Activity
import android.content.ActivityNotFoundException
import android.content.ClipData
import android.content.Intent
import android.net.Uri
import android.os.Bundle
import android.os.Handler
import android.os.Looper
import android.provider.MediaStore
import studio.laydown.ActivityResult
import studio.laydown.R
import java.io.File
import java.io.IOException
import kotlin.concurrent.thread

/**
 * Gets a picture from another app into a file of the app's own. What is under way is written down, so that a picture taken while the
 * system ended the app still arrives. [look] is given the file; [changed] is told when there is something else to show.
 */
class Photographer(private val host: Activity, private val look: (File) -> Unit, private val changed: () -> Unit) {
    /** How far a picture has come. */
    private enum class Stage { NONE, CAMERA, GALLERY, COPIED, LOOKED_AT }

    private val pictures = Pictures(host)
    private val main = Handler(Looper.getMainLooper())
    private var stage = Stage.NONE
    private var file: File? = null
    private var from: Uri? = null

    /** Why there is no new picture; empty when nothing is wrong. */
    var trouble = ""
        private set

    /** Whether a picture has come and is in work. */
    val working: Boolean get() = stage == Stage.COPIED || stage == Stage.LOOKED_AT

    /** Asks another app for a picture; files in [wanted] are still shown and stay. */
    fun ask(way: String, wanted: Set<String>) {
        if (working) return
        pictures.clear(wanted)
        trouble = ""
        try {
            val place = pictures.place()
            file = place
            stage = if (way == CAMERA) Stage.CAMERA else Stage.GALLERY
            @Suppress("DEPRECATION") // the platform has nothing else
            host.startActivityForResult(if (way == CAMERA) camera(place) else gallery(), ActivityResult.CODE)
        } catch (nobody: ActivityNotFoundException) {
            fail(if (way == CAMERA) R.string.no_camera else R.string.no_gallery)
        } catch (refused: SecurityException) {
            fail(if (way == CAMERA) R.string.no_camera else R.string.no_gallery)
        } catch (full: IOException) {
            fail(R.string.picture_not_copied)
        }
    }

    /** The other app has answered. */
    fun answered(answer: ActivityResult) {
        when (stage) {
            Stage.CAMERA -> when {
                !answer.given -> fail(R.string.no_picture)
                file?.length() == 0L -> fail(R.string.empty_picture)
                else -> look()
            }
            Stage.GALLERY -> if (answer.given && answer.uri != null) copy(answer.uri) else fail(R.string.no_picture)
            // Not asked, or asked before the last answer.
            Stage.NONE, Stage.COPIED, Stage.LOOKED_AT -> Unit
        }
    }

    /** The picture has been looked at; [sentence] says what was wrong with it, if anything. */
    fun done(sentence: String = "") {
        // The picture as it was taken may say where; the copy that is shown does not.
        file?.delete()
        file = null
        from = null
        stage = Stage.NONE
        trouble = sentence
        changed()
    }

    /** Deletes every picture: the sheet is left for good. */
    fun clear() = pictures.clear()

    fun saveState() = Bundle().apply {
        putString(STAGE, stage.name)
        putString(FILE, file?.path)
        putString(FROM, from?.toString())
        putString(TROUBLE, trouble)
    }

    /** Goes on where [saved] was written down. */
    fun restore(savedState: Bundle) {
        stage = savedState.getString(STAGE)?.let(Stage::valueOf) ?: Stage.NONE
        file = savedState.getString(FILE)?.let(::File)
        trouble = savedState.getString(TROUBLE, "")
        val uri = savedState.getString(FROM)?.let(Uri::parse)
        when (stage) {
            Stage.COPIED -> if (uri != null) copy(uri)
            Stage.LOOKED_AT -> look()
            Stage.NONE, Stage.CAMERA, Stage.GALLERY -> Unit
        }
    }

    private fun fail(sentence: Int) = done(host.getString(sentence))

    private fun look() {
        stage = Stage.LOOKED_AT
        changed()
        file?.let(look)
    }

    /** Not on the studio's thread: a picture may lie far away, and weighing does not wait for it. */
    private fun copy(uri: Uri) {
        val place = file ?: return fail(R.string.no_picture)
        stage = Stage.COPIED
        from = uri
        changed()
        val resolver = host.contentResolver
        thread(name = "picture", isDaemon = true) {
            val copied = runCatching { resolver.copy(uri, place) }
            main.post { if (stage == Stage.COPIED) copied.fold({ look() }, ::notCopied) }
        }
    }

    private fun notCopied(problem: Throwable) = when (problem) {
        is IOException, is SecurityException -> fail(R.string.picture_not_copied)
        else -> throw problem
    }

    private fun camera(place: File) = Intent(MediaStore.ACTION_IMAGE_CAPTURE).apply {
        val uri = Pictures.uri(place)
        putExtra(MediaStore.EXTRA_OUTPUT, uri)
        // The clip carries the leave to write to the place.
        clipData = ClipData.newRawUri(null, uri)
        addFlags(Intent.FLAG_GRANT_WRITE_URI_PERMISSION or Intent.FLAG_GRANT_READ_URI_PERMISSION)
    }

    private fun gallery() = Intent(Intent.ACTION_OPEN_DOCUMENT).apply {
        addCategory(Intent.CATEGORY_OPENABLE)
        type = "image/*"
        putExtra(Intent.EXTRA_MIME_TYPES, arrayOf("image/jpeg", "image/png"))
    }

    companion object {
        /** The way that is the camera; every other leads to the pictures on the phone. */
        const val CAMERA = "camera"
        const val GALLERY = "gallery"
        private const val STAGE = "stage"
        private const val FILE = "file"
        private const val FROM = "from"
        private const val TROUBLE = "trouble"
    }
}

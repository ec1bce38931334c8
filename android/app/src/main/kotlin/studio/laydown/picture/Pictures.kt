package studio.laydown.picture

import android.app.Activity
import android.content.ClipData
import android.content.ContentProvider
import android.content.ContentResolver
import android.content.ContentValues
import android.content.Context
import android.content.Intent
import android.database.Cursor
import android.net.Uri
import android.os.ParcelFileDescriptor
import java.io.File
import java.io.FileNotFoundException

/** The folder of what is on its way to or from another app: pictures, backups, tables. Nothing in it is of use later, and the phone's own backups leave it out. */
class Pictures(context: Context) {
    private val folder = folderOf(context)

    /** A place for a new picture. No two have one name, since views know a picture by its file. */
    fun place(): File {
        folder.mkdirs()
        return File.createTempFile("piece", ".jpg", folder)
    }

    /** A place for a file of this name, which another app is to see. */
    fun place(name: String): File {
        folder.mkdirs()
        return File(folder, name)
    }

    /** Deletes all pictures but those in [wanted]. */
    fun clear(wanted: Set<String> = emptySet()) {
        folder.listFiles()?.filter { it.path !in wanted }?.forEach(File::delete)
    }

    companion object {
        private const val AUTHORITY = "studio.laydown.pictures"

        internal fun folderOf(context: Context) = File(context.noBackupFilesDir, "pictures")

        /** By what name another app may write to a picture, once it has been allowed to. */
        fun uri(picture: File): Uri = Uri.Builder().scheme("content").authority(AUTHORITY).appendPath(picture.name).build()
    }
}

/** Copies what another app named into a file of the app's own. Not for the main thread: it may lie far away. */
internal fun ContentResolver.copy(from: Uri, into: File) {
    val input = openInputStream(from) ?: throw FileNotFoundException(from.toString())
    input.use { read -> into.outputStream().use(read::copyTo) }
}

/** Copies [file] to where another app keeps it, whole: what stood there may have been longer. Not for the main thread. */
internal fun ContentResolver.lay(file: File, into: Uri) {
    val out = openOutputStream(into, "wt") ?: throw FileNotFoundException(into.toString())
    out.use { to -> file.inputStream().use { it.copyTo(to) } }
}

/** Hands [file], one of the [Pictures], to an app that the person chooses under these [words]. */
internal fun Activity.share(file: File, type: String, words: CharSequence, subject: String? = null) {
    val uri = Pictures.uri(file)
    val send = Intent(Intent.ACTION_SEND).setType(type).putExtra(Intent.EXTRA_STREAM, uri).putExtra(Intent.EXTRA_SUBJECT, subject)
    // The clip carries the leave to read it.
    send.clipData = ClipData.newRawUri(null, uri)
    send.addFlags(Intent.FLAG_GRANT_READ_URI_PERMISSION)
    startActivity(Intent.createChooser(send, words))
}

/** Lets another app write into, or read, the one file that it was given, and nobody anything else. */
class PictureProvider : ContentProvider() {
    override fun onCreate() = true

    override fun getType(uri: Uri) = when (uri.path.orEmpty().substringAfterLast('.')) {
        "zip" -> "application/zip"
        "pdf" -> "application/pdf"
        "svg" -> "image/svg+xml"
        "csv" -> "text/csv"
        "jsonl" -> "application/x-ndjson"
        else -> "image/jpeg"
    }

    override fun openFile(uri: Uri, mode: String): ParcelFileDescriptor {
        val context = context ?: throw FileNotFoundException(uri.toString())
        val name = uri.pathSegments.singleOrNull() ?: throw FileNotFoundException(uri.toString())
        // Only what was laid out beforehand: a name with a way out of the folder is not among it.
        val picture = Pictures.folderOf(context).listFiles()?.firstOrNull { it.name == name } ?: throw FileNotFoundException(name)
        return ParcelFileDescriptor.open(picture, ParcelFileDescriptor.parseMode(mode))
    }

    override fun query(uri: Uri, wanted: Array<String>?, where: String?, values: Array<String>?, order: String?): Cursor? = null

    override fun insert(uri: Uri, values: ContentValues?): Uri? = throw UnsupportedOperationException()

    override fun update(uri: Uri, values: ContentValues?, where: String?, arguments: Array<String>?): Int = throw UnsupportedOperationException()

    override fun delete(uri: Uri, where: String?, arguments: Array<String>?): Int = throw UnsupportedOperationException()
}

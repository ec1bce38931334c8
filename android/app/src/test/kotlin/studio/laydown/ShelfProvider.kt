package studio.laydown

import android.content.pm.ProviderInfo
import android.database.Cursor
import android.database.MatrixCursor
import android.net.Uri
import android.os.CancellationSignal
import android.os.ParcelFileDescriptor
import android.provider.DocumentsContract
import android.provider.DocumentsContract.Document
import android.provider.DocumentsProvider
import org.robolectric.Robolectric
import java.io.File
import java.io.FileNotFoundException
import kotlin.io.path.createTempDirectory

/** Another app that keeps a folder: a real one, asked in the platform's way. Documents are named by their paths. */
class ShelfProvider : DocumentsProvider() {
    override fun onCreate() = true

    override fun queryRoots(projection: Array<out String>?): Cursor = MatrixCursor(projection ?: COLUMNS)

    override fun queryDocument(documentId: String, projection: Array<out String>?): Cursor =
        of(listOf(file(documentId)), projection ?: COLUMNS)

    override fun queryChildDocuments(parentDocumentId: String, projection: Array<out String>?, sortOrder: String?): Cursor =
        of(file(parentDocumentId).listFiles().orEmpty().toList(), projection ?: COLUMNS)

    override fun isChildDocument(parentDocumentId: String, documentId: String) = File(documentId).startsWith(File(parentDocumentId))

    override fun createDocument(parentDocumentId: String, mimeType: String, displayName: String): String {
        val made = File(file(parentDocumentId), displayName + ending)
        val isMade = if (mimeType == Document.MIME_TYPE_DIR) made.mkdir() else made.createNewFile()
        check(isMade) { "$made was there already" }
        return made.path
    }

    override fun deleteDocument(documentId: String) {
        check(file(documentId).delete()) { "cannot delete $documentId" }
    }

    override fun openDocument(documentId: String, mode: String, signal: CancellationSignal?): ParcelFileDescriptor =
        ParcelFileDescriptor.open(file(documentId), ParcelFileDescriptor.parseMode(mode))

    private fun file(id: String) = File(id).also { if (!it.exists()) throw FileNotFoundException(id) }

    private fun of(files: List<File>, columns: Array<out String>) = MatrixCursor(columns).apply { for (file in files) add(file, columns) }

    private fun MatrixCursor.add(file: File, columns: Array<out String>) {
        val row = newRow()
        for (column in columns) {
            val value: Any? = when (column) {
                Document.COLUMN_DISPLAY_NAME -> file.name
                Document.COLUMN_DOCUMENT_ID -> file.path
                Document.COLUMN_MIME_TYPE -> if (file.isDirectory) Document.MIME_TYPE_DIR else "application/octet-stream"
                Document.COLUMN_SIZE -> file.length().takeIf { file.isFile && tellsSizes }
                else -> null
            }
            row.add(column, value)
        }
    }

    companion object {
        private const val AUTHORITY = "studio.laydown.elsewhere"
        private val COLUMNS = arrayOf(Document.COLUMN_DISPLAY_NAME, Document.COLUMN_DOCUMENT_ID, Document.COLUMN_MIME_TYPE, Document.COLUMN_SIZE)

        /** What it puts behind the name of whatever it makes. */
        var ending = ""

        /** Whether it tells how long a file is. */
        var tellsSizes = true

        /** Brings the app up, with an empty folder called "Shelf"; answers with the folder and how it is named to other apps. */
        fun install(): Pair<File, Uri> {
            ending = ""
            tellsSizes = true
            val info = ProviderInfo().apply {
                authority = AUTHORITY
                exported = true
                grantUriPermissions = true
                readPermission = android.Manifest.permission.MANAGE_DOCUMENTS
                writePermission = android.Manifest.permission.MANAGE_DOCUMENTS
            }
            Robolectric.buildContentProvider(ShelfProvider::class.java).create(info)
            val folder = File(createTempDirectory("elsewhere").toFile(), "Shelf").apply { mkdir() }
            return folder to DocumentsContract.buildTreeDocumentUri(AUTHORITY, folder.path)
        }
    }
}

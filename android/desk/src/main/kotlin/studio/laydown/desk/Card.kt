package studio.laydown.desk

import android.Manifest
import android.content.pm.ProviderInfo
import android.database.Cursor
import android.database.MatrixCursor
import android.net.Uri
import android.os.CancellationSignal
import android.os.ParcelFileDescriptor
import android.provider.DocumentsContract
import android.provider.DocumentsContract.Document
import android.provider.DocumentsProvider
import android.system.ErrnoException
import android.system.OsConstants
import org.robolectric.Robolectric
import java.io.File
import java.io.FileNotFoundException

/**
 * A memory card in the phone, as the system's files show it to apps: a tree of documents, which here is a folder on the desk. It
 * can be taken out, be full, and spoil what is written to it.
 */
class Card : DocumentsProvider() {
    private lateinit var folder: File

    /** Whether it is in the phone. */
    var isIn = true

    /** Whether there is no room left on it. */
    var isFull = false

    /** Whether it forgets the end of what is written. */
    var isWornOut = false

    /** What lies on it, by name. */
    val files: List<String> get() = folder.list().orEmpty().sorted()

    /** What lies on it under this name. */
    fun file(name: String) = File(folder, name)

    override fun onCreate() = true

    override fun queryRoots(projection: Array<String>?): Cursor = MatrixCursor(arrayOf(DocumentsContract.Root.COLUMN_ROOT_ID))

    override fun queryDocument(documentId: String, projection: Array<String>?): Cursor {
        val file = reach(documentId)
        return MatrixCursor(arrayOf(Document.COLUMN_DOCUMENT_ID, Document.COLUMN_DISPLAY_NAME)).apply {
            addRow(arrayOf(documentId, if (documentId == ROOT) NAME else file.name))
        }
    }

    override fun queryChildDocuments(parentDocumentId: String, projection: Array<String>?, sortOrder: String?): Cursor =
        MatrixCursor(arrayOf(Document.COLUMN_DOCUMENT_ID)).apply { files.forEach { addRow(arrayOf(it)) } }

    override fun isChildDocument(parentDocumentId: String, documentId: String) = parentDocumentId == ROOT

    override fun createDocument(parentDocumentId: String, mimeType: String, displayName: String): String {
        reach(parentDocumentId)
        val (stem, ending) = displayName.substringBeforeLast('.') to displayName.substringAfterLast('.')
        val names = generateSequence(0) { it + 1 }.map { if (it == 0) displayName else "$stem ($it).$ending" }
        return names.first { File(folder, it).createNewFile() }
    }

    override fun deleteDocument(documentId: String) {
        if (!reach(documentId).delete()) throw FileNotFoundException(documentId)
    }

    override fun openDocument(documentId: String, mode: String, signal: CancellationSignal?): ParcelFileDescriptor {
        val file = reach(documentId)
        if (isFull && 'w' in mode) throw FileNotFoundException("full").apply { initCause(ErrnoException("write", OsConstants.ENOSPC)) }
        if (isWornOut && mode == "r") file.writeBytes(file.readBytes().dropLast(100).toByteArray())
        return ParcelFileDescriptor.open(file, ParcelFileDescriptor.parseMode(mode))
    }

    private fun reach(documentId: String): File {
        val file = if (documentId == ROOT) folder else File(folder, documentId)
        if (!isIn || !file.exists()) throw FileNotFoundException(documentId)
        return file
    }

    companion object {
        private const val AUTHORITY = "studio.laydown.desk.card"
        private const val ROOT = "card:"

        /** What a person knows it as. */
        const val NAME = "Studio card"

        /** What the system calls it. */
        val tree: Uri get() = DocumentsContract.buildTreeDocumentUri(AUTHORITY, ROOT)

        /** Puts a card into the phone that keeps what is written in [folder]. */
        fun insert(folder: File): Card {
            val info = ProviderInfo().apply {
                authority = AUTHORITY
                exported = true
                grantUriPermissions = true
                readPermission = Manifest.permission.MANAGE_DOCUMENTS
                writePermission = Manifest.permission.MANAGE_DOCUMENTS
            }
            return Robolectric.buildContentProvider(Card::class.java).create(info).get().also { it.folder = folder }
        }
    }
}

package studio.laydown.desktop

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
 * A memory card in the phone, or another app's folder, as the system's files show it to apps: a tree of documents, which here is a
 * folder on the desk. It can be taken out, be full, and spoil what is written to it.
 */
class Card : DocumentsProvider() {
    private lateinit var folder: File
    private lateinit var name: String

    /** Whether it is in the phone. */
    var isIn = true

    /** Whether there is no room left on it. */
    var isFull = false

    /** Whether it forgets the end of what is written. */
    var isWornOut = false

    /** Whether it tells how long a file is. */
    var tellsSizes = true

    /** What it puts behind the name of whatever is made on it. */
    var ending = ""

    /** What lies on it, by name. */
    val files: List<String> get() = folder.list().orEmpty().sorted()

    /** What lies on it under this name. */
    fun file(name: String) = File(folder, name)

    /** Makes an empty file on it, under this name or, if that is taken, one like it, as a person does who chooses a place for it. */
    fun place(name: String): Uri = document(createDocument(ROOT, "application/octet-stream", name))

    /** Puts a file on it, as a person does at a computer. */
    fun put(name: String, bytes: ByteArray): Uri = place(name).also { reach(DocumentsContract.getDocumentId(it)).writeBytes(bytes) }

    override fun onCreate() = true

    override fun queryRoots(projection: Array<out String>?): Cursor = MatrixCursor(arrayOf(DocumentsContract.Root.COLUMN_ROOT_ID))

    override fun queryDocument(documentId: String, projection: Array<out String>?): Cursor = rows(listOf(reach(documentId)), projection)

    override fun queryChildDocuments(parentDocumentId: String, projection: Array<out String>?, sortOrder: String?): Cursor =
        rows(reach(parentDocumentId).listFiles().orEmpty().sorted(), projection)

    override fun isChildDocument(parentDocumentId: String, documentId: String) = at(documentId).startsWith(at(parentDocumentId))

    override fun createDocument(parentDocumentId: String, mimeType: String, displayName: String): String {
        val parent = reach(parentDocumentId)
        val (stem, ending) = (displayName + ending).let { it.substringBeforeLast('.') to it.substringAfterLast('.', "") }
        val dotted = if (ending.isEmpty()) "" else ".$ending"
        val names = generateSequence(0) { it + 1 }.map { if (it == 0) "$stem$dotted" else "$stem ($it)$dotted" }
        val isFolder = mimeType == Document.MIME_TYPE_DIR
        return id(names.map { File(parent, it) }.first { if (isFolder) it.mkdir() else it.createNewFile() })
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

    private fun rows(files: List<File>, projection: Array<out String>?): Cursor {
        val columns = projection ?: arrayOf(Document.COLUMN_DOCUMENT_ID, Document.COLUMN_DISPLAY_NAME)
        return MatrixCursor(columns).apply { for (file in files) addRow(columns.map { cell(file, it) }) }
    }

    private fun cell(file: File, column: String): Any? = when (column) {
        Document.COLUMN_DOCUMENT_ID -> id(file)
        Document.COLUMN_DISPLAY_NAME -> if (file == folder) name else file.name
        Document.COLUMN_MIME_TYPE -> if (file.isDirectory) Document.MIME_TYPE_DIR else "application/octet-stream"
        Document.COLUMN_SIZE -> file.length().takeIf { file.isFile && tellsSizes }
        else -> null
    }

    private fun id(file: File) = ROOT + file.relativeTo(folder).path

    private fun at(documentId: String) = documentId.removePrefix(ROOT).let { if (it.isEmpty()) folder else File(folder, it) }

    private fun reach(documentId: String): File {
        val file = at(documentId)
        if (!isIn || !file.exists()) throw FileNotFoundException(documentId)
        return file
    }

    companion object {
        private const val AUTHORITY = "studio.laydown.desktop.card"
        private const val ROOT = "card:"

        /** What a person knows it as. */
        const val NAME = "Studio card"

        /** What the system calls it. */
        val tree: Uri get() = DocumentsContract.buildTreeDocumentUri(AUTHORITY, ROOT)

        private fun document(id: String): Uri = DocumentsContract.buildDocumentUriUsingTree(tree, id)

        /** Puts a card into the phone that keeps what is written in [folder], and that a person knows as [name]. */
        fun insert(folder: File, name: String = NAME): Card {
            val info = ProviderInfo().apply {
                authority = AUTHORITY
                exported = true
                grantUriPermissions = true
                readPermission = Manifest.permission.MANAGE_DOCUMENTS
                writePermission = Manifest.permission.MANAGE_DOCUMENTS
            }
            return Robolectric.buildContentProvider(Card::class.java).create(info).get().also {
                it.folder = folder
                it.name = name
            }
        }
    }
}

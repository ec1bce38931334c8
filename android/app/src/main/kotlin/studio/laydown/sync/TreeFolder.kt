package studio.laydown.sync

import android.content.ContentResolver
import android.database.Cursor
import android.net.Uri
import android.provider.DocumentsContract
import android.provider.DocumentsContract.Document
import studio.laydown.core.Folder
import studio.laydown.core.FolderEntry
import studio.laydown.core.FolderException
import studio.laydown.isFull
import java.io.FileNotFoundException
import java.io.IOException

/** A folder that the potter chose, reached through whichever app keeps it. Used by one thread, for one meeting: it remembers what it saw. */
class TreeFolder(private val resolver: ContentResolver, private val tree: Uri) : Folder {
    private class Child(val id: String, val isFolder: Boolean, val size: Long?)

    private val root = DocumentsContract.getTreeDocumentId(tree)

    /** What lies in each folder that was looked into, by the folder's id and the names. */
    private val seen = mutableMapOf<String, MutableMap<String, Child>>()

    override fun get(path: String): ByteArray? = told {
        val file = find(path)?.takeUnless { it.isFolder } ?: return@told null
        opened(resolver.openInputStream(uri(file.id))).use { it.readBytes() }
    }

    override fun put(path: String, bytes: ByteArray) = told {
        val (folder, name) = makeWay(path)
        val file = inside(folder)[name] ?: make(folder, FILE, name)
        // Truncated: what stood there may have been longer.
        opened(resolver.openOutputStream(uri(file.id), "wt")).use { it.write(bytes) }
    }

    override fun remove(path: String): Boolean = told {
        val file = find(path)?.takeUnless { it.isFolder } ?: return@told true
        try {
            if (!DocumentsContract.deleteDocument(resolver, uri(file.id))) return@told false
        } catch (cannot: UnsupportedOperationException) {
            return@told false
        }
        find(path.substringBeforeLast('/'))?.let { inside(it.id).remove(path.substringAfterLast('/')) }
        true
    }

    override fun list(): List<FolderEntry> = told {
        val devices = inside(root)[DEVICES]?.takeIf { it.isFolder } ?: return@told emptyList()
        mutableListOf<FolderEntry>().also { gather(devices.id, DEVICES, it) }
    }

    private fun gather(folder: String, path: String, into: MutableList<FolderEntry>) {
        for ((name, child) in inside(folder)) {
            if (child.isFolder) gather(child.id, "$path/$name", into) else into += FolderEntry("$path/$name", size(child).toULong())
        }
    }

    /** What lies at [path]; null if nothing does. */
    private fun find(path: String): Child? {
        var at = Child(root, true, null)
        for (name in path.split('/')) {
            if (!at.isFolder) return null
            at = inside(at.id)[name] ?: return null
        }
        return at
    }

    /** The folder that the file at [path] is to lie in, made with those above it, and the file's name. */
    private fun makeWay(path: String): Pair<String, String> {
        val names = path.split('/')
        val folder = names.dropLast(1).fold(root) { folder, name -> (inside(folder)[name] ?: make(folder, Document.MIME_TYPE_DIR, name)).id }
        return folder to names.last()
    }

    private fun make(folder: String, type: String, name: String): Child {
        val made = DocumentsContract.createDocument(resolver, uri(folder), type, name) ?: throw FolderException.Failed()
        // Some apps put an ending of their own behind a name. Nobody would find the file by it.
        if (name(made) != name) {
            DocumentsContract.deleteDocument(resolver, made)
            throw FolderException.Failed()
        }
        return Child(DocumentsContract.getDocumentId(made), type == Document.MIME_TYPE_DIR, null).also { inside(folder)[name] = it }
    }

    private fun name(document: Uri): String? = asked(document, Document.COLUMN_DISPLAY_NAME) { row -> row.getString(0) }.firstOrNull()

    private fun inside(folder: String): MutableMap<String, Child> = seen.getOrPut(folder) {
        val columns = arrayOf(Document.COLUMN_DISPLAY_NAME, Document.COLUMN_DOCUMENT_ID, Document.COLUMN_MIME_TYPE, Document.COLUMN_SIZE)
        asked(DocumentsContract.buildChildDocumentsUriUsingTree(tree, folder), *columns) { row ->
            val size = if (row.isNull(3)) null else row.getLong(3)
            row.getString(0) to Child(row.getString(1), row.getString(2) == Document.MIME_TYPE_DIR, size)
        }.toMap(mutableMapOf())
    }

    private fun <T> asked(what: Uri, vararg columns: String, read: (Cursor) -> T): List<T> {
        val rows = resolver.query(what, columns, null, null) ?: throw FolderException.Gone()
        return rows.use { generateSequence { rows.takeIf { it.moveToNext() } }.map(read).toList() }
    }

    /** An app that does not know a file's length is asked for the file. */
    private fun size(file: Child): Long =
        file.size ?: opened(resolver.openFileDescriptor(uri(file.id), "r")).use { it.statSize.coerceAtLeast(0) }

    private fun <T> opened(file: T?): T = file ?: throw FolderException.Gone()

    private fun uri(id: String): Uri = DocumentsContract.buildDocumentUriUsingTree(tree, id)

    /** What a failure is called on the other side of the boundary. */
    private fun <T> told(work: () -> T): T = try {
        work()
    } catch (gone: FileNotFoundException) {
        throw if (gone.isFull()) FolderException.Full() else FolderException.Gone()
    } catch (mayNot: SecurityException) {
        throw FolderException.NotAllowed()
    } catch (broken: IOException) {
        throw if (broken.isFull()) FolderException.Full() else FolderException.Failed()
    } catch (gone: IllegalArgumentException) {
        // So an app answers that does not know the folder any more.
        throw FolderException.Gone()
    }

    private companion object {
        const val DEVICES = "devices"
        const val FILE = "application/octet-stream"
    }
}

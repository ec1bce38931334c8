package studio.laydown

import android.content.ContentResolver
import android.content.Intent
import android.net.Uri
import android.provider.DocumentsContract
import android.provider.DocumentsContract.Document
import android.system.ErrnoException
import android.system.OsConstants

// What is asked of a folder that the person chose, whatever it is used for.

/** The leave to read and write in it. */
private const val LEAVE = Intent.FLAG_GRANT_READ_URI_PERMISSION or Intent.FLAG_GRANT_WRITE_URI_PERMISSION

/** Asks for one in the platform's own way. */
internal fun folderRequest() = Intent(Intent.ACTION_OPEN_DOCUMENT_TREE).addFlags(LEAVE or Intent.FLAG_GRANT_PERSISTABLE_URI_PERMISSION)

/** Saves the leave that came with the choice, also after the app has ended. */
internal fun ContentResolver.persistPermission(tree: Uri) = takePersistableUriPermission(tree, LEAVE)

/** Whether it may still be written in. */
internal fun ContentResolver.hasPermission(tree: Uri) = persistedUriPermissions.any { it.uri == tree && it.isWritePermission }

/** Gives the leave back. */
internal fun ContentResolver.releasePermission(tree: String) =
    persistedUriPermissions.filter { it.uri.toString() == tree }.forEach { releasePersistableUriPermission(it.uri, LEAVE) }

/** The folder itself as a document. */
internal val Uri.itself: Uri get() = DocumentsContract.buildDocumentUriUsingTree(this, DocumentsContract.getTreeDocumentId(this))

/** What the app that keeps a document calls it; null where it is not there. Not for the main thread: it may lie far away. */
internal fun ContentResolver.nameOf(document: Uri): String? =
    query(document, arrayOf(Document.COLUMN_DISPLAY_NAME), null, null)?.use {
        if (it.moveToFirst()) it.getString(it.getColumnIndexOrThrow(Document.COLUMN_DISPLAY_NAME)) else null
    }

/** Whether what failed found no room. */
internal fun Throwable.isFull(): Boolean =
    generateSequence(this) { it.cause }.any { it is ErrnoException && it.errno in listOf(OsConstants.ENOSPC, OsConstants.EDQUOT) }

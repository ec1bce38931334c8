package studio.laydown.meeting

import android.app.Activity
import android.content.ActivityNotFoundException
import android.content.ContentResolver
import android.content.Intent
import android.net.Uri
import android.os.Bundle
import android.provider.DocumentsContract
import android.provider.DocumentsContract.Document
import studio.laydown.Answer
import studio.laydown.R
import studio.laydown.StudioWork

/** Has a folder chosen in the platform's own way. [chosen] is given the key of the field and what is to stand in it, [failed] why nothing came. */
class FolderChooser(
    private val host: Activity, private val work: StudioWork, private val chosen: (String, String) -> Unit, private val failed: (Int) -> Unit,
) {
    /** The key of the field that a folder is asked for; null when none is. */
    private var asked: String? = null

    fun ask(field: String) {
        asked = field
        val intent = Intent(Intent.ACTION_OPEN_DOCUMENT_TREE).addFlags(LEAVE or Intent.FLAG_GRANT_PERSISTABLE_URI_PERMISSION)
        try {
            @Suppress("DEPRECATION") // the platform has nothing else
            host.startActivityForResult(intent, Answer.CODE)
        } catch (nobody: ActivityNotFoundException) {
            asked = null
            failed(R.string.no_folders_app)
        }
    }

    /** Another app has answered; false if it was not asked for a folder. */
    fun answered(answer: Answer): Boolean {
        val field = asked ?: return false
        asked = null
        val tree = answer.uri.takeIf { answer.given }
        if (tree == null) failed(R.string.no_folder) else take(field, tree)
        return true
    }

    private fun take(field: String, tree: Uri) {
        val resolver = host.contentResolver
        work.elsewhere({
            resolver.takePersistableUriPermission(tree, LEAVE)
            resolver.nameOf(tree)
        }) { name ->
            name.fold({ chosen(field, "$it\n$tree") }) {
                if (it !is SecurityException && it !is IllegalArgumentException) throw it
                failed(R.string.folder_not_allowed)
            }
        }
    }

    fun save(into: Bundle) = into.putString(ASKED, asked)

    fun restore(from: Bundle) {
        asked = from.getString(ASKED)
    }

    companion object {
        private const val ASKED = "folder_asked"
        private const val LEAVE = Intent.FLAG_GRANT_READ_URI_PERMISSION or Intent.FLAG_GRANT_WRITE_URI_PERMISSION

        /** Gives back the leave to use [folder], as it stood in the field: the place is forgotten. */
        fun forget(resolver: ContentResolver, folder: String) =
            resolver.persistedUriPermissions.filter { it.uri.toString() == folder }.forEach { resolver.releasePersistableUriPermission(it.uri, LEAVE) }

        /** What the app that keeps the folder calls it, on one line. */
        private fun ContentResolver.nameOf(tree: Uri): String {
            val id = DocumentsContract.getTreeDocumentId(tree)
            val folder = DocumentsContract.buildDocumentUriUsingTree(tree, id)
            val name = query(folder, arrayOf(Document.COLUMN_DISPLAY_NAME), null, null)?.use { if (it.moveToFirst()) it.getString(0) else null }
            return name.orEmpty().ifBlank { id }.lines().joinToString(" ")
        }
    }
}

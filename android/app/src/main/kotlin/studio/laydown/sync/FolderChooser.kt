package studio.laydown.sync

import android.app.Activity
import android.content.ActivityNotFoundException
import android.net.Uri
import android.os.Bundle
import android.provider.DocumentsContract
import studio.laydown.ActivityResult
import studio.laydown.R
import studio.laydown.StudioWork
import studio.laydown.folderRequest
import studio.laydown.itself
import studio.laydown.persistPermission
import studio.laydown.nameOf

/** Has a folder chosen in the platform's own way. [chosen] is given the key of the field and what is to stand in it, [failed] why nothing came. */
class FolderChooser(
    private val host: Activity, private val work: StudioWork, private val chosen: (String, String) -> Unit, private val failed: (Int) -> Unit,
) {
    /** The key of the field that a folder is asked for; null when none is. */
    private var asked: String? = null

    fun ask(field: String) {
        asked = field
        try {
            @Suppress("DEPRECATION") // the platform has nothing else
            host.startActivityForResult(folderRequest(), ActivityResult.CODE)
        } catch (nobody: ActivityNotFoundException) {
            asked = null
            failed(R.string.no_folders_app)
        }
    }

    /** Another app has answered; false if it was not asked for a folder. */
    fun answered(answer: ActivityResult): Boolean {
        val field = asked ?: return false
        asked = null
        val tree = answer.uri.takeIf { answer.given }
        if (tree == null) failed(R.string.no_folder) else take(field, tree)
        return true
    }

    private fun take(field: String, tree: Uri) {
        val resolver = host.contentResolver
        work.io({
            resolver.persistPermission(tree)
            // On one line of the field.
            resolver.nameOf(tree.itself).orEmpty().ifBlank { DocumentsContract.getTreeDocumentId(tree) }.lines().joinToString(" ")
        }) { name ->
            name.fold({ chosen(field, "$it\n$tree") }) {
                if (it !is SecurityException && it !is IllegalArgumentException) throw it
                failed(R.string.folder_not_allowed)
            }
        }
    }

    fun saveState(into: Bundle) = into.putString(ASKED, asked)

    fun restore(from: Bundle) {
        asked = from.getString(ASKED)
    }

    private companion object {
        const val ASKED = "folder_asked"
    }
}

package studio.laydown.setup

import android.content.ContentResolver
import android.content.Context
import android.net.Uri
import android.provider.DocumentsContract
import studio.laydown.core.BackupTrouble
import studio.laydown.hasPermission
import studio.laydown.isFull
import studio.laydown.itself
import studio.laydown.persistPermission
import studio.laydown.nameOf
import studio.laydown.picture.copy
import studio.laydown.picture.lay
import java.io.File
import java.io.FileNotFoundException
import java.io.IOException

/** Why a folder could not be used. */
class FolderTrouble(val trouble: BackupTrouble, cause: Exception? = null) : Exception(cause)

/**
 * A folder that the person chose once, on this phone, a card or wherever another app reaches; the leave to use it outlives the
 * app. Not for the main thread: it may lie far away.
 */
class Folder(context: Context, private val tree: Uri) {
    private val resolver: ContentResolver = context.contentResolver

    /** Saves the leave that came with the choice. */
    fun persistPermission() = resolver.persistPermission(tree)

    /** What the person knows it as. Fails with a [FolderTrouble] where it cannot be reached. */
    fun name(): String = reaching {
        if (!resolver.hasPermission(tree)) throw FolderTrouble(BackupTrouble.NOT_ALLOWED)
        resolver.nameOf(tree.itself) ?: throw FolderTrouble(BackupTrouble.PLACE_GONE)
    }

    /** Puts a copy of [file] there, and reads that into [copy]; answers what the copy is called by the system. */
    fun put(file: File, type: String, copy: File): Uri {
        name()
        val made = reaching {
            DocumentsContract.createDocument(resolver, tree.itself, type, file.name) ?: throw FolderTrouble(BackupTrouble.NO_ANSWER)
        }
        try {
            reaching { resolver.lay(file, made) }
            // What is read comes to lie on the phone itself.
            reaching(full = BackupTrouble.PHONE_FULL) { resolver.copy(made, copy) }
        } catch (trouble: FolderTrouble) {
            // Of what could not be finished nothing is to stay; if even that fails, the first failure is the one to tell.
            remove(made)
            throw trouble
        }
        return made
    }

    /** Removes a file of the app's own there; whether it is gone. */
    fun remove(file: Uri): Boolean = try {
        DocumentsContract.deleteDocument(resolver, file)
    } catch (gone: FileNotFoundException) {
        true
    } catch (refused: RuntimeException) {
        // The other app's own failures come as these.
        false
    }

    /** The failures of other apps and of the storage, as what to tell. */
    private fun <T> reaching(full: BackupTrouble = BackupTrouble.PLACE_FULL, work: () -> T): T = try {
        work()
    } catch (gone: FileNotFoundException) {
        throw FolderTrouble(if (gone.isFull()) full else BackupTrouble.PLACE_GONE, gone)
    } catch (failed: IOException) {
        throw FolderTrouble(if (failed.isFull()) full else BackupTrouble.NO_ANSWER, failed)
    } catch (refused: SecurityException) {
        throw FolderTrouble(BackupTrouble.NOT_ALLOWED, refused)
    } catch (unknown: RuntimeException) {
        // A provider that is not there, or that fails: its exceptions come through the system as what they are.
        throw FolderTrouble(BackupTrouble.PLACE_GONE, unknown)
    }
}

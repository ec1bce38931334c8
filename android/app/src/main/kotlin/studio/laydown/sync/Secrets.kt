package studio.laydown.sync

import android.security.keystore.KeyGenParameterSpec
import android.security.keystore.KeyProperties
import android.util.AtomicFile
import studio.laydown.core.Value
import java.io.File
import java.io.IOException
import java.security.GeneralSecurityException
import java.security.KeyStore
import java.security.ProviderException
import javax.crypto.Cipher
import javax.crypto.KeyGenerator
import javax.crypto.SecretKey
import javax.crypto.spec.GCMParameterSpec

/** The keystore, or the phone's storage, did not take a secret. */
class SecretNotSaved(cause: Exception) : Exception(cause)

/**
 * The passwords and the passphrase of the place the sync location, each in a file of [folder], sealed with a key that never leaves
 * the platform's keystore. The folder is one that the phone's own backups leave out: without the key they could not be opened anyway.
 */
class Secrets(private val folder: File) {
    /** What was typed on the sheet, by the fields' keys. Never written down as it is: it outlives a turn of the phone, and no more. */
    val typed = mutableMapOf<String, String>()

    /** Saves what was [typed] for each of the sheet's secret [fields], where it is not empty, and forgets all that is no field any more. */
    fun save(fields: Set<String>, typed: Map<String, String>) = try {
        folder.listFiles().orEmpty().filter { it.name !in fields }.forEach(::forget)
        for (field in fields) typed[field]?.takeIf(String::isNotEmpty)?.let { put(field, it) }
    } catch (full: IOException) {
        throw SecretNotSaved(full)
    } catch (refused: GeneralSecurityException) {
        throw SecretNotSaved(refused)
    } catch (broken: ProviderException) {
        throw SecretNotSaved(broken)
    }

    /** All that are kept. One that cannot be opened any more, as after the keystore was emptied, is asked for again like one never typed. */
    fun all(): List<Value> = folder.list().orEmpty().sorted().mapNotNull { name -> get(name)?.let { Value(name, it) } }

    /** Forgets them all. */
    fun forget() {
        typed.clear()
        folder.listFiles().orEmpty().forEach(::forget)
    }

    private fun forget(file: File) {
        if (!file.delete() && file.exists()) throw IOException("a secret could not be deleted")
    }

    private fun put(name: String, secret: String) {
        val cipher = Cipher.getInstance(CIPHER).apply {
            init(Cipher.ENCRYPT_MODE, key())
            updateAAD(name.toByteArray())
        }
        val sealed = cipher.doFinal(secret.toByteArray())
        if (!folder.isDirectory && !folder.mkdirs()) throw IOException("no folder for secrets")
        val file = AtomicFile(File(folder, name))
        val out = file.startWrite()
        try {
            out.write(cipher.iv)
            out.write(sealed)
            file.finishWrite(out)
        } catch (full: IOException) {
            file.failWrite(out)
            throw full
        }
    }

    private fun get(name: String): String? = try {
        val bytes = AtomicFile(File(folder, name)).readFully()
        val cipher = Cipher.getInstance(CIPHER).apply {
            init(Cipher.DECRYPT_MODE, key(), GCMParameterSpec(TAG_BITS, bytes, 0, IV_BYTES))
            updateAAD(name.toByteArray())
        }
        String(cipher.doFinal(bytes, IV_BYTES, bytes.size - IV_BYTES))
    } catch (gone: IOException) {
        null
    } catch (otherKey: GeneralSecurityException) {
        null
    } catch (cut: IllegalArgumentException) {
        null
    } catch (noKeystore: ProviderException) {
        null
    }

    private fun key(): SecretKey {
        val store = KeyStore.getInstance(KEYSTORE).apply { load(null) }
        (store.getKey(KEY, null) as? SecretKey)?.let { return it }
        val spec = KeyGenParameterSpec.Builder(KEY, KeyProperties.PURPOSE_ENCRYPT or KeyProperties.PURPOSE_DECRYPT)
            .setBlockModes(KeyProperties.BLOCK_MODE_GCM)
            .setEncryptionPaddings(KeyProperties.ENCRYPTION_PADDING_NONE)
            .setKeySize(KEY_BITS)
            .build()
        return KeyGenerator.getInstance(KeyProperties.KEY_ALGORITHM_AES, KEYSTORE).run {
            init(spec)
            generateKey()
        }
    }

    private companion object {
        const val KEYSTORE = "AndroidKeyStore"
        const val KEY = "meeting_place"
        const val CIPHER = "AES/GCM/NoPadding"
        const val KEY_BITS = 256
        const val TAG_BITS = 128
        const val IV_BYTES = 12
    }
}

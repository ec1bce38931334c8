package studio.laydown.desktop

import android.security.keystore.KeyGenParameterSpec
import java.io.InputStream
import java.io.OutputStream
import java.security.InvalidAlgorithmParameterException
import java.security.Key
import java.security.KeyStoreException
import java.security.KeyStoreSpi
import java.security.Provider
import java.security.SecureRandom
import java.security.Security
import java.security.cert.Certificate
import java.security.spec.AlgorithmParameterSpec
import java.util.Collections
import java.util.Date
import java.util.Enumeration
import javax.crypto.KeyGenerator
import javax.crypto.KeyGeneratorSpi
import javax.crypto.SecretKey

/** The platform's keystore on the desk: AES keys in memory, made and found in the same way as on a phone. They go with the app. */
internal class DesktopKeyStore private constructor() : Provider(NAME, "1", "AES keys in memory") {
    private val made = mutableMapOf<String, SecretKey>()

    init {
        putService(Of("KeyStore", NAME) { Keys() })
        putService(Of("KeyGenerator", "AES") { Maker() })
    }

    /** By a maker of its own: by its name a class would be looked for where the desk's classes are not. */
    private inner class Of(type: String, algorithm: String, private val make: () -> Any) :
        Service(this, type, algorithm, DesktopKeyStore::class.java.name, null, null) {
        override fun newInstance(parameter: Any?): Any = make()
    }

    private inner class Maker : KeyGeneratorSpi() {
        private var wanted: KeyGenParameterSpec? = null

        override fun engineInit(spec: AlgorithmParameterSpec?, random: SecureRandom?) {
            wanted = spec as? KeyGenParameterSpec ?: throw InvalidAlgorithmParameterException("a KeyGenParameterSpec is needed")
        }

        override fun engineInit(random: SecureRandom?) = throw UnsupportedOperationException()
        override fun engineInit(size: Int, random: SecureRandom?) = throw UnsupportedOperationException()

        override fun engineGenerateKey(): SecretKey {
            val spec = checkNotNull(wanted) { "not told which key to make" }
            val key = KeyGenerator.getInstance("AES", "SunJCE").apply { init(spec.keySize) }.generateKey()
            made[spec.keystoreAlias] = key
            return key
        }
    }

    private inner class Keys : KeyStoreSpi() {
        override fun engineLoad(stream: InputStream?, password: CharArray?) = Unit
        override fun engineGetKey(alias: String, password: CharArray?): Key? = made[alias]
        override fun engineContainsAlias(alias: String) = alias in made
        override fun engineIsKeyEntry(alias: String) = alias in made
        override fun engineIsCertificateEntry(alias: String) = false
        override fun engineSize() = made.size
        override fun engineAliases(): Enumeration<String> = Collections.enumeration(made.keys.toList())
        override fun engineGetCertificate(alias: String): Certificate? = null
        override fun engineGetCertificateChain(alias: String): Array<Certificate>? = null
        override fun engineGetCertificateAlias(certificate: Certificate): String? = null
        override fun engineGetCreationDate(alias: String): Date? = null

        override fun engineDeleteEntry(alias: String) {
            made.remove(alias)
        }

        override fun engineStore(stream: OutputStream?, password: CharArray?) = throw UnsupportedOperationException()
        override fun engineSetCertificateEntry(alias: String, certificate: Certificate) = throw KeyStoreException("made here only")
        override fun engineSetKeyEntry(alias: String, key: Key, password: CharArray?, chain: Array<Certificate>?) =
            throw KeyStoreException("made here only")
        override fun engineSetKeyEntry(alias: String, key: ByteArray, chain: Array<Certificate>?) = throw KeyStoreException("made here only")
    }

    companion object {
        private const val NAME = "AndroidKeyStore"

        /** A new one in the place of the last app's. */
        fun install() {
            Security.removeProvider(NAME)
            Security.addProvider(DesktopKeyStore())
        }
    }
}

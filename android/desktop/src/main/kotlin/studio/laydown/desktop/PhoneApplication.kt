package studio.laydown.desktop

import android.content.Context
import org.robolectric.util.ReflectionHelpers
import studio.laydown.LaydownApplication
import java.io.File

/**
 * The application object on the desk. With the system property `laydown.data` set, everything the app stores (files,
 * databases, preferences) lives in that folder and is there again next time; without it, in a folder that goes with the test.
 */
class PhoneApplication : LaydownApplication() {
    override fun attachBaseContext(base: Context) {
        System.getProperty(DATA)?.let { saveIn(File(it).absoluteFile, base) }
        DesktopKeyStore.install()
        super.attachBaseContext(base)
    }

    /** Before anything asks for a folder: every context made later, activities included, reads it from the package info. */
    private fun saveIn(folder: File, base: Context) {
        check(folder.isDirectory || folder.mkdirs()) { "cannot make the data folder $folder" }
        val packageInfo = ReflectionHelpers.getField<Any>(base, "mPackageInfo")
        for (field in listOf("mDataDirFile", "mDeviceProtectedDataDirFile", "mCredentialProtectedDataDirFile")) {
            ReflectionHelpers.setField(packageInfo, field, folder)
        }
        ReflectionHelpers.setField(packageInfo, "mDataDir", folder.path)
        base.applicationInfo.dataDir = folder.path
    }

    companion object {
        /** Names the folder that outlives the process. */
        const val DATA = "laydown.data"
    }
}

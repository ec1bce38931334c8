package studio.laydown

import android.os.Bundle
import studio.laydown.core.Field
import studio.laydown.core.WeighMode
import studio.laydown.core.WeighEntry
import studio.laydown.core.ZoneKind

/** The bundles saved under [key]; none if nothing was. */
@Suppress("DEPRECATION") // the typed call needs Android 13
fun Bundle.bundles(key: String): List<Bundle> = getParcelableArrayList<Bundle>(key).orEmpty()

/** Writes a Weigh entry down. */
fun WeighEntry.saveState() = Bundle().apply {
    putStringArray("ids", arrayOf(form, bucket, scale, piece))
    putStringArray("typed", arrayOf(net, bare, glazed, seconds))
    putString("draft", draft)
    putString("confirmed", confirmed)
    putString("zone", zone?.name)
    putString("way", way?.name)
    putString("field", field.name)
}

/** Reads a Weigh entry that was written by [save]. */
fun readWeighEntry(savedState: Bundle): WeighEntry {
    val (form, bucket, scale, piece) = checkNotNull(savedState.getStringArray("ids")) { "a saved entry names its form" }
    val (net, bare, glazed, seconds) = checkNotNull(savedState.getStringArray("typed")) { "a saved entry has its digits" }
    return WeighEntry(
        form, bucket, savedState.getString("zone")?.let(ZoneKind::valueOf), scale, savedState.getString("way")?.let(WeighMode::valueOf), piece,
        Field.valueOf(savedState.getString("field", Field.NET.name)), net, bare, glazed, savedState.getString("draft", ""),
        savedState.getString("confirmed", ""), seconds,
    )
}

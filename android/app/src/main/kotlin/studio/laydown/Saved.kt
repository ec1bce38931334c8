package studio.laydown

import android.os.Bundle
import studio.laydown.core.Field
import studio.laydown.core.Way
import studio.laydown.core.WeighEntry
import studio.laydown.core.ZoneKind

/** The bundles saved under [key]; none if nothing was. */
@Suppress("DEPRECATION") // the typed call needs Android 13
fun Bundle.bundles(key: String): List<Bundle> = getParcelableArrayList<Bundle>(key).orEmpty()

/** Writes a Weigh entry down. */
fun WeighEntry.save() = Bundle().apply {
    putStringArray("ids", arrayOf(form, bucket, scale, piece))
    putStringArray("typed", arrayOf(net, bare, glazed))
    putString("zone", zone?.name)
    putString("way", way?.name)
    putString("field", field.name)
}

/** Reads a Weigh entry that was written by [save]. */
fun readWeighEntry(saved: Bundle): WeighEntry {
    val (form, bucket, scale, piece) = checkNotNull(saved.getStringArray("ids")) { "a saved entry names its form" }
    val (net, bare, glazed) = checkNotNull(saved.getStringArray("typed")) { "a saved entry has its digits" }
    return WeighEntry(
        form, bucket, saved.getString("zone")?.let(ZoneKind::valueOf), scale, saved.getString("way")?.let(Way::valueOf), piece,
        Field.valueOf(saved.getString("field", Field.NET.name)), net, bare, glazed,
    )
}

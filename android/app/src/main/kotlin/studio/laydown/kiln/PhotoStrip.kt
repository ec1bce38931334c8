package studio.laydown.kiln

import android.app.AlertDialog
import android.graphics.Bitmap
import android.graphics.BitmapFactory
import android.view.ViewGroup
import android.widget.ImageView
import studio.laydown.MainActivity
import studio.laydown.R
import studio.laydown.core.PhotoView
import studio.laydown.get
import studio.laydown.put
import studio.laydown.putSentence
import studio.laydown.picture.ZoomView

/**
 * The photographs of a piece beside one another; each is shown large when it is tapped, and [off] takes it off. With [captions] those of
 * each firing stand under its name.
 */
internal fun ViewGroup.putPhotos(host: MainActivity, photos: List<PhotoView>, captions: Boolean = false, off: (PhotoView) -> Unit) {
    if (!captions) return putStrip(host, photos, off)
    for ((caption, ofFiring) in photos.groupBy { it.caption }) {
        putSentence(caption)
        putStrip(host, ofFiring, off)
    }
}

private fun ViewGroup.putStrip(host: MainActivity, photos: List<PhotoView>, off: (PhotoView) -> Unit) {
    if (photos.isEmpty()) return
    val strip = put<ViewGroup>(R.layout.photos).get<ViewGroup>(R.id.photos)
    photos.forEachIndexed { at, photo ->
        strip.put<ImageView>(R.layout.photo).apply {
            setImageBitmap(picture(photo.preview, PREVIEW_PX))
            contentDescription = host.getString(R.string.photo_of, at + 1, photos.size)
            setOnClickListener { host.showLarge(photo, contentDescription, off) }
        }
    }
}

private fun MainActivity.showLarge(photo: PhotoView, name: CharSequence, off: (PhotoView) -> Unit) {
    val large = ZoomView(this)
    large.picture = picture(photo.preview, resources.displayMetrics.widthPixels)
    large.contentDescription = name
    // The small copy first; the whole one takes a while to unpack.
    work.inBackground({ ZoomView.read(photo.file) }) { whole -> whole.onSuccess { if (it != null) large.picture = it } }
    AlertDialog.Builder(this)
        .setTitle(photo.caption)
        .setView(large)
        .setPositiveButton(R.string.close, null)
        .setNegativeButton(R.string.photo_off) { _, _ -> off(photo) }
        .show()
}

/** The picture in a file, no finer than [needed] pixels across asks for; null where the file has gone. */
internal fun picture(file: String, needed: Int): Bitmap? {
    if (file.isEmpty()) return null
    val options = BitmapFactory.Options().apply { inJustDecodeBounds = true }
    BitmapFactory.decodeFile(file, options)
    options.inJustDecodeBounds = false
    options.inSampleSize = (options.outWidth / needed.coerceAtLeast(1)).coerceAtLeast(1)
    return BitmapFactory.decodeFile(file, options)
}

private const val PREVIEW_PX = 360

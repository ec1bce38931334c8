package studio.laydown.kiln

import android.content.Context
import android.graphics.Bitmap
import android.os.Bundle
import android.os.CancellationSignal
import android.os.ParcelFileDescriptor
import android.print.PageRange
import android.print.PrintAttributes
import android.print.PrintDocumentAdapter
import android.print.PrintDocumentInfo
import android.print.PrintJob
import android.print.PrintManager
import android.widget.ImageView
import studio.laydown.ColumnPage
import studio.laydown.MainActivity
import studio.laydown.R
import studio.laydown.core.ContactSheetView
import studio.laydown.core.Note
import studio.laydown.core.StudioException
import studio.laydown.core.Tone
import studio.laydown.picture.Pictures
import studio.laydown.picture.share
import studio.laydown.put
import studio.laydown.putButton
import studio.laydown.putNote
import java.io.File
import java.io.IOException

/** A firing on a page, or one piece of it where [pieceId] names one, to be looked at, shared and printed. */
class ContactSheetPage(host: MainActivity, private val firingId: String, private val pieceId: String) : ColumnPage(host) {
    override val title: CharSequence = host.getText(if (pieceId.isEmpty()) R.string.contact_sheet else R.string.share_piece)

    private val pictures = Pictures(host)
    private var trouble = ""

    override fun refresh() = show({ now -> if (pieceId.isEmpty()) contactSheet(now, firingId) else pieceSheet(now, firingId, pieceId) }, ::render)

    private fun render(view: ContactSheetView) = fill {
        val editor = ContactSheet(view, host.getString(R.string.no_photo)) { page, of -> host.getString(R.string.page_of, page, of) }
        val picture = editor.picture(SCALE)
        put<ImageView>(R.layout.contact_sheet).apply {
            setImageBitmap(picture)
            contentDescription = listOf(view.title, view.summary.ifEmpty { view.tiles.firstOrNull()?.title.orEmpty() }).joinToString(". ")
        }
        if (trouble.isNotEmpty()) putNote(Note(Tone.ATTENTION, trouble))
        putButton(R.layout.add, host.getText(R.string.share_picture)) { share(picture, view.title) }
        putButton(R.layout.add, host.getText(R.string.share_pdf)) {
            bind(editor, view.title) { host.share(it, PDF, host.getText(R.string.share_pdf), view.title) }
        }
        putButton(R.layout.add, host.getText(R.string.print)) { bind(editor, view.title) { print(it, editor.size, view.title) } }
    }

    private fun share(picture: Bitmap, title: String) {
        val file = try {
            pictures.clear()
            pictures.place().also { write(picture, it) }
        } catch (full: IOException) {
            return report(R.string.picture_not_copied)
        }
        host.share(file, "image/jpeg", host.getText(R.string.share_picture), title)
    }

    private fun print(document: File, pages: Int, title: String) {
        val printer = host.getSystemService(Context.PRINT_SERVICE) as? PrintManager
        val paper = PrintAttributes.Builder().setMediaSize(PrintAttributes.MediaSize.ISO_A4).build()
        // Both come back empty on a phone that has no printing at all.
        val job: PrintJob? = printer?.print(title, Pages(document, pages, title), paper)
        if (job == null) report(R.string.nobody_prints)
    }

    /** Has the core bind the pages into a document, and hands it on. */
    private fun bind(editor: ContactSheet, title: String, then: (File) -> Unit) {
        val document = try {
            pictures.clear()
            pictures.place(DOCUMENT)
        } catch (full: IOException) {
            return report(R.string.picture_not_copied)
        }
        host.work.inBackground({
            val pages = List(editor.size) { number -> pictures.place().also { write(editor.page(number, PAPER_SCALE), it) } }
            writePdf(title, pages.map(File::getPath), document.path)
        }) { result ->
            result.fold({ if (!gone) then(document) }) { problem ->
                when (problem) {
                    is StudioException -> report(host.sentence(problem))
                    is IOException -> report(R.string.picture_not_copied)
                    else -> host.fail(problem)
                }
            }
        }
    }

    private fun write(picture: Bitmap, into: File) = into.outputStream().use { picture.compress(Bitmap.CompressFormat.JPEG, QUALITY, it) }

    private fun report(sentence: Int) = report(host.getString(sentence))

    private fun report(sentence: String) {
        trouble = sentence
        refresh()
    }

    private companion object {
        /** Pixels to a point: 150 to the inch on the screen, 200 on paper. */
        const val SCALE = 150f / 72f
        const val PAPER_SCALE = 200f / 72f
        const val QUALITY = 88
        const val DOCUMENT = "contact-sheet.pdf"
        const val PDF = "application/pdf"
    }
}

/** Hands the pages to whatever prints or saves them. */
class Pages(private val document: File, private val count: Int, private val title: String) : PrintDocumentAdapter() {
    override fun onLayout(
        before: PrintAttributes?, now: PrintAttributes, cancel: CancellationSignal?, told: LayoutResultCallback, extras: Bundle?,
    ) {
        if (cancel?.isCanceled == true) return told.onLayoutCancelled()
        val info = PrintDocumentInfo.Builder("$title.pdf").setContentType(PrintDocumentInfo.CONTENT_TYPE_DOCUMENT).setPageCount(count).build()
        told.onLayoutFinished(info, before != now)
    }

    override fun onWrite(pages: Array<PageRange>, into: ParcelFileDescriptor, cancel: CancellationSignal?, told: WriteResultCallback) {
        if (cancel?.isCanceled == true) return told.onWriteCancelled()
        try {
            ParcelFileDescriptor.AutoCloseOutputStream(into).use { out -> document.inputStream().use { it.copyTo(out) } }
            told.onWriteFinished(arrayOf(PageRange.ALL_PAGES))
        } catch (full: IOException) {
            told.onWriteFailed(full.message)
        }
    }
}

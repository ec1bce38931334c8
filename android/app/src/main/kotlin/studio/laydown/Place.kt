package studio.laydown

import android.os.Bundle
import studio.laydown.core.SheetKind

/** Where one is in the app, so that it can be written down and found again. */
data class Place(
    val page: PageKind,
    /** What the page is about; empty for a list or for something new. */
    val id: String = "",
    /** Which sheet, on the page of a sheet. */
    val sheet: SheetKind? = null,
    /** What the page is about beside that: the glaze of a bucket, the bucket of a check, the piece of a firing. */
    val subject: String = "",
) {
    fun save(): Bundle = Bundle().apply {
        putString(PAGE, page.name)
        putString(ID, id)
        putString(SHEET, sheet?.name)
        putString(SUBJECT, subject)
    }

    companion object {
        private const val PAGE = "page"
        private const val ID = "id"
        private const val SHEET = "sheet"
        private const val SUBJECT = "subject"

        fun read(saved: Bundle) = Place(
            PageKind.valueOf(saved.getString(PAGE, PageKind.WEIGH.name)),
            saved.getString(ID, ""),
            saved.getString(SHEET)?.let(SheetKind::valueOf),
            saved.getString(SUBJECT, ""),
        )

        fun sheet(kind: SheetKind, id: String = "", subject: String = "") = Place(PageKind.SHEET, id, kind, subject)
    }
}

/** The pages; the first five are the tabs. */
enum class PageKind {
    WEIGH, BUCKETS, KILN, FINDINGS, STUDIO, COAT, BUCKET, SHEET, SIZES, CAUTIONS, FIRING, LOOK, CONTACT_SHEET, PIECE, COMPARE, FIND,
    GLAZE_FINDINGS, BACKUP, HISTORY, DEVICES, IMPORT
}

package studio.laydown

import android.os.Bundle
import studio.laydown.core.EditorKind

/** Where one is in the app, so that it can be written down and found again. */
data class Place(
    val page: PageKind,
    /** What the page is about; empty for a list or for something new. */
    val id: String = "",
    /** Which sheet, on the page of a sheet. */
    val editor: EditorKind? = null,
    /** What the page is about beside that: the glaze of a bucket, the bucket of a check, the piece of a firing. */
    val subject: String = "",
) {
    fun saveState(): Bundle = Bundle().apply {
        putString(PAGE, page.name)
        putString(ID, id)
        putString(EDITOR, editor?.name)
        putString(SUBJECT, subject)
    }

    companion object {
        private const val PAGE = "page"
        private const val ID = "id"
        private const val EDITOR = "sheet"
        private const val SUBJECT = "subject"

        fun read(savedState: Bundle) = Place(
            PageKind.valueOf(savedState.getString(PAGE, PageKind.WEIGH.name)),
            savedState.getString(ID, ""),
            savedState.getString(EDITOR)?.let(EditorKind::valueOf),
            savedState.getString(SUBJECT, ""),
        )

        fun editor(kind: EditorKind, id: String = "", subject: String = "") = Place(PageKind.EDITOR, id, kind, subject)
    }
}

/** The pages; the first five are the tabs. */
enum class PageKind {
    WEIGH, BUCKETS, KILN, FINDINGS, STUDIO, COAT, BUCKET, EDITOR, SIZES, CAUTIONS, FIRING, LOOK, CONTACT_SHEET, PIECE, COMPARE, FIND,
    GLAZE_FINDINGS, BACKUP, HISTORY, DEVICES, IMPORT, WHY, ARCHIVED, MEANWHILE
}

package studio.laydown.buckets

import android.view.View
import android.view.ViewGroup
import android.widget.TextView
import studio.laydown.ColumnPage
import studio.laydown.MainActivity
import studio.laydown.Place
import studio.laydown.R
import studio.laydown.core.BucketView
import studio.laydown.core.EditorKind
import studio.laydown.get
import studio.laydown.put
import studio.laydown.putButton
import studio.laydown.putHeading
import studio.laydown.putLines
import studio.laydown.putNote
import studio.laydown.putRow

/** One bucket: its SG, what that means, its notebook, and what one does to it. */
class BucketPage(host: MainActivity, private val bucketId: String) : ColumnPage(host) {
    override val title: CharSequence = ""

    override fun refresh() = show({ now -> bucket(now, bucketId) }, ::render)

    private fun render(bucket: BucketView) {
        host.nameIt(bucket.glaze)
        fill {
            val head = put<View>(R.layout.bucket_head)
            head.get<TextView>(R.id.head_name).text = bucket.name
            head.get<TextView>(R.id.head_sg).text = bucket.sg
            head.get<TextView>(R.id.head_since).text = bucket.since
            for ((button, place) in mapOf(
                R.id.head_check to Place.editor(EditorKind.CHECK, subject = bucketId),
                R.id.head_thin to Place.editor(EditorKind.THIN, subject = bucketId),
                R.id.head_change to Place.editor(EditorKind.BUCKET, bucketId),
            )) head.get<View>(button).setOnClickListener { host.go(place) }
            bucket.notes.forEach { putNote(it) }
            if (bucket.lines.isNotEmpty()) put<View>(R.layout.gap)
            putLines(bucket.lines)
            putNotebook(bucket)
            putButton(R.layout.add, host.getText(R.string.mix_lot)) {
                host.go(Place.editor(EditorKind.MIX, subject = bucket.glazeId))
            }
            putButton(R.layout.add, host.getText(R.string.another_bucket)) {
                host.go(Place.editor(EditorKind.BUCKET, subject = bucket.glazeId))
            }
        }
    }

    private fun ViewGroup.putNotebook(bucket: BucketView) {
        putHeading(host.getText(R.string.notebook))
        putButton(R.layout.add, host.getText(R.string.note_bucket)) {
            host.go(Place.editor(EditorKind.BUCKET_ENTRY, subject = bucketId))
        }
        if (bucket.notebook.isEmpty()) return
        val card = put<ViewGroup>(R.layout.card)
        for (row in bucket.notebook) {
            val detail = listOf(row.`when`, row.detail).filter { it.isNotEmpty() }.joinToString(" · ")
            card.putRow(row.what, detail, R.drawable.ic_on) { host.go(Place.editor(row.kind, row.id)) }
        }
        put<View>(R.layout.gap)
    }
}

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

/** One bucket: its SG, what that means, its checks, and what one does to it. */
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
            if (bucket.checks.isNotEmpty()) putChecks(bucket)
            putButton(R.layout.add, host.getText(R.string.another_bucket)) {
                host.go(Place.editor(EditorKind.BUCKET, subject = bucket.glazeId))
            }
        }
    }

    private fun ViewGroup.putChecks(bucket: BucketView) {
        putHeading(host.getText(R.string.checks))
        val card = put<ViewGroup>(R.layout.card)
        for (check in bucket.checks) {
            val row = card.put<View>(R.layout.line)
            row.get<TextView>(R.id.line_label).text = check.`when`
            row.get<TextView>(R.id.line_value).text = listOf(check.sg, check.flow).filter { it.isNotEmpty() }.joinToString(" · ")
        }
        put<View>(R.layout.gap)
    }
}

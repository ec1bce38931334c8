package studio.laydown.buckets

import android.view.View
import android.widget.TextView
import studio.laydown.ColumnPage
import studio.laydown.MainActivity
import studio.laydown.PageKind
import studio.laydown.Place
import studio.laydown.R
import studio.laydown.core.BucketsView
import studio.laydown.core.EditorKind
import studio.laydown.get
import studio.laydown.put
import studio.laydown.putButton
import studio.laydown.putNote
import studio.laydown.putSentence
import studio.laydown.showIf

/** The Buckets screen: each with its SG and how old that is. */
class BucketsScreen(host: MainActivity) : ColumnPage(host) {
    override val title: CharSequence = host.getText(R.string.tab_buckets)

    override fun refresh() = show({ now -> buckets(now) }, ::render)

    private fun render(view: BucketsView) = fill {
        if (view.buckets.isEmpty()) putSentence(view.empty)
        for (bucket in view.buckets) {
            val card = put<View>(R.layout.bucket)
            card.get<TextView>(R.id.bucket_glaze).text = bucket.glaze
            card.get<TextView>(R.id.bucket_name).text = bucket.name
            card.get<TextView>(R.id.bucket_sg).text = bucket.sg
            card.get<TextView>(R.id.bucket_since).text = bucket.since
            card.get<View>(R.id.bucket_attention).showIf(bucket.attention)
            card.setOnClickListener { host.go(Place(PageKind.BUCKET, bucket.id)) }
        }
        putButton(R.layout.add, host.getText(R.string.add_glaze)) { host.go(Place.editor(EditorKind.GLAZE)) }
        view.notes.forEach { putNote(it) }
    }
}

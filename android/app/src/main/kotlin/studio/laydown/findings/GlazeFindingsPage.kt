package studio.laydown.findings

import android.view.View
import android.view.ViewGroup
import android.widget.TextView
import studio.laydown.ColumnPage
import studio.laydown.MainActivity
import studio.laydown.R
import studio.laydown.core.ChartView
import studio.laydown.core.GlazeFindingsView
import studio.laydown.core.WindowView
import studio.laydown.get
import studio.laydown.put
import studio.laydown.putButton
import studio.laydown.putHeading
import studio.laydown.putLines
import studio.laydown.putNote
import studio.laydown.putSentence

/** What is known of one glaze: its window, what targets rest on, and whether coats keep to their aims. */
class GlazeFindingsPage(host: MainActivity, private val glazeId: String) : ColumnPage(host) {
    override val title: CharSequence = ""

    override fun refresh() = show({ now -> glazeFindings(now, glazeId) }, ::render)

    private fun render(view: GlazeFindingsView) {
        host.nameIt(view.title)
        fill {
            if (view.empty.isNotEmpty()) putSentence(view.empty)
            view.windows.forEach { putWindow(it) }
            if (view.rests.isNotEmpty()) {
                putHeading(host.getText(R.string.targets_rest_on))
                putLines(view.rests)
            }
            if (view.take.isNotEmpty()) {
                put<View>(R.layout.gap)
                putButton(R.layout.add, view.take) { save({ now -> adoptBest(now, view.id, view.best) }, done = { refresh() }) }
                putSentence(view.takeHelp)
            }
            view.controlChart?.let {
                putHeading(it.title)
                putSentence(it.words)
                putChart(it)
            }
            if (view.sets.isNotEmpty()) put<View>(R.layout.gap)
            putLines(view.sets)
            put<View>(R.layout.gap)
            view.notes.forEach { putNote(it) }
        }
    }

    private fun ViewGroup.putWindow(window: WindowView) {
        putHeading(window.title)
        putSentence(window.words)
        if (window.sure.isNotEmpty()) putSentence(window.sure)
        putChart(window.chart)
        putLines(window.faults)
    }

    private fun ViewGroup.putChart(chart: ChartView) {
        val view = put<View>(R.layout.chart)
        view.get<ChartPlot>(R.id.chart_plot).chart = chart
        val legend = view.get<ViewGroup>(R.id.chart_legend)
        for (entry in chart.legend) {
            val row = legend.put<View>(R.layout.legend)
            row.get<ChartKey>(R.id.legend_key).entry = entry
            row.get<TextView>(R.id.legend_words).text = entry.words
        }
    }
}

package studio.laydown.findings

import android.view.View
import android.view.ViewGroup
import android.widget.TextView
import studio.laydown.ColumnPage
import studio.laydown.MainActivity
import studio.laydown.R
import studio.laydown.core.ChartView
import studio.laydown.core.FindingsSection
import studio.laydown.core.GlazeFindingsView
import studio.laydown.core.Note
import studio.laydown.core.StudioException
import studio.laydown.core.Tone
import studio.laydown.core.WindowView
import studio.laydown.get
import studio.laydown.picture.Pictures
import studio.laydown.picture.share
import studio.laydown.put
import studio.laydown.putButton
import studio.laydown.putHeading
import studio.laydown.putLines
import studio.laydown.putNote
import studio.laydown.putSentence

/** What is known of one glaze: its window, what targets rest on, and what else follows from its pots. */
class GlazeFindingsPage(host: MainActivity, private val glazeId: String) : ColumnPage(host) {
    override val title: CharSequence = ""

    private val pictures = Pictures(host)
    private var trouble = ""

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
            view.sections.forEach { putSection(it, view.id) }
            put<View>(R.layout.gap)
            view.notes.forEach { putNote(it) }
            if (view.windows.isEmpty()) return@fill
            if (trouble.isNotEmpty()) putNote(Note(Tone.ATTENTION, trouble))
            putButton(R.layout.add, host.getText(R.string.share_charts)) { share(view) }
        }
    }

    private fun ViewGroup.putSection(section: FindingsSection, glaze: String) {
        putHeading(section.title)
        if (section.words.isNotEmpty()) putSentence(section.words)
        section.chart?.let { putChart(it) }
        putLines(section.lines)
        if (section.answer.isEmpty()) return
        putButton(R.layout.add, section.answer) { save({ now -> answerDrift(now, glaze) }, done = { refresh() }) }
    }

    /** Has the core draw the charts into a file, and hands it on. */
    private fun share(view: GlazeFindingsView) {
        host.work.inBackground({ now ->
            pictures.clear()
            // A name may hold what no file's name can.
            val file = pictures.place("${view.title.replace(NO_FILE_NAME, "-")}.svg")
            file.also { writeCharts(now, view.id, it.path) }
        }) { result ->
            result.fold({ if (!gone) host.share(it, SVG, host.getText(R.string.share_charts), view.title) }) { problem ->
                if (problem !is StudioException) return@fold host.fail(problem)
                trouble = host.sentence(problem)
                refresh()
            }
        }
    }

    private fun ViewGroup.putWindow(window: WindowView) {
        putHeading(window.title)
        putSentence(window.words)
        if (window.sure.isNotEmpty()) putSentence(window.sure)
        putChart(window.chart)
        putLines(window.faults)
        window.faultChart?.let { putChart(it) }
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

    private companion object {
        const val SVG = "image/svg+xml"
        val NO_FILE_NAME = Regex("[/\\\\:]")
    }
}

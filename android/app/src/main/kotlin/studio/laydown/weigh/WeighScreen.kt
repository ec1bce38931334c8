package studio.laydown.weigh

import android.os.Bundle
import android.os.PowerManager
import android.view.View
import android.view.ViewGroup
import android.view.WindowManager
import android.widget.Button
import android.widget.ImageView
import android.widget.ScrollView
import android.widget.TextView
import studio.laydown.Chooser
import studio.laydown.UndoBar
import studio.laydown.UndoState
import studio.laydown.MainActivity
import studio.laydown.Page
import studio.laydown.PageKind
import studio.laydown.Place
import studio.laydown.R
import studio.laydown.core.Field
import studio.laydown.core.SetupStep
import studio.laydown.core.RecentCoat
import studio.laydown.core.Row
import studio.laydown.core.EditorKind
import studio.laydown.core.StudioException
import studio.laydown.core.Suggestion
import studio.laydown.core.TargetView
import studio.laydown.core.WeighMode
import studio.laydown.core.WeighEntry
import studio.laydown.core.WeighField
import studio.laydown.core.WeighView
import studio.laydown.core.ZoneKind
import studio.laydown.get
import studio.laydown.onceLaidOut
import studio.laydown.put
import studio.laydown.putNote
import studio.laydown.sentence
import studio.laydown.showIf
import studio.laydown.toggle
import studio.laydown.views
import studio.laydown.words

/** The Weigh screen: what is weighed, what it should take, what the reading means, and Keep. */
class WeighScreen(host: MainActivity) : Page(host) {
    override val view: View = host.views(R.layout.weigh)

    /** What is chosen and typed; null until the studio has said what was remembered. */
    private var entry: WeighEntry? = null
    private var shown: WeighView? = null

    /** Which list is open, and the list itself. */
    private var choosing: Choice? = null
    private var chooser: Chooser? = null
    private var wordsOpen = false
    private var saving = false

    private val keypad = Keypad(view.get(R.id.keypad), ::press)
    private val saved = UndoBar(view.get(R.id.saved), next = { goOn(it.entry) }, toggleUndo = ::toggleUndo)
    private val speaker = Speaker(host::say)
    private val readings = view.get<ViewGroup>(R.id.readings)
    private val save = view.get<Button>(R.id.save)

    override fun open(savedState: Bundle) {
        wordsOpen = savedState.getBoolean(WORDS)
        choosing = savedState.getString(CHOOSING)?.let(Choice::valueOf)
        saved.state = savedState.getBundle(SAVED)?.let(UndoState::read)
        stayAwake()
        for (choice in Choice.entries) view.get<View>(choice.chip).setOnClickListener { choose(choice) }
        view.get<View>(R.id.target).setOnClickListener {
            wordsOpen = !wordsOpen
            renderTarget(shown?.target)
        }
        view.get<View>(R.id.way).setOnClickListener { change { it.copy(way = it.way.other) } }
        save.setOnClickListener { saveOrNext() }
        view.get<View>(R.id.weigh_recent).setOnClickListener { host.go(Place(PageKind.HISTORY)) }
        view.get<View>(R.id.bench).visibility = View.INVISIBLE
        refresh()
    }

    override fun saveState(into: Bundle) {
        into.putBoolean(WORDS, wordsOpen)
        into.putString(CHOOSING, choosing?.name)
        into.putBundle(SAVED, saved.state?.saveState())
    }

    override fun pause() {
        speaker.hush()
        entry?.let { entry -> command({ now -> remember(now, entry) }) {} }
        chooser?.drop()
        chooser = null
        host.window.clearFlags(WindowManager.LayoutParams.FLAG_KEEP_SCREEN_ON)
    }

    override fun resume() {
        stayAwake()
    }

    /** With wet hands nobody wakes a phone; one that saves its battery sleeps as it would elsewhere. */
    private fun stayAwake() {
        if (!host.getSystemService(PowerManager::class.java).isPowerSaveMode) {
            host.window.addFlags(WindowManager.LayoutParams.FLAG_KEEP_SCREEN_ON)
        }
    }

    override fun refresh() {
        val asked = entry
        show({ now -> weigh(now, asked) }, ::render)
    }

    override fun showSaved(saved: UndoState): Boolean {
        // Before the first piece there is no place for it.
        if (shown?.missing?.isNotEmpty() == true) return false
        this.saved.state = saved
        shown?.let(::renderVerdict)
        return true
    }

    // ---- what the potter does ----

    /** Changes what is chosen, remembers it, and asks what it means. */
    private fun change(how: (WeighEntry) -> WeighEntry) {
        val changed = how(entry ?: return)
        entry = changed
        speaker.changed()
        command({ now -> remember(now, changed) }) {}
        refresh()
    }

    private fun press(key: Key) {
        val before = entry ?: return
        val text = press(before.typed, key, host.preferences.decimal)
        if (text == before.typed) return
        saved.state = null
        if (before.blank) speaker.next()
        speaker.changed()
        val after = before.typing(text)
        entry = after
        renderReadings(shown?.fields.orEmpty(), after)
        refresh()
    }

    private fun saveOrNext() {
        val entry = entry ?: return
        val next = shown?.fields?.firstOrNull { it.textIn(entry).isEmpty() && it.field != entry.field }
        if (next != null) change { it.copy(field = next.field) } else save(entry)
    }

    private fun save(entry: WeighEntry) {
        if (saving) return
        saving = true
        speaker.now()
        command({ now -> save(now, entry) }, ::refuse) { answer ->
            saving = false
            speaker.next()
            saved.state = UndoState(answer)
            // The studio has remembered what stays chosen, with the digits cleared.
            this.entry = null
            refresh()
        }
    }

    /** What could not be kept: said in the verdict's place, and the digits stay. */
    private fun refuse(problem: Throwable) {
        saving = false
        if (problem is StudioException.Damaged || problem is StudioException.NotAStudio) return host.fail(problem)
        if (problem is StudioException.Refused) entry?.fieldOf(problem.field)?.let { field -> change { it.copy(field = field) } }
        renderProblem(host.sentence(problem))
    }

    private fun goOn(with: WeighEntry) {
        saved.state = null
        entry = with
        change { it }
    }

    private fun toggleUndo(state: UndoState): Unit = command(toggle(state), ::refuse) {
        saved.state = it
        refresh()
    }

    // ---- the lists ----

    private fun choose(choice: Choice) {
        val view = shown ?: return
        choosing = choice
        chooser = Chooser(
            host, host.getText(choice.question), choice.rows(view), choice.add?.let(host::getText),
            picked = { row -> change { choice.pick(it, row) } },
            adding = { choice.editor?.let { host.go(Place.editor(it)) } },
        ).also {
            it.show {
                choosing = null
                chooser = null
            }
        }
    }

    // ---- what is shown ----

    private fun render(view: WeighView) {
        shown = view
        entry = view.entry
        // Here and not on opening: preferences just kept are read before the first view comes.
        keypad.ticks = host.preferences.tick
        keypad.decimal = host.preferences.decimal
        val ready = view.missing.isEmpty()
        this.view.get<View>(R.id.bench).showIf(ready)
        this.view.get<View>(R.id.first).showIf(!ready)
        if (!ready) return renderFirst(view.missing)
        for (choice in Choice.entries) renderChip(choice, view)
        renderTarget(view.target)
        renderReadings(view.fields, view.entry)
        renderVerdict(view)
        val notes = this.view.get<ViewGroup>(R.id.notes)
        notes.removeAllViews()
        view.notes.forEach(notes::putNote)
        this.view.get<TextView>(R.id.tally).text = view.tally
        renderRecent(view.recent)
        if (choosing != null && chooser == null) choosing?.let(::choose)
    }

    private fun renderFirst(steps: List<SetupStep>) {
        // The place of the verdict is not there yet.
        saved.state?.let(host::tellBelow)
        saved.state = null
        val list = view.get<ViewGroup>(R.id.first_steps)
        list.removeAllViews()
        for (step in steps) {
            val row = list.put<View>(R.layout.step)
            row.get<TextView>(R.id.step_title).text = step.title
            row.get<TextView>(R.id.step_detail).text = step.detail
            row.get<ImageView>(R.id.step_mark).apply {
                setImageResource(if (step.done) R.drawable.ic_ring_check else R.drawable.ic_ring)
                contentDescription = host.getText(if (step.done) R.string.done else R.string.to_do)
            }
            row.setOnClickListener { host.go(Place.editor(step.editor)) }
        }
    }

    private fun renderChip(choice: Choice, view: WeighView) {
        val chosen = choice.chosen(view)
        this.view.get<TextView>(choice.text).text = chosen
        this.view.get<View>(choice.chip).contentDescription = host.getString(R.string.choice_is, host.getText(choice.label), chosen)
    }

    private fun renderTarget(target: TargetView?) {
        val card = view.get<View>(R.id.target)
        card.showIf(target != null)
        if (target == null) return
        view.get<TextView>(R.id.target_wet).text = target.wet
        view.get<TextView>(R.id.target_span).text = target.span
        card.contentDescription = host.getString(R.string.target_is, target.wet, target.span, target.source)
        view.get<TextView>(R.id.target_source).words(target.source)
        view.get<TextView>(R.id.target_more_words).apply {
            text = listOf(target.restsOn, target.sure, target.tolerance).filter { it.isNotEmpty() }.joinToString("\n")
            showIf(wordsOpen)
        }
        view.get<TextView>(R.id.target_source).maxLines = if (wordsOpen) Int.MAX_VALUE else 2
        view.get<View>(R.id.target_more).rotation = if (wordsOpen) 180f else 0f
    }

    private fun renderReadings(fields: List<WeighField>, entry: WeighEntry) {
        while (readings.childCount > fields.size) readings.removeViewAt(readings.childCount - 1)
        while (readings.childCount < fields.size) readings.put<View>(R.layout.reading)
        fields.forEachIndexed { at, field ->
            val cell = readings.getChildAt(at)
            val text = field.textIn(entry)
            val active = field.field == entry.field
            cell.get<TextView>(R.id.reading_label).text = field.label
            cell.get<TextView>(R.id.reading_text).text = text
            cell.get<TextView>(R.id.reading_unit).text = field.unit
            cell.isActivated = active && fields.size > 1
            cell.isClickable = fields.size > 1
            cell.contentDescription = listOf(field.label, text, field.unit).joinToString(" ")
            if (fields.size > 1) cell.setOnClickListener { if (!active) change { it.copy(field = field.field) } }
        }
        val two = entry.way == WeighMode.TWO_WEIGHTS
        view.get<View>(R.id.way_net).isActivated = !two
        view.get<View>(R.id.way_two).isActivated = two
        val ways = listOf(R.string.way_net, R.string.way_two).map(host::getString).let { if (two) it.reversed() else it }
        view.get<View>(R.id.way).contentDescription = host.getString(R.string.way_is, ways[0], ways[1])
        val next = fields.firstOrNull { it.textIn(entry).isEmpty() && it.field != entry.field }
        save.text = next?.let { host.getString(R.string.next_field, it.label) } ?: host.getText(R.string.save)
        save.isEnabled = entry.typed.isNotEmpty()
    }

    private fun renderVerdict(view: WeighView) {
        val card = this.view.get<View>(R.id.verdict)
        val gauge = this.view.get<GaugeView>(R.id.gauge)
        gauge.gauge = view.gauge
        gauge.showIf(view.gauge != null)
        val verdict = view.verdict
        val refusal = view.refusal
        val facts = listOfNotNull(verdict?.carries, verdict?.onControl, verdict?.certainty).filter { it.isNotEmpty() }
        this.view.get<TextView>(R.id.verdict_facts).words(facts.joinToString("\n"))
        // A note says more than the prompt, and stands where it is seen.
        val silent = verdict == null && refusal == null && view.question == null && saved.state == null
        this.view.get<TextView>(R.id.prompt).apply {
            text = view.waiting.ifEmpty { host.getText(R.string.nothing_typed) }
            showIf(silent && view.target != null && (view.notes.isEmpty() || view.waiting.isNotEmpty()))
        }
        renderChoices(view.question?.choices.orEmpty())
        this.view.get<View>(R.id.problem).showIf(false)
        card.showIf(verdict != null)
        (refusal?.sentence ?: view.question?.text)?.let { return renderProblem(it) }
        if (verdict == null) {
            bringIntoView(this.view.get(if (saved.state == null) R.id.target else R.id.saved))
            return
        }
        card.setBackgroundResource(verdict.kind.card)
        this.view.get<VerdictMark>(R.id.verdict_mark).apply {
            kind = verdict.kind
            contentDescription = verdict.headline
        }
        this.view.get<TextView>(R.id.verdict_headline).apply {
            text = verdict.headline
            setTextColor(host.getColor(verdict.kind.ink))
        }
        this.view.get<TextView>(R.id.verdict_act).words(verdict.act)
        this.view.get<TextView>(R.id.verdict_detail).words(listOf(verdict.detail, verdict.rests).filter { it.isNotEmpty() }.joinToString("\n"))
        speaker.verdict(verdict.spoken)
        bringIntoView(card)
    }

    /** The answers to what is asked about a reading, under the question. */
    private fun renderChoices(choices: List<Suggestion>) {
        val buttons = view.get<ViewGroup>(R.id.question_choices)
        buttons.removeAllViews()
        buttons.showIf(choices.isNotEmpty())
        for (choice in choices) {
            val button = buttons.put<Button>(R.layout.next_coat)
            button.text = choice.label
            button.setOnClickListener { change { choice.entry } }
        }
    }

    /** What cannot be taken as it stands, in the verdict's place. */
    private fun renderProblem(sentence: String) {
        val card = view.get<View>(R.id.problem)
        view.get<View>(R.id.prompt).showIf(false)
        view.get<View>(R.id.verdict).showIf(false)
        view.get<TextView>(R.id.problem_sentence).text = sentence
        card.showIf(true)
        bringIntoView(card)
    }

    /**
     * On a short screen what one wants to see now may lie beyond the edge: scrolls to it, and no further than needed. Where it lies is
     * known once it has been laid out.
     */
    private fun bringIntoView(card: View) {
        val scroll = view.get<ScrollView>(R.id.scroll)
        scroll.onceLaidOut { scroll.scrollTo(0, card.bottom - scroll.height) }
    }

    private fun renderRecent(coats: List<RecentCoat>) {
        val list = view.get<ViewGroup>(R.id.recent)
        list.removeAllViews()
        list.showIf(coats.isNotEmpty())
        for (coat in coats) {
            val row = list.put<View>(R.layout.recent)
            row.get<VerdictMark>(R.id.recent_mark).kind = coat.verdict
            row.get<TextView>(R.id.recent_title).text = coat.title
            val control = host.getString(R.string.control).takeIf { coat.control }
            row.get<TextView>(R.id.recent_detail).text = listOfNotNull(coat.`when`, coat.word, control).joinToString(" · ")
            row.get<TextView>(R.id.recent_wet).text = coat.wet
            row.setOnClickListener { host.go(Place(PageKind.COAT, coat.id)) }
        }
    }

    /** The four things that are chosen. */
    private enum class Choice(
        val chip: Int, val text: Int, val label: Int, val question: Int, val add: Int?, val editor: EditorKind?,
        val chosen: (WeighView) -> String, val rows: (WeighView) -> List<Row>, val pick: (WeighEntry, Row) -> WeighEntry,
    ) {
        FORM(
            R.id.choose_form, R.id.chosen_form, R.string.form, R.string.choose_form, R.string.add_form, EditorKind.FORM,
            WeighView::form, WeighView::forms, { entry, row -> entry.copy(form = row.id, piece = "") },
        ),
        ZONE(
            R.id.choose_zone, R.id.chosen_zone, R.string.zone, R.string.choose_zone, null, null,
            WeighView::zone, WeighView::zones, { entry, row -> entry.copy(zone = ZoneKind.valueOf(row.id.uppercase()), piece = "") },
        ),
        GLAZE(
            R.id.choose_glaze, R.id.chosen_glaze, R.string.glaze, R.string.choose_glaze, R.string.add_glaze, EditorKind.GLAZE,
            WeighView::bucket, WeighView::buckets, { entry, row -> entry.copy(bucket = row.id) },
        ),
        SCALE(
            R.id.choose_scale, R.id.chosen_scale, R.string.scale, R.string.choose_scale, R.string.add_scale, EditorKind.SCALE,
            WeighView::scale, WeighView::scales, { entry, row -> entry.copy(scale = row.id) },
        ),
    }

    private companion object {
        const val WORDS = "words"
        const val CHOOSING = "choosing"
        const val SAVED = "kept"
    }
}

/** What is typed in the field that the keypad fills. */
private val WeighEntry.typed: String get() = textOf(field)

/** Whether nothing is typed in any field. */
private val WeighEntry.blank: Boolean get() = Field.entries.all { textOf(it).isEmpty() }

private fun WeighEntry.textOf(field: Field): String = when (field) {
    Field.NET -> net
    Field.BARE -> bare
    Field.GLAZED -> glazed
}

private fun WeighEntry.typing(text: String): WeighEntry = when (field) {
    Field.NET -> copy(net = text)
    Field.BARE -> copy(bare = text)
    Field.GLAZED -> copy(glazed = text)
}

/** The field that a refusal names, if it is one of those filled here. */
private fun WeighEntry.fieldOf(key: String): Field? = Field.entries.firstOrNull { it.name.lowercase() == key && it != field }

private fun WeighField.textIn(entry: WeighEntry): String = entry.textOf(field)

private val WeighMode?.other: WeighMode get() = if (this == WeighMode.TWO_WEIGHTS) WeighMode.NET else WeighMode.TWO_WEIGHTS

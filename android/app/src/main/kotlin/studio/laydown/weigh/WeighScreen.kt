package studio.laydown.weigh

import android.content.res.ColorStateList
import android.os.Bundle
import android.os.PowerManager
import android.view.KeyEvent
import android.view.View
import android.view.ViewGroup
import android.view.WindowManager
import android.view.accessibility.AccessibilityManager
import android.widget.Button
import android.widget.ImageView
import android.widget.LinearLayout
import android.widget.TextView
import studio.laydown.MainActivity
import studio.laydown.Page
import studio.laydown.PageKind
import studio.laydown.Place
import studio.laydown.R
import studio.laydown.Sheet
import studio.laydown.UndoBar
import studio.laydown.UndoState
import studio.laydown.chooser
import studio.laydown.core.EditorKind
import studio.laydown.core.Field
import studio.laydown.core.Note
import studio.laydown.core.PiecesToGlazeView
import studio.laydown.core.RecentCoat
import studio.laydown.core.Row
import studio.laydown.core.SetupStep
import studio.laydown.core.StudioException
import studio.laydown.core.Suggestion
import studio.laydown.core.TargetOption
import studio.laydown.core.TargetView
import studio.laydown.core.Tone
import studio.laydown.core.VerdictKind
import studio.laydown.core.VerdictView
import studio.laydown.core.WeighEntry
import studio.laydown.core.WeighField
import studio.laydown.core.WeighMode
import studio.laydown.core.WeighView
import studio.laydown.core.ZoneKind
import studio.laydown.get
import studio.laydown.ink
import studio.laydown.mark
import studio.laydown.put
import studio.laydown.putButton
import studio.laydown.putChoices
import studio.laydown.putHeading
import studio.laydown.putNote
import studio.laydown.putRow
import studio.laydown.putSentence
import studio.laydown.show
import studio.laydown.showIf
import studio.laydown.toggle
import studio.laydown.views

/** The Weigh screen: what is weighed, what it should take, what the reading means, and Keep. */
class WeighScreen(host: MainActivity) : Page(host) {
    private val shape = BenchShape.of(host.resources.configuration)
    override val view: View = host.views(shape.layout).also { it.get<ViewGroup>(R.id.upper).put<View>(shape.upper) }

    /** What is chosen and typed; null until the studio has said what was remembered. */
    private var entry: WeighEntry? = null
    private var shown: WeighView? = null

    /** What is open over the page, and the sheet that it is in. */
    private var choosing: Choice? = null
    private var telling: Telling? = null
    private var sheet: Sheet? = null
    private var saving = false

    /** Keys pressed before the studio has said what is chosen for the next piece: none of them is lost. */
    private val early = mutableListOf<Key>()

    /** What could not be saved, and what to do; null when nothing is wrong. */
    private var problem: String? = null

    private val keypad = Keypad(view.get(R.id.keypad), ::press)
    private val saved = UndoBar(view.get(R.id.saved), R.layout.next_coat_beside, next = { goOn(it.entry) }, toggleUndo = ::toggleUndo)
    private val speaker = Speaker(::tell)
    private val readings = view.get<LinearLayout>(R.id.readings)
    private val save = view.get<Button>(R.id.save)

    override fun open(savedState: Bundle) {
        telling = savedState.getString(TELLING)?.let(Telling::valueOf)
        choosing = savedState.getString(CHOOSING)?.let(Choice::valueOf)
        saved.state = savedState.getBundle(SAVED)?.let(UndoState::read)
        stayAwake()
        for (choice in Choice.entries) view.get<View>(choice.chip).setOnClickListener { choose(choice) }
        for (id in listOf(R.id.target, R.id.verdict, R.id.prompt)) view.get<View>(id).setOnClickListener { tell(Telling.DETAILS) }
        for (id in listOf(R.id.tally, R.id.saved_sentence)) view.get<View>(id).setOnClickListener { tell(Telling.RECENT) }
        readings.orientation = if (shape.stacked) LinearLayout.VERTICAL else LinearLayout.HORIZONTAL
        view.get<View>(R.id.way).setOnClickListener { change { it.copy(way = it.way.other) } }
        save.setOnClickListener { saveOrNext() }
        view.get<View>(R.id.weigh_recent).setOnClickListener { host.go(Place(PageKind.HISTORY)) }
        view.get<View>(R.id.bench).visibility = View.INVISIBLE
        refresh()
    }

    override fun saveState(into: Bundle) {
        into.putString(TELLING, telling?.name)
        into.putString(CHOOSING, choosing?.name)
        into.putBundle(SAVED, saved.state?.saveState())
    }

    override fun pause() {
        speaker.hush()
        entry?.let { entry -> command({ now -> remember(now, entry) }) {} }
        sheet?.drop()
        sheet = null
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
        shown?.let(::renderSlot)
        return true
    }

    // ---- what the potter does ----

    /** Changes what is chosen, remembers it, and asks what it means. */
    private fun change(how: (WeighEntry) -> WeighEntry) {
        val changed = how(entry ?: return)
        entry = changed
        problem = null
        speaker.changed()
        command({ now -> remember(now, changed) }) {}
        refresh()
    }

    private fun press(key: Key) {
        val before = entry
        if (before == null) {
            early += key
            return
        }
        val text = press(before.typed, key, host.preferences.decimal)
        if (text == before.typed) return
        saved.state = null
        problem = null
        if (before.blank) speaker.next()
        speaker.changed()
        val after = before.typing(text)
        entry = after
        renderReadings(shown?.fields.orEmpty(), after)
        refresh()
    }

    /** A keyboard types as the keypad does, and its Enter is Save. */
    override fun key(event: KeyEvent): Boolean {
        if (shown?.missing?.isEmpty() != true) return false
        val sign = event.unicodeChar.toChar()
        when {
            event.keyCode == KeyEvent.KEYCODE_DEL -> press(Key.Delete)
            event.keyCode == KeyEvent.KEYCODE_ENTER || event.keyCode == KeyEvent.KEYCODE_NUMPAD_ENTER -> if (save.isEnabled) saveOrNext()
            sign in '0'..'9' -> press(Key.Mark(sign.toString()))
            sign == '.' || sign == ',' -> press(Key.Mark(host.preferences.decimal))
            else -> return false
        }
        return true
    }

    private fun saveOrNext() {
        val entry = entry ?: return
        val next = shown?.fields?.firstOrNull { it.textIn(entry).isEmpty() && it.field != entry.field }
        if (next != null) change { it.copy(field = next.field) } else save(entry)
    }

    private fun save(entry: WeighEntry) {
        if (saving) return
        saving = true
        problem = null
        speaker.now()
        command({ now -> save(now, entry) }, { refuse(it) }, elsewhere = { tell(UndoState(it)) }) { answer ->
            saving = false
            speaker.next()
            saved.state = UndoState(answer)
            shown = shown?.copy(verdict = null)
            shown?.let(::renderSlot)
            // The studio has remembered what stays chosen, with the digits cleared.
            this.entry = null
            refresh()
        }
    }

    /** What could not be saved: said in the slot, and the digits stay. */
    private fun refuse(problem: Throwable) {
        saving = false
        if (problem is StudioException.Damaged || problem is StudioException.NotAStudio) return host.fail(problem)
        if (problem is StudioException.Refused) entry?.fieldOf(problem.field)?.let { field -> change { it.copy(field = field) } }
        this.problem = host.sentence(problem)
        shown?.let(::renderSlot)
    }

    private fun goOn(with: WeighEntry) {
        saved.state = null
        entry = with
        change { it }
    }

    private fun toggleUndo(state: UndoState): Unit = command(toggle(state), { refuse(it) }) {
        saved.state = it
        refresh()
    }

    // ---- what opens over the page ----

    private fun choose(choice: Choice) {
        val view = shown ?: return
        choosing = choice
        if (choice == Choice.ZONE) return open(zoneAndPiece(view))
        open(
            chooser(
                host, host.getText(choice.question), choice.rows(view), choice.add?.let(host::getText),
                picked = { row -> change { choice.pick(it, row) } },
                adding = { choice.editor?.let { host.go(Place.editor(it)) } },
            ),
        )
    }

    /** The zones, and below them the pieces to come back to. */
    private fun zoneAndPiece(view: WeighView) = Sheet(host, host.getText(Choice.ZONE.question)) { sheet ->
        putChoices(host, sheet, view.zones) { row ->
            // The glaze of the zone that is left, too, where it was never chosen or saved.
            entry?.let { left -> command({ now -> remember(now, left) }) {} }
            change { Choice.ZONE.pick(it, row) }
        }
        PiecePicker(host, sheet, this, ask = ::askPieces, picked = { goOn(it) })
    }

    private fun askPieces(code: String, answered: (PiecesToGlazeView) -> Unit) {
        val entry = entry ?: return
        command({ now -> piecesToGlaze(now, entry, code) }) { answered(it) }
    }

    private fun tell(telling: Telling) {
        val view = shown ?: return
        this.telling = telling
        open(
            when (telling) {
                Telling.DETAILS -> Sheet(host, host.getText(R.string.details)) { sheet -> putDetails(view, sheet) }
                Telling.RECENT -> Sheet(host, view.tally) { sheet -> putRecent(view.recent, sheet) }
            },
        )
    }

    private fun open(sheet: Sheet) {
        this.sheet = sheet
        sheet.show {
            choosing = null
            telling = null
            this.sheet = null
        }
    }

    private fun ViewGroup.putDetails(view: WeighView, sheet: Sheet) {
        val words = put<ViewGroup>(R.layout.details)
        view.notes.forEach(words::putNote)
        view.verdict?.let { verdict ->
            words.putHeading(verdict.headline)
            for (line in listOf(verdict.act, verdict.detail, verdict.rests, verdict.carries, verdict.onControl, verdict.certainty)) words.putLine(line)
        }
        view.target?.let { target ->
            words.putHeading(target.span)
            for (line in listOf(target.source, target.restsOn, target.sure, target.tolerance)) words.putLine(line)
            for (option in target.options) words.putButton(R.layout.add, option.label) { choose(option, target) { sheet.close() } }
            words.putButton(R.layout.add, target.why) {
                sheet.close()
                telling = null
                host.go(Place(PageKind.WHY, target.id))
            }
        }
    }

    /** Chooses another way to the target; what was done is said in the slot, with Undo. */
    private fun choose(option: TargetOption, target: TargetView, first: () -> Unit = {}) {
        first()
        command({ now -> chooseTarget(now, target.id, option.choice) }, { refuse(it) }) {
            saved.state = UndoState(it)
            refresh()
        }
    }

    private fun ViewGroup.putLine(words: String) {
        if (words.isNotEmpty()) putSentence(words)
    }

    private fun ViewGroup.putRecent(coats: List<RecentCoat>, sheet: Sheet) {
        for (coat in coats) {
            val row = put<View>(R.layout.recent)
            row.get<VerdictMark>(R.id.recent_mark).kind = coat.verdict
            row.get<TextView>(R.id.recent_title).text = coat.title
            val control = host.getString(R.string.control).takeIf { coat.control }
            row.get<TextView>(R.id.recent_detail).text = listOfNotNull(coat.`when`, coat.word, control).joinToString(" · ")
            row.get<TextView>(R.id.recent_wet).text = coat.wet
            row.setOnClickListener { goFrom(sheet, Place(PageKind.COAT, coat.id)) }
            row.get<View>(R.id.recent_correct).apply {
                contentDescription = host.getString(R.string.correct_this, "${coat.title}, ${coat.wet}")
                setOnClickListener { goFrom(sheet, Place.editor(EditorKind.COAT, coat.id)) }
            }
        }
    }

    private fun goFrom(sheet: Sheet, place: Place) {
        sheet.close()
        // Coming back, one is on the page and not in the list.
        telling = null
        host.go(place)
    }

    // ---- what is shown ----

    /** Says a verdict: to whoever has the screen read out, or aloud if the phone is to speak. */
    private fun tell(verdict: String) {
        val isReadOut = host.getSystemService(AccessibilityManager::class.java).isTouchExplorationEnabled
        if (isReadOut) view.announceForAccessibility(verdict) else host.say(verdict)
    }

    private fun render(view: WeighView) {
        val before = shown
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
        this.view.get<GaugeView>(R.id.gauge).gauge = view.gauge
        renderReadings(view.fields, view.entry)
        renderSlot(view)
        early.toList().also { early.clear() }.forEach(::press)
        sheet?.let { open ->
            // A list opened while a coat was still being undone must not go on showing it.
            if (telling == Telling.RECENT && view.recent != before?.recent) open.put(view.tally) { putRecent(view.recent, it) }
            return
        }
        choosing?.let(::choose)
        telling?.let { tell(it) }
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
        view.get<ViewGroup>(R.id.first_existing).apply {
            removeAllViews()
            for ((title, detail, page) in EXISTING) {
                putRow(host.getText(title), host.getText(detail), R.drawable.ic_on) { host.go(Place(page)) }
            }
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
    }

    private fun renderReadings(fields: List<WeighField>, entry: WeighEntry) {
        while (readings.childCount > fields.size) readings.removeViewAt(readings.childCount - 1)
        while (readings.childCount < fields.size) putReading()
        fields.forEachIndexed { at, field ->
            val cell = readings.getChildAt(at)
            val text = field.textIn(entry)
            val active = field.field == entry.field
            // The unit stands here, where it takes no room from the digits.
            cell.get<TextView>(R.id.reading_label).text = listOf(field.label, field.unit).joinToString(", ")
            cell.get<TextView>(R.id.reading_text).text = text
            cell.isActivated = active && fields.size > 1
            cell.isClickable = fields.size > 1
            cell.contentDescription = listOf(field.label, text, field.unit).joinToString(" ")
            if (fields.size > 1) cell.setOnClickListener { if (!active) change { it.copy(field = field.field) } }
        }
        val two = entry.way == WeighMode.TWO_WEIGHTS
        val ways = listOf(R.string.way_net, R.string.way_two).map(host::getString).let { if (two) it.reversed() else it }
        view.get<TextView>(R.id.way).text = ways[0]
        view.get<View>(R.id.way).contentDescription = host.getString(R.string.way_is, ways[0], ways[1])
        renderSave(fields, entry)
    }

    private fun putReading() {
        val cell = readings.put<View>(R.layout.reading)
        val place = cell.layoutParams as LinearLayout.LayoutParams
        val gap = host.resources.getDimensionPixelSize(R.dimen.reading_gap)
        if (shape.stacked) {
            place.width = LinearLayout.LayoutParams.MATCH_PARENT
            place.height = LinearLayout.LayoutParams.WRAP_CONTENT
            place.weight = 0f
            if (readings.childCount > 1) place.topMargin = gap
        } else if (readings.childCount > 1) {
            place.marginStart = gap
        }
        // Given back, margins are counted when the row is measured.
        cell.layoutParams = place
    }

    /**
     * What the button does and how much it is meant: leads to the empty field; saves; or saves what misses the span, which is allowed
     * but not proposed. A reading that the core refuses cannot be saved. Until the core has judged what was just typed, it stays as it is.
     */
    private fun renderSave(fields: List<WeighField>, entry: WeighEntry) {
        // Seconds may stay empty.
        val next = fields.firstOrNull { it.textIn(entry).isEmpty() && it.field != entry.field && it.field != Field.SECONDS }
        val judged = shown?.takeIf { it.entry == entry }
        val misses = shown?.verdict?.let { it.kind !in SAVED_AS_IT_IS } == true
        save.isActivated = next == null && misses
        save.text = when {
            next != null -> host.getString(R.string.next_field, next.label)
            misses -> host.getText(R.string.save_as_is)
            else -> host.getText(R.string.save)
        }
        save.isEnabled = entry.typed.isNotEmpty() && judged?.refusal == null && judged?.question == null
    }

    /** Shows the one thing that the slot has to say. All of it lies in the same place, so that nothing moves. */
    private fun renderSlot(view: WeighView) {
        val refusal = problem ?: view.refusal?.sentence ?: view.question?.text
        val verdict = view.verdict
        val says = when {
            refusal != null -> R.id.problem
            verdict != null -> R.id.verdict
            saved.state != null -> R.id.saved
            else -> R.id.idle
        }
        for (id in SLOT) this.view.get<View>(id).showIf(id == says)
        this.view.get<TextView>(R.id.problem_sentence).text = refusal.orEmpty()
        renderChoices(if (problem == null) view.question?.choices.orEmpty() else emptyList())
        if (verdict != null) renderVerdict(verdict, view.notes)
        renderPrompt(view)
    }

    /** The answers to what is asked about a reading, under the question. */
    private fun renderChoices(choices: List<Suggestion>) {
        val buttons = view.get<ViewGroup>(R.id.question_choices)
        buttons.removeAllViews()
        buttons.showIf(choices.isNotEmpty())
        for (choice in choices) {
            val button = buttons.put<Button>(R.layout.next_coat_beside)
            button.text = choice.label
            button.setOnClickListener { change { choice.entry } }
        }
    }

    private fun renderVerdict(verdict: VerdictView, notes: List<Note>) {
        view.get<View>(R.id.verdict).setBackgroundResource(verdict.kind.card)
        view.get<VerdictMark>(R.id.verdict_mark).apply {
            kind = verdict.kind
            contentDescription = verdict.headline
        }
        view.get<TextView>(R.id.verdict_headline).apply {
            text = verdict.headline
            setTextColor(host.getColor(verdict.kind.ink))
        }
        view.get<TextView>(R.id.verdict_act).text = verdict.act
        view.get<TextView>(R.id.verdict_detail).text =
            // Only a guess says here why: what a trusted target rests on is in the details.
            if (verdict.kind == VerdictKind.GUESS) "${verdict.detail}\n${verdict.rests}" else verdict.detail
        // The way to the details shows whether there is something to mind.
        val tone = notes.map { it.tone }.maxOrNull()?.takeIf { it != Tone.PLAIN }
        view.get<ImageView>(R.id.verdict_more).apply {
            setImageResource(tone?.mark ?: R.drawable.ic_on)
            imageTintList = ColorStateList.valueOf(host.getColor(tone?.ink ?: R.color.ink))
        }
        speaker.verdict(verdict.spoken)
    }

    /** What to do while nothing is typed; a note says more than that, and the gravest stands here. */
    private fun renderPrompt(view: WeighView) {
        // That the target has moved is said once, and before all else, with the one tap that takes it back.
        val moved = view.moved?.takeIf { view.waiting.isEmpty() }
        val gravest = moved?.let { Note(Tone.ATTENTION, it.text) } ?: view.notes.maxByOrNull { it.tone }
        val note = gravest.takeIf { view.waiting.isEmpty() }
        val words = this.view.get<TextView>(R.id.prompt_words)
        val mark = this.view.get<ImageView>(R.id.prompt_mark)
        mark.showIf(note != null)
        this.view.get<View>(R.id.prompt).isClickable = note != null
        this.view.get<View>(R.id.prompt_more).showIf(note != null && moved == null)
        this.view.get<Button>(R.id.prompt_keep).apply {
            showIf(moved != null)
            text = moved?.keep?.label
            setOnClickListener { view.target?.let { target -> moved?.let { choose(it.keep, target) } } }
        }
        if (note != null) {
            note.show(mark, words)
        } else {
            words.text = if (view.target == null) "" else view.waiting.ifEmpty { host.getText(R.string.nothing_typed) }
            words.contentDescription = null
        }
        this.view.get<Button>(R.id.tally).apply {
            text = view.tally
            isClickable = view.recent.isNotEmpty()
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
            // Each zone has its own glaze: the core fills in which.
            WeighView::zone, WeighView::zones, { entry, row -> entry.copy(zone = ZoneKind.valueOf(row.id.uppercase()), bucket = "") },
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

    /** What is told in a sheet. */
    private enum class Telling { DETAILS, RECENT }

    private companion object {
        /** What is proposed to be saved. */
        val SAVED_AS_IT_IS = setOf(VerdictKind.WITHIN, VerdictKind.PROBABLY_WITHIN, VerdictKind.GUESS)
        val SLOT = listOf(R.id.problem, R.id.verdict, R.id.saved, R.id.idle)
        /** The ways to a studio that is elsewhere: what each is called, one line about it, and its page. */
        val EXISTING = listOf(
            Triple(R.string.restore_here, R.string.restore_here_detail, PageKind.BACKUP),
            Triple(R.string.join_here, R.string.join_here_detail, PageKind.DEVICES),
        )
        const val TELLING = "telling"
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
    Field.SECONDS -> seconds
}

private fun WeighEntry.typing(text: String): WeighEntry = when (field) {
    Field.NET -> copy(net = text)
    Field.BARE -> copy(bare = text)
    Field.GLAZED -> copy(glazed = text)
    Field.SECONDS -> copy(seconds = text)
}

/** The field that a refusal names, if it is one of those filled here. */
private fun WeighEntry.fieldOf(key: String): Field? = Field.entries.firstOrNull { it.name.lowercase() == key && it != field }

private fun WeighField.textIn(entry: WeighEntry): String = entry.textOf(field)

private val WeighMode?.other: WeighMode get() = if (this == WeighMode.TWO_WEIGHTS) WeighMode.NET else WeighMode.TWO_WEIGHTS

package studio.laydown

import android.app.Activity
import android.app.AlertDialog
import android.content.Intent
import android.os.Build
import android.os.Bundle
import android.view.KeyEvent
import android.view.View
import android.view.ViewGroup
import android.widget.Button
import android.widget.TextView
import studio.laydown.buckets.BucketPage
import studio.laydown.buckets.BucketsScreen
import studio.laydown.core.Preferences
import studio.laydown.core.StudioException
import studio.laydown.findings.FindingsScreen
import studio.laydown.findings.GlazeFindingsPage
import studio.laydown.setup.ArchivedPage
import studio.laydown.setup.BackupPage
import studio.laydown.setup.BackupsByThemselves
import studio.laydown.setup.CautionsScreen
import studio.laydown.setup.DevicesPage
import studio.laydown.setup.HistoryPage
import studio.laydown.setup.ImportPage
import studio.laydown.setup.MeanwhilePage
import studio.laydown.setup.SizesScreen
import studio.laydown.setup.StudioScreen
import studio.laydown.kiln.ComparePage
import studio.laydown.kiln.ContactSheetPage
import studio.laydown.kiln.FindPage
import studio.laydown.kiln.FiringPage
import studio.laydown.kiln.KilnScreen
import studio.laydown.kiln.AssessmentPage
import studio.laydown.kiln.PiecePage
import studio.laydown.sync.SyncRunner
import studio.laydown.sync.SecretNotSaved
import studio.laydown.sync.Secrets
import studio.laydown.editor.EditorScreen
import studio.laydown.weigh.CoatPage
import studio.laydown.weigh.WeighScreen
import studio.laydown.weigh.WhyPage
import java.util.UUID

/** The house around the pages: the tabs, the way back, what was kept last, and the screen that says why nothing can be shown. */
class MainActivity : Activity() {
    /** A place one has been at, with what its page saved. */
    private class Step(val place: Place, val savedState: Bundle = Bundle(), val name: String = UUID.randomUUID().toString())

    private val stack = ArrayDeque<Step>()
    private var page: Page? = null

    /** What another app answered before there was a page again to hand it to. */
    private var unheard: ActivityResult? = null
    private lateinit var savedBar: UndoBar
    private lateinit var voice: Voice
    private lateinit var systemBack: SystemBack

    /** What this phone does beside showing: speak and tick. */
    var preferences = Preferences(speak = false, tick = false, decimal = "")
        private set

    val work: StudioWork get() = app.work
    val secrets: Secrets get() = app.secrets
    val sync: SyncRunner get() = app.sync
    val backups: BackupsByThemselves get() = app.backups
    val answers: Answers get() = app.answers
    private val app: LaydownApplication get() = application as LaydownApplication

    override fun onCreate(savedInstanceState: Bundle?) {
        super.onCreate(savedInstanceState)
        setContentView(R.layout.main)
        part<View>(R.id.frame).padBySystemBars()
        voice = Voice(this)
        systemBack = SystemBack(this, ::goBack)
        savedBar = UndoBar(part(R.id.saved), next = {}, toggleUndo = ::toggleUndo)
        part<View>(R.id.back).setOnClickListener { goBack() }
        part<View>(R.id.recent_changes).setOnClickListener { go(Place(PageKind.HISTORY)) }
        for ((tab, kind) in TABS) part<View>(tab).setOnClickListener { if (stack.last().place.page != kind) goTab(kind) }
        savedInstanceState?.bundles(STACK)?.forEach { stack.addLast(Step(Place.read(it.part(PLACE)), it.part(SAVED_STATE), it.getString(NAME, ""))) }
        if (stack.isEmpty()) stack.addLast(Step(Place(PageKind.WEIGH)))
        savedBar.state = savedInstanceState?.getBundle(SAVED)?.let(UndoState::read)
        start()
        // Behind the first view. Phones end jobs of apps that are seldom opened: then this is when one is overdue.
        if (savedInstanceState == null) backups.run()
    }

    override fun onResume() {
        super.onResume()
        // Time has passed: what was checked today may have been checked yesterday.
        page?.resume()
        page?.refresh()
    }

    override fun onPause() {
        page?.pause()
        super.onPause()
    }

    @Deprecated("The replacement is not of the platform.")
    override fun onActivityResult(requestCode: Int, resultCode: Int, data: Intent?) {
        if (requestCode != ActivityResult.CODE) return
        val answer = ActivityResult(resultCode == RESULT_OK, data?.data)
        // After the end of the process the page is only there once the studio is open.
        page?.answered(answer) ?: run { unheard = answer }
    }

    override fun onSaveInstanceState(outState: Bundle) {
        super.onSaveInstanceState(outState)
        page?.saveState(stack.last().savedState)
        outState.putParcelableArrayList(
            STACK,
            stack.mapTo(ArrayList()) { step ->
                Bundle().apply {
                    putBundle(PLACE, step.place.saveState())
                    putBundle(SAVED_STATE, step.savedState)
                    putString(NAME, step.name)
                }
            },
        )
        savedBar.state?.let { outState.putBundle(SAVED, it.saveState()) }
    }

    override fun onDestroy() {
        answers.closed(this)
        page?.leave()
        voice.shutdown()
        super.onDestroy()
    }

    @Deprecated("SystemBack does this from Android 13 on.")
    override fun onBackPressed() = goBack()

    override fun onKeyDown(keyCode: Int, event: KeyEvent): Boolean = page?.key(event) == true || super.onKeyDown(keyCode, event)

    // ---- going about ----

    /** Opens a page on top of this one. */
    fun go(place: Place) {
        page?.saveState(stack.last().savedState)
        stack.addLast(Step(place))
        open()
    }

    /** Leaves the page in front for the one below it; at the bottom for Weigh, and from there leaves the app. */
    fun goBack() {
        if (page?.back() == true) return
        leavePage()
    }

    /** As [goBack], without asking the page. */
    fun leavePage() {
        when {
            stack.size > 1 -> {
                stack.removeLast()
                open()
            }
            stack.last().place.page != PageKind.WEIGH -> goTab(PageKind.WEIGH)
            else -> finish()
        }
    }

    private fun goTab(kind: PageKind) {
        stack.clear()
        stack.addLast(Step(Place(kind)))
        open()
    }

    // ---- what pages ask of the house ----

    /** Says what was kept, where the page in front wants it said. */
    fun tell(saved: UndoState) {
        if (page?.showSaved(saved) != true) tellBelow(saved)
    }

    /** Says under the page what was kept. */
    fun tellBelow(saved: UndoState) {
        savedBar.state = saved
    }

    /** The page in front, if it has this name. */
    fun pageNamed(name: String): Page? = page?.takeIf { it.name == name }

    /** Says what could not be done after one has left the page where it was asked for. */
    fun tellProblem(problem: Throwable) {
        if (problem !is StudioException || problem is StudioException.Damaged || problem is StudioException.NotAStudio) return fail(problem)
        tellBelow(UndoState(problem.sentence, undo = "", next = emptyList()))
    }

    /** Asks again whether this phone speaks and ticks. */
    fun readPreferences() = work.ask({ preferences() }) { result -> result.fold({ preferences = it }, ::fail) }

    /** Says [words] aloud, if this phone is to speak. */
    fun say(words: String) {
        if (preferences.speak) voice.say(words)
    }

    /** Says over the whole screen why nothing can be shown. Nothing is deleted; one may try again. */
    fun fail(problem: Throwable) {
        answers.closed(this)
        page?.leave()
        page = null
        savedBar.state = null
        part<View>(R.id.bar).showIf(false)
        part<View>(R.id.tabs).showIf(false)
        val room = part<ViewGroup>(R.id.page)
        room.removeAllViews()
        val failure = room.put<View>(R.layout.failure)
        failure.get<TextView>(R.id.failure_sentence).text = sentence(problem)
        failure.get<Button>(R.id.failure_again).apply {
            // Neither is mended by asking again.
            showIf(problem !is LibraryMismatch && problem !is LibraryNotLoaded)
            // What is gone is not asked for again.
            if (problem is StudioException.Missing) setText(R.string.back)
            setOnClickListener {
                if (problem is StudioException.Missing) while (stack.size > 1) stack.removeLast()
                start()
            }
        }
        failure.get<Button>(R.id.failure_save).apply {
            showIf(problem is StudioException.Damaged)
            setOnClickListener {
                isEnabled = false
                saveWhatCanBeRead()
            }
        }
        failure.get<Button>(R.id.failure_report).apply {
            // The other failures are told in full by their sentence.
            showIf(problem !is StudioException)
            setOnClickListener { shareReport() }
        }
    }

    /** The report has nothing of the studio, so it may go to whatever app the potter chooses. */
    private fun shareReport() {
        val send = Intent(Intent.ACTION_SEND).setType("text/plain").putExtra(Intent.EXTRA_SUBJECT, getString(R.string.startup_report))
        startActivity(Intent.createChooser(send.putExtra(Intent.EXTRA_TEXT, app.report.text()), getText(R.string.share_report)))
    }

    private fun saveWhatCanBeRead() = work.recover { result ->
        val say = { sentence: String ->
            // As soon as there is a page again, on whichever activity that is.
            answers.arrive { AlertDialog.Builder(it).setMessage(sentence).setPositiveButton(android.R.string.ok, null).show() }
        }
        result.onSuccess(say)
        // The phone was turned meanwhile: the page made anew asks for the studio behind this, and finds the saved one.
        if (!isDestroyed) result.fold({ start() }, ::fail)
    }

    /** What a failure is called, in words for the potter. */
    fun sentence(problem: Throwable): String = when (problem) {
        is StudioException -> problem.sentence
        is LibraryMismatch -> getString(R.string.other_build)
        is LibraryNotLoaded -> getString(R.string.library_not_loaded)
        is SecretNotSaved -> getString(R.string.secret_not_saved)
        else -> getString(R.string.broken)
    }

    // ---- the frame ----

    /** The first question opens the studio: only when it is open there is a page. */
    private fun start() = work.ask({ preferences() }) { result ->
        result.fold(
            {
                preferences = it
                open(saveSaying = true)
            },
            ::fail,
        )
    }

    private fun open(saveSaying: Boolean = false) {
        page?.leave()
        if (!saveSaying) savedBar.state = null
        val step = stack.last()
        // From Weigh, back leads out of the app.
        systemBack.isTaken = stack.size > 1 || step.place.page != PageKind.WEIGH
        val next = make(step.place)
        next.name = step.name
        page = next
        val room = part<ViewGroup>(R.id.page)
        room.removeAllViews()
        room.addView(next.view)
        part<View>(R.id.tabs).showIf(stack.size == 1)
        for ((tab, kind) in TABS) {
            val chosen = step.place.page == kind
            part<View>(tab).isSelected = chosen
            part<View>(tab).tellAs(Role.TAB, chosen)
        }
        part<View>(R.id.back).showIf(stack.size > 1)
        part<View>(R.id.recent_changes).showIf(step.place.page != PageKind.HISTORY)
        nameIt(next.title)
        next.open(step.savedState)
        unheard?.let(next::answered)
        unheard = null
        answers.opened(this)
    }

    /** Puts the page's title into the bar; a page that only learns its title from the studio calls this later. */
    fun nameIt(title: CharSequence?) {
        part<View>(R.id.bar).showIf(title != null)
        part<TextView>(R.id.title).text = title
        // Said when the page comes up. Weigh alone has no title to be seen.
        if (Build.VERSION.SDK_INT >= 28) part<View>(R.id.page).accessibilityPaneTitle = title ?: getText(R.string.tab_weigh)
    }

    private fun make(place: Place): Page = when (place.page) {
        PageKind.WEIGH -> WeighScreen(this)
        PageKind.BUCKETS -> BucketsScreen(this)
        PageKind.KILN -> KilnScreen(this)
        PageKind.FINDINGS -> FindingsScreen(this)
        PageKind.STUDIO -> StudioScreen(this)
        PageKind.COAT -> CoatPage(this, place.id)
        PageKind.BUCKET -> BucketPage(this, place.id)
        PageKind.EDITOR -> EditorScreen(this, checkNotNull(place.editor) { "a sheet's place names the sheet" }, place.id, place.subject)
        PageKind.SIZES -> SizesScreen(this)
        PageKind.CAUTIONS -> CautionsScreen(this)
        PageKind.FIRING -> FiringPage(this, place.id)
        PageKind.LOOK -> AssessmentPage(this, place.id, place.subject)
        PageKind.CONTACT_SHEET -> ContactSheetPage(this, place.id, place.subject)
        PageKind.PIECE -> PiecePage(this, place.id)
        PageKind.COMPARE -> ComparePage(this, place.id)
        PageKind.FIND -> FindPage(this)
        PageKind.GLAZE_FINDINGS -> GlazeFindingsPage(this, place.id)
        PageKind.BACKUP -> BackupPage(this)
        PageKind.HISTORY -> HistoryPage(this, place.id)
        PageKind.DEVICES -> DevicesPage(this)
        PageKind.IMPORT -> ImportPage(this)
        PageKind.WHY -> WhyPage(this, place.id)
        PageKind.ARCHIVED -> ArchivedPage(this)
        PageKind.MEANWHILE -> MeanwhilePage(this)
    }

    private fun toggleUndo(state: UndoState) {
        val answers = answers
        work.ask(toggle(state)) { result -> answers.arrive { activity -> result.fold(activity::showToggled, activity::fail) } }
    }

    private fun showToggled(state: UndoState) {
        savedBar.state = state
        page?.refresh()
    }

    private fun <T : View> part(id: Int): T = window.decorView.get(id)

    private companion object {
        const val STACK = "stack"
        const val PLACE = "place"
        const val SAVED_STATE = "saved"
        const val NAME = "name"
        const val SAVED = "kept"

        val TABS = listOf(
            R.id.tab_weigh to PageKind.WEIGH, R.id.tab_buckets to PageKind.BUCKETS, R.id.tab_kiln to PageKind.KILN,
            R.id.tab_findings to PageKind.FINDINGS, R.id.tab_studio to PageKind.STUDIO,
        )

        fun Bundle.part(key: String): Bundle = getBundle(key) ?: Bundle()
    }
}

/** Saves the content clear of the system's bars and the keyboard: from Android 15 on the window reaches under them. */
private fun View.padBySystemBars() = setOnApplyWindowInsetsListener { view, insets ->
    @Suppress("DEPRECATION") // the replacement needs Android 11; with adjustResize this counts the keyboard too
    view.setPadding(
        insets.systemWindowInsetLeft, insets.systemWindowInsetTop, insets.systemWindowInsetRight, insets.systemWindowInsetBottom,
    )
    insets
}

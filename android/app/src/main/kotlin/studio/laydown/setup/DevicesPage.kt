package studio.laydown.setup

import android.app.AlertDialog
import android.os.Bundle
import android.view.View
import android.view.ViewGroup
import android.widget.Button
import android.widget.ProgressBar
import android.widget.TextView
import studio.laydown.ColumnPage
import studio.laydown.MainActivity
import studio.laydown.PageKind
import studio.laydown.Place
import studio.laydown.R
import studio.laydown.core.DevicesView
import studio.laydown.core.SyncView
import studio.laydown.core.EditorKind
import studio.laydown.get
import studio.laydown.releasePermission
import studio.laydown.put
import studio.laydown.putButton
import studio.laydown.putHeading
import studio.laydown.putNote
import studio.laydown.putRow
import studio.laydown.putSentence

/** The phones of the studio, where they meet, and how they come to agree. */
class DevicesPage(host: MainActivity) : ColumnPage(host) {
    override val title: CharSequence = host.getText(R.string.devices)

    private val sync = host.sync

    /** Told by the sync; one object, so that a page that goes late takes no other page's place. */
    private val watcher: () -> Unit = ::listener

    /** How far the sync is; null while none is shown. It changes what it says, so that the finger on its way to Stop finds it. */
    private var progress: View? = null

    override fun open(savedState: Bundle) {
        sync.watcher = watcher
        super.open(savedState)
    }

    override fun pause() {
        super.pause()
        if (sync.watcher === watcher) sync.watcher = null
    }

    override fun resume() {
        super.resume()
        sync.watcher = watcher
    }

    override fun refresh() = show({ now -> devices(now) }, ::render)

    private fun render(view: DevicesView) {
        sync.takeBroken()?.let { return host.fail(it) }
        progress = null
        fill {
            putSentence(view.intro)
            if (view.meanwhile.isNotEmpty()) {
                put<ViewGroup>(R.layout.card).putRow(host.getText(R.string.meanwhile), view.meanwhile, R.drawable.ic_on) {
                    host.go(Place(PageKind.MEANWHILE))
                }
            }
            view.notes.forEach { putNote(it) }
            putHeading(host.getText(R.string.sync_location))
            putSync(view.sync)
            putHeading(host.getText(R.string.phones))
            val card = put<ViewGroup>(R.layout.card)
            for (row in view.devices) {
                // Only one's own name can be set here.
                card.putRow(row.title, row.detail, R.drawable.ic_on.takeIf { row.chosen }) {
                    if (row.chosen) host.go(Place.editor(EditorKind.PREFERENCE))
                }
            }
            putButton(R.layout.add, host.getText(R.string.new_phone), ::setUpAsNewPhone)
            put<View>(R.layout.gap)
            put<ViewGroup>(R.layout.card).putRow(host.getText(R.string.backup), host.getText(R.string.backup_for_others), R.drawable.ic_on) {
                host.go(Place(PageKind.BACKUP))
            }
        }
    }

    private fun ViewGroup.putSync(view: SyncView) {
        putSentence(view.place)
        if (!view.chosen) {
            putButton(R.layout.main_button, host.getText(R.string.choose_place), ::changePlace)
            return
        }
        putSentence(view.last)
        if (view.waits.isNotEmpty()) putSentence(view.waits)
        if (sync.running) {
            progress = put<View>(R.layout.sync).also(::say)
            return
        }
        view.notes.forEach { putNote(it) }
        putButton(R.layout.main_button, host.getText(R.string.sync_now)) { sync.begin(view.folder, check = false) }
        putButton(R.layout.add, host.getText(R.string.change_place), ::changePlace)
        putButton(R.layout.add, host.getText(R.string.check_there)) { sync.begin(view.folder, check = true) }
        putButton(R.layout.add, host.getText(R.string.forget_place), ::forget)
    }

    private fun changePlace() = host.go(Place.editor(EditorKind.SYNC_LOCATION))

    private fun forget() {
        AlertDialog.Builder(host)
            .setTitle(R.string.forget_place_question)
            .setMessage(R.string.forget_place_detail)
            .setPositiveButton(R.string.forget) { _, _ ->
                command({ now ->
                    val folder = forgetSyncLocation(now)
                    host.secrets.forget()
                    host.contentResolver.releasePermission(folder)
                }) { refresh() }
            }
            .setNegativeButton(R.string.stay, null)
            .show()
    }

    private fun setUpAsNewPhone() {
        AlertDialog.Builder(host)
            .setTitle(R.string.new_phone_question)
            .setMessage(R.string.new_phone_detail)
            .setPositiveButton(R.string.set_up) { _, _ -> command({ now -> setUpAsNewPhone(now) }) { refresh() } }
            .setNegativeButton(R.string.stay, null)
            .show()
    }

    private fun listener() {
        val shown = progress
        if (sync.running && shown != null) say(shown) else refresh()
    }

    private fun say(view: View) {
        val progressed = sync.progressed
        view.get<TextView>(R.id.sync_words).text = when {
            sync.stopping -> host.getText(R.string.stopping)
            progressed == null -> host.getText(R.string.sync_begins)
            else -> host.getString(R.string.sync_so_far, progressed.sentence)
        }
        view.get<ProgressBar>(R.id.sync_bar).apply {
            isIndeterminate = progressed == null
            progress = ((progressed?.fraction ?: 0.0) * max).toInt()
        }
        view.get<Button>(R.id.sync_stop).apply {
            isEnabled = !sync.stopping
            setOnClickListener { sync.stop() }
        }
    }
}

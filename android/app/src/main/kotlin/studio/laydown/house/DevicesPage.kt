package studio.laydown.house

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
import studio.laydown.core.MeetingView
import studio.laydown.core.SheetKind
import studio.laydown.get
import studio.laydown.giveBackLeave
import studio.laydown.put
import studio.laydown.putButton
import studio.laydown.putHeading
import studio.laydown.putNote
import studio.laydown.putRow
import studio.laydown.putSentence

/** The phones of the studio, where they meet, and how they come to agree. */
class DevicesPage(host: MainActivity) : ColumnPage(host) {
    override val title: CharSequence = host.getText(R.string.devices)

    private val meeting = host.meeting

    /** Told by the meeting; one object, so that a page that goes late takes no other page's place. */
    private val watcher: () -> Unit = ::watch

    /** How far the meeting is; null while none is shown. It changes what it says, so that the finger on its way to Stop finds it. */
    private var progress: View? = null

    override fun open(saved: Bundle) {
        meeting.watcher = watcher
        super.open(saved)
    }

    override fun pause() {
        super.pause()
        if (meeting.watcher === watcher) meeting.watcher = null
    }

    override fun resume() {
        super.resume()
        meeting.watcher = watcher
    }

    override fun refresh() = show({ now -> devices(now) }, ::render)

    private fun render(view: DevicesView) {
        meeting.takeBroken()?.let { return host.fail(it) }
        progress = null
        fill {
            putSentence(view.intro)
            view.notes.forEach { putNote(it) }
            putHeading(host.getText(R.string.meeting_place))
            putMeeting(view.meeting)
            putHeading(host.getText(R.string.phones))
            val card = put<ViewGroup>(R.layout.card)
            for (row in view.devices) {
                // Only one's own name can be set here.
                card.putRow(row.title, row.detail, R.drawable.ic_on.takeIf { row.chosen }) {
                    if (row.chosen) host.go(Place.sheet(SheetKind.PREFERENCE))
                }
            }
            putButton(R.layout.add, host.getText(R.string.new_phone), ::setUpAsNewPhone)
            put<View>(R.layout.gap)
            put<ViewGroup>(R.layout.card).putRow(host.getText(R.string.backup), host.getText(R.string.backup_for_others), R.drawable.ic_on) {
                host.go(Place(PageKind.BACKUP))
            }
        }
    }

    private fun ViewGroup.putMeeting(view: MeetingView) {
        putSentence(view.place)
        if (!view.chosen) {
            putButton(R.layout.main_button, host.getText(R.string.choose_place), ::changePlace)
            return
        }
        putSentence(view.last)
        if (view.waits.isNotEmpty()) putSentence(view.waits)
        if (meeting.running) {
            progress = put<View>(R.layout.meeting).also(::say)
            return
        }
        view.notes.forEach { putNote(it) }
        putButton(R.layout.main_button, host.getText(R.string.agree)) { meeting.begin(view.folder, check = false) }
        putButton(R.layout.add, host.getText(R.string.change_place), ::changePlace)
        putButton(R.layout.add, host.getText(R.string.check_there)) { meeting.begin(view.folder, check = true) }
        putButton(R.layout.add, host.getText(R.string.forget_place), ::forget)
    }

    private fun changePlace() = host.go(Place.sheet(SheetKind.MEETING_PLACE))

    private fun forget() {
        AlertDialog.Builder(host)
            .setTitle(R.string.forget_place_question)
            .setMessage(R.string.forget_place_detail)
            .setPositiveButton(R.string.forget) { _, _ ->
                command({ now ->
                    val folder = forgetMeetingPlace(now)
                    host.secrets.forget()
                    host.contentResolver.giveBackLeave(folder)
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

    private fun watch() {
        val shown = progress
        if (meeting.running && shown != null) say(shown) else refresh()
    }

    private fun say(view: View) {
        val soFar = meeting.soFar
        view.get<TextView>(R.id.meeting_words).text = when {
            meeting.stopping -> host.getText(R.string.stopping)
            soFar == null -> host.getText(R.string.meeting_begins)
            else -> host.getString(R.string.meeting_so_far, soFar.sentence)
        }
        view.get<ProgressBar>(R.id.meeting_bar).apply {
            isIndeterminate = soFar == null
            progress = ((soFar?.fraction ?: 0.0) * max).toInt()
        }
        view.get<Button>(R.id.meeting_stop).apply {
            isEnabled = !meeting.stopping
            setOnClickListener { meeting.stop() }
        }
    }
}

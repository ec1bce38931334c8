package studio.laydown.desktop

import android.app.Activity
import android.content.Intent
import android.net.Uri
import android.os.Bundle
import android.os.Parcel
import android.provider.MediaStore
import android.view.WindowManagerGlobal
import org.robolectric.Robolectric
import org.robolectric.RuntimeEnvironment
import org.robolectric.Shadows.shadowOf
import org.robolectric.android.controller.ActivityController

/** What the app has asked another app to do and waits for: a photograph, a document, a place to share to. */
class Request internal constructor(
    /** The request as the app made it. */
    val intent: Intent,
    internal val from: Tasks.Entry,
    /** Negative if no answer is wanted. */
    internal val code: Int,
) {
    /** Whether it asks the camera for a photograph. */
    val isPhoto: Boolean get() = intent.action == MediaStore.ACTION_IMAGE_CAPTURE

    /** Whether it asks for a picture, taken now or long ago. */
    val isPicture: Boolean
        get() = isPhoto || intent.action == Intent.ACTION_OPEN_DOCUMENT && intent.type.orEmpty().startsWith("image/")

    /** What it asks for, in the desk's words; the action itself for what the desk cannot answer. */
    val what: String
        get() = when {
            isPhoto -> "photo"
            isPicture -> "picture"
            else -> WHAT[intent.action] ?: intent.action.orEmpty()
        }

    /** What the app hands on to another app; null if nothing. */
    val handedOn: Uri?
        get() = intent.getParcelableExtra(Intent.EXTRA_INTENT, Intent::class.java)?.getParcelableExtra(Intent.EXTRA_STREAM, Uri::class.java)

    private companion object {
        val WHAT = mapOf(
            Intent.ACTION_OPEN_DOCUMENT to "file",
            Intent.ACTION_CREATE_DOCUMENT to "place",
            Intent.ACTION_OPEN_DOCUMENT_TREE to "folder",
            Intent.ACTION_CHOOSER to "share",
        )
    }
}

/**
 * The back stack. Robolectric only records that an activity was started or finished; here it happens, in the order in which a
 * phone does it.
 */
internal class Tasks {
    /** [code] is the request code of the activity below; negative if it wants no answer. */
    internal class Entry(var controller: ActivityController<out Activity>, val code: Int) {
        /** Set when the look changed while it was out of sight. */
        var stale = false
        val activity: Activity get() = controller.get()
    }

    private val stack = ArrayDeque<Entry>()

    /** The activity in front; null when the app has been left. */
    val top: Activity? get() = stack.lastOrNull()?.activity

    /** The activities that are out of sight. */
    val stopped: List<Activity> get() = stack.dropLast(1).map { it.activity }

    /** The latest request to another app that has not been answered. */
    var request: Request? = null
        private set

    /** Opens the app at this activity. */
    fun launch(first: Class<out Activity>) {
        val intent = Intent(Intent.ACTION_MAIN).addCategory(Intent.CATEGORY_LAUNCHER)
        push(intent.setClass(RuntimeEnvironment.getApplication(), first), code = NO_ANSWER)
    }

    /** Whether the activity in front has asked for something that has not happened yet. */
    val waiting: Boolean get() = top?.let { it.isFinishing || shadowOf(it).peekNextStartedActivityForResult() != null } ?: false

    /** Carries out what the activity in front has asked for since the last time. */
    fun settle() {
        while (waiting) {
            val entry = stack.last()
            val started = shadowOf(entry.activity).nextStartedActivityForResult
            if (started == null) {
                pop(entry)
                continue
            }
            val own = started.intent.component?.packageName == entry.activity.packageName
            if (own) {
                push(started.intent, started.requestCode)
            } else {
                request = Request(started.intent, entry, started.requestCode)
                // The other app lies over this one, and its screen is not drawn here.
                entry.controller.pause()
            }
        }
    }

    private fun push(intent: Intent, code: Int) {
        stack.lastOrNull()?.controller?.pause()
        val type = Class.forName(checkNotNull(intent.component).className).asSubclass(Activity::class.java)
        val next = Robolectric.buildActivity(type, intent).setup()
        stack.lastOrNull()?.controller?.stop()
        stack.addLast(Entry(next, code))
    }

    private fun pop(entry: Entry) {
        stack.removeLast()
        entry.controller.pause()
        val answer = shadowOf(entry.activity).let { it.resultCode to it.resultIntent }
        stack.lastOrNull()?.let { below ->
            below.controller.restart().start()
            tell(below.activity, entry.code, answer.first, answer.second)
            below.controller.resume()
            if (below.stale) recreate(below)
        }
        entry.controller.stop()
        destroy(entry)
    }

    private fun destroy(entry: Entry) {
        closeDialogs(entry.activity)
        entry.controller.destroy()
    }

    /** A dialog that the app left open goes with its activity, as the activity thread has it; Robolectric leaves it there. */
    private fun closeDialogs(of: Activity) =
        WindowManagerGlobal.getInstance().closeAllExceptView(of.activityToken, of.window.decorView, of.localClassName, "Activity")


    /** Answers the [request] as the other app would. */
    fun answer(resultCode: Int, data: Intent?) {
        val asked = checkNotNull(request) { "the app has asked for nothing" }
        request = null
        if (asked.from !== stack.lastOrNull()) return
        tell(asked.from.activity, asked.code, resultCode, data)
        asked.from.controller.resume()
    }

    /**
     * Ends the activity in front and makes it anew from what it saved, as the system does with an app out of sight when it needs the
     * room. Another app that was asked for something is still there.
     */
    fun kill() {
        val entry = stack.last()
        val savedState = Bundle()
        if (entry.activity.isResumed) entry.controller.pause()
        entry.controller.stop().saveInstanceState(savedState)
        destroy(entry)
        entry.controller = Robolectric.buildActivity(entry.activity.javaClass, entry.activity.intent).setup(savedState.throughTheSystem())
        if (request != null) entry.controller.pause()
    }

    /** As it comes back from the system, which keeps bytes. */
    private fun Bundle.throughTheSystem(): Bundle {
        val parcel = Parcel.obtain()
        try {
            parcel.writeBundle(this)
            parcel.setDataPosition(0)
            return checkNotNull(parcel.readBundle(Tasks::class.java.classLoader))
        } finally {
            parcel.recycle()
        }
    }

    private fun tell(activity: Activity, code: Int, resultCode: Int, data: Intent?) {
        if (code >= 0) shadowOf(activity).internalCallDispatchActivityResult(null, code, resultCode, data)
    }

    /** Makes the activity in front anew, as a phone does when the look changes; the others follow when they come back. */
    fun recreate() {
        stack.dropLast(1).forEach { it.stale = true }
        stack.lastOrNull()?.let(::recreate)
    }

    private fun recreate(entry: Entry) {
        entry.stale = false
        closeDialogs(entry.activity)
        entry.controller.recreate()
    }

    /** Ends every activity, the one in front first, and keeps no state. */
    fun end() {
        while (stack.isNotEmpty()) {
            val entry = stack.removeLast()
            if (entry.activity.isResumed) entry.controller.pause().stop()
            destroy(entry)
        }
        request = null
    }

    private companion object {
        const val NO_ANSWER = -1
    }
}

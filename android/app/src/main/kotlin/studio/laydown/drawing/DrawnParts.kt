package studio.laydown.drawing

import android.graphics.Rect
import android.os.Bundle
import android.view.View
import android.view.accessibility.AccessibilityEvent
import android.view.accessibility.AccessibilityNodeInfo
import android.view.accessibility.AccessibilityNodeInfo.AccessibilityAction
import android.view.accessibility.AccessibilityNodeProvider
import android.widget.Button

/** A part of a drawing: what it is called, where it lies in its view, and what can be done with it, by the id of each action. */
class DrawnPart(val name: String, val bounds: Rect, val actions: List<Action>) {
    /** [label] is null for a plain tap. */
    class Action(val id: Int, val label: CharSequence?, val act: () -> Unit)
}

/**
 * The parts of a drawing as whoever has the screen read out, or works it by a switch, finds them: one after the other, each with its
 * name and its actions. For the platform they are nodes below the view, though no views.
 */
class DrawnParts(private val host: View, private val parts: () -> List<DrawnPart>) : AccessibilityNodeProvider() {
    private var focused = View.NO_ID

    @Suppress("DEPRECATION") // the constructors need Android 11
    override fun createAccessibilityNodeInfo(id: Int): AccessibilityNodeInfo? {
        if (id == View.NO_ID) {
            return AccessibilityNodeInfo.obtain(host).also { node ->
                host.onInitializeAccessibilityNodeInfo(node)
                parts().indices.forEach { node.addChild(host, it) }
            }
        }
        val part = parts().getOrNull(id) ?: return null
        return AccessibilityNodeInfo.obtain(host, id).apply {
            packageName = host.context.packageName
            className = Button::class.java.name
            contentDescription = part.name
            setParent(host)
            val at = IntArray(2).also(host::getLocationOnScreen)
            setBoundsInScreen(Rect(part.bounds).apply { offset(at[0], at[1]) })
            isVisibleToUser = host.isShown
            isEnabled = true
            isFocusable = true
            isClickable = part.actions.any { it.id == AccessibilityNodeInfo.ACTION_CLICK }
            isAccessibilityFocused = id == focused
            addAction(if (id == focused) AccessibilityAction.ACTION_CLEAR_ACCESSIBILITY_FOCUS else AccessibilityAction.ACTION_ACCESSIBILITY_FOCUS)
            for (action in part.actions) addAction(AccessibilityAction(action.id, action.label))
        }
    }

    override fun performAction(id: Int, action: Int, arguments: Bundle?): Boolean {
        if (id == View.NO_ID) return host.performAccessibilityAction(action, arguments)
        when (action) {
            AccessibilityNodeInfo.ACTION_ACCESSIBILITY_FOCUS -> focus(id, AccessibilityEvent.TYPE_VIEW_ACCESSIBILITY_FOCUSED)
            AccessibilityNodeInfo.ACTION_CLEAR_ACCESSIBILITY_FOCUS ->
                focus(View.NO_ID, AccessibilityEvent.TYPE_VIEW_ACCESSIBILITY_FOCUS_CLEARED, of = id)
            else -> (parts().getOrNull(id)?.actions?.firstOrNull { it.id == action } ?: return false).act()
        }
        return true
    }

    @Suppress("DEPRECATION") // the constructor needs Android 11
    private fun focus(next: Int, type: Int, of: Int = next) {
        focused = next
        host.invalidate()
        val event = AccessibilityEvent.obtain(type)
        event.packageName = host.context.packageName
        event.setSource(host, of)
        host.parent?.requestSendAccessibilityEvent(host, event)
    }
}

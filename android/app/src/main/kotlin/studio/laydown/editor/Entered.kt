package studio.laydown.editor

import android.os.Bundle
import studio.laydown.bundles
import studio.laydown.core.Value

/**
 * What has been entered on an editor, by the fields' keys, and what stood there before each thing done to the drawing. [secrets] is where
 * secrets are put, which are never written down with the rest.
 */
class Entered(private val secrets: MutableMap<String, String>) {
    /** One thing done to the drawing: what stood under the keys it changed, null where nothing was entered. */
    class Step internal constructor(internal val before: MutableMap<String, String?> = linkedMapOf())

    private val texts = linkedMapOf<String, String>()
    private val steps = ArrayDeque<Step>()

    val isEmpty: Boolean get() = texts.isEmpty() && secrets.isEmpty()
    val canUndo: Boolean get() = steps.any { it.before.isNotEmpty() }

    fun values(): List<Value> = (texts + secrets).map { (key, text) -> Value(key, text) }

    /** A secret was typed. */
    fun typeSecret(key: String, text: String) {
        secrets[key] = text
    }

    /** The secret that was typed; empty if none was. */
    fun secret(key: String): String = secrets[key].orEmpty()

    /** Something was typed or chosen: what an Undo would put in its place is forgotten. */
    fun type(key: String, text: String) {
        texts[key] = text
        steps.removeAll { key in it.before }
    }

    /** Begins a thing that one Undo undoes. */
    fun begin(): Step {
        val newest = steps.lastOrNull()
        // What came of the newest may still be on its way; older ones that changed nothing are nothing to undo.
        steps.removeAll { it.before.isEmpty() && it !== newest }
        if (steps.size == MOST_STEPS) steps.removeFirst()
        return Step().also(steps::addLast)
    }

    /** Enters what came of [step], unless it has been undone. */
    fun put(values: List<Value>, step: Step) {
        if (steps.none { it === step }) return
        for (value in values) {
            if (value.key !in step.before) step.before[value.key] = texts[value.key]
            texts[value.key] = value.text
        }
    }

    /** Takes the last thing back. */
    fun undo() {
        steps.removeAll { it.before.isEmpty() }
        val step = steps.removeLastOrNull() ?: return
        for ((key, text) in step.before) if (text == null) texts.remove(key) else texts[key] = text
    }

    fun saveState(into: Bundle) {
        into.putBundle(TEXTS, texts.bundle())
        into.putParcelableArrayList(STEPS, steps.mapTo(ArrayList()) { it.before.bundle() })
    }

    fun restore(from: Bundle) {
        from.getBundle(TEXTS)?.let { savedState -> for (key in savedState.keySet()) savedState.getString(key)?.let { texts[key] = it } }
        from.bundles(STEPS).forEach { savedState ->
            val step = begin()
            for (key in savedState.keySet()) step.before[key] = savedState.getString(key)
        }
    }

    private companion object {
        const val TEXTS = "texts"
        const val STEPS = "steps"
        const val MOST_STEPS = 50

        fun Map<String, String?>.bundle() = Bundle().also { for ((key, text) in this) it.putString(key, text) }
    }
}

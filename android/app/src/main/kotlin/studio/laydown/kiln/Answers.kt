package studio.laydown.kiln

import android.view.View
import android.view.ViewGroup
import android.widget.Button
import android.widget.TextView
import studio.laydown.R
import studio.laydown.Role
import studio.laydown.core.Choice
import studio.laydown.get
import studio.laydown.put
import studio.laydown.tellAs

/** A question with its answers beside one another; the one given is ringed. The views stay, so that no tap falls between two of them. */
internal class AnswersView(column: ViewGroup, private val question: CharSequence, choices: List<Choice>, answer: (Choice) -> Unit) {
    private val row = column.put<View>(R.layout.answer_row)
    private val buttons = choices.map { choice ->
        row.get<ViewGroup>(R.id.answers).put<Button>(R.layout.answer).apply {
            text = choice.name
            setOnClickListener { answer(choice) }
        }
    }

    init {
        row.get<TextView>(R.id.question).text = question
        show(choices)
    }

    /** Rings the answers given among the same choices. */
    fun show(choices: List<Choice>) = buttons.zip(choices).forEach { (button, choice) ->
        button.isSelected = choice.chosen
        button.tellAs(Role.RADIO, choice.chosen)
        val words = if (choice.chosen) R.string.answer_chosen else R.string.answer_is
        button.contentDescription = button.context.getString(words, question, choice.name)
    }
}

package studio.laydown.kiln

import android.view.View
import android.view.ViewGroup
import android.widget.Button
import android.widget.TextView
import studio.laydown.R
import studio.laydown.core.Choice
import studio.laydown.get
import studio.laydown.put

/** A question with its answers beside one another; the one given is ringed. */
internal fun ViewGroup.putAnswers(question: CharSequence, choices: List<Choice>, answer: (Choice) -> Unit) {
    val row = put<View>(R.layout.answer_row)
    row.get<TextView>(R.id.question).text = question
    val answers = row.get<ViewGroup>(R.id.answers)
    for (choice in choices) {
        answers.put<Button>(R.layout.answer).apply {
            text = choice.name
            isSelected = choice.chosen
            contentDescription = context.getString(if (choice.chosen) R.string.answer_chosen else R.string.answer_is, question, choice.name)
            setOnClickListener { answer(choice) }
        }
    }
}

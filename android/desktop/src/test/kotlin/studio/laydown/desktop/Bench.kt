package studio.laydown.desktop

import android.app.Activity
import android.app.AlertDialog
import android.content.Intent
import android.content.SharedPreferences
import android.net.Uri
import android.os.Bundle
import android.provider.MediaStore
import android.speech.tts.TextToSpeech
import android.text.InputType
import android.view.HapticFeedbackConstants
import android.view.ViewGroup.LayoutParams
import android.view.WindowInsets
import android.widget.ArrayAdapter
import android.widget.Button
import android.widget.EditText
import android.widget.ImageButton
import android.widget.LinearLayout
import android.widget.ListView
import android.widget.TextView
import android.widget.Toast

/** A screen with one of everything, so that the phone is tested apart from the app. */
class Bench : Activity() {
    private lateinit var voice: TextToSpeech
    private lateinit var counter: TextView
    private val saved by lazy { getSharedPreferences("bench", MODE_PRIVATE) }

    override fun onCreate(savedInstanceState: Bundle?) {
        super.onCreate(savedInstanceState)
        voice = TextToSpeech(this) { }
        counter = TextView(this)
        val note = EditText(this).apply {
            id = NOTE
            hint = "Note"
            inputType = InputType.TYPE_CLASS_TEXT
            setText(saved.getString("note", ""))
        }
        val rows = (1..40).map { "Row $it" }
        val list = ListView(this).apply {
            adapter = ArrayAdapter(this@Bench, android.R.layout.simple_list_item_1, rows)
            setOnItemClickListener { _, _, at, _ -> Toast.makeText(this@Bench, rows[at], Toast.LENGTH_SHORT).show() }
        }
        setContentView(LinearLayout(this).apply {
            orientation = LinearLayout.VERTICAL
            setOnApplyWindowInsetsListener { view, insets ->
                val bars = insets.getInsets(WindowInsets.Type.systemBars())
                view.setPadding(0, bars.top, 0, bars.bottom)
                insets
            }
            addView(note)
            addView(counter)
            addView(button("Tap") { tapped() }.apply { id = TAP })
            addView(button("Ask") { ask() })
            addView(button("Next") { startActivityForResult(Intent(this@Bench, SecondBench::class.java), NEXT) })
            addView(button("Photograph") {
                startActivityForResult(Intent(MediaStore.ACTION_IMAGE_CAPTURE).putExtra(MediaStore.EXTRA_OUTPUT, PHOTO), CAMERA)
            })
            addView(ImageButton(this@Bench).apply { id = BAD }, LayoutParams(40, 40))
            addView(list)
        })
        count(saved.getInt("count", 0))
    }

    @Suppress("OVERRIDE_DEPRECATION") // the replacement is not in the platform
    override fun onActivityResult(requestCode: Int, resultCode: Int, data: Intent?) {
        counter.text = when (requestCode) {
            NEXT -> "Back with ${data?.getStringExtra("word")}"
            CAMERA -> if (resultCode == RESULT_OK) "Photographed" else "Turned back"
            else -> error("never asked for $requestCode")
        }
    }

    override fun onPause() {
        save { putString("note", findViewById<EditText>(NOTE).text.toString()) }
        super.onPause()
    }

    override fun onDestroy() {
        voice.shutdown()
        super.onDestroy()
    }

    private fun button(words: String, act: () -> Unit) = Button(this).apply {
        text = words
        setOnClickListener {
            it.performHapticFeedback(HapticFeedbackConstants.VIRTUAL_KEY)
            act()
        }
    }

    private fun tapped() {
        count(saved.getInt("count", 0) + 1)
        voice.speak(counter.text, TextToSpeech.QUEUE_FLUSH, null, "count")
    }

    private fun ask() {
        AlertDialog.Builder(this).setMessage("Start again at nought?")
            .setPositiveButton("Yes") { _, _ -> count(0) }.setNegativeButton("No", null).show()
    }

    private fun count(to: Int) {
        save { putInt("count", to) }
        counter.text = "$to taps"
    }

    private fun save(edit: SharedPreferences.Editor.() -> Unit) = check(saved.edit().apply(edit).commit())

    companion object {
        const val NOTE = 1
        const val TAP = 2
        const val BAD = 3
        val PHOTO: Uri = Uri.parse("content://studio.laydown.bench/photo")
        private const val NEXT = 1
        private const val CAMERA = 2
    }
}

/** A second activity, for the back stack. */
class SecondBench : Activity() {
    override fun onCreate(savedInstanceState: Bundle?) {
        super.onCreate(savedInstanceState)
        setResult(RESULT_OK, Intent().putExtra("word", "clay"))
        setContentView(TextView(this).apply {
            text = "Second"
            setOnApplyWindowInsetsListener { view, insets ->
                view.setPadding(0, insets.getInsets(WindowInsets.Type.systemBars()).top, 0, 0)
                insets
            }
        })
    }
}

package studio.laydown

import android.app.Activity
import android.app.AlertDialog
import android.content.Intent
import android.content.SharedPreferences
import android.os.Bundle
import android.speech.tts.TextToSpeech
import android.text.Editable
import android.text.TextWatcher
import android.view.HapticFeedbackConstants
import android.view.View
import android.view.WindowInsets
import android.widget.ArrayAdapter
import android.widget.Button
import android.widget.EditText
import android.widget.ListView
import android.widget.TextView
import android.widget.Toast

/** A bench for the desk itself: one of everything the real screens use. */
class MainActivity : Activity() {
    private lateinit var voice: TextToSpeech
    private val kept by lazy { getSharedPreferences("bench", MODE_PRIVATE) }

    override fun onCreate(savedInstanceState: Bundle?) {
        super.onCreate(savedInstanceState)
        setContentView(R.layout.main)
        findViewById<View>(R.id.ground).padBySystemBars()
        voice = TextToSpeech(this) { }
        findViewById<EditText>(R.id.note).apply {
            setText(kept.getString("note", ""))
            addTextChangedListener(object : TextWatcher {
                override fun beforeTextChanged(s: CharSequence?, start: Int, count: Int, after: Int) = Unit
                override fun onTextChanged(s: CharSequence?, start: Int, before: Int, count: Int) = Unit
                override fun afterTextChanged(s: Editable?) = kept.edit().putString("note", s.toString()).commitNow()
            })
        }
        findViewById<Button>(R.id.tap).setOnClickListener {
            it.performHapticFeedback(HapticFeedbackConstants.VIRTUAL_KEY)
            count(kept.getInt("count", 0) + 1)
            voice.speak(taps(), TextToSpeech.QUEUE_FLUSH, null, "taps")
        }
        findViewById<Button>(R.id.ask).setOnClickListener {
            AlertDialog.Builder(this)
                .setMessage(R.string.question)
                .setPositiveButton(R.string.yes) { _, _ -> count(0) }
                .setNegativeButton(R.string.no, null)
                .show()
        }
        val rows = (1..40).map { getString(R.string.row, it) }
        findViewById<ListView>(R.id.rows).apply {
            adapter = ArrayAdapter(this@MainActivity, android.R.layout.simple_list_item_1, rows)
            setOnItemClickListener { _, _, at, _ ->
                if (at == 0) startActivity(Intent(this@MainActivity, DetailActivity::class.java))
                else Toast.makeText(this@MainActivity, rows[at], Toast.LENGTH_SHORT).show()
            }
        }
        count(kept.getInt("count", 0))
    }

    override fun onDestroy() {
        voice.shutdown()
        super.onDestroy()
    }

    private fun taps() = kept.getInt("count", 0).let { resources.getQuantityString(R.plurals.taps, it, it) }

    private fun count(to: Int) {
        kept.edit().putInt("count", to).commitNow()
        findViewById<TextView>(R.id.count).text = taps()
    }
}

/** What is kept is on the disk before the screen says so. */
private fun SharedPreferences.Editor.commitNow() = check(commit()) { "cannot write the preferences" }

/** A second activity, for the desk's back stack. */
class DetailActivity : Activity() {
    override fun onCreate(savedInstanceState: Bundle?) {
        super.onCreate(savedInstanceState)
        setContentView(TextView(this).apply { setText(R.string.app_name); padBySystemBars() })
    }
}

/** Keeps the content clear of the status and navigation bars: the window reaches under them from Android 15 on. */
fun View.padBySystemBars() {
    setOnApplyWindowInsetsListener { view, insets ->
        @Suppress("DEPRECATION") // the replacement needs Android 11
        view.setPadding(
            view.paddingLeft, insets.systemWindowInsetTop, view.paddingRight, insets.systemWindowInsetBottom,
        )
        insets
    }
}

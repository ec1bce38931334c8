package studio.laydown

import android.content.Context
import android.text.StaticLayout
import android.text.TextPaint
import android.util.AttributeSet
import android.util.TypedValue
import android.view.View.MeasureSpec
import android.widget.Button
import android.widget.TextView

/** Words as large as their room allows, from the size of their style down to `smallest`; no word is broken over two lines. */
class FittedText(context: Context, attributes: AttributeSet?) : TextView(context, attributes) {
    // Null only while the platform makes the view.
    private val fitting: Fitting? = Fitting(this, attributes)

    override fun onMeasure(widthMeasureSpec: Int, heightMeasureSpec: Int) {
        fitting?.fit(widthMeasureSpec, heightMeasureSpec)
        super.onMeasure(widthMeasureSpec, heightMeasureSpec)
    }

    // Where its room is fixed the platform would set other words in the size of the ones before.
    override fun onTextChanged(text: CharSequence?, start: Int, lengthBefore: Int, lengthAfter: Int) {
        super.onTextChanged(text, start, lengthBefore, lengthAfter)
        requestLayout()
    }

    // Another size is set while this is measured, which needs no other pass.
    override fun requestLayout() {
        if (fitting?.isSetting != true) super.requestLayout()
    }
}

/** A button whose words fit it, as [FittedText]'s do. */
class FittedButton(context: Context, attributes: AttributeSet?) : Button(context, attributes) {
    // Null only while the platform makes the view.
    private val fitting: Fitting? = Fitting(this, attributes)

    override fun onMeasure(widthMeasureSpec: Int, heightMeasureSpec: Int) {
        fitting?.fit(widthMeasureSpec, heightMeasureSpec)
        super.onMeasure(widthMeasureSpec, heightMeasureSpec)
    }

    // Where its room is fixed the platform would set other words in the size of the ones before.
    override fun onTextChanged(text: CharSequence?, start: Int, lengthBefore: Int, lengthAfter: Int) {
        super.onTextChanged(text, start, lengthBefore, lengthAfter)
        requestLayout()
    }

    // Another size is set while this is measured, which needs no other pass.
    override fun requestLayout() {
        if (fitting?.isSetting != true) super.requestLayout()
    }
}

/**
 * The platform's own way to fit words breaks them within a word and gives up where only a part of them fits: a reading of 1412.3 g
 * then shows as 141.
 */
private class Fitting(private val view: TextView, attributes: AttributeSet?) {
    private val largest = view.textSize
    private val smallest: Float
    private val step = view.resources.displayMetrics.density / 2
    private val paint = TextPaint()

    var isSetting = false
        private set

    init {
        val values = view.context.obtainStyledAttributes(attributes, R.styleable.FittedText)
        smallest = values.getDimension(R.styleable.FittedText_smallest, largest).coerceAtMost(largest)
        values.recycle()
    }

    fun fit(widthMeasureSpec: Int, heightMeasureSpec: Int) {
        val width = room(widthMeasureSpec) - view.compoundPaddingLeft - view.compoundPaddingRight
        val height = room(heightMeasureSpec) - view.compoundPaddingTop - view.compoundPaddingBottom
        var size = largest
        while (size > smallest && !fits(size, width, height)) size = maxOf(size - step, smallest)
        if (size == view.textSize) return
        isSetting = true
        view.setTextSize(TypedValue.COMPLEX_UNIT_PX, size)
        isSetting = false
    }

    private fun fits(size: Float, width: Int, height: Int): Boolean {
        val words = view.text
        if (words.isEmpty() || width <= 0) return true
        paint.set(view.paint)
        paint.textSize = size
        if (words.split(' ', '\n').any { paint.measureText(it) > width }) return false
        val lines = StaticLayout.Builder.obtain(words, 0, words.length, paint, width)
            .setIncludePad(view.includeFontPadding)
            .setLineSpacing(view.lineSpacingExtra, view.lineSpacingMultiplier)
            .build()
        return lines.lineCount <= view.maxLines && lines.height <= height
    }

    private fun room(spec: Int) = if (MeasureSpec.getMode(spec) == MeasureSpec.UNSPECIFIED) Int.MAX_VALUE / 2 else MeasureSpec.getSize(spec)
}

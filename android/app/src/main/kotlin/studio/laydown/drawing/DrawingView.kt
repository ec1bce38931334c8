package studio.laydown.drawing

import android.content.Context
import android.graphics.Bitmap
import android.graphics.BitmapFactory
import android.graphics.Canvas
import android.graphics.DashPathEffect
import android.graphics.Paint
import android.graphics.Path
import android.graphics.Rect
import android.graphics.RectF
import android.graphics.Typeface
import android.util.AttributeSet
import android.view.MotionEvent
import android.view.View
import android.view.ViewConfiguration
import android.view.accessibility.AccessibilityNodeInfo
import android.view.accessibility.AccessibilityNodeProvider
import studio.laydown.R
import studio.laydown.core.Drawing
import studio.laydown.core.Grip
import studio.laydown.core.Ink
import studio.laydown.core.Shape
import studio.laydown.core.Spot
import kotlin.math.hypot
import kotlin.math.min

/** A sheet's drawing: its shapes in order, a photograph under them if there is one, and over them the grips, which a finger drags. */
class DrawingView(context: Context, attributes: AttributeSet?) : View(context, attributes) {
    /** Is told what a finger does; what it means is for others to say. */
    interface Touched {
        /** A grip begins to follow the finger. */
        fun hold(grip: Grip)

        /** The finger has drawn the grip of this key to a place. */
        fun drag(key: String, to: Spot)

        /** The finger has let go of what it held. */
        fun letGo()

        /** A grip was tapped. */
        fun tap(grip: Grip)

        /** A place without a grip was tapped. */
        fun tap(at: Spot)
    }

    var touched: Touched? = null

    /** Whether a grip follows only a finger that has rested on it, so that the page scrolls under one that has not. */
    var holdToLift = false

    var drawing: Drawing? = null
        set(value) {
            if (value?.photo != field?.photo) photo = value?.photo?.ifEmpty { null }?.let(::read)
            if (value?.tall != field?.tall) requestLayout()
            field = value
            contentDescription = value?.words
            invalidate()
        }

    /** The key of the grip that stands out: the one that is held or was tapped. */
    var chosen: String? = null
        set(value) {
            field = value
            invalidate()
        }

    /** Where the chosen grip is shown while a finger carries it; null to show it at its own place. */
    var carried: Spot? = null
        set(value) {
            field = value
            invalidate()
        }

    private val dp = resources.displayMetrics.density
    private val slop = ViewConfiguration.get(context).scaledTouchSlop
    private var photo: Bitmap? = null

    private val fill = Paint(Paint.ANTI_ALIAS_FLAG)
    private val smooth = Paint(Paint.FILTER_BITMAP_FLAG)
    private val line = stroke(R.color.ink, 2f)
    private val guide = stroke(R.color.quiet, 1f).apply { pathEffect = DashPathEffect(floatArrayOf(6 * dp, 5 * dp), 0f) }
    private val hatch = stroke(R.color.overlap, 1.5f)
    private val seen = stroke(R.color.seen, 2.5f)
    private val seenEdge = stroke(R.color.seen_edge, 5.5f)
    private val handle = stroke(R.color.accent, 2f)
    private val warning = stroke(R.color.warning, 3.5f)
    private val label = Paint(Paint.ANTI_ALIAS_FLAG).apply {
        color = context.getColor(R.color.ink)
        textAlign = Paint.Align.CENTER
        typeface = Typeface.create(Typeface.DEFAULT, Typeface.BOLD)
    }
    private val path = Path()
    private val box = RectF()

    private fun stroke(color: Int, width: Float) = Paint(Paint.ANTI_ALIAS_FLAG).apply {
        this.color = context.getColor(color)
        style = Paint.Style.STROKE
        strokeWidth = width * dp
        strokeJoin = Paint.Join.ROUND
        strokeCap = Paint.Cap.ROUND
    }

    // ---- its size ----

    override fun onMeasure(widthMeasureSpec: Int, heightMeasureSpec: Int) {
        val tall = drawing?.tall?.toFloat() ?: 0f
        // What lies under the drawing must stay in reach when the phone lies.
        val most = resources.displayMetrics.heightPixels * MOST_OF_THE_SCREEN
        val width = min(MeasureSpec.getSize(widthMeasureSpec).toFloat(), if (tall > 0) most / tall else most)
        setMeasuredDimension(width.toInt(), (width * tall).toInt())
    }

    /** The picture, no finer than the screen can show. Null where the file has gone. */
    private fun read(file: String): Bitmap? {
        val options = BitmapFactory.Options().apply { inJustDecodeBounds = true }
        BitmapFactory.decodeFile(file, options)
        val needed = min(resources.displayMetrics.widthPixels, resources.displayMetrics.heightPixels).coerceAtLeast(1)
        options.inJustDecodeBounds = false
        options.inSampleSize = (options.outWidth / needed).coerceAtLeast(1)
        return BitmapFactory.decodeFile(file, options)
    }

    // ---- what is painted ----

    override fun onDraw(canvas: Canvas) {
        val drawing = drawing ?: return
        photo?.let {
            box.set(0f, 0f, width.toFloat(), height.toFloat())
            canvas.drawBitmap(it, null, box, smooth)
        }
        val onPhoto = drawing.photo.isNotEmpty()
        drawing.shapes.forEach { paint(canvas, it, onPhoto) }
        // The one that stands out lies on top of its neighbours.
        drawing.grips.sortedBy { it.key == chosen }.forEach { paint(canvas, it, onPhoto) }
    }

    private fun paint(canvas: Canvas, shape: Shape, onPhoto: Boolean) {
        // The line of a circle lies inside it, or the edge of the drawing would cut it.
        val edge = if (shape.ink == Ink.LINE) line.strokeWidth / 2 / width else 0f
        if (shape.radius > 0) traceCircle(shape.spots.first(), shape.radius - edge) else trace(shape.spots)
        when (shape.ink) {
            Ink.CLAY -> area(canvas, R.color.clay)
            Ink.BISQUE -> area(canvas, R.color.bisque)
            Ink.GLAZED -> area(canvas, R.color.glazed)
            Ink.OVERLAP -> {
                area(canvas, R.color.glazed)
                hatch(canvas)
            }
            Ink.LINE -> if (onPhoto) seen(canvas) else canvas.drawPath(path, line)
            Ink.GUIDE -> {
                if (onPhoto) canvas.drawPath(path, seenEdge.thin())
                canvas.drawPath(path, guide.apply { color = context.getColor(if (onPhoto) R.color.seen else R.color.quiet) })
            }
            Ink.SEEN -> seen(canvas)
        }
    }

    private fun Paint.thin() = Paint(this).apply { strokeWidth = 2.5f * dp }

    private fun trace(spots: List<Spot>) {
        path.rewind()
        spots.forEachIndexed { at, spot -> if (at == 0) path.moveTo(spot.px, spot.py) else path.lineTo(spot.px, spot.py) }
    }

    private fun traceCircle(middle: Spot, radius: Double) {
        path.rewind()
        path.addCircle(middle.px, middle.py, radius.toFloat() * width, Path.Direction.CW)
    }

    private fun area(canvas: Canvas, color: Int) {
        path.close()
        fill.color = context.getColor(color)
        canvas.drawPath(path, fill)
    }

    /** Where two glazes lie, lines say so besides the colour. */
    private fun hatch(canvas: Canvas) {
        path.computeBounds(box, true)
        canvas.save()
        canvas.clipPath(path)
        var x = box.left - box.height()
        while (x < box.right) {
            canvas.drawLine(x, box.bottom, x + box.height(), box.top, hatch)
            x += HATCH_DP * dp
        }
        canvas.restore()
    }

    /** A bright line with a dark edge can be seen on any picture. */
    private fun seen(canvas: Canvas) {
        canvas.drawPath(path, seenEdge)
        canvas.drawPath(path, seen)
    }

    private fun paint(canvas: Canvas, grip: Grip, onPhoto: Boolean) {
        val at = carried?.takeIf { grip.key == chosen } ?: grip.at
        val (x, y) = at.px to at.py
        if (grip.radius > 0) return disc(canvas, grip, at)
        val out = if (grip.key == chosen) 1.5f else 1f
        if (grip.line.isNotEmpty()) {
            trace(grip.line)
            canvas.drawPath(path, handle)
            // Wider than high: it goes up and down, and is no point.
            box.set(x - 15 * dp * out, y - 7 * dp * out, x + 15 * dp * out, y + 7 * dp * out)
            canvas.drawRoundRect(box, 7 * dp * out, 7 * dp * out, fill.apply { color = context.getColor(R.color.surface) })
            box.inset(2 * dp, 2 * dp)
            canvas.drawRoundRect(box, 6 * dp * out, 6 * dp * out, fill.apply { color = context.getColor(R.color.accent) })
            return
        }
        val radius = POINT_DP / 2 * dp * out
        if (onPhoto) {
            // Hollow, so that what it points at is seen.
            canvas.drawCircle(x, y, radius * 1.5f, seenEdge)
            canvas.drawCircle(x, y, radius * 1.5f, seen)
            canvas.drawCircle(x, y, 3 * dp, fill.apply { color = context.getColor(R.color.seen_edge) })
            canvas.drawCircle(x, y, 1.5f * dp, fill.apply { color = context.getColor(R.color.seen) })
        } else {
            canvas.drawCircle(x, y, radius + 2 * dp, fill.apply { color = context.getColor(R.color.surface) })
            canvas.drawCircle(x, y, radius, fill.apply { color = context.getColor(R.color.accent) })
        }
    }

    /** A piece seen from above, with its code in it. */
    private fun disc(canvas: Canvas, grip: Grip, at: Spot) {
        val radius = grip.radius.toFloat() * width
        val isChosen = grip.key == chosen
        traceCircle(at, grip.radius)
        canvas.drawPath(path, fill.apply { color = context.getColor(if (isChosen) R.color.accent_ground else R.color.glazed) })
        canvas.drawPath(path, if (grip.warns) warning else if (isChosen) handle else line)
        label.textSize = MOST_LABEL_DP * dp
        val room = 2 * radius - 4 * dp
        val wide = label.measureText(grip.label)
        if (wide > room) label.textSize *= room / wide
        // Smaller than that nobody can read it, and the circle alone is clearer.
        if (label.textSize < LEAST_LABEL_DP * dp) return
        canvas.drawText(grip.label, at.px, at.py - (label.ascent() + label.descent()) / 2, label)
    }

    // ---- without a finger ----

    private val spoken = DrawnParts(this) { drawing?.grips.orEmpty().map(::part) }

    override fun getAccessibilityNodeProvider(): AccessibilityNodeProvider = spoken

    private fun part(grip: Grip): DrawnPart {
        val reach = reach(grip).toInt()
        val (x, y) = grip.at.px.toInt() to grip.at.py.toInt()
        val moves = if (!grip.movable) emptyList() else MOVES.map { (id, words, by) -> DrawnPart.Action(id, context.getText(words)) { move(grip, by.first, by.second) } }
        val tap = DrawnPart.Action(AccessibilityNodeInfo.ACTION_CLICK, null) { touched?.tap(grip) }
        return DrawnPart(grip.name, Rect(x - reach, y - reach, x + reach, y + reach), listOf(tap) + moves)
    }

    /** Moves a grip by parts of the drawing's width, as a finger would that takes it, draws it there and lets go. */
    private fun move(grip: Grip, byX: Double, byY: Double) {
        val touched = touched ?: return
        val tall = drawing?.tall ?: return
        touched.hold(grip)
        touched.drag(grip.key, Spot((grip.at.x + byX).coerceIn(0.0, 1.0), (grip.at.y + byY).coerceIn(0.0, tall)))
        touched.letGo()
    }

    private val Spot.px: Float get() = x.toFloat() * width
    private val Spot.py: Float get() = y.toFloat() * width

    // ---- the finger ----

    private var downX = 0f
    private var downY = 0f
    private var under: Grip? = null

    /** The drawing as it was when the finger came down. */
    private var tall = 0.0
    private var moved = false

    /** Whether the finger went its way before it had lifted anything. */
    private var strayed = false
    private var dragged = false
    private val lift = Runnable {
        parent.requestDisallowInterceptTouchEvent(true)
        take()
    }

    @android.annotation.SuppressLint("ClickableViewAccessibility") // whoever listens finds the same numbers in the table
    override fun onTouchEvent(event: MotionEvent): Boolean {
        // One that nobody listens to is a picture on something else to tap.
        if (touched == null) return false
        when (event.actionMasked) {
            MotionEvent.ACTION_DOWN -> down(event.x, event.y)
            MotionEvent.ACTION_MOVE -> move(event.x, event.y)
            MotionEvent.ACTION_UP -> up(event.x, event.y)
            MotionEvent.ACTION_CANCEL -> {
                removeCallbacks(lift)
                if (under != null && moved) touched?.letGo()
            }
        }
        return true
    }

    private fun down(x: Float, y: Float) {
        downX = x
        downY = y
        moved = false
        strayed = false
        dragged = false
        tall = drawing?.tall ?: 0.0
        under = drawing?.grips?.minByOrNull { it.distance(x, y) }?.takeIf { it.distance(x, y) <= reach(it) }
        // What cannot be moved is only tapped.
        if (under?.movable != true) return
        // From now on the page does not scroll: the finger is on something that moves.
        if (holdToLift) postDelayed(lift, ViewConfiguration.getLongPressTimeout().toLong()) else parent.requestDisallowInterceptTouchEvent(true)
    }

    private fun move(x: Float, y: Float) {
        val grip = under
        val far = hypot(x - downX, y - downY) > slop
        if (far && !moved) {
            removeCallbacks(lift)
            if (holdToLift || grip?.movable == false) strayed = true else take()
        }
        if (!moved || grip == null || !far && !dragged) return
        dragged = true
        // The grip keeps its distance from the finger, as it was when taken hold of.
        touched?.drag(grip.key, spot(grip.at.px + x - downX, grip.at.py + y - downY))
    }

    /** The finger has hold of what it came down on, or scrolls nothing. */
    private fun take() {
        moved = true
        under?.let { touched?.hold(it) }
    }

    private fun up(x: Float, y: Float) {
        val grip = under
        move(x, y)
        removeCallbacks(lift)
        when {
            moved -> if (grip != null) touched?.letGo()
            strayed -> Unit
            grip != null -> touched?.tap(grip)
            else -> touched?.tap(spot(x, y))
        }
    }

    /** How near to its middle a finger takes hold of a grip. */
    private fun reach(grip: Grip) = maxOf(REACH_DP * dp, grip.radius.toFloat() * width)

    private fun Grip.distance(x: Float, y: Float) = hypot(at.px - x, at.py - y)

    /** The place in the box, as it was when the finger came down, that is nearest to a point of the view. */
    private fun spot(x: Float, y: Float) = Spot((x.toDouble() / width).coerceIn(0.0, 1.0), (y.toDouble() / width).coerceIn(0.0, tall))

    private companion object {
        const val MOST_OF_THE_SCREEN = 0.6f
        const val REACH_DP = 24
        const val POINT_DP = 14f
        const val HATCH_DP = 7
        const val MOST_LABEL_DP = 14f
        const val LEAST_LABEL_DP = 7f

        /** How far one action moves a grip, in parts of the drawing's width: 1 cm on a shelf of 50 cm. */
        const val STEP = 0.02
        val MOVES = listOf(
            Triple(R.id.move_left, R.string.move_left, -STEP to 0.0), Triple(R.id.move_right, R.string.move_right, STEP to 0.0),
            Triple(R.id.move_up, R.string.move_up, 0.0 to -STEP), Triple(R.id.move_down, R.string.move_down, 0.0 to STEP),
        )
    }
}

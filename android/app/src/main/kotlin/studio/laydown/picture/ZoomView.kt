package studio.laydown.picture

import android.content.Context
import android.graphics.Bitmap
import android.graphics.BitmapFactory
import android.graphics.Canvas
import android.graphics.Matrix
import android.graphics.Paint
import android.media.ExifInterface
import android.view.GestureDetector
import android.view.MotionEvent
import android.view.ScaleGestureDetector
import android.view.View
import android.view.accessibility.AccessibilityNodeInfo
import java.io.IOException
import kotlin.math.max
import kotlin.math.min

/** A photograph to look at closely: two fingers zoom to the pixel, one moves it, and a double tap goes to the pixels and back. */
class ZoomView(context: Context) : View(context) {
    /** The picture, upright; null while there is none. */
    var picture: Bitmap? = null
        set(value) {
            field = value
            zoom = 1f
            requestLayout()
            invalidate()
        }

    /** How much larger than fitted it is shown. */
    var zoom = 1f
        private set
    private var left = 0f
    private var top = 0f
    private val matrix = Matrix()

    /** Large pixels are shown as they are. */
    private val paint = Paint(Paint.FILTER_BITMAP_FLAG)

    private val pinch = ScaleGestureDetector(context, object : ScaleGestureDetector.SimpleOnScaleGestureListener() {
        override fun onScale(detector: ScaleGestureDetector): Boolean {
            zoomTo(zoom * detector.scaleFactor, detector.focusX, detector.focusY)
            return true
        }
    })
    private val touch = GestureDetector(context, object : GestureDetector.SimpleOnGestureListener() {
        override fun onDown(event: MotionEvent) = true

        override fun onScroll(first: MotionEvent?, event: MotionEvent, x: Float, y: Float): Boolean {
            left -= x
            top -= y
            hold()
            return true
        }

        override fun onDoubleTap(event: MotionEvent): Boolean {
            turn(event.x, event.y)
            return true
        }
    })

    /** Goes to the pixels, or back to the whole picture. */
    private fun turn(x: Float, y: Float) = zoomTo(if (zoom > 1f) 1f else toThePixel, x, y)

    /** The scale at which the whole picture is in sight. */
    private val fitted: Float get() = picture?.let { min(width.toFloat() / it.width, height.toFloat() / it.height) } ?: 1f

    /** The zoom at which a pixel of the picture is one of the screen; no less than shows something. */
    private val toThePixel: Float get() = max(LEAST, 1f / fitted)

    private fun zoomTo(wanted: Float, x: Float, y: Float) {
        val next = wanted.coerceIn(1f, toThePixel * MOST_PER_PIXEL)
        left = x - (x - left) * next / zoom
        top = y - (y - top) * next / zoom
        zoom = next
        hold()
    }

    /** No edge of the picture comes into the view while there is more of it, and what is smaller than the view stays in its middle. */
    private fun hold() {
        val picture = picture ?: return
        val scale = fitted * zoom
        left = held(left, picture.width * scale, width)
        top = held(top, picture.height * scale, height)
        invalidate()
    }

    private fun held(at: Float, size: Float, room: Int) = if (size <= room) (room - size) / 2 else at.coerceIn(room - size, 0f)

    override fun onMeasure(widthMeasureSpec: Int, heightMeasureSpec: Int) {
        val most = (resources.displayMetrics.heightPixels * MOST_OF_THE_SCREEN).toInt()
        setMeasuredDimension(MeasureSpec.getSize(widthMeasureSpec), most)
    }

    override fun onSizeChanged(w: Int, h: Int, oldw: Int, oldh: Int) = hold()

    override fun onDraw(canvas: Canvas) {
        val picture = picture ?: return
        val scale = fitted * zoom
        matrix.setScale(scale, scale)
        matrix.postTranslate(left, top)
        paint.isFilterBitmap = scale < 1f
        canvas.drawBitmap(picture, matrix, paint)
    }

    @android.annotation.SuppressLint("ClickableViewAccessibility") // whoever listens has an action for it
    override fun onTouchEvent(event: MotionEvent): Boolean {
        pinch.onTouchEvent(event)
        if (!pinch.isInProgress) touch.onTouchEvent(event)
        return true
    }

    override fun onInitializeAccessibilityNodeInfo(info: AccessibilityNodeInfo) {
        super.onInitializeAccessibilityNodeInfo(info)
        info.addAction(AccessibilityNodeInfo.AccessibilityAction.ACTION_CLICK)
    }

    override fun performClick(): Boolean {
        super.performClick()
        turn(width / 2f, height / 2f)
        return true
    }

    companion object {
        private const val LEAST = 2f
        private const val MOST_PER_PIXEL = 4f
        private const val MOST_OF_THE_SCREEN = 0.7f

        /** The most pixels that are unpacked: 64 MB of them. */
        private const val MOST_PIXELS = 16_000_000L

        /** The photograph in a file, upright, to the pixel as far as the phone's memory goes; null where the file has gone. */
        fun read(file: String): Bitmap? {
            val options = BitmapFactory.Options().apply { inJustDecodeBounds = true }
            BitmapFactory.decodeFile(file, options)
            options.inJustDecodeBounds = false
            options.inSampleSize = 1
            while (options.outWidth.toLong() * options.outHeight / (options.inSampleSize * options.inSampleSize) > MOST_PIXELS) options.inSampleSize *= 2
            val picture = BitmapFactory.decodeFile(file, options) ?: return null
            val turn = Matrix().apply { upright(file) }
            return if (turn.isIdentity) picture else Bitmap.createBitmap(picture, 0, 0, picture.width, picture.height, turn, true)
        }

        /** As the camera was held, which the file says beside the picture. */
        private fun Matrix.upright(file: String) {
            val held = try {
                ExifInterface(file).getAttributeInt(ExifInterface.TAG_ORIENTATION, ExifInterface.ORIENTATION_NORMAL)
            } catch (none: IOException) {
                // A picture that says nothing of it stands as it is.
                ExifInterface.ORIENTATION_NORMAL
            }
            when (held) {
                ExifInterface.ORIENTATION_FLIP_HORIZONTAL -> setScale(-1f, 1f)
                ExifInterface.ORIENTATION_ROTATE_180 -> setRotate(180f)
                ExifInterface.ORIENTATION_FLIP_VERTICAL -> setScale(1f, -1f)
                ExifInterface.ORIENTATION_TRANSPOSE -> { setRotate(90f); postScale(-1f, 1f) }
                ExifInterface.ORIENTATION_ROTATE_90 -> setRotate(90f)
                ExifInterface.ORIENTATION_TRANSVERSE -> { setRotate(-90f); postScale(-1f, 1f) }
                ExifInterface.ORIENTATION_ROTATE_270 -> setRotate(-90f)
            }
        }
    }
}

package studio.laydown.desktop

import org.robolectric.RuntimeEnvironment
import java.util.Locale

/** How the phone is held and set: everything a screen must still be right in. */
data class Look(
    val night: Boolean = false,
    val landscape: Boolean = false,
    val fontScale: Float = 1f,
    /** A resource locale: `en-rGB`, or a pseudolocale, `en-rXA` (long) or `ar-rXB` (right to left). */
    val language: String = "en-rGB",
    /** The screen's shorter and longer side, in dp. */
    val across: Int = 411,
    val along: Int = 891,
) {
    /** The words of a file name: `light`, `dark`, `font-1.5`, `landscape`, `320x568`, or several joined. */
    val words: String
        get() = listOfNotNull(
            if (night) "dark" else "light",
            "landscape".takeIf { landscape },
            "font-${String.format(Locale.ROOT, "%.1f", fontScale)}".takeIf { fontScale != 1f },
            "${across}x$along".takeIf { across != 411 || along != 891 },
            language.takeIf { it != "en-rGB" },
        ).let { if (it.size > 1) it - "light" else it }.joinToString("-")

    /** Makes it the phone's configuration; activities see it when they are next created. */
    internal fun apply() {
        val direction = if (language.startsWith("ar")) "ldrtl" else "ldltr"
        val (width, height) = if (landscape) along to across else across to along
        val toggled = if (landscape) "land" else "port"
        val lit = if (night) "night" else "notnight"
        // The documented order of qualifiers; any other fails to parse.
        RuntimeEnvironment.setQualifiers("$language-$direction-w${width}dp-h${height}dp-$toggled-$lit-xhdpi")
        RuntimeEnvironment.setFontScale(fontScale)
    }

    companion object {
        /** One of the smallest phones still in use. */
        val SMALL = Look(across = 320, along = 568)

        /** The looks every screen is shown and audited in. */
        val ALL = listOf(
            Look(),
            Look(night = true),
            Look(fontScale = 1.5f),
            Look(landscape = true),
            SMALL,
            Look(language = "de-rDE"),
            // English half as long again, with an accent on each letter: what a translation may come to, and what was never one.
            Look(language = "en-rXA"),
        )
    }
}

package studio.laydown.desktop

import org.junit.runner.JUnitCore
import kotlin.system.exitProcess

/**
 * Runs the named classes inside Robolectric, one after the other, and says what failed: the desk, or the screens and their
 * contact sheet. What they need to know comes in system properties, since they live in a class loader of their own.
 */
fun main(args: Array<String>) {
    val result = JUnitCore.runClasses(*args.map { Class.forName(it) }.toTypedArray())
    for (failure in result.failures) System.err.println("${failure.description}: ${failure.trace}")
    exitProcess(if (result.wasSuccessful()) 0 else 1)
}

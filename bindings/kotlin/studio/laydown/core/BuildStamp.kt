package studio.laydown.core

/** The stamp of the library that the generated code beside this file was made from. */
const val BUILD_STAMP: String = "b0ea8c11c8154000"

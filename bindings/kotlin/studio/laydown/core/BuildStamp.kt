package studio.laydown.core

/** The stamp of the library that the generated code beside this file was made from. */
const val BUILD_STAMP: String = "b9d8c1d42c6243e9"

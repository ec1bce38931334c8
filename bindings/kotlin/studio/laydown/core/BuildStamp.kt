package studio.laydown.core

/** The stamp of the library that the generated code beside this file was made from. */
const val BUILD_STAMP: String = "f079303f21d0f72c"

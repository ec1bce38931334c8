package studio.laydown.core

/** The stamp of the library that the generated code beside this file was made from. */
const val BUILD_STAMP: String = "8dd0e6d3b25f1e19"

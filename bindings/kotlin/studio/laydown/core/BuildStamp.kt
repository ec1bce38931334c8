package studio.laydown.core

/** The stamp of the library that the generated code beside this file was made from. */
const val BUILD_STAMP: String = "70a1dfe66f200f6b"

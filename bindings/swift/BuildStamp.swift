/// The stamp of the library that the generated code beside this file was made from.
public let generatedBuildStamp = "f079303f21d0f72c"

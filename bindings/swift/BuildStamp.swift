/// The stamp of the library that the generated code beside this file was made from.
public let generatedBuildStamp = "e8bc2b116c23c9c6"

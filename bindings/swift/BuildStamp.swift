/// The stamp of the library that the generated code beside this file was made from.
public let generatedBuildStamp = "56f7a7a8639dfcea"

/// The stamp of the library that the generated code beside this file was made from.
public let generatedBuildStamp = "b9d8c1d42c6243e9"

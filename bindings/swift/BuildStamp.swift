/// The stamp of the library that the generated code beside this file was made from.
public let generatedBuildStamp = "12c5d6b2e5d6561e"

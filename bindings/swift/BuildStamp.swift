/// The stamp of the library that the generated code beside this file was made from.
public let generatedBuildStamp = "155557d08080d28e"

/// The stamp of the library that the generated code beside this file was made from.
public let generatedBuildStamp = "5cadc860480c3fa3"

/// The stamp of the library that the generated code beside this file was made from.
public let generatedBuildStamp = "8dd0e6d3b25f1e19"

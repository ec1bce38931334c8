/// The stamp of the library that the generated code beside this file was made from.
public let generatedBuildStamp = "6e7b8eff00c7234d"

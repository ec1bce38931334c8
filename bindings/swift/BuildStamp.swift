/// The stamp of the library that the generated code beside this file was made from.
public let generatedBuildStamp = "1d0d54fc7b200680"

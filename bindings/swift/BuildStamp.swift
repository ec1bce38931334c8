/// The stamp of the library that the generated code beside this file was made from.
public let generatedBuildStamp = "6265de4d238e8831"

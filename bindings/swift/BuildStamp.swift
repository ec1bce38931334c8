/// The stamp of the library that the generated code beside this file was made from.
public let generatedBuildStamp = "33a8e981552eae74"

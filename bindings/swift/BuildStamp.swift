/// The stamp of the library that the generated code beside this file was made from.
public let generatedBuildStamp = "b0ea8c11c8154000"

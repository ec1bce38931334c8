/// The stamp of the library that the generated code beside this file was made from.
public let generatedBuildStamp = "1fa3d2df127802fe"

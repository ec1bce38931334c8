/// The stamp of the library that the generated code beside this file was made from.
public let generatedBuildStamp = "9cb879f7c6ee3add"

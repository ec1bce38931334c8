/// The stamp of the library that the generated code beside this file was made from.
public let generatedBuildStamp = "4ac3e6195156bcef"

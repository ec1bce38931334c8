/// The stamp of the library that the generated code beside this file was made from.
public let generatedBuildStamp = "1f30cc2eac7963fb"

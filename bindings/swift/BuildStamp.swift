/// The stamp of the library that the generated code beside this file was made from.
public let generatedBuildStamp = "fc7e1bcff4228c74"

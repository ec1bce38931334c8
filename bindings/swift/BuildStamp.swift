/// The stamp of the library that the generated code beside this file was made from.
public let generatedBuildStamp = "a076a44f48d46f9a"

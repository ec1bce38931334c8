/// The stamp of the library that the generated code beside this file was made from.
public let generatedBuildStamp = "44ed7da97955d4d2"

/// The stamp of the library that the generated code beside this file was made from.
public let generatedBuildStamp = "3cc3da33a18df841"

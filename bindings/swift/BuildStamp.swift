/// The stamp of the library that the generated code beside this file was made from.
public let generatedBuildStamp = "e0f1f5deb2bfacf9"

/// The stamp of the library that the generated code beside this file was made from.
public let generatedBuildStamp = "8035b87406e9805b"

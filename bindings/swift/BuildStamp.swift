/// The stamp of the library that the generated code beside this file was made from.
public let generatedBuildStamp = "ffba8f0f2bfa6998"

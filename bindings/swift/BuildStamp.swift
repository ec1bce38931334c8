/// The stamp of the library that the generated code beside this file was made from.
public let generatedBuildStamp = "bb5acfdfaa45b2be"

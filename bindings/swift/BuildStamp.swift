/// The stamp of the library that the generated code beside this file was made from.
public let generatedBuildStamp = "0361273303c1e80e"

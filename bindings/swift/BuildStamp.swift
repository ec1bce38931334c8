/// The stamp of the library that the generated code beside this file was made from.
public let generatedBuildStamp = "d39cd1092658fe67"

/// The stamp of the library that the generated code beside this file was made from.
public let generatedBuildStamp = "f23103fd09dec680"

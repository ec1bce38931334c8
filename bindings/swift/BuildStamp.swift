/// The stamp of the library that the generated code beside this file was made from.
public let generatedBuildStamp = "c040102bc547a669"

/// The stamp of the library that the generated code beside this file was made from.
public let generatedBuildStamp = "5faf574d5277f2da"

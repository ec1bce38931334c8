/// The stamp of the library that the generated code beside this file was made from.
public let generatedBuildStamp = "0dd4ec6e6171c527"

/// The stamp of the library that the generated code beside this file was made from.
public let generatedBuildStamp = "71e4392a671fe918"

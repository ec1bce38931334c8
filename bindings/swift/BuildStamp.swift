/// The stamp of the library that the generated code beside this file was made from.
public let generatedBuildStamp = "cc3551353fa05ad6"

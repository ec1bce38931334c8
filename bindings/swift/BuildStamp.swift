/// The stamp of the library that the generated code beside this file was made from.
public let generatedBuildStamp = "dd20135d61a1ad6e"

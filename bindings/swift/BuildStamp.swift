/// The stamp of the library that the generated code beside this file was made from.
public let generatedBuildStamp = "26a9d81e02bb934c"

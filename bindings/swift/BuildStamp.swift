/// The stamp of the library that the generated code beside this file was made from.
public let generatedBuildStamp = "af4d0fdf610cfeac"

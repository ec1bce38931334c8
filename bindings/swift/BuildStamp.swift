/// The stamp of the library that the generated code beside this file was made from.
public let generatedBuildStamp = "540cad933adb4d32"

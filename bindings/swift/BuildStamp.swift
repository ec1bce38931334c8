/// The stamp of the library that the generated code beside this file was made from.
public let generatedBuildStamp = "cca3d120c5eafa66"

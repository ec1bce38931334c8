/// The stamp of the library that the generated code beside this file was made from.
public let generatedBuildStamp = "70a1dfe66f200f6b"

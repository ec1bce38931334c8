/// The stamp of the library that the generated code beside this file was made from.
public let generatedBuildStamp = "954c5137aa70791f"

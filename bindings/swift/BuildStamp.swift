/// The stamp of the library that the generated code beside this file was made from.
public let generatedBuildStamp = "2742247058fbc775"

//! Writes the shells' own few labels from `core/app/i18n`: for Android `strings.xml` in each language, for iOS `Words.swift`
//! with all of them. They are the messages of `shells.ftl`; all others are said by the core.
//!
//! `shell_words I18N ANDROID_RES WORDS_SWIFT`

use std::collections::BTreeMap;
use std::error::Error;
use std::fmt::Write;
use std::path::Path;
use std::{env, fs};

use fluent_syntax::ast::{Entry, Expression, InlineExpression, PatternElement};
use fluent_syntax::parser::parse;

/// A part of a label.
enum Part {
    Text(String),
    /// What is put in there, by its number in the English label.
    Argument(usize),
}

/// A label in English: its id and the names of its arguments in their order.
struct Label {
    id: String,
    arguments: Vec<String>,
}

/// The parts of each label of one language, by its id.
type Said = BTreeMap<String, Vec<Part>>;

fn main() -> Result<(), Box<dyn Error>> {
    let arguments: Vec<String> = env::args().skip(1).collect();
    let [folder, android, swift] = arguments.as_slice() else {
        return Err("shell_words I18N ANDROID_RES WORDS_SWIFT".into());
    };
    let file = |language: &str| Path::new(folder).join(language).join("shells.ftl");
    let (labels, english) = read(&fs::read_to_string(file("en"))?, None)?;
    let mut languages = vec![("en".to_owned(), english)];
    for entry in fs::read_dir(folder)? {
        let language = entry?.file_name().into_string().map_err(|_| "a language's folder has an odd name")?;
        if language != "en" && file(&language).exists() {
            languages.push((language.clone(), read(&fs::read_to_string(file(&language))?, Some(&labels))?.1));
        }
    }
    languages[1..].sort_by(|(one, _), (other, _)| one.cmp(other));
    for (language, said) in &languages {
        let values = if language == "en" { "values".to_owned() } else { format!("values-{language}") };
        let values = Path::new(android).join(values);
        fs::create_dir_all(&values)?;
        fs::write(values.join("strings.xml"), strings_xml(&labels, said)?)?;
    }
    fs::write(swift, words_swift(&labels, &languages)?)?;
    Ok(())
}

/// The labels of a file; the arguments of a translation are numbered as in `english`.
fn read(text: &str, english: Option<&[Label]>) -> Result<(Vec<Label>, Said), Box<dyn Error>> {
    let resource = parse(text).map_err(|(_, errors)| format!("{errors:?}"))?;
    let (mut labels, mut said) = (Vec::new(), Said::new());
    for entry in &resource.body {
        let Entry::Message(message) = entry else { continue };
        let id = message.id.name.to_owned();
        let known = english.and_then(|labels| labels.iter().find(|label| label.id == id));
        if english.is_some() && known.is_none() {
            return Err(format!("{id} is no English label").into());
        }
        let mut arguments: Vec<String> = known.map(|label| label.arguments.clone()).unwrap_or_default();
        let mut parts = Vec::new();
        for element in message.value.iter().flat_map(|pattern| &pattern.elements) {
            parts.push(match element {
                PatternElement::TextElement { value } => Part::Text((*value).to_owned()),
                PatternElement::Placeable {
                    expression: Expression::Inline(InlineExpression::VariableReference { id: name }),
                } => {
                    let place = arguments.iter().position(|argument| argument == name.name);
                    Part::Argument(match place {
                        Some(place) => place,
                        None if known.is_some() => return Err(format!("{id}: English has no ${}", name.name).into()),
                        None => {
                            arguments.push(name.name.to_owned());
                            arguments.len() - 1
                        }
                    })
                }
                PatternElement::Placeable {
                    expression: Expression::Inline(InlineExpression::StringLiteral { value }),
                } => Part::Text((*value).to_owned()),
                PatternElement::Placeable { .. } => {
                    return Err(format!("{id}: a label has no choices: say it in the core").into());
                }
            });
        }
        said.insert(id.clone(), parts);
        labels.push(Label { id, arguments });
    }
    Ok((labels, said))
}

fn strings_xml(labels: &[Label], said: &Said) -> Result<String, Box<dyn Error>> {
    let mut out = String::from("<?xml version=\"1.0\" encoding=\"utf-8\"?>\n");
    writeln!(out, "<!-- Written by tools/bindings from core/app/i18n: change it there. -->")?;
    writeln!(out, "<resources>")?;
    for label in labels {
        let Some(parts) = said.get(&label.id) else { continue };
        let text: String = parts
            .iter()
            .map(|part| match part {
                Part::Text(text) if label.arguments.is_empty() => xml(text),
                Part::Text(text) => xml(text).replace('%', "%%"),
                Part::Argument(place) => format!("%{}$s", place + 1),
            })
            .collect();
        writeln!(out, "  <string name=\"{}\">{text}</string>", label.id.replace('-', "_"))?;
    }
    writeln!(out, "</resources>")?;
    Ok(out)
}

/// Text as a resource holds it.
fn xml(text: &str) -> String {
    let text = text.replace('&', "&amp;").replace('<', "&lt;").replace('>', "&gt;");
    text.replace('\\', "\\\\").replace('\'', "\\'").replace('"', "\\\"")
}

fn words_swift(labels: &[Label], languages: &[(String, Said)]) -> Result<String, Box<dyn Error>> {
    let mut out = String::new();
    writeln!(out, "// Written by tools/bindings from core/app/i18n: change it there.")?;
    writeln!(out, "// swift-format-ignore-file")?;
    writeln!(out, "import Foundation\n")?;
    writeln!(out, "/// The few fixed labels, in the first of the phone's languages that is known.")?;
    writeln!(out, "/// Whatever depends on the studio comes in words from the core.")?;
    writeln!(out, "public enum Words {{")?;
    for (place, label) in labels.iter().enumerate() {
        let name = camel(&label.id);
        writeln!(out, "    /// `{}`", label.id)?;
        if label.arguments.is_empty() {
            writeln!(out, "    public static var {name}: String {{ say({place}) }}")?;
        } else {
            let parameters: Vec<String> = label
                .arguments
                .iter()
                .map(|argument| format!("_ {}: some CustomStringConvertible", camel(argument)))
                .collect();
            let handed: Vec<String> =
                label.arguments.iter().map(|argument| format!("{}.description", camel(argument))).collect();
            writeln!(out, "    public static func {name}({}) -> String {{", parameters.join(", "))?;
            writeln!(out, "        say({place}, [{}])", handed.join(", "))?;
            writeln!(out, "    }}")?;
        }
    }
    writeln!(out, "\n    /// The languages there are.")?;
    let tags: Vec<&str> = languages.iter().map(|(tag, _)| tag.as_str()).collect();
    writeln!(out, "    public static let languages = {tags:?}\n")?;
    writeln!(out, "    /// The one in use: the first of the phone's that is known, else English.")?;
    writeln!(out, "    static let language: Int = {{")?;
    writeln!(out, "        for tag in Locale.preferredLanguages {{")?;
    writeln!(
        out,
        "            let language = tag.split(whereSeparator: {{ $0 == \"-\" || $0 == \"_\" }}).first.map(String.init)"
    )?;
    writeln!(out, "            if let found = languages.firstIndex(of: language ?? \"\") {{ return found }}")?;
    writeln!(out, "        }}")?;
    writeln!(out, "        return 0")?;
    writeln!(out, "    }}()\n")?;
    writeln!(out, "    private static func say(_ label: Int, _ arguments: [String] = []) -> String {{")?;
    writeln!(out, "        // What is put in stands between these two, by its number.")?;
    writeln!(
        out,
        "        let parts = texts[language][label].split(separator: \"\\u{{1}}\", omittingEmptySubsequences: false)"
    )?;
    writeln!(out, "        return parts.enumerated().map {{ place, part in")?;
    writeln!(out, "            if place % 2 == 0 {{ return String(part) }}")?;
    writeln!(
        out,
        "            guard let number = Int(part), arguments.indices.contains(number) else {{ return \"\" }}"
    )?;
    writeln!(out, "            return arguments[number]")?;
    writeln!(out, "        }}.joined()")?;
    writeln!(out, "    }}\n")?;
    writeln!(out, "    private static let texts: [[String]] = [")?;
    let english = &languages[0].1;
    for (tag, said) in languages {
        writeln!(out, "        [  // {tag}")?;
        for label in labels {
            let parts = said.get(&label.id).or_else(|| english.get(&label.id)).ok_or("English lacks a label")?;
            let text: String = parts
                .iter()
                .map(|part| match part {
                    Part::Text(text) => text.replace('\\', "\\\\").replace('"', "\\\""),
                    Part::Argument(place) => format!("\\u{{1}}{place}\\u{{1}}"),
                })
                .collect();
            writeln!(out, "            \"{text}\",")?;
        }
        writeln!(out, "        ],")?;
    }
    writeln!(out, "    ]")?;
    writeln!(out, "}}")?;
    Ok(out)
}

/// "photo-of" as "photoOf"; what Swift means otherwise stands in quotes.
fn camel(id: &str) -> String {
    let mut words = id.split('-');
    let mut name = words.next().unwrap_or_default().to_owned();
    for word in words {
        let mut letters = word.chars();
        name.extend(letters.next().into_iter().flat_map(char::to_uppercase).chain(letters));
    }
    match name.as_str() {
        "in" | "is" | "as" | "repeat" | "default" | "where" | "continue" | "break" => format!("`{name}`"),
        _ => name,
    }
}

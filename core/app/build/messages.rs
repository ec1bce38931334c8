//! A function for each message of the English files, so that a message that is missing, unused or given other arguments does
//! not compile. What English lacks cannot be said; what a translation lacks is said in English until it is translated, and
//! a test names it.

use std::collections::{BTreeMap, BTreeSet};
use std::error::Error;
use std::fmt::Write;
use std::fs;
use std::path::Path;

use fluent_syntax::ast::{
    CallArguments, Entry, Expression, InlineExpression, Message, Pattern, PatternElement, Resource, VariantKey,
};
use fluent_syntax::parser::parse;

/// What a message is given.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Argument {
    /// Ready words.
    Text,
    /// A number that the plural depends on.
    Count,
}

/// The language that all messages are first written in.
const FIRST: &str = "en";
/// Terms that all files of a language may use.
const TERMS: &str = "terms";
/// The labels that the shells hold themselves: no functions here, `bindings/bindgen` writes them where each shell looks.
const SHELLS: &str = "shells";

/// Source text: a module for each English file in `folder` with a function for each message, and `SOURCES`, the text of all
/// files by language.
pub fn functions(folder: &Path) -> Result<String, Box<dyn Error>> {
    let mut languages = BTreeSet::new();
    for entry in fs::read_dir(folder)? {
        let entry = entry?;
        if entry.file_type()?.is_dir() {
            languages.insert(entry.file_name().into_string().map_err(|_| "a language's folder has an odd name")?);
        }
    }
    let english = files(&folder.join(FIRST))?;
    let names: Vec<&String> = english.keys().filter(|name| *name != TERMS).collect();
    let mut out = String::new();
    writeln!(out, "/// The files of each language, in the order of their numbers.")?;
    writeln!(out, "const SOURCES: &[(&str, &[&str])] = &[")?;
    for language in &languages {
        let files = files(&folder.join(language))?;
        for (name, text) in &files {
            let english =
                english.get(name).ok_or_else(|| format!("i18n/{language}/{name}.ftl has no English beside it"))?;
            let (english, translated) =
                (ids(english)?, ids(text).map_err(|error| format!("{language}/{name}: {error}"))?);
            if let Some(odd) = translated.difference(&english).next() {
                return Err(format!("i18n/{language}/{name}.ftl: {odd} is no English message").into());
            }
        }
        let terms = files.get(TERMS).cloned().unwrap_or_default();
        let texts = names.iter().map(|name| format!("{terms}\n{}", files.get(*name).cloned().unwrap_or_default()));
        writeln!(out, "    ({language:?}, &{:?}),", texts.collect::<Vec<_>>())?;
    }
    writeln!(out, "];\n")?;
    let mut every = String::new();
    for (number, name) in names.iter().enumerate() {
        let text = &english[*name];
        let resource = parse(text.as_str()).map_err(|(_, errors)| format!("i18n/en/{name}.ftl: {errors:?}"))?;
        let mut functions = String::new();
        module(&mut functions, &mut every, number, name, &resource)
            .map_err(|error| format!("i18n/en/{name}.ftl: {error}"))?;
        if *name != SHELLS {
            out += &functions;
        }
    }
    writeln!(
        out,
        "/// Every message: the number and the name of its file, its id, and whether each argument is a count."
    )?;
    writeln!(out, "#[cfg(test)]\nconst EVERY: &[(usize, &str, &str, Arguments)] = &[\n{every}];\n")?;
    writeln!(out, "#[cfg(test)]\ntype Arguments = &'static [(&'static str, bool)];")?;
    Ok(out)
}

/// The ids of all messages and terms of a file.
fn ids(text: &str) -> Result<BTreeSet<String>, Box<dyn Error>> {
    let resource = parse(text).map_err(|(_, errors)| format!("{errors:?}"))?;
    Ok(resource
        .body
        .iter()
        .filter_map(|entry| match entry {
            Entry::Message(message) => Some(message.id.name.to_owned()),
            Entry::Term(term) => Some(format!("-{}", term.id.name)),
            _ => None,
        })
        .collect())
}

/// The text of each file in `folder`, by its name without its ending.
fn files(folder: &Path) -> Result<BTreeMap<String, String>, Box<dyn Error>> {
    let mut files = BTreeMap::new();
    for entry in fs::read_dir(folder)? {
        let path = entry?.path();
        let name = path.file_stem().and_then(|name| name.to_str());
        if let (Some(name), Some("ftl")) = (name, path.extension().and_then(|ending| ending.to_str())) {
            files.insert(name.to_owned(), fs::read_to_string(&path)?);
        }
    }
    Ok(files)
}

fn module(
    out: &mut String,
    every: &mut String,
    number: usize,
    name: &str,
    resource: &Resource<&str>,
) -> Result<(), Box<dyn Error>> {
    writeln!(out, "/// The messages of `{name}.ftl`.")?;
    writeln!(out, "pub(crate) mod {} {{", name.replace('-', "_"))?;
    writeln!(out, "    use super::*;\n")?;
    let mut seen = BTreeSet::new();
    for entry in &resource.body {
        match entry {
            Entry::Message(message) => {
                if !seen.insert(message.id.name) {
                    return Err(format!("{} stands there twice", message.id.name).into());
                }
                let arguments = function(out, number, message)?;
                let given: Vec<String> = arguments
                    .iter()
                    .map(|(name, argument)| format!("({name:?}, {})", *argument == Argument::Count))
                    .collect();
                writeln!(every, "    ({number}, {name:?}, {:?}, &[{}]),", message.id.name, given.join(", "))?;
            }
            Entry::Term(term) => return Err(format!("-{}: a term belongs in {TERMS}.ftl", term.id.name).into()),
            Entry::Junk { content } => return Err(format!("not understood: {content}").into()),
            Entry::Comment(_) | Entry::GroupComment(_) | Entry::ResourceComment(_) => {}
        }
    }
    writeln!(out, "}}\n")?;
    Ok(())
}

/// Writes the function of one message; answers with the message's arguments.
fn function<'s>(
    out: &mut String,
    number: usize,
    message: &Message<&'s str>,
) -> Result<Vec<(&'s str, Argument)>, Box<dyn Error>> {
    let id = message.id.name;
    let pattern = message.value.as_ref().ok_or_else(|| format!("{id} says nothing"))?;
    let mut arguments = Vec::new();
    of_pattern(pattern, &mut arguments);
    let parameters: Vec<String> = arguments
        .iter()
        .map(|(name, argument)| match argument {
            Argument::Text => format!("{}: impl std::fmt::Display", snake(name)),
            Argument::Count => format!("{}: impl Count", snake(name)),
        })
        .collect();
    let handed: Vec<String> = arguments
        .iter()
        .map(|(name, argument)| match argument {
            Argument::Text => format!("({name:?}, FluentValue::from({}.to_string()))", snake(name)),
            Argument::Count => format!("({name:?}, FluentValue::from({}.count()))", snake(name)),
        })
        .collect();
    writeln!(out, "    /// `{id}`")?;
    writeln!(out, "    pub(crate) fn {}({}) -> String {{", snake(id), parameters.join(", "))?;
    writeln!(out, "        say({number}, {id:?}, [{}])", handed.join(", "))?;
    writeln!(out, "    }}")?;
    Ok(arguments)
}

fn snake(name: &str) -> String {
    let name = name.replace('-', "_");
    if matches!(
        name.as_str(),
        "as" | "in" | "for" | "if" | "type" | "use" | "where" | "move" | "match" | "loop" | "let"
    ) {
        format!("r#{name}")
    } else {
        name
    }
}

/// Adds the arguments of a pattern in the order in which they first stand in it.
fn of_pattern<'s>(pattern: &Pattern<&'s str>, arguments: &mut Vec<(&'s str, Argument)>) {
    for element in &pattern.elements {
        if let PatternElement::Placeable { expression } = element {
            of_expression(expression, arguments);
        }
    }
}

fn of_expression<'s>(expression: &Expression<&'s str>, arguments: &mut Vec<(&'s str, Argument)>) {
    match expression {
        Expression::Inline(inline) => of_inline(inline, Argument::Text, arguments),
        Expression::Select { selector, variants } => {
            let counts = variants.iter().any(|variant| match variant.key {
                VariantKey::NumberLiteral { .. } => true,
                VariantKey::Identifier { name } => matches!(name, "zero" | "one" | "two" | "few" | "many"),
            });
            of_inline(selector, if counts { Argument::Count } else { Argument::Text }, arguments);
            for variant in variants {
                of_pattern(&variant.value, arguments);
            }
        }
    }
}

fn of_inline<'s>(inline: &InlineExpression<&'s str>, argument: Argument, arguments: &mut Vec<(&'s str, Argument)>) {
    match inline {
        InlineExpression::VariableReference { id } => match arguments.iter_mut().find(|(name, _)| *name == id.name) {
            Some((_, known)) if argument == Argument::Count => *known = Argument::Count,
            Some(_) => {}
            None => arguments.push((id.name, argument)),
        },
        InlineExpression::Placeable { expression } => of_expression(expression, arguments),
        InlineExpression::FunctionReference { arguments: CallArguments { positional, .. }, .. } => {
            for inline in positional {
                of_inline(inline, argument, arguments);
            }
        }
        _ => {}
    }
}

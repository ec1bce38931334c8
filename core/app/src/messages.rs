//! Every sentence a person reads, in the language of this process. The sentences are in `i18n`, a file per screen; `build`
//! makes a function of each, in a module named after the file, so that a missing or unused message does not compile.

use std::borrow::Cow;
use std::sync::OnceLock;
use std::sync::atomic::{AtomicUsize, Ordering};

use fluent_bundle::concurrent::FluentBundle;
use fluent_bundle::{FluentArgs, FluentResource, FluentValue};
use unic_langid::LanguageIdentifier;

/// English, made longer and accented, to see what a translation would cut off or was never translated.
const PSEUDO: &str = "en-XA";

/// A whole number that a sentence counts with.
pub(crate) trait Count {
    /// The number.
    fn count(self) -> i64;
}

macro_rules! counts {
    ($($number:ty),+) => {$(
        impl Count for $number {
            fn count(self) -> i64 {
                i64::try_from(self).unwrap_or(i64::MAX)
            }
        }
    )+};
}

counts!(u8, u16, u32, u64, usize, i32, i64);

/// The number of the language in use: its place in [`languages`].
static LANGUAGE: AtomicUsize = AtomicUsize::new(0);

/// One language: its tag, and a bundle for each file.
struct Language {
    tag: LanguageIdentifier,
    files: Vec<File>,
}

/// A file of a language. It is read when something is first said from it: a start needs a few of one language.
struct File {
    text: &'static str,
    transform: Option<Transform>,
    bundle: OnceLock<FluentBundle<FluentResource>>,
}

/// What is done to each text of a language before it is shown.
type Transform = fn(&str) -> Cow<'_, str>;

/// English first, then the others.
fn languages() -> &'static [Language] {
    static LANGUAGES: OnceLock<Vec<Language>> = OnceLock::new();
    LANGUAGES.get_or_init(|| {
        let english = SOURCES.iter().filter(|(tag, _)| *tag == "en");
        let others = SOURCES.iter().filter(|(tag, _)| *tag != "en");
        let mut languages: Vec<Language> =
            english.clone().chain(others).map(|(tag, files)| language(tag, files, None)).collect();
        languages.extend(english.map(|(_, files)| language(PSEUDO, files, Some(longer_and_accented))));
        languages
    })
}

fn language(tag: &str, files: &[&'static str], transform: Option<Transform>) -> Language {
    let file = |text: &&'static str| File { text, transform, bundle: OnceLock::new() };
    Language { tag: tag.parse().unwrap_or_default(), files: files.iter().map(file).collect() }
}

impl Language {
    /// The file with this number, read.
    fn bundle(&self, file: usize) -> Option<&FluentBundle<FluentResource>> {
        let file = self.files.get(file)?;
        Some(file.bundle.get_or_init(|| {
            let mut bundle = FluentBundle::new_concurrent(vec![self.tag.clone()]);
            // The marks that isolate what is put in are for text of both directions, which no language here has.
            bundle.set_use_isolating(false);
            bundle.set_transform(file.transform);
            // What a file holds is checked when it is compiled, and a message that is broken in a translation is said in English.
            let resource = FluentResource::try_new(file.text.to_owned()).unwrap_or_else(|(resource, _)| resource);
            bundle.add_resource_overriding(resource);
            bundle
        }))
    }
}

/// The message `id` of the file with this number.
fn say<const N: usize>(file: usize, id: &str, arguments: [(&'static str, FluentValue<'static>); N]) -> String {
    let languages = languages();
    let chosen = languages.get(LANGUAGE.load(Ordering::Relaxed));
    let arguments = FluentArgs::from_iter(arguments);
    let in_language = |language: &Language| {
        let bundle = language.bundle(file)?;
        let pattern = bundle.get_message(id)?.value()?;
        let mut errors = Vec::new();
        let text = bundle.format_pattern(pattern, Some(&arguments), &mut errors).into_owned();
        errors.is_empty().then_some(text)
    };
    chosen.and_then(in_language).or_else(|| languages.first().and_then(in_language)).unwrap_or_else(|| id.to_owned())
}

/// Speaks the language of `tags`, the phone's own in order of liking (BCP 47, such as "de-AT"), or English if it is none of
/// those that laydown knows. Answers with the tag of the language in use.
#[uniffi::export]
pub fn set_language(tags: Vec<String>) -> String {
    let languages = languages();
    let known = |tag: &String| {
        let asked: LanguageIdentifier = tag.parse().ok()?;
        let exact = languages.iter().position(|language| language.tag == asked);
        exact.or_else(|| languages.iter().position(|language| language.tag.language == asked.language))
    };
    let chosen = tags.iter().find_map(known).unwrap_or_default();
    LANGUAGE.store(chosen, Ordering::Relaxed);
    languages.get(chosen).map(|language| language.tag.to_string()).unwrap_or_default()
}

/// "Aim" as "Åîm~": each letter with an accent, and half as long again.
fn longer_and_accented(text: &str) -> Cow<'_, str> {
    let accented = |letter: char| match letter {
        'a' => 'å',
        'c' => 'ç',
        'e' => 'é',
        'i' => 'î',
        'n' => 'ñ',
        'o' => 'ö',
        's' => 'š',
        'u' => 'ü',
        'y' => 'ý',
        'A' => 'Å',
        'E' => 'É',
        'I' => 'Î',
        'O' => 'Ö',
        'S' => 'Š',
        'U' => 'Û',
        other => other,
    };
    let mut longer: String = text.chars().map(accented).collect();
    let letters = text.chars().filter(|letter| letter.is_alphabetic()).count();
    longer.extend(std::iter::repeat_n('~', letters.div_ceil(2)));
    Cow::Owned(longer)
}

include!(concat!(env!("OUT_DIR"), "/messages.rs"));

#[cfg(test)]
mod tests {
    use super::*;

    /// Every message in every language, with every argument it has in English.
    #[test]
    fn every_translation_is_whole_and_fits_its_arguments() {
        let mut wrong = Vec::new();
        for language in languages() {
            for (file, name, id, arguments) in EVERY {
                let given = arguments.iter().map(|(argument, counts)| {
                    let value = if *counts { FluentValue::from(3) } else { FluentValue::from("19.4 g") };
                    (*argument, value)
                });
                let given = FluentArgs::from_iter(given);
                let bundle = language.bundle(*file).unwrap();
                let Some(pattern) = bundle.get_message(id).and_then(|message| message.value()) else {
                    wrong.push(format!("{}/{name}.ftl lacks {id}", language.tag));
                    continue;
                };
                let mut errors = Vec::new();
                let text = bundle.format_pattern(pattern, Some(&given), &mut errors);
                if !errors.is_empty() || text.contains('\n') {
                    wrong.push(format!("{}/{name}.ftl: {id}: {errors:?} {text:?}", language.tag));
                }
            }
        }
        assert!(wrong.is_empty(), "{}", wrong.join("\n"));
    }

    #[test]
    fn a_phone_speaks_the_first_of_its_languages_that_is_known() {
        assert_eq!(set_language(vec!["xx".to_owned(), "not a tag".to_owned(), "en-GB".to_owned()]), "en");
        assert_eq!(set_language(vec!["xx".to_owned()]), "en");
        assert_eq!(set_language(Vec::new()), "en");
    }

    #[test]
    fn the_pseudo_language_is_half_as_long_again() {
        assert_eq!(longer_and_accented("Aim for "), "Åîm för ~~~");
    }
}

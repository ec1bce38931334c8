//! Text as a person sees it: what cannot be seen, or turns the letters after it around, is shown as a mark or taken out.

use std::borrow::Cow;

use icu_properties::CodePointMapData;
use icu_properties::props::GeneralCategory;

/// Stands for a character that cannot be seen.
pub const MARK: char = '�';

/// `text` with a mark in place of each character that cannot be seen: control characters, line breaks, direction overrides,
/// zero-width characters and byte order marks. For text from elsewhere; the length in characters stays.
pub fn visible(text: &str) -> Cow<'_, str> {
    replace_hidden(text, |_| Some(MARK))
}

/// What was typed or taken in, on one line: without the spaces around it and without characters that cannot be seen. Line
/// breaks and tabs become spaces.
pub fn cleaned(text: &str) -> String {
    let cleaned = replace_hidden(text, |c| c.is_whitespace().then_some(' '));
    cleaned.trim().to_owned()
}

/// What is left of `text` after characters at its beginning that cannot be seen, and spaces.
pub fn after_hidden(text: &str) -> &str {
    text.trim_start_matches(|c: char| c.is_whitespace() || is_hidden(c))
}

fn replace_hidden(text: &str, by: impl Fn(char) -> Option<char>) -> Cow<'_, str> {
    if text.bytes().all(|byte| (b' '..=b'~').contains(&byte)) {
        return Cow::Borrowed(text);
    }
    let mut shown = String::with_capacity(text.len());
    let mut letters = text.chars().peekable();
    let mut before = None;
    while let Some(c) = letters.next() {
        if is_hidden(c) && !joins(before, c, letters.peek().copied()) {
            shown.extend(by(c));
        } else {
            shown.push(c);
        }
        before = Some(c);
    }
    Cow::Owned(shown)
}

/// General categories Cc, Cf, Zl and Zp of the Unicode Standard (section 4.5).
fn is_hidden(c: char) -> bool {
    use GeneralCategory::{Control, Format, LineSeparator, ParagraphSeparator};
    let category = CodePointMapData::<GeneralCategory>::new().get(c);
    matches!(category, Control | Format | LineSeparator | ParagraphSeparator)
}

/// Whether a joiner stands where writing needs it, between two characters beyond ASCII: in Persian and Hindi, and in emoji.
fn joins(before: Option<char>, c: char, after: Option<char>) -> bool {
    let needs = |letter: Option<char>| letter.is_some_and(|letter| !letter.is_ascii() && !is_hidden(letter));
    matches!(c, '\u{200c}' | '\u{200d}') && needs(before) && needs(after)
}

#[cfg(test)]
mod tests {
    use super::*;

    const HIDDEN: &[char] = &[
        '\0',
        '\t',
        '\n',
        '\r',
        '\u{1b}',
        '\u{7f}',
        '\u{85}',
        '\u{ad}',
        '\u{200b}',
        '\u{200c}',
        '\u{200d}',
        '\u{200e}',
        '\u{200f}',
        '\u{2028}',
        '\u{2029}',
        '\u{202a}',
        '\u{202e}',
        '\u{2060}',
        '\u{2066}',
        '\u{2069}',
        '\u{feff}',
        '\u{e0041}',
    ];

    #[test]
    fn what_cannot_be_seen_is_marked_or_taken_out() {
        for hidden in HIDDEN {
            let text = format!("Ash{hidden}white");
            assert_eq!(visible(&text), "Ash�white", "{hidden:?}");
            let between = if hidden.is_whitespace() { " " } else { "" };
            assert_eq!(cleaned(&text), format!("Ash{between}white"), "{hidden:?}");
            assert_eq!(cleaned(&format!("{hidden} Ash {hidden}")), "Ash", "{hidden:?}");
            assert_eq!(after_hidden(&format!("{hidden} {hidden}=1")), "=1", "{hidden:?}");
        }
    }

    #[test]
    fn what_can_be_seen_stays() {
        for text in ["Ash white", "Überfang ⅓", "白釉", "نمی\u{200c}خواهم", "👩\u{200d}🎨", "❤\u{fe0f}", ""]
        {
            assert_eq!(visible(text), text);
            assert_eq!(cleaned(text), text);
        }
        assert_eq!(cleaned("  two\u{a0}words "), "two\u{a0}words");
    }
}

//! What somebody else wrote, as it fits into a sentence.

use crate::visible::visible;

/// `text` on one line, with at most `most` letters: what is cut off is stood for by an ellipsis, what cannot be seen by a
/// mark.
pub fn truncate(text: &str, most: usize) -> String {
    let line: String = text.chars().map(|c| if c.is_whitespace() { ' ' } else { c }).collect();
    let text = visible(&line);
    if text.chars().count() <= most { text.into_owned() } else { text.chars().take(most - 1).chain(['…']).collect() }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_text_fits_and_stays_on_its_line() {
        assert_eq!(truncate("12 g\tand\nmore", 14), "12 g and more");
        assert_eq!(truncate("12\u{202e} g", 14), "12� g");
        assert_eq!(truncate("überlang", 8), "überlang");
        assert_eq!(truncate("überlang", 7), "überla…");
    }
}

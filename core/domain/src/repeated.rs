//! What somebody else wrote, as it fits into a sentence.

/// `text` on one line, with at most `most` letters: what is cut off is stood for by an ellipsis.
pub fn repeated(text: &str, most: usize) -> String {
    let text: String = text.chars().map(|c| if c.is_control() { ' ' } else { c }).collect();
    if text.chars().count() <= most { text } else { text.chars().take(most - 1).chain(['…']).collect() }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_text_fits_and_stays_on_its_line() {
        assert_eq!(repeated("12 g\tand\nmore", 14), "12 g and more");
        assert_eq!(repeated("überlang", 8), "überlang");
        assert_eq!(repeated("überlang", 7), "überla…");
    }
}

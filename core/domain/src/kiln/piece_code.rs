//! The short code that is pencilled on a foot: four characters and a fifth that shows a slip of the pen or the eye.

/// No two of these look alike in pencil on rough clay; their number is a prime, which is what lets one check character
/// find every single wrong one and every swap of two neighbours.
const ALPHABET: [char; 19] =
    ['3', '4', '7', '9', 'A', 'C', 'D', 'E', 'F', 'H', 'J', 'K', 'M', 'N', 'P', 'R', 'T', 'W', 'X'];

const BASE: u32 = ALPHABET.len() as u32;

/// Characters before the check character.
const LENGTH: usize = 4;

/// So many codes there are: at ten pieces a day, enough for 35 years.
pub const ALL: u32 = BASE.pow(LENGTH as u32);

/// Why a text is no code. The display is the sentence the potter reads.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
pub enum CodeError {
    /// Too few or too many characters.
    #[error("A piece's code has five characters. Look at the foot again.")]
    Length,
    /// A character that no code has.
    #[error("“{character}” is in no code. Look at the foot again.")]
    Character {
        /// The character met.
        character: char,
    },
    /// The check character does not fit.
    #[error("This code was misread or miswritten: its last character does not fit the others. Look at the foot again.")]
    Check,
}

/// The code of this number; numbers beyond [`ALL`] begin anew.
pub fn code(number: u32) -> String {
    let number = number % ALL;
    let digits = (0..LENGTH as u32).rev().map(|place| number / BASE.pow(place) % BASE).collect::<Vec<_>>();
    digits.iter().chain([&check(&digits)]).map(|digit| ALPHABET[*digit as usize]).collect()
}

/// Reads a code as it was typed: spaces, hyphens and small letters do not matter.
///
/// # Errors
/// When it is no code, or was misread.
pub fn read(text: &str) -> Result<String, CodeError> {
    let letters = text.chars().filter(|letter| !letter.is_whitespace() && !matches!(letter, '-' | '–' | '.'));
    let code: String = letters.flat_map(char::to_uppercase).collect();
    let digit = |character: char| {
        let place = ALPHABET.iter().position(|known| *known == character);
        place.map(|place| place as u32).ok_or(CodeError::Character { character })
    };
    if code.chars().count() != LENGTH + 1 {
        return Err(CodeError::Length);
    }
    let digits = code.chars().map(digit).collect::<Result<Vec<_>, _>>()?;
    if digits[LENGTH] == check(&digits[..LENGTH]) { Ok(code) } else { Err(CodeError::Check) }
}

/// A weighted sum; neighbouring weights differ, so that swapped neighbours change it.
fn check(digits: &[u32]) -> u32 {
    digits.iter().zip(1..).map(|(digit, weight)| digit * weight).sum::<u32>() % BASE
}

#[cfg(test)]
mod tests {
    use super::*;
    use std::collections::BTreeSet;

    #[test]
    fn every_number_has_a_code_of_its_own_that_reads_back() {
        let codes: BTreeSet<String> = (0..ALL).map(code).collect();
        assert_eq!(codes.len(), ALL as usize);
        for number in (0..ALL).step_by(997) {
            let written = code(number);
            assert_eq!(read(&written.to_lowercase()).as_deref(), Ok(written.as_str()));
            assert_eq!(read(&format!(" {}-{}", &written[..2], &written[2..])).as_deref(), Ok(written.as_str()));
        }
        assert_eq!(code(ALL), code(0));
    }

    #[test]
    fn every_wrong_character_and_every_swap_is_found() {
        for number in (0..ALL).step_by(1_013) {
            let right: Vec<char> = code(number).chars().collect();
            for place in 0..=LENGTH {
                for other in ALPHABET.iter().filter(|other| **other != right[place]) {
                    let mut wrong = right.clone();
                    wrong[place] = *other;
                    assert_eq!(read(&wrong.iter().collect::<String>()), Err(CodeError::Check));
                }
                if place > 0 && right[place] != right[place - 1] {
                    let mut swapped = right.clone();
                    swapped.swap(place - 1, place);
                    assert_eq!(read(&swapped.iter().collect::<String>()), Err(CodeError::Check), "{right:?}");
                }
            }
        }
    }

    #[test]
    fn what_is_no_code_is_told_apart() {
        assert_eq!(read(""), Err(CodeError::Length));
        assert_eq!(read("3479AC"), Err(CodeError::Length));
        assert_eq!(read("3O79A"), Err(CodeError::Character { character: 'O' }));
    }
}

//! The short code that is pencilled on a foot: four characters, more when those are used up, and a last one that shows a slip
//! of the pen or the eye.

use std::ops::RangeInclusive;

/// No two of these look alike in pencil on rough clay; their number is a prime, which is what lets one check character
/// find every single wrong one and every swap of two neighbours.
const ALPHABET: [char; 19] =
    ['3', '4', '7', '9', 'A', 'C', 'D', 'E', 'F', 'H', 'J', 'K', 'M', 'N', 'P', 'R', 'T', 'W', 'X'];

const BASE: u64 = ALPHABET.len() as u64;

/// Characters before the check character: at ten pieces a day the shortest codes last 35 years, and each further character
/// makes it nineteen times as many.
const LENGTHS: RangeInclusive<usize> = 4..=9;

/// So many codes of one length are tried. While half of them are free, that none of these is has a chance of 1 in 10¹⁹.
const TRIES: u64 = 64;

/// Why a text is no code.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
#[error("{self:?}")]
pub enum CodeError {
    /// Too few or too many characters.
    Length,
    /// A character that no code has.
    Character {
        /// The character met.
        character: char,
    },
    /// The check character does not fit.
    Check,
}

/// Codes for a new piece, the shorter ones first: [`TRIES`] of each length, spread over all of that length as `seed` says.
pub fn candidates(seed: u128) -> impl Iterator<Item = String> {
    LENGTHS.flat_map(move |length| {
        let all = BASE.pow(length as u32);
        let begin = (seed % u128::from(all)) as u64;
        // A step that shares no factor with their number comes to none of them twice.
        let step = (seed >> 64) as u64 % (all / BASE) * BASE + 1;
        (0..TRIES).map(move |tried| code((begin + tried * step) % all, length))
    })
}

/// The code of this number with so many characters before the check character.
fn code(number: u64, length: usize) -> String {
    let digits = (0..length as u32).rev().map(|place| number / BASE.pow(place) % BASE).collect::<Vec<_>>();
    digits.iter().chain([&check(&digits)]).map(|digit| ALPHABET[*digit as usize]).collect()
}

/// Reads a code as it was typed: spaces, hyphens and small letters do not matter.
///
/// # Errors
/// When it is no code, or was misread.
pub fn read(text: &str) -> Result<String, CodeError> {
    let code = begun(text);
    let digit = |character: char| {
        let place = ALPHABET.iter().position(|known| *known == character);
        place.map(|place| place as u64).ok_or(CodeError::Character { character })
    };
    if !LENGTHS.contains(&code.chars().count().saturating_sub(1)) {
        return Err(CodeError::Length);
    }
    let digits = code.chars().map(digit).collect::<Result<Vec<_>, _>>()?;
    let (last, before) = digits.split_last().ok_or(CodeError::Length)?;
    if *last == check(before) { Ok(code) } else { Err(CodeError::Check) }
}

/// The beginning of a code as codes are written: without spaces and hyphens, in capital letters.
pub fn begun(text: &str) -> String {
    let letters = text.chars().filter(|letter| !letter.is_whitespace() && !matches!(letter, '-' | '–' | '.'));
    letters.flat_map(char::to_uppercase).collect()
}

/// A weighted sum; no weight is a multiple of the base, and neighbouring weights differ, so that swapped neighbours change it.
fn check(digits: &[u64]) -> u64 {
    digits.iter().zip(1..).map(|(digit, weight)| digit * weight).sum::<u64>() % BASE
}

#[cfg(test)]
mod tests {
    use super::*;
    use std::collections::BTreeSet;

    /// How many codes of the shortest length there are.
    const SHORT: u64 = 130_321;

    #[test]
    fn every_number_has_a_code_of_its_own_that_reads_back() {
        let codes: BTreeSet<String> = (0..SHORT).map(|number| code(number, 4)).collect();
        assert_eq!(codes.len() as u64, SHORT);
        for length in LENGTHS {
            for number in (0..BASE.pow(length as u32)).step_by(BASE.pow(length as u32 - 2) as usize - 1) {
                let written = code(number, length);
                assert_eq!(read(&written.to_lowercase()).as_deref(), Ok(written.as_str()));
                assert_eq!(read(&format!(" {}-{}", &written[..2], &written[2..])).as_deref(), Ok(written.as_str()));
            }
        }
    }

    #[test]
    fn every_wrong_character_and_every_swap_is_found() {
        for (length, number) in LENGTHS.flat_map(|length| (0..SHORT).step_by(1_013).map(move |number| (length, number)))
        {
            let right: Vec<char> = code(number * number, length).chars().collect();
            for place in 0..=length {
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
    fn codes_grow_when_the_short_ones_are_used_up() {
        let mut used: BTreeSet<String> = BTreeSet::new();
        let mut longest = 0;
        // Twice as many pieces as there are short codes.
        for piece in 0..u128::from(2 * SHORT) {
            let seed = piece.wrapping_mul(0x9e37_79b9_7f4a_7c15_f39c_c060_5ced_c835);
            let code = candidates(seed).find(|code| !used.contains(code)).expect("codes do not run out");
            assert_eq!(read(&code).as_deref(), Ok(code.as_str()));
            if piece < u128::from(SHORT / 2) {
                assert_eq!(code.len(), 5, "while many are free they stay short");
            }
            longest = longest.max(code.len());
            used.insert(code);
        }
        assert_eq!(longest, 6);
        assert!(used.iter().filter(|code| code.len() == 5).count() as u64 > SHORT * 9 / 10);
    }

    #[test]
    fn what_is_no_code_is_told_apart() {
        for text in ["", "3479", "3479ACDEFHJ"] {
            assert_eq!(read(text), Err(CodeError::Length), "{text}");
        }
        assert_eq!(read("3O79A"), Err(CodeError::Character { character: 'O' }));
    }
}

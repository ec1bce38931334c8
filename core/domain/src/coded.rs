//! Closed lists of trade terms: each has a code that is stored and never changes. Their names for people are said elsewhere.

use crate::truncate::truncate;

/// A stored code that this version does not know.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
#[error("“{code}” is no known {what}")]
pub struct UnknownCode {
    /// What the code should have named, a code itself, for example "zone".
    pub what: &'static str,
    /// The code that was met.
    pub code: String,
}

impl UnknownCode {
    /// For a code that is on no list of `what`.
    pub fn new(what: &'static str, code: &str) -> UnknownCode {
        UnknownCode { what, code: truncate(code, LONGEST) }
    }
}

/// The most letters of an unknown code that are repeated in a sentence.
const LONGEST: usize = 40;

/// A value of a closed list, whichever list it is.
pub trait Coded {
    /// The code that is stored; it never changes.
    fn code(&self) -> &'static str;
}

/// Defines an enum with `ALL`, `code()`, and `Display` and `FromStr` of the code.
#[macro_export]
macro_rules! coded {
    ($(#[$doc:meta])* $what:literal $name:ident { $($(#[$variant_doc:meta])* $variant:ident = $code:literal,)+ }) => {
        $(#[$doc])*
        #[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, serde::Serialize, serde::Deserialize)]
        pub enum $name { $($(#[$variant_doc])* #[serde(rename = $code)] $variant,)+ }

        impl $name {
            /// Every value, in the order it is offered.
            pub const ALL: &'static [Self] = &[$(Self::$variant,)+];

            /// The code that is stored; it never changes.
            pub const fn code(self) -> &'static str {
                match self { $(Self::$variant => $code,)+ }
            }
        }

        impl $crate::coded::Coded for $name {
            fn code(&self) -> &'static str {
                Self::code(*self)
            }
        }

        impl std::fmt::Display for $name {
            fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
                f.write_str(self.code())
            }
        }

        impl std::str::FromStr for $name {
            type Err = $crate::UnknownCode;

            fn from_str(code: &str) -> Result<Self, Self::Err> {
                Self::ALL
                    .iter()
                    .copied()
                    .find(|value| value.code() == code)
                    .ok_or_else(|| $crate::UnknownCode::new($what, code))
            }
        }
    };
}

pub use coded;

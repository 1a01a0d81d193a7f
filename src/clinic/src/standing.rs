//! How good an answer is.

use catalogue::rules::Strength;

/// How good an answer is. The order runs from best to worst.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Standing {
    /// What is to be done, or one of several ways that are as good.
    Right,
    /// Another way that is taught.
    Acceptable,
    /// Of no use, or not what the findings ask for.
    Wrong,
    /// Somebody could be hurt.
    Unsafe,
}

impl Standing {
    /// The word for it on screen and in the record.
    pub fn word(self) -> &'static str {
        match self {
            Self::Right => "right",
            Self::Acceptable => "acceptable",
            Self::Wrong => "wrong",
            Self::Unsafe => "unsafe",
        }
    }

    /// What it is worth, out of 100.
    pub fn per_cent(self) -> u8 {
        match self {
            Self::Right => 100,
            Self::Acceptable => 80,
            Self::Wrong | Self::Unsafe => 0,
        }
    }
}

/// What the rules say of one option, taken together.
///
/// `must_elsewhere` says that some other option of the same question is a must;
/// then a mere may is acceptable, and otherwise as good as any.
pub(crate) fn standing(strengths: &[Strength], must_elsewhere: bool) -> Standing {
    let said = |s| strengths.contains(&s);
    if said(Strength::MustNot) {
        Standing::Unsafe
    } else if said(Strength::Must) {
        Standing::Right
    } else if said(Strength::May) {
        let second = must_elsewhere || said(Strength::Not);
        if second {
            Standing::Acceptable
        } else {
            Standing::Right
        }
    } else {
        Standing::Wrong
    }
}

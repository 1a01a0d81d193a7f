//! When a tooth comes and goes.

use crate::{
    numbers::{exact::Exact, working::Working},
    tooth::Tooth,
};
use catalogue::numbers::{Dentition, Jaw, Numbers, ToothFacts};

/// An age held against when a tooth usually comes.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Moment {
    /// It is not expected yet.
    Before,
    /// It comes about now.
    Within,
    /// It has usually come.
    After,
}

impl Moment {
    /// All three.
    pub const ALL: [Self; 3] = [Self::Before, Self::Within, Self::After];

    /// In words.
    pub const fn words(self) -> &'static str {
        match self {
            Self::Before => "not expected yet",
            Self::Within => "expected about now",
            Self::After => "usually there already",
        }
    }
}

/// What the catalogue states of a tooth.
pub fn facts(numbers: &Numbers, tooth: Tooth) -> Option<&ToothFacts> {
    let jaw = if tooth.is_upper() {
        Jaw::Upper
    } else {
        Jaw::Lower
    };
    let dentition = if tooth.is_primary() {
        Dentition::Primary
    } else {
        Dentition::Permanent
    };
    numbers
        .teeth
        .iter()
        .find(|t| t.jaw == jaw && t.dentition == dentition && t.place == tooth.place())
}

/// An age in months held against when a tooth comes. A window from 6 to 7
/// years is over when the child turns seven; from 6 to 10 months, when the
/// tenth month is over.
pub fn eruption(numbers: &Numbers, tooth: Tooth, months: u32) -> Option<(Moment, Working)> {
    let facts = facts(numbers, tooth)?;
    let (unit, scale) = if tooth.is_primary() {
        ("months", 1)
    } else {
        ("years", 12)
    };
    let (from, to) = (facts.erupts.from * scale, facts.erupts.to * scale);
    let moment = if months < from {
        Moment::Before
    } else if months <= to {
        Moment::Within
    } else {
        Moment::After
    };
    let mut working = Working::default();
    working.line(
        "When it comes",
        "from the chart",
        format!(
            "{}: {} to {} {unit}",
            tooth.name(),
            facts.erupts.from,
            facts.erupts.to
        ),
        &facts.sources,
    );
    let age = Exact::from(months);
    let told = if tooth.is_primary() {
        format!("{} months", age.text(0))
    } else {
        format!("{} years", (age / Exact::whole(12)).text(1))
    };
    working.reckon(
        "The age",
        "against the range",
        format!("{told}: {}", moment.words()),
    );
    if let Some(sheds) = facts.sheds {
        working.line(
            "When it is shed",
            "from the chart",
            format!("{} to {} years", sheds.from, sheds.to),
            &facts.sources,
        );
    }
    working.heed(facts.note.as_str());
    working
        .heed("These are ranges. Whether a tooth is late or missing is for the dentist to judge.");
    working.comes_to(moment.words(), None);
    Some((moment, working))
}

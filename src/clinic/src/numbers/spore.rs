//! What a spore test decides about a load and its steriliser.

use super::{figure, figure_sources, working::Working};
use catalogue::{ids::SourceId, numbers::Numbers};

/// What came of a spore test.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Spores {
    /// None was in this load.
    NotIn,
    /// It is still incubating.
    Waiting,
    /// Nothing grew.
    Negative,
    /// Something grew.
    Positive,
}

/// The twin of a spore test that stayed outside the steriliser.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Control {
    /// It grew, as it must.
    Grew,
    /// It did not: the test proves nothing.
    DidNotGrow,
}

/// A load, and what is known of it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Load {
    /// Days since the last spore test of this steriliser.
    pub days: u32,
    /// Whether something to be implanted lies in it.
    pub implant: bool,
    /// The spore test of this load.
    pub spores: Spores,
    /// The twin that stayed outside.
    pub control: Control,
    /// Whether the display and the chemical indicators are in order.
    pub indicators: bool,
    /// Whether it is the repeat after a positive test.
    pub repeat: bool,
}

/// What is done.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Decision {
    /// The load is used.
    Use,
    /// The load is not used; it is packed and run again.
    RunAgain,
    /// A spore test has to go in: it is due, or something is to be implanted.
    TestNow,
    /// The load is held until the result is there.
    Hold,
    /// The test proved nothing and is repeated with a fresh lot.
    TestAgain,
    /// The steriliser goes out of service, is looked over and tested again.
    OutOfService,
    /// The steriliser goes back into service.
    BackInService,
    /// The steriliser is inspected and repaired before it is used.
    Repair,
}

impl Decision {
    /// All of them.
    pub const ALL: [Self; 8] = [
        Self::Use,
        Self::RunAgain,
        Self::TestNow,
        Self::Hold,
        Self::TestAgain,
        Self::OutOfService,
        Self::BackInService,
        Self::Repair,
    ];

    /// What is done, in words.
    pub const fn words(self) -> &'static str {
        match self {
            Self::Use => "use the load",
            Self::RunAgain => "do not use the load; pack it and run it again",
            Self::TestNow => "run a spore test now",
            Self::Hold => "hold the load until the result is there",
            Self::TestAgain => "the test counts as not done; repeat it with a fresh lot",
            Self::OutOfService => {
                "take the steriliser out of service, look the procedure over, repeat the test"
            }
            Self::BackInService => "put the steriliser back into service",
            Self::Repair => "keep the steriliser out of service; have it inspected and repaired",
        }
    }
}

/// What is done with a load, and why in a sentence.
pub fn decide(numbers: &Numbers, load: &Load) -> (Decision, String) {
    let due = figure(numbers, "spore-test").count();
    match (load.spores, load.repeat) {
        (Spores::Positive, true) => (
            Decision::Repair,
            "The repeat is positive too: it is no slip of one load.".into(),
        ),
        (Spores::Positive, false) => (
            Decision::OutOfService,
            "Something lived. Until the repeat is there, nobody can say whether the machine kills.".into(),
        ),
        (Spores::Negative, _) if load.control == Control::DidNotGrow => (
            Decision::TestAgain,
            "The control did not grow: the spores or the incubator failed, so the test proves nothing.".into(),
        ),
        _ if !load.indicators => (
            Decision::RunAgain,
            "One of the three kinds of monitoring has failed, and that is enough.".into(),
        ),
        (Spores::Negative, true) => (
            Decision::BackInService,
            "The repeat is negative and the other two are in order.".into(),
        ),
        (Spores::Negative, false) => (Decision::Use, "All three are in order.".into()),
        (Spores::Waiting, true) => (
            Decision::Hold,
            "After a positive test nothing is used until the repeat is read.".into(),
        ),
        (Spores::Waiting, false) if load.implant => (
            Decision::Hold,
            "What is implanted waits for the result whenever that is possible.".into(),
        ),
        (Spores::NotIn, true) => (
            Decision::TestNow,
            "After a positive test the next load is the repeat, with all three kinds of monitoring.".into(),
        ),
        (Spores::NotIn, false) if load.implant => (
            Decision::TestNow,
            "A load with something to be implanted needs a spore test whatever the day.".into(),
        ),
        (Spores::NotIn, false) if load.days > due => (
            Decision::TestNow,
            format!(
                "The last test was {} days ago; at least one in {due} days is wanted.",
                load.days
            ),
        ),
        (Spores::Waiting | Spores::NotIn, false) => (
            Decision::Use,
            "Display and chemical indicators are in order, and the weekly test is not overdue.".into(),
        ),
    }
}

/// The same with its steps and sources.
pub fn working(numbers: &Numbers, load: &Load) -> Working {
    let mut working = Working::default();
    let (decision, because) = decide(numbers, load);
    let from = [SourceId::from("cdc-2003")];
    working.line(
        "Display and chemical indicators",
        "every load",
        (if load.indicators {
            "in order"
        } else {
            "one of them has failed"
        })
        .into(),
        &from,
    );
    working.line(
        "Days since the last spore test",
        "at least once a week",
        format!("{} days", load.days),
        figure_sources(numbers, "spore-test"),
    );
    working.line(
        "Something to be implanted",
        "then in every load",
        (if load.implant { "yes" } else { "no" }).into(),
        &from,
    );
    working.line("What follows", "", because, &from);
    working.heed("Write date, load, steriliser and results down; without them everything has to be called back, or nothing can be.");
    working.comes_to(decision.words(), None);
    working
}

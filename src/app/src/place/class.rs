//! The places of a class: the student's side of assignments, and the
//! instructor's.

use super::{Section, WritePlace};
use catalogue::ids::ProcedureId;

/// A place of a class.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum ClassPlace {
    /// An assignment that a link brought, in letters.
    Set(String),
    /// The assignments of this device, and where a code is typed.
    Assignments,
    /// One of them, by its id.
    Assignment(String),
    /// One task of an assignment, by the id of that and its place in it, from 0.
    Task(String, u16),
    /// A hand-in that a link brought to the instructor, in letters.
    HandIn(String),
    /// The instructor's desk.
    Desk,
    /// What is set is chosen here.
    Assign,
    /// What goes out of one assignment, by its id.
    Issued(String),
    /// Where hand-ins to one are read.
    Collect(String),
    /// What they come to.
    Report(String),
    /// Names for seats.
    Roster,
    /// The sheet by which a procedure is checked off.
    CheckOff(ProcedureId),
    /// Where packs are written.
    Write(WritePlace),
}

impl ClassPlace {
    /// The place of the parts of a fragment; none where it is no place of a class.
    pub fn read(parts: &[&str]) -> Option<Self> {
        Some(match parts {
            ["a", code] => Self::Set((*code).into()),
            // Before the code may stand which packs it was made with.
            ["a", needs, code] => Self::Set(format!("{needs}/{code}")),
            ["assignments"] => Self::Assignments,
            ["assignments", id] => Self::Assignment((*id).into()),
            ["assignments", id, place] => Self::Task((*id).into(), place.parse().ok()?),
            ["hand-in", code] => Self::HandIn((*code).into()),
            ["class"] => Self::Desk,
            ["class", "assign"] => Self::Assign,
            ["class", "assign", id] => Self::Issued((*id).into()),
            ["class", "collect", id] => Self::Collect((*id).into()),
            ["class", "report", id] => Self::Report((*id).into()),
            ["class", "roster"] => Self::Roster,
            ["procedures", id, "check-off"] => Self::CheckOff((*id).into()),
            other => Self::Write(WritePlace::read(other)?),
        })
    }

    /// The fragment, with its `#`.
    pub fn fragment(&self) -> String {
        match self {
            Self::Set(code) => format!("{SET}{code}"),
            Self::Assignments => "#/assignments".into(),
            Self::Assignment(id) => format!("#/assignments/{id}"),
            Self::Task(id, place) => format!("#/assignments/{id}/{place}"),
            Self::HandIn(code) => format!("{HAND_IN}{code}"),
            Self::Desk => "#/class".into(),
            Self::Assign => "#/class/assign".into(),
            Self::Issued(id) => format!("#/class/assign/{id}"),
            Self::Collect(id) => format!("#/class/collect/{id}"),
            Self::Report(id) => format!("#/class/report/{id}"),
            Self::Roster => "#/class/roster".into(),
            Self::CheckOff(id) => format!("#/procedures/{id}/check-off"),
            Self::Write(place) => place.fragment(),
        }
    }

    /// Which of the five places of the bar it belongs to: a student's
    /// assignments to Today, the instructor's desk to Record.
    pub fn section(&self) -> Section {
        match self {
            Self::Set(_) | Self::Assignments | Self::Assignment(_) | Self::Task(..) => {
                Section::Today
            }
            Self::CheckOff(_) => Section::Procedures,
            _ => Section::Record,
        }
    }
}

/// What the letters of an assignment stand after.
pub const SET: &str = "#/a/";

/// What the letters of a hand-in stand after.
pub const HAND_IN: &str = "#/hand-in/";

#[cfg(test)]
mod tests {
    use super::*;
    use crate::place::{FileSide, Place};
    use proptest::prelude::*;

    #[test]
    fn a_place_of_a_class_comes_back_from_its_fragment() {
        for place in [
            ClassPlace::Set("22Y9C0A5".into()),
            ClassPlace::Set("our-practice.3/22Y9C0A5".into()),
            ClassPlace::Assignments,
            ClassPlace::Assignment("0badcafe".into()),
            ClassPlace::Task("0badcafe".into(), 3),
            ClassPlace::HandIn("22Y9C0A5".into()),
            ClassPlace::Desk,
            ClassPlace::Assign,
            ClassPlace::Issued("0badcafe".into()),
            ClassPlace::Collect("0badcafe".into()),
            ClassPlace::Report("0badcafe".into()),
            ClassPlace::Roster,
            ClassPlace::CheckOff("amalgam".into()),
            ClassPlace::Write(WritePlace::Packs),
            ClassPlace::Write(WritePlace::Pack("our-practice".into())),
            ClassPlace::Write(WritePlace::Add("our-practice".into())),
            ClassPlace::Write(WritePlace::File(
                "our-practice".into(),
                FileSide::Form,
                "procedures/our-stitches/procedure.toml".into(),
            )),
            ClassPlace::Write(WritePlace::File(
                "our-practice".into(),
                FileSide::Text,
                "rules/ours.toml".into(),
            )),
            ClassPlace::Write(WritePlace::Lines(
                "our-practice".into(),
                "rules/depth.toml".into(),
            )),
            ClassPlace::Write(WritePlace::Offered("our-practice".into())),
        ] {
            let place = Place::Class(place);
            assert_eq!(Place::from_fragment(&place.fragment()), place);
        }
    }

    proptest! {
        /// Whatever stands where a task stands: a place that comes back, or none.
        #[test]
        fn any_fragment_of_a_task_is_a_place_or_unknown(
            id in "[^#]{0,20}", place in "[0-9+-]{0,8}|.{0,8}", rest in "(/.{0,8})?",
        ) {
            let read = Place::from_fragment(&format!("#/assignments/{id}/{place}{rest}"));
            prop_assert_eq!(Place::from_fragment(&read.fragment()), read);
        }

        #[test]
        fn every_task_has_a_place(id in "[0-9a-f]{8}", place: u16) {
            let place = Place::Class(ClassPlace::Task(id, place));
            prop_assert_eq!(Place::from_fragment(&place.fragment()), place);
        }
    }
}

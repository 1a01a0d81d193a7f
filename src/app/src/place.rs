//! Every place of the page, and its name in the address: `#/procedures/amalgam`.
//!
//! The fragment is the only state of navigation, so Back, a bookmark and a
//! reload all lead to the same screen.

use catalogue::ids::{CaseId, FindingId, ItemId, LessonId, ProcedureId};

/// Which side of a procedure is shown.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum View {
    /// The lesson.
    Lesson,
    /// The derived tray.
    SetUp,
    /// The steps by actor.
    Steps,
}

impl View {
    /// All of them, in the order of the tabs.
    pub const ALL: [Self; 3] = [Self::Lesson, Self::SetUp, Self::Steps];

    /// Its word in the fragment; the lesson needs none.
    fn word(self) -> &'static str {
        match self {
            Self::Lesson => "",
            Self::SetUp => "set-up",
            Self::Steps => "steps",
        }
    }

    /// What its tab says.
    pub fn label(self) -> &'static str {
        match self {
            Self::Lesson => "Lesson",
            Self::SetUp => "Set-up",
            Self::Steps => "Steps",
        }
    }
}

/// Findings a reader supposes of the patient, as `finding=value`.
pub type Supposed = Vec<(FindingId, String)>;

/// A place of the page.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Place {
    /// What is due and what comes next.
    Today,
    /// All procedures and lessons.
    Procedures,
    /// One procedure, for a supposed patient.
    Procedure(ProcedureId, View, Supposed),
    /// All instruments and materials.
    Items,
    /// One instrument or material.
    Item(ItemId),
    /// One lesson.
    Lesson(LessonId),
    /// All cases.
    Cases,
    /// One case, drawn by its seed.
    Case(CaseId, u64),
    /// The bench.
    Bench,
    /// What was done.
    Record,
    /// What this is.
    About,
    /// An address that leads nowhere.
    Unknown(String),
}

impl Place {
    /// Reads a fragment, with or without its `#`. An empty one is Today.
    pub fn from_fragment(fragment: &str) -> Self {
        let text = fragment.trim_start_matches('#');
        let (path, query) = text.split_once('?').unwrap_or((text, ""));
        let parts: Vec<&str> = path.split('/').filter(|part| !part.is_empty()).collect();
        match parts.as_slice() {
            [] | ["today"] => Self::Today,
            ["procedures"] => Self::Procedures,
            ["procedures", id] => Self::Procedure((*id).into(), View::Lesson, supposed(query)),
            ["procedures", id, "set-up"] => {
                Self::Procedure((*id).into(), View::SetUp, supposed(query))
            }
            ["procedures", id, "steps"] => {
                Self::Procedure((*id).into(), View::Steps, supposed(query))
            }
            ["items"] => Self::Items,
            ["items", id] => Self::Item((*id).into()),
            ["lessons", id] => Self::Lesson((*id).into()),
            ["cases"] => Self::Cases,
            ["cases", frame, seed] => seed.parse().map_or_else(
                |_| Self::Unknown(text.into()),
                |seed| Self::Case((*frame).into(), seed),
            ),
            ["bench"] => Self::Bench,
            ["record"] => Self::Record,
            ["about"] => Self::About,
            _ => Self::Unknown(text.into()),
        }
    }

    /// The fragment, with its `#`: what a link points at.
    pub fn fragment(&self) -> String {
        match self {
            Self::Today => "#/today".into(),
            Self::Procedures => "#/procedures".into(),
            Self::Procedure(id, view, patient) => {
                let mut text = format!("#/procedures/{id}");
                if *view != View::Lesson {
                    text.push('/');
                    text.push_str(view.word());
                }
                for (index, (finding, value)) in patient.iter().enumerate() {
                    text.push(if index == 0 { '?' } else { '&' });
                    text.push_str(finding.as_str());
                    text.push('=');
                    text.push_str(value);
                }
                text
            }
            Self::Items => "#/items".into(),
            Self::Item(id) => format!("#/items/{id}"),
            Self::Lesson(id) => format!("#/lessons/{id}"),
            Self::Cases => "#/cases".into(),
            Self::Case(frame, seed) => format!("#/cases/{frame}/{seed}"),
            Self::Bench => "#/bench".into(),
            Self::Record => "#/record".into(),
            Self::About => "#/about".into(),
            Self::Unknown(text) => format!("#{text}"),
        }
    }

    /// The place without what may change while the reader stays on it. Two
    /// places with the same ground are one screen, and focus stays where it is.
    pub fn ground(&self) -> Self {
        match self {
            Self::Procedure(id, view, _) => Self::Procedure(id.clone(), *view, Vec::new()),
            other => other.clone(),
        }
    }

    /// Which of the five places of the bar it belongs to.
    pub fn section(&self) -> Option<Section> {
        Some(match self {
            Self::Today => Section::Today,
            Self::Procedures
            | Self::Procedure(..)
            | Self::Items
            | Self::Item(_)
            | Self::Lesson(_) => Section::Procedures,
            Self::Cases | Self::Case(..) => Section::Cases,
            Self::Bench => Section::Bench,
            Self::Record | Self::About => Section::Record,
            Self::Unknown(_) => return None,
        })
    }
}

fn supposed(query: &str) -> Supposed {
    query
        .split('&')
        .filter_map(|pair| pair.split_once('='))
        .map(|(finding, value)| (finding.into(), value.into()))
        .collect()
}

/// The five places of the bar.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Section {
    /// What is due.
    Today,
    /// What is taught.
    Procedures,
    /// Patients to practise with.
    Cases,
    /// Mixing and arithmetic.
    Bench,
    /// What was done.
    Record,
}

impl Section {
    /// All of them, in the order of the bar.
    pub const ALL: [Self; 5] = [
        Self::Today,
        Self::Procedures,
        Self::Cases,
        Self::Bench,
        Self::Record,
    ];

    /// Its name.
    pub fn label(self) -> &'static str {
        match self {
            Self::Today => "Today",
            Self::Procedures => "Procedures",
            Self::Cases => "Cases",
            Self::Bench => "Bench",
            Self::Record => "Record",
        }
    }

    /// Where it opens.
    pub fn place(self) -> Place {
        match self {
            Self::Today => Place::Today,
            Self::Procedures => Place::Procedures,
            Self::Cases => Place::Cases,
            Self::Bench => Place::Bench,
            Self::Record => Place::Record,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_place_comes_back_from_its_fragment() {
        let patient = vec![
            ("allergy-latex".into(), "yes".into()),
            ("remaining-dentine".into(), "0.5".into()),
        ];
        for place in [
            Place::Today,
            Place::Procedures,
            Place::Procedure("amalgam".into(), View::Lesson, Vec::new()),
            Place::Procedure("amalgam".into(), View::SetUp, patient),
            Place::Procedure("amalgam".into(), View::Steps, Vec::new()),
            Place::Items,
            Place::Item("explorer".into()),
            Place::Lesson("deep-caries".into()),
            Place::Cases,
            Place::Case("a-molar".into(), u64::MAX),
            Place::Bench,
            Place::Record,
            Place::About,
            Place::Unknown("/elsewhere".into()),
        ] {
            assert_eq!(Place::from_fragment(&place.fragment()), place);
        }
    }

    #[test]
    fn an_empty_fragment_is_today_and_a_strange_one_unknown() {
        for text in ["", "#", "#/"] {
            assert_eq!(Place::from_fragment(text), Place::Today);
        }
        for text in [
            "#/x",
            "#/cases/a",
            "#/cases/a/b",
            "#/cases/a/-1",
            "#/cases/a/18446744073709551616",
            "#/procedures/a/b",
            "#/record/x",
        ] {
            assert!(
                matches!(Place::from_fragment(text), Place::Unknown(_)),
                "{text}"
            );
        }
    }

    #[test]
    fn a_patient_is_no_other_ground() {
        let place = Place::from_fragment("#/procedures/a/set-up?swelling=yes");
        assert_eq!(place.ground().fragment(), "#/procedures/a/set-up");
    }
}

//! A place from its fragment.

use super::{
    ClassPlace, Drawn, FormSide, Place, SittingAt, View,
    query::{HIDDEN, OVER, PAPER, entered, listed, supposed},
};
use crate::{find::words, tray_card::Paper};
use catalogue::ids::FindingId;
use record::SittingId;

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
            ["procedures", id, "time"] => {
                Self::Procedure((*id).into(), View::Time, supposed(query))
            }
            ["procedures", id, "card"] => tray_card(id, query),
            ["items"] => Self::Items,
            ["items", id] => Self::Item((*id).into()),
            ["items", id, "life-size"] => Self::LifeSize(Drawn::Item((*id).into())),
            ["plates"] => Self::AllPlates,
            ["plates", family] => Self::Plates((*family).into(), query == HIDDEN),
            ["plates", family, "life-size"] => Self::LifeSize(Drawn::Family((*family).into())),
            ["find"] => Self::Find(String::new()),
            ["find", sought] => Self::Find(words::decoded(sought)),
            ["glossary"] => Self::Glossary,
            ["glossary", id] => Self::Term((*id).into()),
            ["lessons", id] => Self::Lesson((*id).into()),
            ["cases"] => Self::Cases,
            ["cases", "order"] => Self::Order,
            ["cases", frame, seed] => case(text, frame, seed, None),
            ["cases", frame, seed, with] => case(text, frame, seed, Some(with)),
            ["reading"] => Self::Reading(listed(query)),
            ["reading", seed] => match seed.parse() {
                Ok(seed) => Self::ReadingExercise(seed),
                Err(_) => Self::Unknown(text.into()),
            },
            ["cards"] => Self::Cards,
            ["cards", id] => card(id, query),
            ["cards", id, "wish"] => Self::Wish((*id).into()),
            ["sitting", which] => sitting(text, which),
            ["plan"] => Self::Plan,
            ["form"] => Self::Forms(String::new()),
            ["form", "code", code] => Self::Forms((*code).into()),
            ["form", id] => form(text, id, "0"),
            ["form", id, number] => form(text, id, number),
            ["questions"] => Self::Questions,
            ["questions", family] => Self::QuestionFamily((*family).into()),
            ["progress"] => Self::Progress,
            ["bench"] => Self::Bench,
            ["bench", "mix", material] => Self::Mix((*material).into(), None),
            ["bench", "mix", material, usage] => {
                Self::Mix((*material).into(), Some((*usage).into()))
            }
            ["bench", "numbers"] => Self::Tools,
            ["bench", "numbers", tool] => Self::Tool((*tool).into(), entered(query)),
            ["bench", "exercise", family, seed] => match seed.parse() {
                Ok(seed) => Self::Exercise((*family).into(), seed),
                Err(_) => Self::Unknown(text.into()),
            },
            ["record"] => Self::Record,
            ["about"] => Self::About,
            parts => match ClassPlace::read(parts) {
                Some(place) => Self::Class(place),
                None => Self::Unknown(text.into()),
            },
        }
    }
}

fn tray_card(id: &str, query: &str) -> Place {
    let mut patient = supposed(query);
    let paper = patient.iter().position(|(name, _)| name.as_str() == PAPER);
    let paper = paper.map(|at| Paper::from_value(&patient.remove(at).1));
    Place::TrayCard(id.into(), paper.unwrap_or_default(), patient)
}

/// A number is minutes, sixteen hexadecimal digits are a sitting of the record.
fn sitting(text: &str, which: &str) -> Place {
    let kept = || SittingId::parse(which).map(SittingAt::Kept);
    let new = || which.parse().ok().map(SittingAt::New);
    let at = kept().or_else(new);
    at.map_or_else(|| Place::Unknown(text.into()), Place::Sitting)
}

fn form(text: &str, id: &str, number: &str) -> Place {
    match (SittingId::parse(id), number.parse()) {
        (Some(id), Ok(0)) => Place::Form(id, FormSide::Whole),
        (Some(id), Ok(number)) => Place::Form(id, FormSide::Question(number)),
        _ => Place::Unknown(text.into()),
    }
}

fn case(text: &str, frame: &str, seed: &str, with: Option<&str>) -> Place {
    seed.parse().map_or_else(
        |_| Place::Unknown(text.into()),
        |seed| Place::Case(frame.into(), seed, with.map(FindingId::from)),
    )
}

fn card(id: &str, query: &str) -> Place {
    let mut patient = supposed(query);
    let over = patient.iter().position(|(name, _)| name.as_str() == OVER);
    let over = over.map(|at| patient.remove(at).1.as_str().into());
    Place::Card(id.into(), over, patient)
}

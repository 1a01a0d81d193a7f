//! Every place of the page, and its name in the address: `#/procedures/amalgam`.
//!
//! The fragment is the only state of navigation, so Back, a bookmark and a
//! reload all lead to the same screen.

mod class;

pub use class::{ClassPlace, HAND_IN, SET};

use crate::{find::words, tray_card::Paper};
use catalogue::ids::{CardId, CaseId, FindingId, ItemId, LessonId, ProcedureId, TermId};
use clinic::case::tray_reading;
use record::SittingId;

/// Which side of a procedure is shown.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum View {
    /// The lesson.
    Lesson,
    /// The derived tray.
    SetUp,
    /// The steps by actor.
    Steps,
    /// The time line.
    Time,
}

impl View {
    /// All of them, in the order of the tabs.
    pub const ALL: [Self; 4] = [Self::Lesson, Self::SetUp, Self::Steps, Self::Time];

    /// Its word in the fragment; the lesson needs none.
    fn word(self) -> &'static str {
        match self {
            Self::Lesson => "",
            Self::SetUp => "set-up",
            Self::Steps => "steps",
            Self::Time => "time",
        }
    }

    /// What its tab says.
    pub fn label(self) -> &'static str {
        match self {
            Self::Lesson => "Lesson",
            Self::SetUp => "Set-up",
            Self::Steps => "Steps",
            Self::Time => "Time",
        }
    }
}

/// Findings a reader supposes of the patient, as `finding=value`.
pub type Supposed = Vec<(FindingId, String)>;

/// What is drawn at life size.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Drawn {
    /// A family, by its name with hyphens.
    Family(String),
    /// One instrument or material.
    Item(ItemId),
}

/// Which sitting of questions.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum SittingAt {
    /// One to be begun, of so many minutes.
    New(u16),
    /// One that the record has.
    Kept(SittingId),
}

/// Which side of a practice form is shown.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum FormSide {
    /// All its questions, or its result.
    Whole,
    /// One of its questions, counted from 1.
    Question(u16),
}

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
    /// All drawings, small, family by family.
    AllPlates,
    /// The drawings of a family, by its name with hyphens; whether the names
    /// are hidden.
    Plates(String, bool),
    /// Drawings at life size, to be printed.
    LifeSize(Drawn),
    /// One lesson.
    Lesson(LessonId),
    /// The tray card of a procedure for a supposed patient, on a paper.
    TrayCard(ProcedureId, Paper, Supposed),
    /// What is found for some words.
    Find(String),
    /// All words of the trade.
    Glossary,
    /// One word of the trade.
    Term(TermId),
    /// All cases.
    Cases,
    /// A case to order.
    Order,
    /// One case, drawn by its seed, with a finding the patient has to have.
    Case(CaseId, u64, Option<FindingId>),
    /// A tray to be read, with what lies on it.
    Reading(Vec<ItemId>),
    /// A drawn tray to be read, by its seed.
    ReadingExercise(u64),
    /// All preference cards.
    Cards,
    /// One card, as a difference from one procedure for a supposed patient.
    Card(CardId, Option<ProcedureId>, Supposed),
    /// A wish to be added to a card.
    Wish(CardId),
    /// A sitting of questions.
    Sitting(SittingAt),
    /// The examination day and the minutes a day.
    Plan,
    /// All practice forms; with the code of one to be begun.
    Forms(String),
    /// One practice form.
    Form(SittingId, FormSide),
    /// All families of questions.
    Questions,
    /// The questions of one family.
    QuestionFamily(String),
    /// How the student stands, by competency and over time.
    Progress,
    /// The bench.
    Bench,
    /// A material to be mixed by hand, for its usual use or a named one.
    Mix(ItemId, Option<String>),
    /// All tools for numbers.
    Tools,
    /// One of them, by its id, with what was entered.
    Tool(String, Vec<(String, String)>),
    /// An exercise in numbers, by its family and seed.
    Exercise(String, u64),
    /// A place of a class, of the student or the instructor.
    Class(ClassPlace),
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
                add_query(&mut text, pairs(patient));
                text
            }
            Self::Items => "#/items".into(),
            Self::Item(id) => format!("#/items/{id}"),
            Self::AllPlates => "#/plates".into(),
            Self::Plates(family, false) => format!("#/plates/{family}"),
            Self::Plates(family, true) => format!("#/plates/{family}?{HIDDEN}"),
            Self::LifeSize(Drawn::Family(family)) => format!("#/plates/{family}/life-size"),
            Self::LifeSize(Drawn::Item(id)) => format!("#/items/{id}/life-size"),
            Self::Lesson(id) => format!("#/lessons/{id}"),
            Self::TrayCard(id, paper, patient) => {
                let mut text = format!("#/procedures/{id}/card");
                let paper = std::iter::once(format!("{PAPER}={}", paper.value()));
                add_query(&mut text, paper.chain(pairs(patient)));
                text
            }
            Self::Find(sought) if sought.trim().is_empty() => "#/find".into(),
            Self::Find(sought) => format!("#/find/{}", words::encoded(sought)),
            Self::Glossary => "#/glossary".into(),
            Self::Term(id) => format!("#/glossary/{id}"),
            Self::Cases => "#/cases".into(),
            Self::Order => "#/cases/order".into(),
            Self::Case(frame, seed, None) => format!("#/cases/{frame}/{seed}"),
            Self::Case(frame, seed, Some(with)) => format!("#/cases/{frame}/{seed}/{with}"),
            Self::Reading(laid) => {
                let mut text = String::from("#/reading");
                add_query(&mut text, laid.iter().map(ToString::to_string));
                text
            }
            Self::ReadingExercise(seed) => format!("#/reading/{seed}"),
            Self::Cards => "#/cards".into(),
            Self::Card(id, procedure, patient) => {
                let mut text = format!("#/cards/{id}");
                let over = procedure.iter().map(|over| format!("{OVER}={over}"));
                add_query(&mut text, over.chain(pairs(patient)));
                text
            }
            Self::Wish(card) => format!("#/cards/{card}/wish"),
            Self::Sitting(SittingAt::New(minutes)) => format!("#/sitting/{minutes}"),
            Self::Sitting(SittingAt::Kept(id)) => format!("#/sitting/{id}"),
            Self::Plan => "#/plan".into(),
            Self::Forms(code) if code.is_empty() => "#/form".into(),
            Self::Forms(code) => format!("#/form/code/{code}"),
            Self::Form(id, FormSide::Whole) => format!("#/form/{id}"),
            Self::Form(id, FormSide::Question(number)) => format!("#/form/{id}/{number}"),
            Self::Questions => "#/questions".into(),
            Self::QuestionFamily(family) => format!("#/questions/{family}"),
            Self::Progress => "#/progress".into(),
            Self::Bench => "#/bench".into(),
            Self::Mix(material, None) => format!("#/bench/mix/{material}"),
            Self::Mix(material, Some(usage)) => format!("#/bench/mix/{material}/{usage}"),
            Self::Tools => "#/bench/numbers".into(),
            Self::Tool(tool, entries) => {
                let mut text = format!("#/bench/numbers/{tool}");
                let pair =
                    |(id, typed): &(String, String)| format!("{id}={}", words::encoded(typed));
                add_query(&mut text, entries.iter().map(pair));
                text
            }
            Self::Exercise(family, seed) => format!("#/bench/exercise/{family}/{seed}"),
            Self::Class(place) => place.fragment(),
            Self::Record => "#/record".into(),
            Self::About => "#/about".into(),
            Self::Unknown(text) => format!("#{text}"),
        }
    }

    /// Where a sitting of the record is gone on with or looked back on.
    pub fn of_sitting(case: &str, seed: u64, with: Option<&str>) -> Self {
        if case == tray_reading::CASE {
            Self::ReadingExercise(seed)
        } else {
            Self::Case(case.into(), seed, with.map(FindingId::from))
        }
    }

    /// Where a lesson is read: with its procedure, if it is the lesson of one.
    pub fn of_lesson(id: &LessonId, of_procedure: bool) -> Self {
        if of_procedure {
            Self::Procedure(id.as_str().into(), View::Lesson, Vec::new())
        } else {
            Self::Lesson(id.clone())
        }
    }

    /// The place without what may change while the reader stays on it. Two
    /// places with the same ground are one screen, and focus stays where it is.
    pub fn ground(&self) -> Self {
        match self {
            Self::Procedure(id, view, _) => Self::Procedure(id.clone(), *view, Vec::new()),
            Self::Reading(_) => Self::Reading(Vec::new()),
            Self::Card(id, ..) => Self::Card(id.clone(), None, Vec::new()),
            Self::TrayCard(id, ..) => Self::TrayCard(id.clone(), Paper::A4, Vec::new()),
            Self::Plates(family, _) => Self::Plates(family.clone(), false),
            Self::Find(_) => Self::Find(String::new()),
            Self::Tool(tool, _) => Self::Tool(tool.clone(), Vec::new()),
            other => other.clone(),
        }
    }

    /// Which of the five places of the bar it belongs to.
    pub fn section(&self) -> Option<Section> {
        Some(match self {
            Self::Today | Self::Sitting(_) | Self::Plan | Self::Forms(_) | Self::Form(..) => {
                Section::Today
            }
            Self::Procedures
            | Self::Procedure(..)
            | Self::Items
            | Self::Item(_)
            | Self::AllPlates
            | Self::Plates(..)
            | Self::LifeSize(_)
            | Self::Lesson(_)
            | Self::TrayCard(..)
            | Self::Glossary
            | Self::Term(_)
            | Self::Cards
            | Self::Card(..)
            | Self::Wish(_) => Section::Procedures,
            Self::Cases
            | Self::Order
            | Self::Case(..)
            | Self::Reading(_)
            | Self::ReadingExercise(_) => Section::Cases,
            Self::Bench | Self::Mix(..) | Self::Tools | Self::Tool(..) | Self::Exercise(..) => {
                Section::Bench
            }
            Self::Record
            | Self::About
            | Self::Questions
            | Self::QuestionFamily(_)
            | Self::Progress => Section::Record,
            Self::Class(place) => place.section(),
            Self::Find(_) | Self::Unknown(_) => return None,
        })
    }
}

/// What names the procedure a card is looked at over.
const OVER: &str = "procedure";

/// What names the paper of a tray card, and says that names are hidden.
const PAPER: &str = "paper";
const HIDDEN: &str = "names=hidden";

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

/// What was typed into the boxes of a tool, by their ids.
fn entered(query: &str) -> Vec<(String, String)> {
    let pairs = query.split('&').filter_map(|pair| pair.split_once('='));
    pairs
        .map(|(id, typed)| (id.into(), words::decoded(typed)))
        .collect()
}

/// A query of bare ids.
fn listed(query: &str) -> Vec<ItemId> {
    let ids = query.split('&').filter(|id| !id.is_empty());
    ids.map(ItemId::from).collect()
}

/// Adds a query to a fragment; nothing where there is nothing to add.
fn add_query(text: &mut String, parts: impl Iterator<Item = String>) {
    for (index, part) in parts.enumerate() {
        text.push(if index == 0 { '?' } else { '&' });
        text.push_str(&part);
    }
}

fn pairs(patient: &Supposed) -> impl Iterator<Item = String> {
    let pair = |(finding, value): &(FindingId, String)| format!("{finding}={value}");
    patient.iter().map(pair)
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
            Place::Procedure("amalgam".into(), View::SetUp, patient.clone()),
            Place::Procedure("amalgam".into(), View::Time, patient.clone()),
            Place::Procedure("amalgam".into(), View::Steps, Vec::new()),
            Place::Items,
            Place::Item("explorer".into()),
            Place::Lesson("deep-caries".into()),
            Place::Cases,
            Place::Order,
            Place::Case("a-molar".into(), u64::MAX, None),
            Place::Case("a-molar".into(), 7, Some("allergy-latex".into())),
            Place::Reading(Vec::new()),
            Place::Reading(vec!["explorer".into(), "mouth-mirror".into()]),
            Place::ReadingExercise(u64::MAX),
            Place::Cards,
            Place::Card("own-1".into(), None, Vec::new()),
            Place::Card("own-1".into(), Some("amalgam".into()), patient.clone()),
            Place::TrayCard("amalgam".into(), Paper::A6, patient),
            Place::TrayCard("amalgam".into(), Paper::A4, Vec::new()),
            Place::AllPlates,
            Place::Plates("root-canal-instruments".into(), false),
            Place::Plates("burs".into(), true),
            Place::LifeSize(Drawn::Family("burs".into())),
            Place::LifeSize(Drawn::Item("explorer".into())),
            Place::Find(String::new()),
            Place::Find("spoon 0.5 % “größe” a/b?c#d+".into()),
            Place::Glossary,
            Place::Term("pulp".into()),
            Place::Wish("own-1".into()),
            Place::Sitting(SittingAt::New(5)),
            Place::Sitting(SittingAt::Kept(SittingId(u64::MAX))),
            Place::Sitting(SittingAt::Kept(SittingId(5))),
            Place::Plan,
            Place::Forms(String::new()),
            Place::Forms("0A1B2C".into()),
            Place::Form(SittingId(7), FormSide::Whole),
            Place::Form(SittingId(7), FormSide::Question(20)),
            Place::Questions,
            Place::QuestionFamily("why".into()),
            Place::Progress,
            Place::Bench,
            Place::Mix("zinc-phosphate".into(), None),
            Place::Mix("zinc-phosphate".into(), Some("base".into())),
            Place::Tools,
            Place::Tool("cartridges".into(), Vec::new()),
            Place::Tool(
                "cartridges".into(),
                vec![
                    ("weight".into(), "70 kg".into()),
                    ("ratio".into(), "1:100 000 & 2 %".into()),
                ],
            ),
            Place::Exercise("milligrams".into(), u64::MAX),
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
            "#/cases/a/b/allergy-latex",
            "#/reading/x",
            "#/cards/a/b",
            "#/procedures/a/b",
            "#/record/x",
            "#/sitting",
            "#/sitting/soon",
            "#/form/7",
            "#/form/0000000000000007/x",
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

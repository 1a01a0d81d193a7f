//! The parts of the program that are fetched when they are first needed. The
//! page starts with the frame and Today; each area here is a module of its own
//! (see `cargo site build`).
//!
//! A function marked as split is the door of its area: what only it leads to
//! moves out of the first module. So nothing outside may call into an area
//! but through its door.

#![expect(
    clippy::unnecessary_wraps,
    reason = "a part that cannot be fetched is told by the same result"
)]

use crate::{
    about::AboutScreen,
    assignments::{AssignmentScreen, AssignmentsScreen, SetScreen, TaskScreen},
    bench::{BenchScreen, ExerciseScreen, MixScreen, ToolScreen, ToolsScreen},
    cards::{CardScreen, CardsScreen, WishScreen},
    cases::{CaseScreen, CasesScreen, OrderScreen},
    desk::{
        AssignScreen, CheckOffScreen, CollectScreen, DeskScreen, HandInScreen, IssuedScreen,
        ReportScreen, RosterScreen,
    },
    find::FindScreen,
    glossary::{GlossaryScreen, TermScreen},
    items::{ItemScreen, ItemsScreen},
    packs::{
        self, AddScreen, FileScreen, LinesScreen, OfferedScreen, Opened, PackScreen, PacksScreen,
    },
    place::{ClassPlace, Place, Supposed, WritePlace},
    plan::PlanScreen,
    plates::{AllPlatesScreen, LifeSizeScreen, PlatesScreen},
    practice::{FormScreen, FormsScreen},
    procedures::{LessonScreen, ProcedureScreen, ProceduresScreen},
    progress::ProgressScreen,
    reading::{ReadingExerciseScreen, ReadingScreen},
    record::RecordScreen,
    sampler::{FamiliesScreen, FamilyScreen},
    sitting::{Ahead, SittingScreen},
    tray_card::TrayCardScreen,
};
use leptos::prelude::*;
use wasm_bindgen::{JsCast, JsValue};
use wasm_split_helpers::{SplitLoaderError, wasm_split};

/// Why an area or the catalogue is not here: a sentence for the reader.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Stopped(pub String);

impl Stopped {
    /// From what JavaScript threw.
    pub fn because(thrown: &JsValue) -> Self {
        let message = thrown
            .dyn_ref::<js_sys::Error>()
            .and_then(|error| error.message().as_string());
        Self(message.unwrap_or_else(|| "The catalogue could not be fetched.".to_owned()))
    }
}

impl From<SplitLoaderError> for Stopped {
    fn from(_: SplitLoaderError) -> Self {
        Self("This part of the page could not be fetched.".to_owned())
    }
}

/// Draws the screen of a place; the second argument follows what changes in
/// the address while the reader stays there.
pub type Draw = fn(Place, Signal<Place>) -> AnyView;

/// An area: screens that are fetched together.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Area {
    /// Procedures, items, lessons, and all that looks things up.
    Teaching,
    /// Cases, trays to be read, preference cards.
    Chairside,
    /// Sittings, practice forms, and all that counts answers.
    Study,
    /// The bench.
    Bench,
    /// Assignments, as the student has them.
    Assigned,
    /// The instructor's desk.
    Desk,
    /// Packs, and what checks them.
    Write,
    /// The record, and what the page is.
    Record,
}

impl Area {
    /// The area that a place is in; none where the first module draws it.
    pub fn of(place: &Place) -> Option<Self> {
        Some(match place {
            Place::Today | Place::Unknown(_) => return None,
            Place::Procedures
            | Place::Procedure(..)
            | Place::Items
            | Place::Item(_)
            | Place::AllPlates
            | Place::Plates(..)
            | Place::LifeSize(_)
            | Place::TrayCard(..)
            | Place::Find(_)
            | Place::Glossary
            | Place::Term(_)
            | Place::Lesson(_) => Self::Teaching,
            Place::Cases
            | Place::Order
            | Place::Case(..)
            | Place::Reading(_)
            | Place::ReadingExercise(_)
            | Place::Cards
            | Place::Card(..)
            | Place::Wish(_) => Self::Chairside,
            Place::Sitting(_)
            | Place::Plan
            | Place::Forms(_)
            | Place::Form(..)
            | Place::Questions
            | Place::QuestionFamily(_)
            | Place::Progress => Self::Study,
            Place::Bench
            | Place::Mix(..)
            | Place::Tools
            | Place::Tool(..)
            | Place::Exercise(..) => Self::Bench,
            Place::Class(place) => match place {
                ClassPlace::Set(_)
                | ClassPlace::Assignments
                | ClassPlace::Assignment(_)
                | ClassPlace::Task(..) => Self::Assigned,
                ClassPlace::HandIn(_)
                | ClassPlace::Desk
                | ClassPlace::Assign
                | ClassPlace::Issued(_)
                | ClassPlace::Collect(_)
                | ClassPlace::Report(_)
                | ClassPlace::Roster
                | ClassPlace::CheckOff(_) => Self::Desk,
                ClassPlace::Write(_) => Self::Write,
            },
            Place::Record | Place::About => Self::Record,
        })
    }

    /// Fetches the area, if it is not here, and gives what draws its screens.
    pub async fn open(self) -> Result<Draw, Stopped> {
        match self {
            Self::Teaching => teaching().await,
            Self::Chairside => chairside().await,
            Self::Study => study().await,
            Self::Bench => bench().await,
            Self::Assigned => assigned().await,
            Self::Desk => desk().await,
            Self::Write => write().await,
            Self::Record => record().await,
        }
    }
}

/// Unpacks the catalogue and makes it known to all views below an owner, with
/// the reasoning over it and the preference card that applies.
#[wasm_split(book, fallible)]
pub fn open_book(bytes: Vec<u8>, owner: Owner) -> Result<(), Stopped> {
    packs::built_in(&bytes, &owner).map_err(Stopped)
}

/// Makes the catalogue of the built-in sources and the packs in use, and makes
/// it known as [`open_book`] does.
#[wasm_split(packed_book, fallible)]
pub fn open_with_packs(
    bytes: Vec<u8>,
    sources: Vec<u8>,
    packs: Vec<String>,
    owner: Owner,
) -> Result<Opened, Stopped> {
    packs::with_packs(&bytes, &sources, &packs, &owner).map_err(Stopped)
}

#[wasm_split(teaching, fallible)]
fn teaching() -> Result<Draw, Stopped> {
    Ok(|place, now| match place {
        Place::Procedures => view! { <ProceduresScreen /> }.into_any(),
        Place::Procedure(id, view, _) => {
            let supposed = Memo::new(move |_| match now.get() {
                Place::Procedure(_, _, supposed) => supposed,
                _ => Supposed::new(),
            });
            let supposed = supposed.into();
            view! { <ProcedureScreen id view supposed /> }.into_any()
        }
        Place::Items => view! { <ItemsScreen /> }.into_any(),
        Place::Item(id) => view! { <ItemScreen id /> }.into_any(),
        Place::AllPlates => view! { <AllPlatesScreen /> }.into_any(),
        Place::Plates(family, _) => view! { <PlatesScreen family place=now /> }.into_any(),
        Place::LifeSize(drawn) => view! { <LifeSizeScreen drawn /> }.into_any(),
        Place::TrayCard(id, ..) => view! { <TrayCardScreen id place=now /> }.into_any(),
        Place::Find(_) => view! { <FindScreen place=now /> }.into_any(),
        Place::Glossary => view! { <GlossaryScreen /> }.into_any(),
        Place::Term(id) => view! { <TermScreen id /> }.into_any(),
        Place::Lesson(id) => view! { <LessonScreen id /> }.into_any(),
        _ => ().into_any(),
    })
}

#[wasm_split(chairside, fallible)]
fn chairside() -> Result<Draw, Stopped> {
    Ok(|place, now| match place {
        Place::Cases => view! { <CasesScreen /> }.into_any(),
        Place::Order => view! { <OrderScreen /> }.into_any(),
        Place::Case(frame, seed, with) => view! { <CaseScreen frame seed with /> }.into_any(),
        Place::Reading(_) => view! { <ReadingScreen place=now /> }.into_any(),
        Place::ReadingExercise(seed) => view! { <ReadingExerciseScreen seed /> }.into_any(),
        Place::Cards => view! { <CardsScreen /> }.into_any(),
        Place::Card(id, ..) => view! { <CardScreen id place=now /> }.into_any(),
        Place::Wish(id) => view! { <WishScreen id /> }.into_any(),
        _ => ().into_any(),
    })
}

/// Besides its own screens it draws what Today says of study.
#[wasm_split(study, fallible)]
fn study() -> Result<Draw, Stopped> {
    Ok(|place, _| match place {
        Place::Today => view! { <Ahead /> }.into_any(),
        Place::Sitting(at) => view! { <SittingScreen at /> }.into_any(),
        Place::Plan => view! { <PlanScreen /> }.into_any(),
        Place::Forms(code) => view! { <FormsScreen code /> }.into_any(),
        Place::Form(id, side) => view! { <FormScreen id side /> }.into_any(),
        Place::Questions => view! { <FamiliesScreen /> }.into_any(),
        Place::QuestionFamily(family) => view! { <FamilyScreen family /> }.into_any(),
        Place::Progress => view! { <ProgressScreen /> }.into_any(),
        _ => ().into_any(),
    })
}

#[wasm_split(bench, fallible)]
fn bench() -> Result<Draw, Stopped> {
    Ok(|place, now| match place {
        Place::Mix(material, usage) => view! { <MixScreen material usage /> }.into_any(),
        Place::Tools => view! { <ToolsScreen /> }.into_any(),
        Place::Tool(tool, _) => view! { <ToolScreen tool place=now /> }.into_any(),
        Place::Exercise(family, seed) => view! { <ExerciseScreen family seed /> }.into_any(),
        _ => view! { <BenchScreen /> }.into_any(),
    })
}

#[wasm_split(assigned, fallible)]
fn assigned() -> Result<Draw, Stopped> {
    Ok(|place, _| match place {
        Place::Class(ClassPlace::Set(code)) => view! { <SetScreen code /> }.into_any(),
        Place::Class(ClassPlace::Assignments) => view! { <AssignmentsScreen /> }.into_any(),
        Place::Class(ClassPlace::Assignment(id)) => view! { <AssignmentScreen id /> }.into_any(),
        Place::Class(ClassPlace::Task(id, place)) => view! { <TaskScreen id place /> }.into_any(),
        _ => ().into_any(),
    })
}

#[wasm_split(desk, fallible)]
fn desk() -> Result<Draw, Stopped> {
    Ok(|place, _| match place {
        Place::Class(ClassPlace::HandIn(code)) => view! { <HandInScreen code /> }.into_any(),
        Place::Class(ClassPlace::Desk) => view! { <DeskScreen /> }.into_any(),
        Place::Class(ClassPlace::Assign) => view! { <AssignScreen /> }.into_any(),
        Place::Class(ClassPlace::Issued(id)) => view! { <IssuedScreen id /> }.into_any(),
        Place::Class(ClassPlace::Collect(id)) => view! { <CollectScreen id /> }.into_any(),
        Place::Class(ClassPlace::Report(id)) => view! { <ReportScreen id /> }.into_any(),
        Place::Class(ClassPlace::Roster) => view! { <RosterScreen /> }.into_any(),
        Place::Class(ClassPlace::CheckOff(id)) => view! { <CheckOffScreen id /> }.into_any(),
        _ => ().into_any(),
    })
}

#[wasm_split(write, fallible)]
fn write() -> Result<Draw, Stopped> {
    Ok(|place, _| {
        let Place::Class(ClassPlace::Write(place)) = place else {
            return ().into_any();
        };
        match place {
            WritePlace::Packs => view! { <PacksScreen /> }.into_any(),
            WritePlace::Pack(id) => view! { <PackScreen id /> }.into_any(),
            WritePlace::Add(id) => view! { <AddScreen id /> }.into_any(),
            WritePlace::File(id, side, path) => view! { <FileScreen id side path /> }.into_any(),
            WritePlace::Lines(id, path) => view! { <LinesScreen id path /> }.into_any(),
            WritePlace::Offered(name) => view! { <OfferedScreen name /> }.into_any(),
        }
    })
}

#[wasm_split(record, fallible)]
fn record() -> Result<Draw, Stopped> {
    Ok(|place, _| match place {
        Place::About => view! { <AboutScreen /> }.into_any(),
        _ => view! { <RecordScreen /> }.into_any(),
    })
}

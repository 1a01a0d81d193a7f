//! The families of questions, one file each.
//!
//! A family lists the facts it can ask about, cheaply, and writes one question
//! about one of them. Both ask the catalogue and `clinic`: an option is right or
//! wrong because of what they say, never because a list here says so. A fact is
//! named by ids of the catalogue joined with dots.
//!
//! The arithmetic of the trade (doses, sizes, cycles) comes from `clinic::numbers`.

mod advice;
mod apex;
mod before;
mod called;
mod card;
mod checked;
mod contains;
mod desk;
mod draft;
mod floor;
mod hand_over;
mod hardens;
mod hazard;
mod interval;
mod law;
mod lay;
mod layer;
mod look;
mod lookalikes;
mod missing;
mod mix_fault;
mod mix_order;
mod mix_time;
mod mixed;
mod name;
mod next;
mod numbers;
mod order;
mod patient;
mod patients;
mod pattern;
mod plan;
mod proportion;
mod pulp;
mod purpose;
mod reading;
mod ready;
mod reprocessing;
mod says;
mod shape;
mod slip;
mod sooner;
mod spatula;
mod stage;
mod steps;
mod stop;
mod storage;
mod stray;
mod surface;
mod text;
mod texts;
mod told;
mod too_soon;
mod tooth;
mod touch;
mod who;
mod why;
mod written;

pub use desk::{Desk, Laid};
pub use draft::Draft;

use clinic::case::Seed;

/// A family of questions.
pub struct Family {
    /// Its id, the first part of the ids of its questions.
    pub id: &'static str,
    /// What it asks, for an instructor's list.
    pub name: &'static str,
    pub(crate) facts: fn(&Desk) -> Vec<String>,
    pub(crate) write: fn(&Desk, &[&str], &mut Seed) -> Option<Draft>,
}

/// Every family, from the tray to the patient's return.
pub const ALL: &[Family] = &[
    missing::FAMILY,
    stray::FAMILY,
    lay::FAMILY,
    order::FAMILY,
    why::FAMILY,
    called::FAMILY,
    stage::FAMILY,
    reading::FAMILY,
    before::FAMILY,
    too_soon::FAMILY,
    patient::FAMILY,
    card::FAMILY,
    next::FAMILY,
    steps::FAMILY,
    told::FAMILY,
    slip::FAMILY,
    who::FAMILY,
    law::FAMILY,
    says::FAMILY,
    hand_over::FAMILY,
    stop::FAMILY,
    hazard::FAMILY,
    written::FAMILY,
    purpose::FAMILY,
    look::FAMILY,
    name::FAMILY,
    lookalikes::FAMILY,
    tooth::FAMILY,
    reprocessing::FAMILY,
    storage::FAMILY,
    contains::FAMILY,
    proportion::FAMILY,
    surface::FAMILY,
    spatula::FAMILY,
    mix_order::FAMILY,
    mix_time::FAMILY,
    ready::FAMILY,
    mix_fault::FAMILY,
    hardens::FAMILY,
    touch::FAMILY,
    layer::FAMILY,
    floor::FAMILY,
    pulp::FAMILY,
    apex::FAMILY,
    plan::FAMILY,
    interval::FAMILY,
    sooner::FAMILY,
    checked::FAMILY,
    advice::FAMILY,
    numbers::FAMILY,
];

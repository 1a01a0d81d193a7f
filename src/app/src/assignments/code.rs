//! From letters to an assignment, and to the reasoning it is done with.

use crate::{
    cards,
    place::SET,
    questions::{self, Questions},
    taught::{catalogue, standard},
};
use class::{
    bank::{Bank, Version},
    graders::Graders,
};
use clinic::Clinic;
use leptos::prelude::*;

/// The bank of this page: the catalogue as it was packed.
pub fn bank() -> Bank {
    let version: Version = expect_context();
    Bank::new(version, catalogue())
}

/// What of a link, a line or a typed code is opened. Which packs a link needs
/// stands in it before the letters, and goes with them.
pub fn code_of(text: &str) -> String {
    let text = text.trim();
    let code = match text.split_once(SET) {
        Some((_, code)) => code,
        None => text.rsplit(['#', '/', ':', '?']).next().unwrap_or_default(),
    };
    code.chars().filter(|c| !c.is_whitespace()).collect()
}

/// The reasoning with the preference card of an assignment, whatever card is
/// in use here.
///
/// # Errors
/// A sentence where the card cannot be read.
pub fn clinic_with(card: Option<&str>) -> Result<Clinic, String> {
    let card = card.map(|text| {
        cards::read(text, catalogue()).map_err(|faults| {
            format!(
                "The preference card of this assignment cannot be read. {}",
                faults.join(" ")
            )
        })
    });
    Ok(standard().for_ever().with_card(card.transpose()?))
}

/// All questions as a class takes them.
pub fn asked_of(questions: Questions) -> class::questions::Questions<'static> {
    class::questions::Questions {
        written: questions.bank(),
        items: questions.items(),
    }
}

/// What grades every task that can be graded now: questions and forms only once
/// all questions are ready.
pub fn graders(clinic: &Clinic) -> Graders<'static> {
    Graders::new(clinic, questions::at_hand().map(asked_of))
}

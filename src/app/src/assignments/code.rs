//! From letters to an assignment, and to the reasoning it is done with.

use crate::{
    cards,
    questions::{self, Questions},
    taught::{catalogue, standard},
};
use class::{
    assignment::Assignment,
    bank::{Bank, Version},
    graders::Graders,
    refusal::Refusal,
};
use clinic::Clinic;
use leptos::prelude::*;

/// The fewest letters of a code that is not a typed one.
const LONG: usize = 34;

/// The bank of this page: the catalogue as it was packed.
pub fn bank() -> Bank {
    let version: Version = expect_context();
    Bank::new(version, catalogue())
}

/// The letters of a code within a link or a line.
pub fn letters_of(text: &str) -> &str {
    let last = text.trim().rsplit(['#', '/', ':', '=', '?']).next();
    last.unwrap_or_default()
}

/// Reads an assignment from a link, a line or a typed code.
///
/// # Errors
/// What is wrong with it.
pub fn read(text: &str, bank: &Bank) -> Result<Assignment, Refusal> {
    let letters = letters_of(text);
    let count = letters.chars().filter(char::is_ascii_alphanumeric).count();
    if count < LONG {
        Assignment::read_typed(letters, bank)
    } else {
        Assignment::read(text, bank.version)
    }
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

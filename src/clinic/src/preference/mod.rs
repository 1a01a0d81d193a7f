//! A preference card applied over the standard: what the dentist wants done
//! differently, for one patient. A wish that breaks a safety rule is refused,
//! with the rule; the rest of the card stands.
//!
//! - [`grant`]: wishes about the items of a tray and their order
//! - [`refuse`]: why such a wish is not granted
//! - [`isolation`]: the dam, always or never
//! - [`first`]: which of the admissible materials comes first
//! - [`plan`]: which of the open plans comes first
//! - [`ready`]: the steps and the tray with that material in them

mod first;
mod grant;
mod isolation;
mod plan;
mod ready;
mod refuse;

use crate::{Clinic, Reason, recall::Return, tray::PlacedStep};
use catalogue::{
    plans::Plan,
    preference::{Card, Wish},
};
pub(crate) use first::Judged;
pub(crate) use ready::Swap;
use std::rc::Rc;

/// A wish that was not granted, and why.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Refusal {
    /// The place of the wish on its card.
    pub wish: usize,
    /// Why not.
    pub reason: Reason,
}

impl Clinic {
    /// The same reasoning with a dentist's card over it.
    #[must_use]
    pub fn with_card(&self, card: Option<Card>) -> Self {
        Self {
            card: card.map(Rc::new),
            ..self.clone()
        }
    }

    /// The card that is applied, if one is.
    pub fn card(&self) -> Option<&Card> {
        self.card.as_deref()
    }

    pub(crate) fn wishes(&self) -> impl Iterator<Item = (usize, &Wish)> {
        self.card.iter().flat_map(|c| c.wishes.iter().enumerate())
    }

    pub(crate) fn card_reason(&self) -> Reason {
        let name = self.card().map(|c| c.name.clone()).unwrap_or_default();
        Reason {
            because: format!("The preference card asks for it: {name}."),
            sources: Vec::new(),
            rule: None,
        }
    }

    /// Hand-overs as the card has them.
    pub(crate) fn hand_overs(&self, steps: &mut [PlacedStep]) {
        for (_, wish) in self.wishes() {
            let Wish::HandOver { item, how } = wish else {
                continue;
            };
            for hand_over in steps
                .iter_mut()
                .filter_map(|s| s.step.hand_over.as_mut())
                .filter(|h| h.item == *item)
            {
                hand_over.how.clone_from(how);
            }
        }
    }

    /// The return visit with the card's date, where some source wants a date in it.
    pub(crate) fn recalled(&self, plan: &Plan, mut visit: Return) -> Return {
        let wanted = self.wishes().find_map(|(_, w)| match w {
            Wish::Recall { plan: own, days } if *own == plan.id => Some(*days),
            _ => None,
        });
        if let Some(days) = wanted
            && visit
                .spans
                .iter()
                .any(|(span, _)| span.from <= days.to && days.from <= span.to)
        {
            visit.preferred = Some((days, self.card_reason()));
        }
        visit
    }
}

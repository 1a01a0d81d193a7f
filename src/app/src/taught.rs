//! What is taught, within reach of every view.
//!
//! The catalogue lives as long as the page, so views borrow from it instead of
//! copying texts. The reasoning over it is there once for each preference card
//! it was asked for with.

use catalogue::{Catalogue, preference::Card};
use clinic::Clinic;
use leptos::{prelude::*, reactive::graph::Observer};
use std::{ops::Deref, rc::Rc};

#[derive(Clone, Copy)]
struct Taught {
    catalogue: &'static Catalogue,
    clinics: Clinics,
    card: Signal<Option<Card>>,
}

/// The reasoning with each card it was asked for with; the first has none.
#[derive(Clone, Copy)]
struct Clinics(StoredValue<Vec<&'static Clinic>, LocalStorage>);

impl Clinics {
    fn with(self, card: Option<&Card>) -> &'static Clinic {
        let known = self.0.with_value(|all| {
            let mut all = all.iter().copied();
            all.find(|clinic| clinic.card() == card)
        });
        known.unwrap_or_else(|| {
            let first = self.0.with_value(|all| all[0]);
            let made = first.with_card(card.cloned());
            // It stays until the page is closed: few cards are ever tried.
            let made: &'static Clinic = Box::leak(Box::new(made));
            self.0.update_value(|all| all.push(made));
            made
        })
    }
}

/// The reasoning over the catalogue, with the preference card that applies: a
/// copy of this handle can go into any handler. A view that reasons through it
/// is drawn afresh when another card applies.
#[derive(Clone, Copy)]
pub struct Reasoning {
    clinics: Clinics,
    card: Signal<Option<Card>>,
}

impl Reasoning {
    /// The reasoning as it is now, to be borrowed from for good.
    pub fn for_ever(self) -> &'static Clinic {
        self.card
            .with_untracked(|card| self.clinics.with(card.as_ref()))
    }
}

impl Deref for Reasoning {
    type Target = Clinic;

    fn deref(&self) -> &Clinic {
        if Observer::get().is_some() {
            self.card.track();
        }
        self.for_ever()
    }
}

/// A catalogue that stays until the page is closed.
pub fn keep(catalogue: Catalogue) -> &'static Rc<Catalogue> {
    Box::leak(Box::new(Rc::new(catalogue)))
}

/// Makes the catalogue and the reasoning over it known to all views below,
/// with the card that applies.
pub fn provide(catalogue: &'static Rc<Catalogue>, card: Signal<Option<Card>>) {
    let first: &'static Clinic = Box::leak(Box::new(Clinic::new(Rc::clone(catalogue))));
    provide_context(Taught {
        catalogue,
        clinics: Clinics(StoredValue::new_local(vec![first])),
        card,
    });
}

/// Makes another card apply in all views below, whatever applies elsewhere.
pub fn provide_card(card: Option<Card>) {
    let card = Signal::stored(card);
    provide_context(Taught {
        card,
        ..expect_context::<Taught>()
    });
}

/// The catalogue.
pub fn catalogue() -> &'static Catalogue {
    expect_context::<Taught>().catalogue
}

/// The reasoning over the catalogue, with the card that applies here.
pub fn clinic() -> Reasoning {
    let Taught { clinics, card, .. } = expect_context();
    Reasoning { clinics, card }
}

/// The reasoning over the catalogue by the standard alone.
pub fn standard() -> Reasoning {
    let Taught { clinics, .. } = expect_context();
    let card = Signal::stored(None);
    Reasoning { clinics, card }
}

//! What is taught, within reach of every view.
//!
//! The catalogue lives as long as the page, so views borrow from it instead of
//! copying texts.

use catalogue::Catalogue;
use clinic::Clinic;
use leptos::prelude::*;
use std::{ops::Deref, rc::Rc};

#[derive(Clone, Copy)]
struct Taught {
    catalogue: &'static Catalogue,
    clinic: Reasoning,
}

/// The reasoning over the catalogue: a copy of this handle can go into any
/// handler and reaches the one [`Clinic`] of the page.
#[derive(Clone, Copy)]
pub struct Reasoning(StoredValue<&'static Clinic, LocalStorage>);

impl Deref for Reasoning {
    type Target = Clinic;

    fn deref(&self) -> &Clinic {
        self.0.get_value()
    }
}

/// Makes the catalogue and the reasoning over it known to all views below.
pub fn provide(catalogue: Catalogue) {
    // Both stay until the page is closed; there is nothing to give back.
    let kept: &'static Rc<Catalogue> = Box::leak(Box::new(Rc::new(catalogue)));
    let clinic: &'static Clinic = Box::leak(Box::new(Clinic::new(Rc::clone(kept))));
    provide_context(Taught {
        catalogue: kept,
        clinic: Reasoning(StoredValue::new_local(clinic)),
    });
}

/// The catalogue.
pub fn catalogue() -> &'static Catalogue {
    expect_context::<Taught>().catalogue
}

/// The reasoning over the catalogue.
pub fn clinic() -> Reasoning {
    expect_context::<Taught>().clinic
}

//! What a shared form is built from: small enough to travel in a code.

use super::{
    assemble::assemble_in_slices,
    request::{Form, Mode, Request, Unfit},
};
use crate::{
    item::Bank,
    slices::{at_once, never},
};
use serde::{Deserialize, Serialize};
use std::fmt;

/// A shared form, as a code carries it.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct SharedForm {
    /// The version of the bank it was made with.
    pub bank: u16,
    /// Which blueprint.
    pub blueprint: u8,
    /// How many questions.
    pub size: u8,
    /// The seed.
    pub seed: u32,
}

/// Why a shared form cannot be built here.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Stale {
    /// It was made with another version of the questions.
    Bank {
        /// The version it was made with.
        made: u16,
        /// The version here.
        here: u16,
    },
    /// It is to another blueprint.
    Blueprint,
    /// There is no such form.
    Unfit(Unfit),
}

impl fmt::Display for Stale {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Bank { made, here } => write!(
                f,
                "This form was made with version {made} of the questions, and version {here} is \
                 here, so it would not be the same form. {}",
                if made > here {
                    "Open the page once with a connection to fetch the newer questions."
                } else {
                    "Ask for a new code."
                }
            ),
            Self::Blueprint => {
                f.write_str("This form is to a blueprint that is not here. Ask for a new code.")
            }
            Self::Unfit(unfit) => unfit.fmt(f),
        }
    }
}

impl SharedForm {
    /// Builds the form. `version` and `blueprint` are those of the questions here.
    ///
    /// # Errors
    /// When the code belongs to other questions, or there is no such form.
    pub fn build(self, bank: &Bank, version: u16, blueprint: u8) -> Result<Form, Stale> {
        at_once(self.build_in_slices(bank, version, blueprint, &mut never))
    }

    /// The same in slices, with a pause between them.
    ///
    /// # Errors
    /// As [`SharedForm::build`].
    pub async fn build_in_slices(
        self,
        bank: &Bank,
        version: u16,
        blueprint: u8,
        pause: &mut impl AsyncFnMut(),
    ) -> Result<Form, Stale> {
        if self.bank != version {
            return Err(Stale::Bank {
                made: self.bank,
                here: version,
            });
        }
        if self.blueprint != blueprint {
            return Err(Stale::Blueprint);
        }
        let request = Request {
            size: usize::from(self.size),
            seconds: None,
            cut: 0.0,
            seed: u64::from(self.seed),
            mode: Mode::Shared,
        };
        let built = assemble_in_slices(bank, &request, pause).await;
        built.map_err(Stale::Unfit)
    }
}

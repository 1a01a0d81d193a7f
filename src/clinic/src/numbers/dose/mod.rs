//! Local anaesthetics: how many milligrams are in a cartridge, and how many
//! whole cartridges a named rule allows.
//!
//! There are always two limits where there is a vasoconstrictor, and the
//! smaller one counts. Cartridges are rounded down to whole ones: a rule is a
//! most, and a rounded-up cartridge would pass it. Every result says for
//! whom it is: for checking a student's arithmetic.

mod limit;
mod maximum;
mod mixed;
mod strength;

pub(super) use limit::kilograms;
pub use limit::{AllowedDrug, allowed_drug, drug_limit, drug_working};
pub use maximum::{Binding, Maximum, Sitting};
pub use mixed::{Given, Second};
pub(super) use strength::capital;
pub use strength::{Contents, contents, dilution_of};

use super::{entry::Refusal, exact::Exact};
use catalogue::numbers::{Heart, Numbers, Solution, VasoconstrictorLimit};

/// The most of a solution's vasoconstrictor, for this heart; none in a plain solution.
fn vasoconstrictor_limit<'n>(
    numbers: &'n Numbers,
    solution: &Solution,
    heart: Heart,
) -> Result<Option<&'n VasoconstrictorLimit>, Refusal> {
    let Some(vasoconstrictor) = &solution.vasoconstrictor else {
        return Ok(None);
    };
    numbers
        .vasoconstrictor_limits
        .iter()
        .find(|l| l.name == vasoconstrictor.name && l.heart == heart)
        .map(Some)
        .ok_or_else(|| {
            Refusal(format!(
                "No limit for {} is known here, so nothing is worked out.",
                vasoconstrictor.name
            ))
        })
}

/// `a healthy adult`, `a patient with significant heart disease`.
pub(super) const fn heart_words(heart: Heart) -> &'static str {
    match heart {
        Heart::Healthy => "a healthy adult",
        Heart::Diseased => "a patient with significant heart disease",
    }
}

/// Which number of cartridges counts.
fn smaller(drug: Exact, vasoconstrictor: Option<Exact>) -> Exact {
    vasoconstrictor.map_or(drug, |v| v.min(drug))
}

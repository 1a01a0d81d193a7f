//! Mixing surface: told of one material among others.

use super::{Desk, Draft, Family, mixed};
use clinic::case::Seed;

pub(super) const FAMILY: Family = Family {
    id: "surface",
    name: "Mixing surface",
    facts: mixed::ids,
    write,
};

fn write(desk: &Desk, fact: &[&str], chance: &mut Seed) -> Option<Draft> {
    mixed::told_apart(
        desk,
        fact,
        chance,
        |mixing| &mixing.surface,
        &[
            "On what, or in what, is this mixed: “{}”?",
            "Where do you mix this: “{}”?",
        ],
    )
}

//! Mixing ratio: told of one material among others.

use super::{Desk, Draft, Family, mixed};
use clinic::case::Seed;

pub(super) const FAMILY: Family = Family {
    id: "proportion",
    name: "Mixing ratio",
    facts: mixed::ids,
    write,
};

fn write(desk: &Desk, fact: &[&str], chance: &mut Seed) -> Option<Draft> {
    mixed::told_apart(
        desk,
        fact,
        chance,
        |mixing| &mixing.proportion,
        &[
            "In which proportion is this mixed: “{}”?",
            "You dispense this: “{}”. How much of each?",
        ],
    )
}

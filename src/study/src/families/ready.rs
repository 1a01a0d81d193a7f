//! The right consistency: told of one material among others.

use super::{Desk, Draft, Family, mixed};
use clinic::case::Seed;

pub(super) const FAMILY: Family = Family {
    id: "ready",
    name: "The right consistency",
    facts: mixed::ids,
    write,
};

fn write(desk: &Desk, fact: &[&str], chance: &mut Seed) -> Option<Draft> {
    mixed::told_apart(
        desk,
        fact,
        chance,
        |mixing| &mixing.ready,
        &[
            "How does this look and feel when it is mixed right: “{}”?",
            "You have mixed this: “{}”. What do you want to see before you hand it over?",
        ],
    )
}

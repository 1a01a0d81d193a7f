//! From findings to the pattern of the pulp.

use super::{Desk, Draft, Family, pattern};
use clinic::case::Seed;

pub(super) const FAMILY: Family = Family {
    id: "pulp",
    name: "What the findings mean for the pulp",
    facts,
    write,
};

const SIGNS: [&str; 4] = ["pain", "cold", "percussion", "radiograph-depth"];

fn facts(desk: &Desk) -> Vec<String> {
    pattern::facts(desk, &SIGNS, &[], "pulp")
}

fn write(desk: &Desk, fact: &[&str], chance: &mut Seed) -> Option<Draft> {
    let wordings = [
        "Which pattern of the pulp do these findings fit?",
        "The chart says this. What pattern does the pulp show?",
    ];
    pattern::write(desk, fact, chance, &SIGNS, &[], "pulp", &wordings)
}

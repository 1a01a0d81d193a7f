//! From findings to the pattern at the root tip.

use super::{Desk, Draft, Family, pattern};
use clinic::case::Seed;

pub(super) const FAMILY: Family = Family {
    id: "apex",
    name: "What the findings mean at the root tip",
    facts,
    write,
};

const SIGNS: [&str; 5] = [
    "percussion",
    "palpation",
    "swelling",
    "sinus-tract",
    "apex-radiograph",
];
/// What these patterns go with: a pulp that has died.
const WITH: [(&str, &str); 1] = [("cold", "silent")];

fn facts(desk: &Desk) -> Vec<String> {
    pattern::facts(desk, &SIGNS, &WITH, "apex")
}

fn write(desk: &Desk, fact: &[&str], chance: &mut Seed) -> Option<Draft> {
    let wordings = [
        "Which pattern at the root tip do these findings fit?",
        "The chart says this. What pattern do the tissues round the root tip show?",
    ];
    pattern::write(desk, fact, chance, &SIGNS, &WITH, "apex", &wordings)
}

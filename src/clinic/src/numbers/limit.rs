//! Readings held against limits: the water of a unit, nitrous oxide in a room.

use super::{exact::Exact, working::Working};
use catalogue::numbers::{Limit, Numbers};

/// Whether a reading is above a limit. Exactly at it is within.
pub fn above(limit: &Limit, reading: Exact) -> bool {
    reading > Exact::from(limit.most)
}

/// What is measured, each once.
pub fn measured(numbers: &Numbers) -> Vec<&str> {
    let mut all: Vec<&str> = Vec::new();
    for limit in &numbers.limits {
        if !all.contains(&limit.of.as_str()) {
            all.push(&limit.of);
        }
    }
    all
}

/// A reading against every limit on the same thing.
pub fn working(numbers: &Numbers, of: &str, reading: Exact) -> Working {
    let mut working = Working::default();
    let mut verdicts = Vec::new();
    for limit in numbers.limits.iter().filter(|l| l.of == of) {
        let over = above(limit, reading);
        let (sign, word) = if over {
            (">", "above")
        } else {
            ("≤", "within")
        };
        working.line(
            &limit.body,
            "reading against the limit",
            format!(
                "{} {sign} {} {}: {word}",
                reading.text(2),
                limit.most,
                limit.unit
            ),
            &limit.sources,
        );
        if over {
            working.heed(limit.above.as_str());
        }
        verdicts.push(format!("{word} {} {}", limit.most, limit.unit));
    }
    if working.lines.len() > 1 {
        working.heed("The limits differ: say which one is followed.");
    }
    working.comes_to(verdicts.join(", "), None);
    working
}

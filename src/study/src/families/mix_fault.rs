//! A mix gone wrong: how it is mended, and what caused it.

use super::{
    Desk, Draft, Family,
    draft::{Offer, one, wording},
    mixed::mixed,
    text::{alike, marks},
    texts::{at, places},
};
use crate::question::{Form, Shown};
use clinic::case::Seed;

pub(super) const FAMILY: Family = Family {
    id: "mix-fault",
    name: "A mix gone wrong",
    facts,
    write,
};

/// A material, a fault of it, and whether the cause or the mend is asked for.
fn facts(desk: &Desk) -> Vec<String> {
    mixed(desk)
        .flat_map(|(material, mixing)| {
            let faults: Vec<String> = places(material.id.as_str(), mixing.faults.len()).collect();
            faults
                .into_iter()
                .flat_map(|f| [format!("{f}.mend"), format!("{f}.cause")])
        })
        .collect()
}

fn write(desk: &Desk, fact: &[&str], chance: &mut Seed) -> Option<Draft> {
    let &[id, place, asked] = fact else {
        return None;
    };
    let (material, mixing) = mixed(desk).find(|(m, _)| m.id.as_str() == id)?;
    let fault = at(&mixing.faults, place)?;
    let mend = asked == "mend";
    let own = marks(if mend { &fault.mend } else { &fault.cause });
    let sign = marks(&fault.sign);
    let mut pool = Vec::new();
    if mend {
        pool.push(
            Offer::new("never", fault.never.as_str())
                .close(0.9)
                .because("It is tempting, and it does harm."),
        );
    }
    let start = chance.below(20);
    let others: Vec<_> = mixed(desk)
        .flat_map(|(m, x)| x.faults.iter().enumerate().map(move |(n, f)| (m, n, f)))
        .collect();
    let same = others.iter().filter(|(m, ..)| m.id == material.id);
    for &(other, n, told) in same.chain(others.iter().skip(start)) {
        let (text, what) = if mend {
            (&told.mend, "mends")
        } else {
            (&told.cause, "causes")
        };
        // Throwing a mix away and starting anew is never wrong.
        let anew = mend && text.starts_with("Throw");
        if anew
            || std::ptr::eq(told, fault)
            || alike(marks(text), own) > 0.34
            || alike(marks(&told.sign), sign) > 0.34
        {
            continue;
        }
        let close = if other.id == material.id { 0.75 } else { 0.45 };
        pool.push(
            Offer::new(format!("{}.{}", other.id, n + 1), text.as_str())
                .close(close)
                .because(format!(
                    "That {what} another fault: {}",
                    super::text::lower(&told.sign)
                )),
        );
    }
    let (answer, wordings): (_, &[&str]) = if mend {
        (
            &fault.mend,
            &[
                "You have mixed this: “{}”. You see the following. What do you do?",
                "A fault of this mix: “{}”. What is right?",
            ],
        )
    } else {
        (
            &fault.cause,
            &[
                "You have mixed this: “{}”. You see the following. What has caused it?",
                "A fault of this mix: “{}”. Where does it come from?",
            ],
        )
    };
    let (choices, closeness) = one(Offer::new("right", answer.as_str()), pool, chance)?;
    Some(Draft {
        competency: "mixing".into(),
        stem: wording(chance, wordings, &[&material.name]),
        shown: Shown::Lines(vec![fault.sign.clone()]),
        form: Form::One(choices),
        closeness,
        reasons: Desk::reason(
            format!(
                "{} {} Never: {}",
                fault.cause,
                fault.mend,
                super::text::lower(&fault.never)
            ),
            &mixing.sources,
        ),
        study: Desk::study(None, Some(&material.id)),
    })
}

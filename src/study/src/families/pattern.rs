//! From a chart to a pattern: every combination of some findings that can be,
//! reasoned through by `clinic`.

use super::{
    Desk, Draft,
    draft::{Offer, one, wording},
    patients::{Signs, chart, patient, says, words},
};
use crate::question::{Form, Shown};
use clinic::{Reason, case::Seed};

/// Facts: the words of the findings, in their order.
pub(super) fn facts(desk: &Desk, signs: &[&str], with: &Signs<'_>, pattern: &str) -> Vec<String> {
    let mut rows: Vec<Vec<&str>> = vec![Vec::new()];
    for sign in signs {
        rows = rows
            .iter()
            .flat_map(|row| {
                words(desk, sign)
                    .into_iter()
                    .map(|w| [row.as_slice(), &[w]].concat())
            })
            .collect();
    }
    rows.retain(|row| found(desk, row, signs, with, pattern).is_some());
    rows.iter().map(|row| row.join(".")).collect()
}

/// The patient of a row of words, and the word of the pattern that follows.
fn found<'d>(
    desk: &'d Desk,
    row: &[&str],
    signs: &[&str],
    with: &Signs<'_>,
    pattern: &str,
) -> Option<(clinic::engine::Conclusions, &'d str)> {
    if row.len() != signs.len() {
        return None;
    }
    let all: Vec<(&str, &str)> = with
        .iter()
        .copied()
        .chain(signs.iter().copied().zip(row.iter().copied()))
        .collect();
    let all = desk.clinic.reason(&patient(desk, &all)?);
    let word = desk.clinic.word(&all.patient, pattern)?;
    Some((all, word))
}

pub(super) fn write(
    desk: &Desk,
    fact: &[&str],
    chance: &mut Seed,
    signs: &[&str],
    with: &Signs<'_>,
    pattern: &str,
    wordings: &[&str],
) -> Option<Draft> {
    let (all, word) = found(desk, fact, signs, with, pattern)?;
    // One pattern follows for each patient, so every other word is wrong.
    let pool = words(desk, pattern)
        .into_iter()
        .filter(|w| *w != word)
        .filter_map(|w| {
            Some(
                Offer::new(w, plain(says(desk, pattern, w)?))
                    .close(0.6)
                    .because("These findings do not lead there."),
            )
        })
        .collect();
    let (choices, closeness) = one(
        Offer::new(word, plain(says(desk, pattern, word)?)),
        pool,
        chance,
    )?;
    let reasons: Vec<Reason> = all
        .fired
        .iter()
        .map(|r| desk.clinic.rule(*r))
        .filter(|rule| {
            let finds = |c: &catalogue::rules::Conclusion| matches!(c, catalogue::rules::Conclusion::Find { finding, .. } if finding.as_str() == pattern);
            rule.then.iter().any(finds)
        })
        .map(Reason::of)
        .collect();
    let shown: Vec<&str> = with
        .iter()
        .map(|(f, _)| *f)
        .chain(signs.iter().copied())
        .collect();
    Some(Draft {
        competency: "pulp-and-depth".into(),
        stem: wording(chance, wordings, &[]),
        shown: Shown::Lines(chart(desk, &all.patient, &shown)),
        form: Form::One(choices),
        closeness,
        reasons,
        study: desk.lesson("pulp-protection"),
    })
}

/// A pattern's name without the words that all of them begin with.
fn plain(says: &str) -> &str {
    let says = says.strip_prefix("pattern of ").unwrap_or(says);
    says.strip_prefix("a ")
        .or_else(|| says.strip_prefix("an "))
        .unwrap_or(says)
}

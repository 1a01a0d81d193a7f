//! Cases pinned: a seed draws the same case for ever.
//!
//! Each line of the fixture names a frame, a seed, and digests of the chart, of
//! the story, and of the decisions with their options and right answers. A
//! change of content or of the drawing of cases shows here. Where it is meant,
//! the fixture is written anew with
//! `RENEW_PINNED_CASES=yes cargo test -p clinic --test pinned`, and the change
//! of its lines belongs in the same commit.

mod common;

use catalogue::{cases::CaseFrame, findings::Known};
use clinic::{Clinic, case::Case};
use common::clinic;
use std::{fmt::Write, fs, path::PathBuf};

/// The seeds pinned for every frame.
const SEEDS: [u64; 3] = [0, 20_261_125, u64::MAX];

/// FNV-1a over the bytes (Fowler, Noll and Vo), 64 bits: a digest without a
/// dependency, the same on every device.
fn digest(text: &str) -> u64 {
    text.bytes().fold(0xcbf2_9ce4_8422_2325, |hash, byte| {
        (hash ^ u64::from(byte)).wrapping_mul(0x0100_0000_01b3)
    })
}

fn chart(clinic: &Clinic, case: &Case) -> String {
    let mut text = format!("{} {:?} {:?} ", case.age, case.tooth, case.plan);
    for known in [Known::Chart, Known::Opening] {
        for fact in clinic.facts(&case.opened, known) {
            let _ = write!(text, "{}: {}; ", fact.finding, fact.says);
        }
    }
    text
}

fn story(case: &Case) -> String {
    let Case {
        title,
        reason,
        words,
        opening,
        ..
    } = case;
    format!("{title}\n{reason}\n{words}\n{opening}\n{}", case.booked)
}

fn decisions(case: &Case) -> String {
    let mut text = String::new();
    for decision in &case.decisions {
        let _ = writeln!(
            text,
            "{} {} {}",
            decision.id, decision.lead, decision.question
        );
        for choice in &decision.choices {
            let _ = writeln!(
                text,
                "{} {} {:?} {:?}",
                choice.id, choice.label, choice.standing, choice.left_out
            );
        }
        let _ = writeln!(text, "{:?} {}", decision.best_answer(), decision.then);
    }
    text
}

fn line(clinic: &Clinic, frame: &CaseFrame, seed: u64) -> String {
    let case = clinic.case(frame, seed).expect("a possible patient");
    format!(
        "{} {seed} {:016x} {:016x} {:016x}",
        frame.id,
        digest(&chart(clinic, &case)),
        digest(&story(&case)),
        digest(&decisions(&case))
    )
}

#[test]
fn every_seed_draws_the_case_it_always_drew() {
    let clinic = clinic();
    let lines: Vec<String> = clinic
        .catalogue()
        .cases
        .iter()
        .flat_map(|frame| SEEDS.map(|seed| line(&clinic, frame, seed)))
        .collect();
    let fixture = PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("tests/fixtures/pinned-cases.txt");
    if std::env::var_os("RENEW_PINNED_CASES").is_some() {
        fs::write(&fixture, lines.join("\n") + "\n").expect("the fixture can be written");
        return;
    }
    let pinned = fs::read_to_string(&fixture).expect("the fixture is there");
    let pinned: Vec<&str> = pinned.lines().collect();
    let changed: Vec<String> = lines
        .iter()
        .filter(|line| !pinned.contains(&line.as_str()))
        .map(|line| {
            let of: Vec<&str> = line.split(' ').collect();
            let was = pinned
                .iter()
                .find(|p| p.starts_with(&format!("{} {} ", of[0], of[1])));
            let now: Vec<&str> = was.map_or(Vec::new(), |w| w.split(' ').collect());
            let parts: Vec<&str> = ["chart", "story", "decisions"]
                .into_iter()
                .enumerate()
                .filter(|(i, _)| now.get(i + 2) != of.get(i + 2))
                .map(|(_, part)| part)
                .collect();
            format!(
                "{} with seed {}: another {}",
                of[0],
                of[1],
                parts.join(", another ")
            )
        })
        .collect();
    assert!(
        changed.is_empty() && pinned.len() == lines.len(),
        "Cases came out otherwise than they are pinned. If that is meant, renew the fixture as the head of this file says.\n{}",
        changed.join("\n")
    );
}

#[test]
fn a_digest_tells_any_two_texts_apart_and_is_the_published_one() {
    // Test vectors of FNV-1a, 64 bits, by its authors (value from memory).
    assert_eq!(digest(""), 0xcbf2_9ce4_8422_2325);
    assert_eq!(digest("a"), 0xaf63_dc4c_8601_ec8c);
    assert_eq!(digest("foobar"), 0x8594_4171_f739_67e8);
}

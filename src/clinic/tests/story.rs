//! What is told in a case never contradicts what is found in it: neither the
//! patient's words nor the reason of the visit nor what the dentist says.

mod common;

use catalogue::{
    cases::CaseFrame,
    condition::When,
    findings::{Known, Scale},
};
use clinic::{Clinic, case::Case};
use common::clinic;

/// How many seeds of each frame are told.
const SEEDS: u64 = 12;

/// Words that state something of a patient, and what then has to be so. An
/// empty condition says that the words state no finding. Of phrases that lie
/// inside one another the longer stands first and counts.
const STATED: &[(&str, &str)] = &[
    ("no pain", "pain = none"),
    ("throbbing pain", "pain = spontaneous"),
    ("about pain where", "pain = spontaneous"),
    ("has not bothered me", "pain = none"),
    ("no trouble at all", "pain = none"),
    ("ice cream makes me jump", "pain = on-stimulus"),
    ("something sweet", "pain = on-stimulus"),
    ("gives me a zing", "pain = on-stimulus"),
    ("woke me", "pain = spontaneous"),
    ("throbs out of nowhere", "pain = spontaneous"),
    ("starts by itself", "pain = spontaneous"),
    ("sooner", ""),
    ("holding the cheek", ""),
    ("gone as soon as the cold is", "cold = sharp"),
    ("a second, and it is over", "cold = sharp"),
    ("ten seconds to calm down", "cold = ebbs"),
    ("cold stays with it for a bit", "cold = ebbs"),
    ("goes on for a minute", "cold = lingers"),
    ("aches on and on", "cold = lingers"),
    ("cold does nothing to it", "cold = silent"),
    ("no cold in it at all", "cold = silent"),
    ("that cold test", "cold = ebbs"),
    ("nothing alive", "cold = silent"),
    ("nobody minds", "cold = silent"),
    ("no feeling", "cold = silent"),
    ("test the pulp", ""),
    (
        "pulp has had enough",
        "cold = lingers or pain = spontaneous",
    ),
    ("with those signs", "cold = lingers or pain = spontaneous"),
    ("puffy", "swelling"),
    ("pimple on the gum", "sinus-tract"),
    ("clove oil", "allergy-eugenol"),
    ("from cloves", "allergy-eugenol"),
    ("balloons", "allergy-latex"),
    ("rubber gloves", "allergy-latex"),
    ("gel nails", "allergy-methacrylate"),
    ("nail studio", "allergy-methacrylate"),
    ("about the nails", "allergy-methacrylate"),
    ("asthma", "sulfite-sensitivity"),
    ("primary molar", "dentition = primary"),
    (
        "which came through last year",
        "dentition = immature-permanent",
    ),
    ("composite", "planned-permanent = composite"),
    ("white filling", "planned-permanent = composite"),
    ("amalgam", "planned-permanent = amalgam"),
    ("cannot be restored", "not-restorable"),
    ("to have {tooth} taken out", "not-restorable"),
    ("look at the clock", "time-left <= 20 min"),
    ("arrived late", "time-left <= 20 min"),
    ("given twice", "time-left <= 20 min"),
    ("back at work by noon", "time-left <= 20 min"),
    ("hard dentine all round", "remaining-dentine >= 1.5 mm"),
    ("plenty of dentine", "remaining-dentine >= 2 mm"),
    ("fair amount of dentine", "remaining-dentine >= 1.5 mm"),
    ("hardly anything left", "remaining-dentine <= 0.5 mm"),
    (
        "pulp shining through",
        "remaining-dentine <= 0.5 mm and exposure = none",
    ),
    ("not open", "exposure = none"),
    ("still closed", "exposure = none"),
    (
        "about a millimetre",
        "remaining-dentine >= 0.7 mm and remaining-dentine <= 1.4 mm",
    ),
    ("thin, but", "remaining-dentine < 1.5 mm"),
    ("thin but", "remaining-dentine < 1.5 mm"),
    ("a thin floor", "remaining-dentine < 1.5 mm"),
    ("very deep", "remaining-dentine <= 1 mm"),
    ("deep, but", "remaining-dentine < 1.5 mm"),
    ("deeper than the film showed", "remaining-dentine <= 1 mm"),
    ("soft all the way down", "remaining-dentine < 1.5 mm"),
    ("roof of the chamber", "remaining-dentine <= 1 mm"),
    ("in the pulp", "exposure != none"),
    ("red dot", "exposure = pin-point"),
    ("pin-point exposure", "exposure = pin-point"),
    ("that is an exposure", "exposure != none"),
    ("watch the clock", "exposure != none"),
    ("whether it stops", "bleeding != none"),
    ("no bleeding", "bleeding = none"),
    ("gums bleed", ""),
    ("all firm", ""),
    ("not fill this for good today", ""),
    ("will it hurt", ""),
    ("does it hurt", ""),
    ("will i feel anything", ""),
];

/// Words that are likely to state a finding: a sentence with one of them has to
/// be in the table above.
const TELLING: &[&str] = &[
    "pain",
    "hurt",
    "ache",
    "sting",
    "zing",
    "cold",
    "dentine",
    "deep",
    "pulp",
    "expos",
    "bleed",
    "allerg",
    "latex",
    "rubber",
    "balloon",
    "clove",
    "resin",
    "gel ",
    "asthma",
    "swell",
    "swollen",
    "puffy",
    "pus ",
    "pimple",
    "amalgam",
    "composite",
    "primary",
    "alive",
    "woke",
    "night",
    "clock",
    "chamber",
    "millimetre",
    "red dot",
];

fn parsed() -> Vec<(&'static str, Option<When>)> {
    let condition = |text: &str| {
        (!text.is_empty()).then(|| When::parse(text).unwrap_or_else(|e| panic!("{text}: {e}")))
    };
    STATED.iter().map(|(p, w)| (*p, condition(w))).collect()
}

/// The phrases of the table in a sentence; a phrase inside a longer one that
/// was found does not count.
fn stated<'t>(
    sentence: &str,
    table: &'t [(&'static str, Option<When>)],
) -> Vec<&'t (&'static str, Option<When>)> {
    let sentence = sentence.to_lowercase();
    let mut found: Vec<&(&str, Option<When>)> = Vec::new();
    for each in table.iter().filter(|(phrase, _)| sentence.contains(phrase)) {
        if !found.iter().any(|longer| longer.0.contains(each.0)) {
            found.push(each);
        }
    }
    found
}

fn cases() -> impl Iterator<Item = (Clinic, CaseFrame, Case)> {
    let clinic = clinic();
    let frames = clinic.catalogue().cases.clone();
    frames.into_iter().flat_map(move |frame| {
        let clinic = clinic.clone();
        (0..SEEDS).map(move |seed| {
            let case = clinic.case(&frame, seed).expect("a possible patient");
            ((*clinic).clone(), frame.clone(), case)
        })
    })
}

/// By the structure: every sentence of the patient's is the frame's own talk,
/// or a sentence of the value that this patient's finding has.
#[test]
fn the_patient_says_only_what_the_chart_says() {
    for (clinic, frame, case) in cases() {
        let mut rest = case.words.clone();
        for told in &case.told {
            let place = clinic.position(told.finding.as_str()).expect("a finding");
            let finding = &clinic.catalogue().findings[place];
            assert_eq!(finding.known, Known::Chart, "{}", told.finding);
            let own = match &finding.scale {
                Scale::Words(words) => {
                    let word = clinic.word(&case.chart, told.finding.as_str());
                    let of = |w: &&catalogue::findings::Word| Some(w.id.as_str()) == word;
                    words.iter().find(of).expect("a known value").told.clone()
                }
                Scale::Flag { told, .. } => told.clone(),
                Scale::Number { .. } => panic!("{} is told", finding.id),
            };
            assert!(own.contains(&told.says), "“{}” in {}", told.says, frame.id);
            assert!(rest.contains(&told.says));
            rest = rest.replacen(&told.says, "", 1);
        }
        let rest = rest.trim();
        assert!(
            rest.is_empty() || frame.words.iter().any(|w| w == rest),
            "“{rest}” in {} is from nowhere",
            frame.id
        );
        assert!(!case.words.is_empty(), "{} {} is mute", frame.id, case.seed);
    }
}

/// By the words: whatever a sentence of the case states is so.
#[test]
fn no_sentence_contradicts_a_finding() {
    let table = parsed();
    for (clinic, frame, case) in cases() {
        for text in [&case.reason, &case.words, &case.opening] {
            for (phrase, when) in stated(text, &table) {
                let Some(when) = when else { continue };
                assert_eq!(
                    clinic.holds(when, &case.opened),
                    Some(true),
                    "{} with seed {}: “{text}” says “{phrase}”, and the patient has: {}",
                    frame.id,
                    case.seed,
                    clinic.describe(&case.opened)
                );
            }
        }
    }
}

/// No sentence slips past the check above.
#[test]
fn every_telling_sentence_is_in_the_table() {
    let table = parsed();
    let clinic = clinic();
    let mut sentences: Vec<String> = Vec::new();
    for frame in &clinic.catalogue().cases {
        let all = frame
            .reasons
            .iter()
            .chain(&frame.words)
            .chain(&frame.opening);
        sentences.extend(all.cloned());
    }
    for finding in &clinic.catalogue().findings {
        match &finding.scale {
            Scale::Words(words) => {
                sentences.extend(words.iter().flat_map(|w| w.told.iter().cloned()));
            }
            Scale::Flag { told, .. } => sentences.extend(told.iter().cloned()),
            Scale::Number { .. } => {}
        }
    }
    let telling = |text: &str| TELLING.iter().any(|w| text.to_lowercase().contains(w));
    let missed: Vec<&String> = sentences
        .iter()
        .filter(|s| telling(s) && stated(s, &table).is_empty())
        .collect();
    assert!(missed.is_empty(), "not in the table: {missed:#?}");
    let unused: Vec<&str> = STATED
        .iter()
        .map(|(phrase, _)| *phrase)
        .filter(|phrase| !sentences.iter().any(|s| s.to_lowercase().contains(phrase)))
        .collect();
    assert!(unused.is_empty(), "in no sentence: {unused:?}");
}

/// The talk of a frame states no finding at all: only findings' own sentences do.
#[test]
fn talk_states_nothing() {
    let table = parsed();
    for frame in &clinic().catalogue().cases {
        for talk in &frame.words {
            for (phrase, when) in stated(talk, &table) {
                let fixed = when.as_ref().is_none_or(|w| {
                    w.expr()
                        .atoms()
                        .iter()
                        .all(|a| a.finding().is_some_and(|f| f.as_str() == "time-left"))
                });
                assert!(fixed, "“{talk}” of {} states “{phrase}”", frame.id);
            }
        }
    }
}

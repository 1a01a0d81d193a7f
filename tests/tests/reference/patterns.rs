//! Signs to patterns: the consensus terms of the AAE, 2009, for pulp and apex,
//! and the thickness bands.

use crate::bedside::{clinic, patient};

/// Findings, derived finding, its value, source.
type Row = (&'static str, &'static str, &'static str, &'static str);

const AAE: &str = "AAE Consensus Conference Recommended Diagnostic Terminology, J Endod 2009;35:1634; sign patterns: value from memory";

#[test]
fn signs_give_the_consensus_terms() {
    const ROWS: [Row; 17] = [
        ("", "pulp", "normal", AAE),
        ("pain=on-stimulus; cold=sharp", "pulp", "reversible", AAE),
        ("cold=sharp", "pulp", "reversible", AAE),
        ("pain=on-stimulus", "pulp", "reversible", AAE),
        (
            "cold=lingers; pain=on-stimulus",
            "pulp",
            "symptomatic-irreversible",
            "Levin et al., J Endod 2009;35:1645-1657; lingering of 30 s or more: value from memory",
        ),
        (
            "pain=spontaneous; cold=sharp",
            "pulp",
            "symptomatic-irreversible",
            AAE,
        ),
        (
            "radiograph-depth=no-zone; remaining-dentine=0.3",
            "pulp",
            "asymptomatic-irreversible",
            AAE,
        ),
        ("cold=silent", "pulp", "necrosis", AAE),
        (
            "cold=ebbs; pain=on-stimulus",
            "pulp",
            "unclear",
            "common practice, no source; graded pulpitis: Wolters et al., Int Endod J 2017;50:825-829, value from memory",
        ),
        (
            "percussion=tender",
            "pulp",
            "unclear",
            "common practice, no source",
        ),
        ("", "apex", "normal", AAE),
        (
            "percussion=tender; cold=lingers",
            "apex",
            "symptomatic-periodontitis",
            "Gutmann et al., J Endod 2009;35:1658-1674; pattern: value from memory",
        ),
        (
            "palpation=tender; cold=silent",
            "apex",
            "symptomatic-periodontitis",
            AAE,
        ),
        (
            "apex-radiograph=dark; cold=silent",
            "apex",
            "asymptomatic-periodontitis",
            AAE,
        ),
        ("swelling=yes; cold=silent", "apex", "acute-abscess", AAE),
        (
            "sinus-tract=yes; cold=silent; apex-radiograph=dark",
            "apex",
            "chronic-abscess",
            AAE,
        ),
        ("apex-radiograph=dense", "apex", "condensing-osteitis", AAE),
    ];
    check(&ROWS);
}

#[test]
fn remaining_dentine_gives_its_band_and_protection() {
    const MURRAY: &str =
        "Murray et al., Int Endod J 2003;36:33-43: 0.5 mm is the number to remember";
    const STURDEVANT: &str =
        "Sturdevant's Art and Science of Operative Dentistry, pulpal protection; value from memory";
    const REVIEW: &str = "Int J Appl Dent Sci 2016;2(4):96-99: 2 mm wanted, 1-1.5 mm accepted";
    const ARANDI: &str =
        "Arandi, Clin Cosmet Investig Dent 2017;9:67-72: liner only at 0.5 mm or less";
    const ROWS: [Row; 14] = [
        ("remaining-dentine=2.5", "thickness", "ample", STURDEVANT),
        ("remaining-dentine=2", "thickness", "ample", STURDEVANT),
        ("remaining-dentine=1.9", "thickness", "fair", REVIEW),
        ("remaining-dentine=1.5", "thickness", "fair", REVIEW),
        ("remaining-dentine=1.4", "thickness", "thin", STURDEVANT),
        ("remaining-dentine=0.6", "thickness", "thin", MURRAY),
        ("remaining-dentine=0.5", "thickness", "very-thin", MURRAY),
        ("remaining-dentine=0.1", "thickness", "very-thin", MURRAY),
        (
            "remaining-dentine=0; exposure=pin-point; bleeding=stops",
            "thickness",
            "exposed",
            MURRAY,
        ),
        ("remaining-dentine=2", "protection", "none", STURDEVANT),
        ("remaining-dentine=1", "protection", "base", STURDEVANT),
        ("remaining-dentine=0.6", "protection", "base", ARANDI),
        (
            "remaining-dentine=0.5",
            "protection",
            "liner-and-base",
            ARANDI,
        ),
        (
            "remaining-dentine=0; exposure=larger; bleeding=stops",
            "protection",
            "capping",
            "ESE position statement, Int Endod J 2019;52:923-934; value from memory",
        ),
    ];
    check(&ROWS);
}

fn check(rows: &[Row]) {
    let clinic = clinic();
    for (findings, derived, wanted, source) in rows {
        let all = clinic.reason(&patient(findings));
        let found = clinic.word(&all.patient, derived);
        assert_eq!(found, Some(*wanted), "{derived} of '{findings}' ({source})");
    }
}

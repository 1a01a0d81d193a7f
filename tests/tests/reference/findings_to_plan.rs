//! From findings to all that follows from them: the plans that are open and
//! shut, the materials that may and may not go in, what the tray gains and must
//! not hold, and when the patient comes back. One row a situation, with the
//! numbers of the dossier of clinical facts: diagnosis (A2), plans (A7),
//! compatibility (B2), remaining dentine (B7), and both sides wherever sources
//! that bear on a plan disagree (K).
//!
//! Not decided from findings, and checked elsewhere or not at all:
//! - A2.6, A2.7: teeth treated or begun before; the vocabulary has no such tooth.
//! - A2.14, A2.15: how a diagnosis is written and in which order one tests.
//! - B2.3 to B2.6, B2.14: bond strength over days, luting and crowns; facts of
//!   the materials, in `materials`.
//! - B7.5, B7.6: how thick a layer is made; words of the steps.
//! - K4, K5, K20: setting, slab and water; in `mixing` and `mixing_model`.
//!   K6b: inflammation. K7 to K11, K22: doses; in `doses`. K12, K13, K15:
//!   colours; in `instruments`. K14: eruption; in `figures`. K16, K18, K19:
//!   examinations, temperatures and air.

use crate::bedside::{clinic, patient};
use catalogue::items::Role;
use clinic::{
    Clinic,
    engine::Conclusions,
    layers::Stack,
    standing::Standing,
    tray::{Need, Tray},
};

const CUSTOM: &str = "common practice, no source";
const AAE: &str = "AAE consensus terms, J Endod 2009;35:1634, and position statement on vital pulp therapy 2021; sign patterns: value from memory";
const GUTMANN: &str = "Gutmann et al., J Endod 2009;35:1658-1674; pattern: value from memory; plan: common practice, no source";
const ESE: &str = "ESE position statement, Int Endod J 2019;52:923-934; value from memory";
const ARANDI: &str = "Arandi, Clin Cosmet Investig Dent 2017;9:67-72";
const STURDEVANT: &str = "Sturdevant, pulpal protection; value from memory";
const GARCIA: &str = "Garcia et al., Appl Sci 2020;10(3):1070: 5.79 MPa of bond strength lost";
const WEINER: &str = "Weiner, Aust Dent J 2011;56(1 Suppl):11-22: no single protocol";
const BJORNDAL: &str = "Bjørndal et al., Eur J Oral Sci 2010;118:290-297";
const MALTZ: &str = "Maltz et al., Caries Res 2013;47:103-109";
const MURRAY: &str = "Murray et al., Int Endod J 2003;36:33-43";
const REVIEW: &str = "Int J Appl Dent Sci 2016;2(4):96-99: 2 mm wanted, 1 to 1.5 mm accepted";
const KUNDZINA: &str = "Kundzina et al., Int Endod J 2017: 85 % against 52 % at 36 months";
const HILTON: &str =
    "Hilton et al., J Dent Res 2013;92(7 Suppl):16S-22S: failure 19.7 % against 31.5 %";
const AAPD: &str = "AAPD best practice, pulp therapy, rev. 2020; value from memory";
const HATRICK: &str = "Hatrick, Eakle and Bird, Dental Materials; value from memory";
const EUGENOL: &str =
    "review of 1994, PMID 7965358: dentine keeps eugenol back, an open pulp does not";
const ISO: &str = "ISO 3107, scope: non-eugenol materials where resin follows";
const SCHENKEL: &str = "Schenkel and Veitz-Keenan, Cochrane CD010526, 2016; little or no effect of a liner: value from memory";
const VURAL: &str = "Vural et al., Oper Dent 2017: no difference over unexposed dentine";

/// A situation. The first plan is the one whose materials, tray and return are
/// looked at.
struct Row {
    /// Where the dossier has it.
    fact: &'static str,
    findings: &'static str,
    /// `plan=standing`.
    plans: &'static str,
    /// `role:material=standing`, with `-` for leaving the role empty.
    layers: &'static str,
    /// `+item` is needed, `!item` is not, `-item` does not even lie at hand,
    /// `first<then` stand in this order.
    tray: &'static str,
    /// `days=yes` or `days=no`.
    back: &'static str,
    source: &'static str,
}

const fn row(
    fact: &'static str,
    findings: &'static str,
    [plans, layers, tray, back]: [&'static str; 4],
    source: &'static str,
) -> Row {
    Row {
        fact,
        findings,
        plans,
        layers,
        tray,
        back,
        source,
    }
}

#[rustfmt::skip]
const ROWS: [Row; 66] = [
    // Diagnosis of the pulp.
    row("A2.1", "", ["permanent-today=right root-canal=wrong pulpotomy=wrong temporary-then-review=wrong", "permanent:composite-compule=right", "+bonding-agent", "180=yes 14=no"], AAE),
    row("A2.2", "pain=on-stimulus; cold=sharp; remaining-dentine=1", ["permanent-today=right root-canal=wrong pulpotomy=wrong", "", "", "90=yes"], AAE),
    row("A2.2", "pain=on-stimulus; cold=brief; remaining-dentine=1", ["permanent-today=right stepwise=wrong root-canal=wrong", "", "", ""], AAE),
    row("A2.3", "pain=spontaneous; cold=lingers; remaining-dentine=0.5", ["root-canal=right pulpotomy=right temporary-then-review=unsafe permanent-today=unsafe stepwise=unsafe", "", "+dam-sheet-latex +endodontic-explorer -etchant-gel", "14=yes 90=no"], AAE),
    row("A2.3", "pain=on-stimulus; cold=lingers; apex-radiograph=widened; remaining-dentine=0.5", ["root-canal=right direct-cap=unsafe temporary-then-review=unsafe", "", "", ""], AAE),
    row("A2.3", "pain=spontaneous; cold=sharp; remaining-dentine=1", ["root-canal=right permanent-today=unsafe", "", "", ""], AAE),
    row("A2.4", "radiograph-depth=no-zone; remaining-dentine=0.3", ["temporary-then-review=right root-canal=right stepwise=right permanent-today=wrong", "", "+reinforced-zoe", "90=yes"], AAE),
    row("A2.5", "cold=silent; remaining-dentine=0.5", ["root-canal=right pulpotomy=unsafe direct-cap=unsafe temporary-then-review=unsafe permanent-today=unsafe", "", "+dam-sheet-latex", "14=yes"], AAE),
    // Diagnosis of the root tip.
    row("A2.8", "percussion=not-tender; palpation=not-tender; apex-radiograph=even", ["permanent-today=right root-canal=wrong", "", "", ""], GUTMANN),
    row("A2.9", "percussion=tender; cold=lingers; remaining-dentine=0.5", ["root-canal=right permanent-today=unsafe", "", "", ""], GUTMANN),
    row("A2.9", "percussion=tender; palpation=tender; cold=silent; remaining-dentine=0.5", ["root-canal=right pulpotomy=unsafe", "", "", ""], GUTMANN),
    row("A2.9", "percussion=tender; remaining-dentine=1", ["temporary-then-review=right permanent-today=wrong", "temporary:reinforced-zoe=right", "+reinforced-zoe", "90=yes"], GUTMANN),
    row("A2.10", "apex-radiograph=dark; cold=silent; remaining-dentine=0.5", ["root-canal=right temporary-then-review=unsafe", "", "", ""], GUTMANN),
    row("A2.11", "swelling=yes; cold=silent; percussion=tender; remaining-dentine=0.5", ["root-canal=right temporary-then-review=unsafe permanent-today=unsafe", "", "", ""], GUTMANN),
    row("A2.12", "sinus-tract=yes; apex-radiograph=dark; cold=silent; remaining-dentine=0.5", ["root-canal=right pulpotomy=unsafe permanent-today=unsafe", "", "", ""], GUTMANN),
    row("A2.13", "apex-radiograph=dense; cold=silent; remaining-dentine=0.5", ["root-canal=right temporary-then-review=unsafe", "", "", ""], GUTMANN),
    // A graded pulpitis between the two terms.
    row("A2.16", "cold=ebbs; pain=on-stimulus; remaining-dentine=0.8", ["temporary-then-review=right permanent-today=wrong root-canal=wrong", "", "+reinforced-zoe", "90=yes"], "Wolters et al., Int Endod J 2017;50:825-829; value from memory"),
    // The table of plans.
    row("A7.1", "remaining-dentine=2.4", ["permanent-today=right temporary-then-review=wrong stepwise=wrong", "liner:-=right base:-=right base:rmgi-liner=wrong liner:calcium-hydroxide-liner=wrong", "+etchant-gel +bonding-agent +composite-compule !rmgi-liner !calcium-hydroxide-liner -reinforced-zoe", "180=yes"], CUSTOM),
    row("A7.1", "remaining-dentine=2.4; planned-permanent=amalgam", ["permanent-today=right", "permanent:amalgam-capsule=right base:-=right", "+amalgam-capsule +amalgam-carrier !rmgi-liner !copal-varnish -etchant-gel", "180=yes"], CUSTOM),
    row("A7.2", "pain=on-stimulus; cold=sharp; remaining-dentine=1", ["permanent-today=right temporary-then-review=wrong", "base:rmgi-liner=right base:-=right liner:-=right", "+rmgi-liner +paper-pad-small +ball-applicator !calcium-hydroxide-liner", "90=yes 14=no"], STURDEVANT),
    row("A7.2", "pain=on-stimulus; cold=sharp; remaining-dentine=1; planned-permanent=amalgam", ["permanent-today=right", "base:rmgi-liner=right base:glass-ionomer-restorative-capsule=acceptable base:-=wrong", "+rmgi-liner +paper-pad-small", "90=yes"], STURDEVANT),
    row("A7.3", "pain=on-stimulus; cold=sharp; remaining-dentine=0.4", ["permanent-today=right temporary-then-review=right stepwise=right root-canal=wrong", "liner:calcium-hydroxide-liner=right liner:calcium-silicate-cement=right base:rmgi-liner=right base:-=wrong", "+calcium-hydroxide-liner +rmgi-capsule calcium-hydroxide-liner<rmgi-capsule", "90=yes"], CUSTOM),
    row("A7.3", "pain=on-stimulus; cold=sharp; remaining-dentine=0.4", ["temporary-then-review=right", "liner:calcium-hydroxide-liner=right temporary:reinforced-zoe=right base:-=right", "+calcium-hydroxide-liner +reinforced-zoe +mixing-pad -bonding-agent", "90=yes 365=no"], CUSTOM),
    row("A7.4", "cold=ebbs; pain=on-stimulus; remaining-dentine=1", ["temporary-then-review=right permanent-today=wrong direct-cap=wrong", "temporary:reinforced-zoe=right temporary:non-eugenol-zinc-oxide=acceptable", "+reinforced-zoe +powder-scoop +mixing-pad +cement-spatula +articulating-paper -etchant-gel -bonding-agent -composite-compule", "90=yes 14=no 365=no"], CUSTOM),
    row("A7.5", "pain=on-stimulus; cold=sharp; remaining-dentine=0; exposure=pin-point; bleeding=stops", ["direct-cap=right pulpotomy=acceptable permanent-today=unsafe temporary-then-review=unsafe", "liner:calcium-silicate-cement=right liner:calcium-hydroxide-liner=acceptable liner:-=unsafe base:-=wrong", "+dam-sheet-latex +sodium-hypochlorite +calcium-silicate-cement +rmgi-capsule", "7=yes 182=yes 365=yes 60=no"], ESE),
    row("A7.6", "cold=sharp; remaining-dentine=0; exposure=larger; bleeding=stops", ["pulpotomy=right root-canal=acceptable direct-cap=wrong temporary-then-review=unsafe", "", "", "182=yes"], ESE),
    row("A7.6", "cold=sharp; remaining-dentine=0; exposure=pin-point; bleeding=goes-on", ["pulpotomy=right root-canal=acceptable direct-cap=wrong permanent-today=unsafe", "", "", "365=yes"], ESE),
    row("A7.6", "dentition=primary; cold=sharp; remaining-dentine=0; exposure=pin-point; bleeding=stops", ["pulpotomy=right direct-cap=wrong", "", "+calcium-silicate-cement", "182=yes"], AAPD),
    row("A7.7", "pain=spontaneous; cold=lingers; remaining-dentine=1", ["root-canal=right pulpotomy=right temporary-then-review=unsafe", "", "+endodontic-explorer +dam-sheet-latex", "14=yes"], AAE),
    row("A7.7", "cold=silent; remaining-dentine=1", ["root-canal=right pulpotomy=unsafe temporary-then-review=unsafe", "", "+endodontic-explorer", "14=yes"], AAE),
    row("A7.7", "cold=silent; remaining-dentine=1; isolation=cotton-rolls", ["refer=right extraction=acceptable root-canal=unsafe pulpotomy=unsafe", "", "", ""], ESE),
    row("A7.8", "not-restorable=yes", ["extraction=right permanent-today=wrong temporary-then-review=wrong", "", "+gauze -etchant-gel -amalgam-capsule", "7=yes"], CUSTOM),
    row("A7.8", "not-restorable=yes; cold=lingers; pain=spontaneous", ["extraction=right root-canal=wrong pulpotomy=wrong", "", "+gauze", ""], CUSTOM),
    // What may lie under what.
    row("B2.1", "remaining-dentine=1", ["permanent-today=right", "base:reinforced-zoe=wrong base:rmgi-liner=right", "-reinforced-zoe", ""], "biomaterials text: free eugenol hinders the hardening of resin"),
    row("B2.2", "pain=on-stimulus; cold=sharp; remaining-dentine=0.4", ["permanent-today=right", "base:reinforced-zoe=wrong", "", ""], GARCIA),
    row("B2.7", "remaining-dentine=1; planned-permanent=amalgam", ["permanent-today=right", "base:reinforced-zoe=acceptable", "", ""], CUSTOM),
    row("B2.8", "remaining-dentine=0.4; planned-permanent=amalgam", ["permanent-today=right", "base:reinforced-zoe=acceptable base:-=wrong", "", ""], STURDEVANT),
    row("B2.9", "remaining-dentine=2.2", ["permanent-today=right", "sealer:copal-varnish=wrong sealer:-=right", "-copal-varnish", ""], STURDEVANT),
    row("B2.9", "remaining-dentine=2.2; planned-permanent=amalgam", ["permanent-today=right", "sealer:copal-varnish=right sealer:-=right", "!copal-varnish", ""], HATRICK),
    row("B2.10", "remaining-dentine=0.4; planned-permanent=amalgam", ["permanent-today=right", "liner:calcium-hydroxide-liner=right base:-=wrong base:rmgi-liner=right", "calcium-hydroxide-liner<rmgi-capsule", ""], ARANDI),
    row("B2.11", "cold=ebbs; remaining-dentine=0.4", ["temporary-then-review=right", "liner:calcium-hydroxide-liner=right temporary:reinforced-zoe=right", "+calcium-hydroxide-liner calcium-hydroxide-liner<reinforced-zoe", ""], CUSTOM),
    row("B2.12", "remaining-dentine=1; planned-permanent=amalgam", ["permanent-today=right", "", "+rmgi-liner rmgi-liner<copal-varnish", ""], "classical operative teaching; value from memory"),
    row("B2.13", "cold=ebbs; remaining-dentine=1; allergy-eugenol=yes", ["temporary-then-review=right", "temporary:reinforced-zoe=unsafe temporary:non-eugenol-zinc-oxide=right", "+non-eugenol-zinc-oxide -reinforced-zoe -powder-scoop", "90=yes"], "contact reactions; value from memory"),
    row("B2.13", "remaining-dentine=1; allergy-eugenol=yes; planned-permanent=amalgam", ["permanent-today=right", "base:reinforced-zoe=unsafe base:rmgi-liner=right", "-reinforced-zoe", ""], "contact reactions; value from memory"),
    row("B2.15", "pain=on-stimulus; cold=sharp; remaining-dentine=0.4", ["permanent-today=right", "liner:-=acceptable liner:calcium-hydroxide-liner=right", "", ""], SCHENKEL),
    // Remaining dentine.
    row("B7.1", "remaining-dentine=2", ["permanent-today=right", "liner:-=right base:-=right base:rmgi-liner=wrong", "", "180=yes"], STURDEVANT),
    row("B7.1b", "pain=on-stimulus; cold=sharp; remaining-dentine=0.5", ["permanent-today=right temporary-then-review=right", "liner:calcium-hydroxide-liner=right", "+calcium-hydroxide-liner", "90=yes"], MURRAY),
    row("B7.1b", "pain=on-stimulus; cold=sharp; remaining-dentine=0.6", ["permanent-today=right temporary-then-review=wrong", "liner:calcium-hydroxide-liner=wrong", "!calcium-hydroxide-liner", ""], MURRAY),
    row("B7.1c", "remaining-dentine=1.7", ["permanent-today=right", "base:-=right base:rmgi-liner=right", "", ""], REVIEW),
    row("B7.1d", "cold=sharp; remaining-dentine=0; exposure=pin-point; bleeding=stops", ["direct-cap=right temporary-then-review=unsafe", "temporary:reinforced-zoe=unsafe base:reinforced-zoe=wrong", "-reinforced-zoe", ""], EUGENOL),
    row("B7.2", "cold=sharp; remaining-dentine=0.5; planned-permanent=amalgam", ["permanent-today=right", "liner:calcium-hydroxide-liner=right base:rmgi-liner=right base:-=wrong", "", ""], ARANDI),
    row("B7.3", "remaining-dentine=1.5; planned-permanent=amalgam", ["permanent-today=right", "liner:calcium-hydroxide-liner=wrong base:-=right sealer:copal-varnish=right", "!rmgi-liner", ""], STURDEVANT),
    row("B7.3", "remaining-dentine=0.8; planned-permanent=amalgam", ["permanent-today=right", "liner:calcium-hydroxide-liner=wrong base:rmgi-liner=right base:-=wrong", "+rmgi-liner", ""], STURDEVANT),
    row("B7.3", "remaining-dentine=0.8", ["permanent-today=right", "base:-=right base:rmgi-liner=right sealer:copal-varnish=wrong", "-copal-varnish", ""], STURDEVANT),
    row("B7.7", "cold=sharp; remaining-dentine=0.3", ["temporary-then-review=right permanent-today=right", "temporary:reinforced-zoe=right", "+reinforced-zoe", "90=yes"], CUSTOM),
    // Where sources disagree, both sides.
    row("K1, leave it", "pain=on-stimulus; cold=sharp; remaining-dentine=0.3", ["stepwise=right", "", "+spoon-excavator-small", ""], ESE),
    row("K1, take it out", "cold=sharp; remaining-dentine=0; exposure=pin-point; bleeding=stops", ["direct-cap=right", "", "+sodium-hypochlorite +calcium-silicate-cement", ""], "AAE 2021; Front Dent Med 2022, doi 10.3389/fdmed.2022.1048137"),
    row("K1, one visit", "pain=on-stimulus; cold=sharp; remaining-dentine=0.3", ["permanent-today=right", "", "", ""], MALTZ),
    row("K2, eight to twelve weeks", "cold=sharp; remaining-dentine=0.3", ["stepwise=right", "", "", "56=yes 84=yes 55=no"], BJORNDAL),
    row("K2, three to six months", "cold=sharp; remaining-dentine=0.3", ["stepwise=right", "", "", "120=yes 180=yes 200=no"], AAPD),
    row("K3, eugenol harms", "cold=ebbs; remaining-dentine=1", ["temporary-then-review=right", "temporary:non-eugenol-zinc-oxide=acceptable", "", ""], ISO),
    row("K3, it has gone in a week", "cold=ebbs; remaining-dentine=1", ["temporary-then-review=right", "temporary:reinforced-zoe=right", "", "90=yes"], "J Conserv Dent Endod 2024;27(6):621-625: no loss after 7 or 14 days"),
    row("K6, by thickness", "cold=sharp; remaining-dentine=0.4", ["permanent-today=right", "liner:calcium-hydroxide-liner=right liner:calcium-silicate-cement=right", "", ""], ARANDI),
    row("K6, no single protocol", "cold=sharp; remaining-dentine=0.4", ["permanent-today=right", "liner:-=acceptable", "", ""], WEINER),
    row("K17, graded", "pain=spontaneous; cold=lingers; remaining-dentine=0.5", ["pulpotomy=right root-canal=right", "", "", ""], "AAE 2021, and Wolters et al. 2017; value from memory"),
    row("K21, ten minutes", "cold=sharp; remaining-dentine=0; exposure=pin-point; bleeding=late", ["direct-cap=right pulpotomy=right", "liner:calcium-silicate-cement=right", "", "7=yes"], "success factors of capping, 5 to 10 minutes; value from memory; five minutes: ESE 2019"),
];

/// More on materials, where a trial speaks of one situation alone.
#[rustfmt::skip]
const TRIALS: [Row; 3] = [
    row("A4.8", "cold=sharp; remaining-dentine=0; exposure=pin-point; bleeding=stops", ["direct-cap=right", "liner:calcium-silicate-cement=right", "+calcium-silicate-cement", "365=yes"], KUNDZINA),
    row("A4.8b", "cold=sharp; remaining-dentine=0; exposure=pin-point; bleeding=stops", ["direct-cap=right", "liner:calcium-hydroxide-liner=acceptable", "!calcium-hydroxide-liner", ""], HILTON),
    row("A4.8c", "cold=sharp; remaining-dentine=0.3", ["permanent-today=right", "liner:calcium-silicate-cement=right liner:calcium-hydroxide-liner=right", "", ""], VURAL),
];

#[test]
fn findings_lead_to_plans_materials_trays_and_returns() {
    let clinic = clinic();
    let mut against = Vec::new();
    for row in ROWS.iter().chain(&TRIALS) {
        let before = clinic.reason(&patient(row.findings));
        for pair in row.plans.split_whitespace() {
            let (plan, wanted) = pair.split_once('=').expect("plan=standing");
            let found = clinic
                .plan_verdicts(&before)
                .into_iter()
                .find(|v| v.plan.as_str() == plan)
                .expect("a plan of the catalogue");
            if found.standing != standing(wanted) {
                against.push(said(row, pair, &format!("{:?}", found.standing)));
            }
        }
        let first = row.plans.split('=').next().expect("a plan");
        let plan = clinic.catalogue().plan(&first.into()).expect("a plan");
        let all = clinic.reason(&clinic.settled(&patient(row.findings), plan));
        for part in row.layers.split_whitespace() {
            let (role, option) = part.split_once(':').expect("role:material=standing");
            let (material, wanted) = option.split_once('=').expect("material=standing");
            let found = layer(&clinic, &all, plan.closes, self::role(role), material);
            if found != standing(wanted) {
                against.push(said(row, part, &format!("{found:?}")));
            }
        }
        if !row.tray.is_empty() {
            let procedure = clinic.procedure_of(plan, &all.patient).expect("a set-up");
            let tray = clinic.tray(procedure, &all.patient);
            let fails = row.tray.split_whitespace().filter(|p| !lies(&tray, p));
            against.extend(fails.map(|part| said(row, part, procedure.as_str())));
        }
        let visit = clinic.return_visit(plan, &all.patient);
        for part in row.back.split_whitespace() {
            let (days, wanted) = part.split_once('=').expect("days=yes or no");
            let day: u32 = days.parse().expect("a number of days");
            if visit.reason_for(day).is_some() != (wanted == "yes") {
                against.push(said(row, part, "otherwise"));
            }
        }
    }
    assert!(against.is_empty(), "{}", against.join("\n"));
}

/// Every row of the dossier that is decided from findings stands in the table.
#[test]
fn the_table_leaves_out_no_row_that_findings_decide() {
    const FACTS: &str = "A2.1 A2.2 A2.3 A2.4 A2.5 A2.8 A2.9 A2.10 A2.11 A2.12 A2.13 \
        A7.1 A7.2 A7.3 A7.4 A7.5 A7.6 A7.7 A7.8 \
        B2.1 B2.2 B2.7 B2.8 B2.9 B2.10 B2.11 B2.12 B2.13 B2.15 \
        B7.1 B7.1b B7.1c B7.1d B7.2 B7.3 B7.7 K1 K2 K3 K6 K17 K21";
    for fact in FACTS.split_whitespace() {
        let mut rows = ROWS.iter();
        let stands = |r: &Row| r.fact.split(',').next() == Some(fact);
        assert!(rows.any(stands), "{fact} has no row");
    }
}

fn said(row: &Row, wanted: &str, found: &str) -> String {
    format!(
        "{}: '{}' wants {wanted}, found {found} ({})",
        row.fact, row.findings, row.source
    )
}

fn standing(word: &str) -> Standing {
    match word {
        "right" => Standing::Right,
        "acceptable" => Standing::Acceptable,
        "wrong" => Standing::Wrong,
        "unsafe" => Standing::Unsafe,
        _ => panic!("'{word}' is no standing"),
    }
}

fn role(word: &str) -> Role {
    match word {
        "liner" => Role::Liner,
        "base" => Role::Base,
        "sealer" => Role::Sealer,
        "temporary" => Role::Temporary,
        "permanent" => Role::Permanent,
        _ => panic!("'{word}' is no role"),
    }
}

/// How good a material is in a role, under the best that closes the tooth and
/// over the best that lines it.
fn layer(
    clinic: &Clinic,
    all: &Conclusions,
    closes: Option<Role>,
    role: Role,
    material: &str,
) -> Standing {
    let best = |role, stack: &Stack| {
        let verdicts = clinic.layer_verdicts(all, role, stack);
        let best = verdicts.into_iter().min_by_key(|v| v.standing);
        best.and_then(|v| v.item)
    };
    let mut stack = Stack::default();
    if !matches!(role, Role::Temporary | Role::Permanent) {
        stack.closing = closes.and_then(|closes| best(closes, &stack));
    }
    if matches!(role, Role::Base | Role::Sealer) {
        stack.liner = best(Role::Liner, &stack);
    }
    let verdicts = clinic.layer_verdicts(all, role, &stack);
    verdicts
        .iter()
        .find(|v| v.item.as_ref().map_or("-", |i| i.as_str()) == material)
        .unwrap_or_else(|| panic!("{material} is no option as {role:?}"))
        .standing
}

fn lies(tray: &Tray, part: &str) -> bool {
    if let Some((first, then)) = part.split_once('<') {
        let mut pairs = tray.must_before.iter();
        return pairs.any(|(a, b, _)| a.as_str() == first && b.as_str() == then);
    }
    let (sign, item) = part.split_at(1);
    assert!(
        clinic().catalogue().item(&item.into()).is_some(),
        "'{item}' is no item of the catalogue"
    );
    let need = tray
        .items()
        .find(|(_, i)| i.item.as_str() == item)
        .map(|(_, i)| i.need);
    match sign {
        "+" => need == Some(Need::Needed),
        "!" => need != Some(Need::Needed),
        "-" => need.is_none(),
        _ => panic!("'{part}' begins with no sign"),
    }
}

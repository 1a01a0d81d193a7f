//! Which material in which role, and what may lie under what.

use crate::bedside::{clinic, patient};
use catalogue::items::Role::{self, Base, Liner, Permanent, Temporary};
use clinic::{
    layers::Stack,
    standing::Standing::{self, Acceptable, Right, Unsafe, Wrong},
};

const CUSTOM: &str = "common practice, no source";
const ARANDI: &str = "Arandi, Clin Cosmet Investig Dent 2017;9:67-72";
const STURDEVANT: &str = "Sturdevant's Art and Science of Operative Dentistry; value from memory";
const GARCIA: &str =
    "Garcia et al., Appl Sci 2020;10(3):1070: eugenol takes 5.79 MPa of bond strength";
const KUNDZINA: &str = "Kundzina et al., Int Endod J 2017: cap survival 85 % against 52 %";
const WEINER: &str = "Weiner, Aust Dent J 2011;56(1 Suppl):11-22: no single protocol";

/// Findings, plan, role, material (or `-` for none), standing, source.
type Row = (
    &'static str,
    &'static str,
    Role,
    &'static str,
    Standing,
    &'static str,
);

#[test]
fn materials_stand_as_published() {
    const DEEP: &str = "pain=on-stimulus; cold=sharp; remaining-dentine=0.4";
    const DEEP_AMALGAM: &str =
        "pain=on-stimulus; cold=sharp; remaining-dentine=0.4; planned-permanent=amalgam";
    const THIN_AMALGAM: &str = "remaining-dentine=1; planned-permanent=amalgam";
    const OPEN: &str = "cold=sharp; remaining-dentine=0; exposure=pin-point; bleeding=stops";
    const ROWS: [Row; 34] = [
        // Liners.
        (
            DEEP,
            "permanent-today",
            Liner,
            "calcium-hydroxide-liner",
            Right,
            ARANDI,
        ),
        (
            DEEP,
            "permanent-today",
            Liner,
            "calcium-silicate-cement",
            Right,
            "Vural et al., Oper Dent 2017: no difference over intact dentine",
        ),
        (DEEP, "permanent-today", Liner, "-", Acceptable, WEINER),
        (
            "remaining-dentine=0.6",
            "permanent-today",
            Liner,
            "calcium-hydroxide-liner",
            Wrong,
            ARANDI,
        ),
        (
            "remaining-dentine=0.6",
            "permanent-today",
            Liner,
            "-",
            Right,
            ARANDI,
        ),
        (
            "remaining-dentine=2.5",
            "permanent-today",
            Liner,
            "-",
            Right,
            STURDEVANT,
        ),
        (
            OPEN,
            "direct-cap",
            Liner,
            "calcium-silicate-cement",
            Right,
            KUNDZINA,
        ),
        (
            OPEN,
            "direct-cap",
            Liner,
            "calcium-hydroxide-liner",
            Acceptable,
            "Hilton et al., J Dent Res 2013;92(7 Suppl):16S-22S: failure 19.7 % against 31.5 %",
        ),
        (
            OPEN,
            "direct-cap",
            Liner,
            "-",
            Unsafe,
            "ESE 2019; value from memory",
        ),
        // Bases.
        (
            THIN_AMALGAM,
            "permanent-today",
            Base,
            "rmgi-liner",
            Right,
            STURDEVANT,
        ),
        (
            THIN_AMALGAM,
            "permanent-today",
            Base,
            "reinforced-zoe",
            Acceptable,
            CUSTOM,
        ),
        (
            THIN_AMALGAM,
            "permanent-today",
            Base,
            "-",
            Wrong,
            STURDEVANT,
        ),
        (
            "remaining-dentine=1",
            "permanent-today",
            Base,
            "-",
            Right,
            STURDEVANT,
        ),
        (
            "remaining-dentine=1",
            "permanent-today",
            Base,
            "rmgi-liner",
            Right,
            STURDEVANT,
        ),
        (
            "remaining-dentine=1",
            "permanent-today",
            Base,
            "reinforced-zoe",
            Wrong,
            GARCIA,
        ),
        (
            "remaining-dentine=2.5",
            "permanent-today",
            Base,
            "rmgi-liner",
            Wrong,
            STURDEVANT,
        ),
        (
            "remaining-dentine=1.7",
            "permanent-today",
            Base,
            "rmgi-liner",
            Right,
            WEINER,
        ),
        (DEEP_AMALGAM, "permanent-today", Base, "-", Wrong, ARANDI),
        (
            "remaining-dentine=1; allergy-methacrylate=yes; planned-permanent=amalgam",
            "permanent-today",
            Base,
            "rmgi-liner",
            Unsafe,
            CUSTOM,
        ),
        (
            "remaining-dentine=1; allergy-methacrylate=yes; planned-permanent=amalgam",
            "permanent-today",
            Base,
            "glass-ionomer-restorative-capsule",
            Right,
            CUSTOM,
        ),
        (OPEN, "direct-cap", Base, "-", Wrong, ARANDI),
        // Temporaries.
        (
            DEEP,
            "temporary-then-review",
            Temporary,
            "reinforced-zoe",
            Right,
            CUSTOM,
        ),
        (
            DEEP,
            "temporary-then-review",
            Temporary,
            "non-eugenol-zinc-oxide",
            Acceptable,
            "ISO 3107:2022, scope",
        ),
        (
            DEEP,
            "temporary-then-review",
            Temporary,
            "glass-ionomer-restorative-capsule",
            Acceptable,
            "Bjørndal et al. 2010: glass-ionomer provisional",
        ),
        (
            "cold=ebbs; remaining-dentine=0.8; allergy-eugenol=yes",
            "temporary-then-review",
            Temporary,
            "reinforced-zoe",
            Unsafe,
            CUSTOM,
        ),
        (
            "cold=ebbs; remaining-dentine=0.8; allergy-eugenol=yes",
            "temporary-then-review",
            Temporary,
            "non-eugenol-zinc-oxide",
            Right,
            CUSTOM,
        ),
        // Permanent fillings.
        (
            "",
            "permanent-today",
            Permanent,
            "composite-compule",
            Right,
            STURDEVANT,
        ),
        (
            "",
            "permanent-today",
            Permanent,
            "amalgam-capsule",
            Wrong,
            CUSTOM,
        ),
        (
            "planned-permanent=amalgam",
            "permanent-today",
            Permanent,
            "amalgam-capsule",
            Right,
            CUSTOM,
        ),
        (
            "isolation=cotton-rolls",
            "permanent-today",
            Permanent,
            "composite-compule",
            Wrong,
            STURDEVANT,
        ),
        (
            "isolation=cotton-rolls",
            "permanent-today",
            Permanent,
            "amalgam-capsule",
            Right,
            STURDEVANT,
        ),
        (
            "allergy-methacrylate=yes",
            "permanent-today",
            Permanent,
            "composite-compule",
            Unsafe,
            CUSTOM,
        ),
        (
            "allergy-methacrylate=yes",
            "permanent-today",
            Permanent,
            "amalgam-capsule",
            Right,
            CUSTOM,
        ),
        (
            "allergy-methacrylate=yes",
            "permanent-today",
            Permanent,
            "glass-ionomer-restorative-capsule",
            Right,
            CUSTOM,
        ),
    ];
    let clinic = clinic();
    for (findings, plan, role, material, wanted, source) in ROWS {
        let plan = clinic.catalogue().plan(&plan.into()).expect("a plan");
        let all = clinic.reason(&clinic.settled(&patient(findings), plan));
        let mut stack = Stack::default();
        let settle = |role, stack: &Stack| {
            let verdicts = clinic.layer_verdicts(&all, role, stack);
            verdicts
                .into_iter()
                .min_by_key(|v| v.standing)
                .and_then(|v| v.item)
        };
        if matches!(role, Base | Liner) {
            stack.closing = settle(plan.closes.expect("closes"), &stack);
        }
        if role == Base {
            stack.liner = settle(Liner, &stack);
        }
        let verdicts = clinic.layer_verdicts(&all, role, &stack);
        let own = verdicts
            .iter()
            .find(|v| v.item.as_ref().map_or("-", |i| i.as_str()) == material)
            .expect("an option of the role");
        assert_eq!(
            own.standing, wanted,
            "{material} as {role:?} for '{findings}' ({source})"
        );
    }
}

//! Per cent and ratio to milligrams.

use crate::numbers::{
    entry::{Dilution, Strength, Volume},
    exact::Exact,
    unit::{Quantity, Unit},
    working::{Working, with_unit},
};
use catalogue::numbers::Solution;

/// The ratio of a solution's vasoconstrictor.
pub fn dilution_of(solution: &Solution) -> Option<Dilution> {
    solution.vasoconstrictor.as_ref().map(|v| Dilution(v.ratio))
}

/// What so many cartridges hold.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Contents {
    /// The drug in one cartridge, in mg.
    pub drug: Exact,
    /// The vasoconstrictor in one cartridge, in mg.
    pub vasoconstrictor: Option<Exact>,
    /// The steps.
    pub working: Working,
}

/// Adds the lines from strength and ratio to milligrams in a cartridge.
pub(super) fn add_lines(
    working: &mut Working,
    strength: Strength,
    dilution: Option<(&str, Dilution)>,
    volume: Volume,
) -> (Exact, Option<Exact>) {
    let (percent, mg, ml) = (strength.in_percent(), strength.mg_per_ml(), volume.ml());
    working.reckon(
        "Strength",
        "per cent × 10 = mg in each mL",
        format!("{} % × 10 = {} mg/mL", percent.text(4), mg.text(4)),
    );
    let drug = mg * ml;
    working.reckon(
        "Drug in one cartridge",
        "mg/mL × mL",
        format!(
            "{} mg/mL × {} mL {} mg",
            mg.text(4),
            ml.text(4),
            drug.shown(4)
        ),
    );
    let vasoconstrictor = dilution.map(|(name, dilution)| {
        let thin = dilution.mg_per_ml();
        working.reckon(
            &format!("Strength of {name}"),
            "1000 ÷ second number of the ratio = mg in each mL",
            format!(
                "1000 ÷ {} {} mg/mL",
                Exact::from(dilution.0).text(0),
                thin.shown(5)
            ),
        );
        let in_one = thin * ml;
        working.reckon(
            &format!("{} in one cartridge", capital(name)),
            "mg/mL × mL",
            format!(
                "{} × {} mL {} mg",
                with_unit(thin, "mg/mL"),
                ml.text(4),
                in_one.shown(5)
            ),
        );
        in_one
    });
    (drug, vasoconstrictor)
}

/// How many milligrams `cartridges` of a solution hold.
pub fn contents(
    strength: Strength,
    dilution: Option<(&str, Dilution)>,
    volume: Volume,
    cartridges: Exact,
) -> Contents {
    let mut working = Working::dose();
    let (drug, vasoconstrictor) = add_lines(&mut working, strength, dilution, volume);
    let all = drug * cartridges;
    working.reckon(
        "Drug in all",
        "mg in one × cartridges",
        format!(
            "{} mg × {} {} mg",
            drug.text(4),
            cartridges.text(3),
            all.shown(4)
        ),
    );
    let mut result = format!("{} mg", all.text(4));
    if let (Some(one), Some((name, _))) = (vasoconstrictor, dilution) {
        let all = one * cartridges;
        working.reckon(
            &format!("{} in all", capital(name)),
            "mg in one × cartridges",
            format!(
                "{} mg × {} {} mg",
                one.text(5),
                cartridges.text(3),
                all.shown(5)
            ),
        );
        result = format!("{result}, with {} mg of {name}", all.text(5));
        working.heed("The larger the second number of the ratio, the less there is in it.");
    }
    working.comes_to(
        result,
        Some(Quantity {
            value: all,
            unit: Unit::Milligram,
        }),
    );
    Contents {
        drug,
        vasoconstrictor,
        working,
    }
}

/// With a capital letter.
pub(in crate::numbers) fn capital(text: &str) -> String {
    let mut chars = text.chars();
    chars
        .next()
        .map(|first| first.to_uppercase().chain(chars).collect())
        .unwrap_or_default()
}

//! Local anaesthesia: every cap and rounding edge, impossible entries, and the
//! same doses computed a second way.

use crate::{
    bedside::clinic,
    doses::{exact, maximum},
};
use catalogue::numbers::{Heart, Numbers};
use clinic::numbers::{
    dose::{Sitting, allowed_drug},
    entry::{Volume, Weight},
    tools::{Entries, Tool},
};
use num_rational::Ratio;
use proptest::prelude::*;

/// A weight just under, at and just above where a count changes.
#[test]
fn every_cap_and_rounding_edge() {
    // Rule, solution, volume, kg, mg of the drug, whole by the drug.
    #[rustfmt::skip]
    let rows = [
        // The ceiling of lidocaine, 500 mg, is reached at 71.428571… kg.
        ("us-labels", "lidocaine-100", "1.8", "71.428571", "499.999997", 13),
        ("us-labels", "lidocaine-100", "1.8", "71.428572", "500", 13),
        // 400 mg of mepivacaine at 60.60606… kg; 600 mg of prilocaine at 75 kg.
        ("us-labels", "mepivacaine-plain", "1.8", "60.606060", "399.999996", 7),
        ("us-labels", "mepivacaine-plain", "1.8", "60.606061", "400", 7),
        ("us-labels", "prilocaine-plain", "1.8", "74.999999", "599.999992", 8),
        ("us-labels", "prilocaine-plain", "1.8", "75", "600", 8),
        ("us-labels", "prilocaine-plain", "1.8", "75.000001", "600", 8),
        // Exactly so many cartridges are allowed; a hair less is one fewer.
        ("us-labels", "articaine-100", "1.8", "72", "504", 7),
        ("us-labels", "articaine-100", "1.8", "71.999999", "503.999993", 6),
        ("us-labels", "prilocaine-plain", "1.8", "72", "576", 8),
        ("us-labels", "prilocaine-plain", "1.8", "71.999999", "575.999992", 7),
        ("us-labels", "lidocaine-100", "1.7", "68", "476", 14),
        ("us-labels", "lidocaine-100", "1.7", "67.999999", "475.999993", 13),
        ("us-labels", "mepivacaine-levonordefrin", "1.8", "60", "396", 11),
        ("us-labels", "mepivacaine-levonordefrin", "1.8", "59.999999", "395.9999934", 10),
        // The paediatric ceiling of 300 mg at 68.1818… kg (value from memory).
        ("paediatric", "lidocaine-100", "1.8", "68.181818", "299.9999992", 8),
        ("paediatric", "lidocaine-100", "1.8", "68.181819", "300", 8),
        // 90 mg of bupivacaine are ten cartridges of 1.8 mL exactly, and 10.58… of 1.7.
        ("us-labels", "bupivacaine-200", "1.8", "70", "90", 10),
        ("us-labels", "bupivacaine-200", "1.7", "70", "90", 10),
    ];
    for (rules, solution, volume, kg, mg, whole) in rows {
        let most = maximum(rules, solution, volume, &format!("{kg} kg"), Heart::Healthy);
        let what = format!("{rules}, {solution}, {volume} mL, {kg} kg");
        assert_eq!(most.drug, exact(mg), "{what}");
        assert_eq!(most.by_drug.count(), whole, "{what}");
        assert!(most.milligrams() <= most.drug, "{what}");
    }
    // The label's ceilings for children: 180 mg at 60 lb and 270 mg at 90 lb.
    for (solution, lb, mg) in [
        ("mepivacaine-levonordefrin", "59.999", "179.997"),
        ("mepivacaine-levonordefrin", "60", "180"),
        ("mepivacaine-levonordefrin", "60.001", "180"),
        ("mepivacaine-plain", "89.999", "269.997"),
        ("mepivacaine-plain", "90", "270"),
        ("mepivacaine-plain", "90.001", "270"),
    ] {
        let weight = format!("{lb} lb");
        let most = maximum(
            "mepivacaine-child-table",
            solution,
            "1.7",
            &weight,
            Heart::Healthy,
        );
        assert_eq!(most.drug, exact(mg), "{solution}, {weight}");
    }
}

#[test]
fn impossible_entries_say_why() {
    let clinic = clinic();
    let good = [
        ("rules", "us-labels"),
        ("weight", "70 kg"),
        ("heart", "healthy"),
        ("solution", "lidocaine-100"),
        ("volume", "1.8 mL"),
    ];
    for (input, text, words) in [
        ("weight", "0 kg", "cannot be zero"),
        ("weight", "-70 kg", "below zero"),
        ("weight", "900 kg", "outside"),
        ("weight", "70", "unit is missing"),
        ("weight", "70 mL", "measures a volume"),
        ("weight", "1,700 kg", "can be read as"),
        ("volume", "1.8 mg", "measures a weight"),
        ("volume", "180 mL", "outside"),
        ("rules", "", "Choose one"),
        (
            "rules",
            "mepivacaine-child-table",
            "no figure for lidocaine",
        ),
    ] {
        let entries = good.map(|(id, value)| (id, if id == input { text } else { value }));
        let faults = Tool::Maximum
            .work(&clinic.catalogue().numbers, &Entries::of(&entries))
            .expect_err(text);
        assert!(faults[0].why.0.contains(words), "{text}: {}", faults[0].why);
    }
    let entries = good.map(|(id, value)| (id, if id == "weight" { "70,0 KG" } else { value }));
    let done = Tool::Maximum.work(&clinic.catalogue().numbers, &Entries::of(&entries));
    assert!(
        done.expect("a decimal comma")
            .result
            .starts_with("11 whole cartridges")
    );
}

/// The same doses by another way: plain fractions of an arithmetic library,
/// straight from the figures of the catalogue.
fn second_way(
    numbers: &Numbers,
    rules: usize,
    solution: usize,
    volume: usize,
    grams: u32,
    heart: Heart,
) -> Option<(Ratio<i128>, i128)> {
    let milli = |value: i32| Ratio::new(i128::from(value), 1000);
    let solution = &numbers.solutions[solution];
    let plain = solution.vasoconstrictor.is_none();
    let limit = numbers.dose_rules[rules].limits.iter().find(|l| {
        l.drug == solution.drug
            && l.percent.is_none_or(|p| p == solution.percent)
            && l.vasoconstrictor.is_none_or(|with| with != plain)
    })?;
    let kg = Ratio::new(i128::from(grams), 1000);
    let lb = kg * Ratio::new(100_000_000, 45_359_237);
    let by_weight = if let Some(share) = limit.share {
        Some(lb * Ratio::new(i128::from(share.adult_mg), i128::from(share.adult_lb)))
    } else if let Some(per_kg) = limit.per_kg {
        Some(kg * milli(per_kg.0))
    } else {
        limit.per_lb.map(|per_lb| lb * milli(per_lb.0))
    };
    let most = by_weight
        .into_iter()
        .chain(limit.ceiling.map(|c| milli(c.0)))
        .min()?;
    let ml = milli(solution.volumes[volume].0);
    let mut cartridges = most / (milli(solution.percent.0) * Ratio::from(10) * ml);
    if let Some(thin) = &solution.vasoconstrictor {
        let limit = numbers
            .vasoconstrictor_limits
            .iter()
            .find(|l| l.name == thin.name && l.heart == heart)?;
        let in_one = Ratio::new(1000, i128::from(thin.ratio)) * ml;
        cartridges = cartridges.min(milli(limit.most.0) / in_one);
    }
    Some((most, cartridges.floor().to_integer()))
}

proptest! {
    #[test]
    fn doses_agree_with_a_second_computation(
        rules in 0_usize..7,
        solution in 0_usize..9,
        volume in 0_usize..2,
        grams in 3000_u32..250_000,
        diseased: bool,
    ) {
        let clinic = clinic();
        let numbers = &clinic.catalogue().numbers;
        prop_assert_eq!((numbers.dose_rules.len(), numbers.solutions.len()), (7, 9));
        let heart = if diseased { Heart::Diseased } else { Heart::Healthy };
        let weight = format!("{}.{:03} kg", grams / 1000, grams % 1000);
        let sitting = Sitting {
            rules: &numbers.dose_rules[rules],
            solution: &numbers.solutions[solution],
            volume: Volume::stated(numbers.solutions[solution].volumes[volume]),
            weight: Weight::read(&weight).expect("a weight"),
            heart,
            years: None,
        };
        let other = second_way(numbers, rules, solution, volume, grams, heart);
        let Ok(most) = sitting.maximum(numbers) else {
            prop_assert!(other.is_none(), "refused, though there is a limit");
            return Ok(());
        };
        let (mg, whole) = other.expect("a limit");
        prop_assert_eq!(
            (most.drug.over(), most.drug.under()),
            (*mg.numer(), *mg.denom())
        );
        prop_assert_eq!(i128::from(most.whole()), whole);
        prop_assert!(most.milligrams() <= most.drug);
        let again = allowed_drug(sitting.rules, sitting.solution, sitting.weight).expect("a limit");
        prop_assert_eq!(again.most, most.drug);
    }

    #[test]
    fn more_weight_never_allows_less(grams in 3000_u32..249_000, more in 1_u32..1000) {
        let of = |grams: u32| format!("{}.{:03} kg", grams / 1000, grams % 1000);
        let less = maximum("us-labels", "lidocaine-100", "1.8", &of(grams), Heart::Healthy);
        let heavier = maximum("us-labels", "lidocaine-100", "1.8", &of(grams + more), Heart::Healthy);
        prop_assert!(heavier.drug >= less.drug && heavier.whole() >= less.whole());
    }
}

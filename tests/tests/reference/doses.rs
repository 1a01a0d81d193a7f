//! Local anaesthesia: the arithmetic of published tables and examples.

use crate::bedside::clinic;
use catalogue::numbers::Heart;
use clinic::numbers::{
    dose::{Maximum, Sitting, contents, dilution_of},
    entry::{Strength, Volume, Weight},
    exact::Exact,
    working::DOSE_FRAME,
};

const LIDOCAINE_LABEL: &str = "label of lidocaine 2 % with epinephrine";
const ARTICAINE_LABEL: &str = "label of articaine 4 %";
const MEPIVACAINE_LABEL: &str = "label of mepivacaine 3 % and 2 %";
const TABLES: &str = "Malamed, tables of maximum doses and of mg in a cartridge";
const ARTICLE: &str = "trade article on maximum doses, worked example";
const ARITHMETIC: &str = "arithmetic on a figure named beside it";

pub fn exact(text: &str) -> Exact {
    clinic::numbers::entry::number(text).expect(text)
}

pub fn maximum(rules: &str, solution: &str, volume: &str, weight: &str, heart: Heart) -> Maximum {
    let clinic = clinic();
    let numbers = &clinic.catalogue().numbers;
    Sitting {
        rules: numbers.rules(rules).expect(rules),
        solution: numbers.solution(solution).expect(solution),
        volume: Volume::read(volume).expect(volume),
        weight: Weight::read(weight).expect(weight),
        heart,
        years: None,
    }
    .maximum(numbers)
    .unwrap_or_else(|why| panic!("{rules}, {solution}: {why}"))
}

#[test]
fn milligrams_in_a_cartridge() {
    // Solution, volume, mg of drug, mg of vasoconstrictor (empty: none), source.
    for (solution, volume, mg, thin, source) in [
        ("lidocaine-100", "1.8", "36", "0.018", TABLES),
        ("lidocaine-100", "1.7", "34", "0.017", ARITHMETIC),
        ("lidocaine-50", "1.8", "36", "0.036", ARITHMETIC),
        ("articaine-100", "1.7", "68", "0.017", ARITHMETIC),
        ("articaine-100", "1.8", "72", "0.018", TABLES),
        ("articaine-200", "1.8", "72", "0.009", ARITHMETIC),
        ("articaine-200", "1.7", "68", "0.0085", ARITHMETIC),
        ("mepivacaine-plain", "1.7", "51", "", MEPIVACAINE_LABEL),
        ("mepivacaine-plain", "1.8", "54", "", TABLES),
        (
            "mepivacaine-levonordefrin",
            "1.7",
            "34",
            "0.085",
            MEPIVACAINE_LABEL,
        ),
        ("mepivacaine-levonordefrin", "1.8", "36", "0.09", TABLES),
        ("prilocaine-plain", "1.8", "72", "", TABLES),
        ("prilocaine-200", "1.7", "68", "0.0085", ARITHMETIC),
        ("bupivacaine-200", "1.8", "9", "0.009", TABLES),
        ("bupivacaine-200", "1.7", "8.5", "0.0085", ARITHMETIC),
    ] {
        let clinic = clinic();
        let solution = clinic
            .catalogue()
            .numbers
            .solution(solution)
            .expect(solution);
        let done = contents(
            Strength::percent(solution.percent),
            dilution_of(solution).map(|d| ("vasoconstrictor", d)),
            Volume::read(volume).expect(volume),
            Exact::whole(1),
        );
        assert_eq!(
            done.drug,
            exact(mg),
            "{}, {volume} mL ({source})",
            solution.name
        );
        let thin = (!thin.is_empty()).then(|| exact(thin));
        assert_eq!(done.vasoconstrictor, thin, "{} ({source})", solution.name);
    }
}

#[test]
fn the_most_of_a_drug() {
    // Rule, solution, weight, mg, source.
    for (rules, solution, weight, mg, source) in [
        (
            "us-labels",
            "lidocaine-100",
            "70 kg",
            "490",
            LIDOCAINE_LABEL,
        ),
        (
            "us-labels",
            "lidocaine-100",
            "80 kg",
            "500",
            LIDOCAINE_LABEL,
        ),
        (
            "us-labels",
            "lidocaine-100",
            "150 lb",
            "480",
            "label: 3.2 mg/lb; arithmetic",
        ),
        (
            "us-labels",
            "lidocaine-100",
            "20 kg",
            "140",
            "PMC9379193, worked example",
        ),
        (
            "us-labels",
            "articaine-100",
            "150 lb",
            "480",
            ARTICAINE_LABEL,
        ),
        (
            "us-labels",
            "articaine-100",
            "60 kg",
            "420",
            "label: 0.175 mL/kg, 10.5 mL",
        ),
        (
            "us-labels",
            "articaine-100",
            "100 kg",
            "700",
            "label: no maximum listed",
        ),
        (
            "us-labels",
            "mepivacaine-plain",
            "70 kg",
            "400",
            "label and Malamed: 6.6 mg/kg, 400 mg",
        ),
        ("us-labels", "prilocaine-plain", "60 kg", "480", TABLES),
        (
            "us-labels",
            "prilocaine-plain",
            "80 kg",
            "600",
            "label summary: 600 mg",
        ),
        ("us-labels", "bupivacaine-200", "40 kg", "90", TABLES),
        ("us-labels", "bupivacaine-200", "110 kg", "90", TABLES),
        ("older-cautious", "lidocaine-100", "150 lb", "300", ARTICLE),
        (
            "paediatric",
            "lidocaine-100",
            "20 kg",
            "88",
            "AAPD: value from memory",
        ),
        (
            "paediatric",
            "articaine-200",
            "25 kg",
            "175",
            "AAPD: value from memory",
        ),
        (
            "canada",
            "bupivacaine-200",
            "40 kg",
            "80",
            "PMC9379193, table 1",
        ),
        (
            "canada",
            "articaine-200",
            "100 kg",
            "500",
            "PMC9379193, table 1",
        ),
        (
            "canada",
            "prilocaine-plain",
            "80 kg",
            "500",
            "PMC9379193, table 1",
        ),
        (
            "australia",
            "prilocaine-plain",
            "60 kg",
            "360",
            "Australian table: 6 mg/kg",
        ),
        (
            "mepivacaine-child-table",
            "mepivacaine-plain",
            "20 lb",
            "60",
            MEPIVACAINE_LABEL,
        ),
        (
            "mepivacaine-child-table",
            "mepivacaine-plain",
            "30 lb",
            "90",
            MEPIVACAINE_LABEL,
        ),
        (
            "mepivacaine-child-table",
            "mepivacaine-plain",
            "100 lb",
            "270",
            MEPIVACAINE_LABEL,
        ),
        (
            "mepivacaine-child-table",
            "mepivacaine-levonordefrin",
            "100 lb",
            "180",
            MEPIVACAINE_LABEL,
        ),
        (
            "mepivacaine-child-share",
            "mepivacaine-plain",
            "45 lb",
            "120",
            "label rule; arithmetic",
        ),
    ] {
        let most = maximum(rules, solution, "1.8 mL", weight, Heart::Healthy);
        assert_eq!(
            most.drug,
            exact(mg),
            "{rules}, {solution}, {weight} ({source})"
        );
    }
}

#[test]
fn cartridges_as_labels_print_them_to_one_decimal() {
    // Solution, weight, cartridges of 1.7 mL to one decimal, source.
    for (solution, weight, cartridges, source) in [
        ("mepivacaine-plain", "20 lb", "1.2", MEPIVACAINE_LABEL),
        (
            "mepivacaine-levonordefrin",
            "20 lb",
            "1.8",
            MEPIVACAINE_LABEL,
        ),
        ("mepivacaine-plain", "30 lb", "1.8", MEPIVACAINE_LABEL),
        (
            "mepivacaine-levonordefrin",
            "30 lb",
            "2.6",
            MEPIVACAINE_LABEL,
        ),
        ("mepivacaine-plain", "40 lb", "2.4", ARITHMETIC),
        ("mepivacaine-levonordefrin", "40 lb", "3.5", ARITHMETIC),
        ("mepivacaine-plain", "50 lb", "2.9", ARITHMETIC),
        ("mepivacaine-levonordefrin", "50 lb", "4.4", ARITHMETIC),
        ("mepivacaine-plain", "80 lb", "4.7", ARITHMETIC),
        ("mepivacaine-plain", "100 lb", "5.3", MEPIVACAINE_LABEL),
        (
            "mepivacaine-levonordefrin",
            "100 lb",
            "5.3",
            MEPIVACAINE_LABEL,
        ),
    ] {
        let most = maximum(
            "mepivacaine-child-table",
            solution,
            "1.7 mL",
            weight,
            Heart::Healthy,
        );
        assert_eq!(
            most.by_drug.text(1),
            cartridges,
            "{solution}, {weight} ({source})"
        );
    }
    let most = maximum(
        "us-labels",
        "lidocaine-100",
        "1.8 mL",
        "20 kg",
        Heart::Healthy,
    );
    assert_eq!((most.by_drug.text(1), most.whole()), ("3.9".into(), 3)); // PMC9379193, worked example
}

#[test]
fn whole_cartridges() {
    use Heart::{Diseased, Healthy};
    // Rule, solution, volume, weight, heart, by the drug, by the vasoconstrictor, the answer, source.
    #[rustfmt::skip]
    let rows = [
        ("us-labels", "lidocaine-100", "1.8", "70 kg", Healthy, 13, Some(11), 11, ARITHMETIC),
        ("us-labels", "lidocaine-100", "1.7", "70 kg", Healthy, 14, Some(11), 11, ARITHMETIC),
        ("us-labels", "lidocaine-100", "1.8", "150 lb", Healthy, 13, Some(11), 11, ARTICLE),
        ("older-cautious", "lidocaine-100", "1.8", "150 lb", Healthy, 8, Some(11), 8, ARTICLE),
        ("us-labels", "lidocaine-50", "1.8", "70 kg", Healthy, 13, Some(5), 5, ARITHMETIC),
        ("us-labels", "articaine-100", "1.7", "150 lb", Healthy, 7, Some(11), 7, ARTICAINE_LABEL),
        ("us-labels", "articaine-200", "1.8", "70 kg", Healthy, 6, Some(22), 6, ARTICLE),
        ("us-labels", "articaine-200", "1.7", "70 kg", Healthy, 7, Some(23), 7, ARITHMETIC),
        ("us-labels", "prilocaine-plain", "1.8", "60 kg", Healthy, 6, None, 6, ARITHMETIC),
        ("us-labels", "prilocaine-plain", "1.8", "80 kg", Healthy, 8, None, 8, "label summary: 8 cartridges"),
        ("us-labels", "mepivacaine-plain", "1.8", "70 kg", Healthy, 7, None, 7, ARITHMETIC),
        ("us-labels", "mepivacaine-plain", "1.7", "70 kg", Healthy, 7, None, 7, ARITHMETIC),
        ("us-labels", "bupivacaine-200", "1.8", "70 kg", Healthy, 10, Some(22), 10, ARITHMETIC),
        ("canada", "bupivacaine-200", "1.8", "40 kg", Healthy, 8, Some(22), 8, ARITHMETIC),
        ("paediatric", "lidocaine-100", "1.7", "20 kg", Healthy, 2, Some(11), 2, "AAPD: value from memory"),
        ("us-labels", "lidocaine-100", "1.7", "20 kg", Healthy, 4, Some(11), 4, ARITHMETIC),
        ("paediatric", "articaine-200", "1.7", "25 kg", Healthy, 2, Some(23), 2, "AAPD: value from memory"),
        ("us-labels", "lidocaine-100", "1.8", "70 kg", Diseased, 13, Some(2), 2, "clinical note: two cartridges, 0.036 mg"),
        ("us-labels", "lidocaine-50", "1.8", "70 kg", Diseased, 13, Some(1), 1, ARITHMETIC),
        ("us-labels", "articaine-200", "1.8", "70 kg", Diseased, 6, Some(4), 4, ARITHMETIC),
        ("us-labels", "mepivacaine-levonordefrin", "1.8", "70 kg", Healthy, 11, Some(11), 11, "1.0 mg of levonordefrin: value from memory"),
        ("us-labels", "mepivacaine-levonordefrin", "1.8", "70 kg", Diseased, 11, Some(2), 2, "0.2 mg of levonordefrin: value from memory"),
    ];
    for (rules, solution, volume, weight, heart, drug, thin, whole, source) in rows {
        let most = maximum(rules, solution, volume, weight, heart);
        let what = format!("{rules}, {solution}, {volume} mL, {weight}, {heart:?} ({source})");
        assert_eq!(most.by_drug.count(), drug, "{what}");
        assert_eq!(most.by_vasoconstrictor.map(Exact::count), thin, "{what}");
        assert_eq!(most.whole(), whole, "{what}");
        assert_eq!(most.working.frame, Some(DOSE_FRAME), "{what}");
    }
}

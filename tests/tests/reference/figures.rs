//! Numbers on instruments: published figures and what follows from them.

use crate::bedside::clinic;
use catalogue::numbers::BurGroup;
use clinic::numbers::{
    black::{self, Bends, Margin},
    bur, canal_file,
    entry::number,
    exact::Exact,
};

fn exact(text: &str) -> Exact {
    number(text).expect(text)
}

#[test]
fn blacks_formulas() {
    // Formula, width, edge, length and angle in mm and degrees, margin, source.
    for (text, width, edge, length, angle, margin, source) in [
        (
            "13-95-8-14",
            "1.3",
            "342",
            "8",
            "50.4",
            Some(Margin::Distal),
            "Black 1899, p. 26; 1908, pp. 22-24: rule; Sturdevant: example, value from memory",
        ),
        (
            "13-80-8-14",
            "1.3",
            "288",
            "8",
            "50.4",
            Some(Margin::Mesial),
            "Sturdevant: value from memory",
        ),
        (
            "20-95-8-12",
            "2",
            "342",
            "8",
            "43.2",
            Some(Margin::Distal),
            "Black 1908: rule; arithmetic",
        ),
        (
            "15-8-14",
            "1.5",
            "",
            "8",
            "50.4",
            None,
            "Sturdevant: value from memory",
        ),
        (
            "10-7-14",
            "1",
            "",
            "7",
            "50.4",
            None,
            "Sturdevant: value from memory",
        ),
        (
            "10-85-8-14",
            "1",
            "306",
            "8",
            "50.4",
            Some(Margin::Mesial),
            "Sturdevant: value from memory",
        ),
        (
            "13-90-8-14",
            "1.3",
            "324",
            "8",
            "50.4",
            Some(Margin::Undecided),
            "handbooks differ: value from memory",
        ),
    ] {
        let clinic = clinic();
        let numbers = &clinic.catalogue().numbers;
        let formula = black::formula(text).expect(text);
        assert_eq!(formula.width_mm(), exact(width), "{text} ({source})");
        let edge = (!edge.is_empty()).then(|| exact(edge));
        assert_eq!(formula.edge_degrees(numbers), edge, "{text} ({source})");
        assert_eq!(formula.length, exact(length), "{text} ({source})");
        assert_eq!(
            formula.angle_degrees(numbers),
            exact(angle),
            "{text} ({source})"
        );
        assert_eq!(formula.margin(numbers), margin, "{text} ({source})");
        // The sketch stands at the angles of the formula.
        let sketch = formula.sketch(numbers);
        let end = sketch.angle_arc.last().expect("an arc");
        let turn = end.1.atan2(end.0).to_degrees();
        assert!((turn - exact(angle).for_drawing()).abs() < 0.01, "{text}");
    }
}

#[test]
fn blacks_contra_angle_rule() {
    // Black 1908, pp. 22 and 26: contra-angled beyond 3 mm; one bend back up to 12 centigrades.
    for (off_axis, angle, bends) in [
        (3.0, 23, Bends::None),
        (3.01, 12, Bends::Binangle),
        (3.01, 6, Bends::Binangle),
        (3.01, 13, Bends::TripleAngle),
        (8.0, 23, Bends::TripleAngle),
    ] {
        let clinic = clinic();
        let numbers = &clinic.catalogue().numbers;
        assert_eq!(
            black::bends(numbers, off_axis, Exact::whole(angle)),
            bends,
            "{off_axis} {angle}"
        );
    }
}

#[test]
fn root_canal_files() {
    let clinic = clinic();
    let numbers = &clinic.catalogue().numbers;
    // ISO 3630-1: the rule of D0 and the taper read on a technical page; D16 by arithmetic.
    for (size, from_tip, mm) in [
        (25, "0", "0.25"),
        (25, "16", "0.57"),
        (10, "1", "0.12"),
        (6, "0", "0.06"),
        (140, "16", "1.72"),
    ] {
        assert_eq!(
            canal_file::diameter(numbers, size, exact(from_tip)),
            exact(mm),
            "{size}"
        );
    }
    // A file 10 from which 1 mm is cut is a 12: technical page, read.
    assert_eq!(canal_file::shortened(numbers, 10, exact("1")), exact("12"));
    // Steps in per cent: technical page, read.
    for (size, next, percent) in [(10, 15, "50"), (30, 35, "16.7"), (55, 60, "9.09")] {
        let places = if percent.contains("9.09") { 2 } else { 1 };
        let step = canal_file::step(numbers, size).map(|(n, p)| (n, p.text(places)));
        assert_eq!(step, Some((next, percent.into())));
    }
    assert_eq!(canal_file::step(numbers, 140), None);
    // Colours of the series: value from memory.
    for (size, colour) in [
        (6, "pink"),
        (10, "purple"),
        (15, "white"),
        (25, "red"),
        (40, "black"),
        (45, "white"),
        (140, "black"),
    ] {
        assert_eq!(
            canal_file::file(numbers, size).map(|f| f.colour.as_str()),
            Ok(colour)
        );
    }
    assert!(canal_file::file(numbers, 65).is_err());
}

#[test]
fn bur_numbers() {
    let clinic = clinic();
    let numbers = &clinic.catalogue().numbers;
    // ISO 6360: structure and these codes read on a technical page.
    let long = bur::long("806 314 001 524 016").expect("fifteen digits");
    assert_eq!(long.diameter, exact("1.6"));
    for (group, words) in [
        (BurGroup::Material, "diamond"),
        (BurGroup::Shank, "friction grip"),
        (BurGroup::Shape, "round"),
        (BurGroup::Cutting, "medium"),
    ] {
        let says = long
            .code(numbers, group)
            .map(|c| c.says.as_str())
            .unwrap_or_default();
        assert!(says.contains(words), "{says}");
    }
    assert_eq!(
        bur::long("806.314.001.524.010")
            .map(|b| b.text())
            .as_deref(),
        Ok("806 314 001 524 010")
    );
    for text in [
        "806 314 001 524",
        "806 314 001 524 000",
        "80x 314 001 524 010",
        "",
    ] {
        assert!(bur::long(text).is_err(), "{text}");
    }
    // Short numbers, ISO 2157 and ADA specification 23: value from memory.
    for (text, mm) in [
        ("557", "1"),
        ("57", "1"),
        ("330", "0.8"),
        ("245", "0.8"),
        ("1/4", "0.5"),
        ("½", "0.6"),
        ("33½", "0.6"),
        ("33 1/2", "0.6"),
        ("8", "2.3"),
        ("703", "2.1"),
        ("169L", "0.9"),
        ("#701", "1.2"),
    ] {
        assert_eq!(
            bur::short(numbers, text).map(|b| b.diameter),
            Ok(exact(mm)),
            "{text}"
        );
    }
    assert!(bur::short(numbers, "9999").is_err());
    // 57 and 500 more is 557, the cross-cut one of the same size; tapers have no such partner.
    let words = |text: &str| {
        let bur = bur::short(numbers, text).expect(text);
        let lines = bur::short_working(numbers, &bur).lines;
        lines
            .into_iter()
            .map(|l| l.numbers)
            .collect::<Vec<_>>()
            .join(" | ")
    };
    assert!(words("57").contains("57 → 557"));
    assert!(!words("171").contains('→'));
}

#[test]
fn needles() {
    // ISO 6009: value from memory.
    let clinic = clinic();
    for (gauge, mm, colour) in [
        (25, "0.5", "orange"),
        (27, "0.4", "mid-grey"),
        (30, "0.3", "yellow"),
    ] {
        let needle = clinic
            .catalogue()
            .numbers
            .needles
            .iter()
            .find(|n| n.gauge == gauge)
            .expect("a gauge");
        assert_eq!(Exact::from(needle.diameter), exact(mm));
        assert_eq!(needle.colour, colour);
    }
}

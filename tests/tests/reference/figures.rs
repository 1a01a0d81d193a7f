//! Instruments, teeth, sterilising and fluoride: published figures and what
//! follows from them.

use crate::bedside::clinic;
use catalogue::numbers::BurGroup;
use clinic::{
    numbers::{
        black::{self, Bends, Margin},
        bur, canal_file,
        entry::{Clock, number},
        exact::Exact,
        fluoride, limit, proportion,
        spore::{Control, Decision, Load, Spores, decide},
        sterilising,
        teeth::{Moment, System, eruption, facts, read, written},
        unit::Unit,
    },
    tooth::Tooth,
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
fn teeth_in_three_systems() {
    // By arithmetic from the definitions of ISO 3950 and of the Universal system.
    for (fdi, universal) in [
        (16, "3"),
        (26, "14"),
        (36, "19"),
        (46, "30"),
        (11, "8"),
        (21, "9"),
        (31, "24"),
        (41, "25"),
        (18, "1"),
        (28, "16"),
        (38, "17"),
        (48, "32"),
        (51, "E"),
        (61, "F"),
        (71, "O"),
        (81, "P"),
        (55, "A"),
        (65, "J"),
        (75, "K"),
        (85, "T"),
    ] {
        let tooth = Tooth::from_fdi(fdi).expect("a tooth");
        assert_eq!(written(tooth, System::Universal), universal);
        assert_eq!(read(universal, System::Universal), Ok(tooth));
    }
    for tooth in Tooth::all() {
        let back = read(&written(tooth, System::Universal), System::Universal);
        assert_eq!(back.map(Tooth::fdi), Ok(tooth.fdi()));
    }
    let place = |number: u32| {
        read(&number.to_string(), System::Universal)
            .expect("a tooth")
            .place()
    };
    for (numbers, rises) in [
        (1..=8, false),
        (9..=16, true),
        (17..=24, false),
        (25..=32, true),
    ] {
        let places: Vec<u8> = numbers.map(place).collect();
        assert!(places.windows(2).all(|p| if rises {
            p[1] == p[0] + 1
        } else {
            p[1] + 1 == p[0]
        }));
    }
}

#[test]
fn when_teeth_come() {
    let clinic = clinic();
    let numbers = &clinic.catalogue().numbers;
    // ADA eruption charts, read: first tooth, then when it comes and is shed.
    for (fdi, from, to, sheds) in [
        (16, 6, 7, None),
        (43, 9, 10, None),
        (13, 11, 12, None),
        (81, 6, 10, Some((6, 7))),
        (85, 23, 31, Some((10, 12))),
        (83, 17, 23, Some((9, 12))),
        (55, 25, 33, Some((10, 12))),
        (48, 17, 21, None),
    ] {
        let tooth = Tooth::from_fdi(fdi).expect("a tooth");
        let facts = facts(numbers, tooth).expect("facts");
        assert_eq!((facts.erupts.from, facts.erupts.to), (from, to), "{fdi}");
        assert_eq!(facts.sheds.map(|s| (s.from, s.to)), sheds, "{fdi}");
        let scale = if tooth.is_primary() { 1 } else { 12 };
        for (months, moment) in [
            (from * scale - 1, Moment::Before),
            (from * scale, Moment::Within),
            (to * scale, Moment::Within),
            (to * scale + 1, Moment::After),
        ] {
            let told = eruption(numbers, tooth, months).map(|(m, _)| m);
            assert_eq!(told, Some(moment), "{fdi} at {months} months");
        }
    }
}

#[test]
fn degrees() {
    // Arithmetic; 340 °F beside 160 °C in a table in circulation is a misprint.
    for (celsius, fahrenheit, near) in [
        (121, "249.8", 250),
        (132, "269.6", 270),
        (160, "320", 320),
        (170, "338", 340),
        (190, "374", 375),
    ] {
        let value = Unit::Celsius
            .told_in(Exact::whole(celsius), Unit::Fahrenheit)
            .expect("a temperature");
        assert_eq!(value, exact(fahrenheit));
        assert!((value - Exact::whole(near)).size() <= Exact::whole(2));
    }
}

#[test]
fn cycles() {
    let clinic = clinic();
    // CDC 2008, table 7, read; J Am Dent Assoc 1991;122, table, read.
    for (id, celsius, minutes, drying, source) in [
        ("gravity-121", 121, 30, Some((15, 30)), "CDC 2008"),
        ("gravity-132", 132, 15, Some((15, 30)), "CDC 2008"),
        ("dynamic-132", 132, 4, Some((20, 30)), "CDC 2008"),
        ("gravity-132-textile", 132, 25, None, "CDC 2008"),
        ("dry-170", 170, 60, None, "JADA 1991"),
        ("dry-160", 160, 120, None, "JADA 1991"),
        ("forced-190-wrapped", 190, 12, None, "JADA 1991"),
        ("vapour-132", 132, 20, None, "JADA 1991"),
    ] {
        let cycle = clinic
            .catalogue()
            .numbers
            .cycles
            .iter()
            .find(|c| c.id == id)
            .expect(id);
        assert_eq!(
            (cycle.celsius, cycle.minutes.from),
            (celsius, minutes),
            "{id} ({source})"
        );
        assert_eq!(
            cycle.drying.map(|d| (d.from, d.to)),
            drying,
            "{id} ({source})"
        );
        let (end, dry) = sterilising::ends(cycle, Clock::at(23 * 60 + 50));
        assert_eq!(end, Clock::at(23 * 60 + 50 + minutes), "{id}");
        assert_eq!(
            dry.minutes(),
            (end.minutes() + drying.map_or(0, |d| d.0)) % 1440,
            "{id}"
        );
    }
}

#[test]
fn limits_of_water_and_nitrous_oxide() {
    let clinic = clinic();
    // 500 CFU/mL: trade article quoting EPA and CDC, read. 25 and 50 ppm: NIOSH texts, read.
    for (id, reading, above) in [
        ("unit-water", "500", false),
        ("unit-water", "501", true),
        ("unit-water", "0", false),
        ("nitrous-niosh", "25", false),
        ("nitrous-niosh", "25.1", true),
        ("nitrous-niosh", "26", true),
        ("nitrous-acgih", "26", false),
        ("nitrous-acgih", "50", false),
        ("nitrous-acgih", "51", true),
    ] {
        let limit = clinic
            .catalogue()
            .numbers
            .limits
            .iter()
            .find(|l| l.id == id)
            .expect(id);
        assert_eq!(limit::above(limit, exact(reading)), above, "{id} {reading}");
    }
}

#[test]
fn spore_tests() {
    let clinic = clinic();
    let usual = Load {
        days: 3,
        implant: false,
        spores: Spores::NotIn,
        control: Control::Grew,
        indicators: true,
        repeat: false,
    };
    // CDC 2003, MMWR 52(RR-17), list of monitoring, read.
    for (load, decision) in [
        (usual, Decision::Use),
        (Load { days: 7, ..usual }, Decision::Use),
        (Load { days: 8, ..usual }, Decision::TestNow),
        (
            Load {
                implant: true,
                days: 1,
                ..usual
            },
            Decision::TestNow,
        ),
        (
            Load {
                implant: true,
                spores: Spores::Waiting,
                ..usual
            },
            Decision::Hold,
        ),
        (
            Load {
                spores: Spores::Positive,
                ..usual
            },
            Decision::OutOfService,
        ),
        (
            Load {
                spores: Spores::Negative,
                repeat: true,
                ..usual
            },
            Decision::BackInService,
        ),
        (
            Load {
                spores: Spores::Positive,
                repeat: true,
                ..usual
            },
            Decision::Repair,
        ),
        (
            Load {
                spores: Spores::Negative,
                control: Control::DidNotGrow,
                ..usual
            },
            Decision::TestAgain,
        ),
        (
            Load {
                indicators: false,
                ..usual
            },
            Decision::RunAgain,
        ),
        (
            Load {
                spores: Spores::Negative,
                repeat: true,
                indicators: false,
                ..usual
            },
            Decision::RunAgain,
        ),
        (
            Load {
                spores: Spores::Positive,
                indicators: false,
                ..usual
            },
            Decision::OutOfService,
        ),
    ] {
        assert_eq!(
            decide(&clinic.catalogue().numbers, &load).0,
            decision,
            "{load:?}"
        );
    }
}

#[test]
fn powder_and_water() {
    let clinic = clinic();
    // Gypsum: Phillips, ISO 6873, value from memory. Alginate 23 g to 50 mL: Irnawati 2009, abstract, read.
    for (id, grams, from, to) in [
        ("gypsum-2", "100", "45", "50"),
        ("gypsum-3", "100", "28", "30"),
        ("gypsum-3", "150", "42", "45"),
        ("gypsum-4", "50", "11", "12"),
        ("gypsum-5", "100", "18", "22"),
        ("alginate-weighed", "23", "50", "50"),
        ("alginate-weighed", "11.5", "25", "25"),
    ] {
        let proportion = clinic
            .catalogue()
            .numbers
            .proportions
            .iter()
            .find(|p| p.id == id)
            .expect(id);
        let liquid = proportion::liquid(proportion, exact(grams));
        assert_eq!(liquid, (exact(from), exact(to)), "{id}, {grams} g");
    }
}

#[test]
fn fluoride_in_varnish() {
    // 5 % NaF is 2.26 % F (ADA 2013, read); factor 19.00 ÷ 41.99 = 0.4525 by arithmetic.
    let clinic = clinic();
    let percent = fluoride::fluoride(&clinic.catalogue().numbers, Exact::whole(5));
    assert_eq!(percent.text(2), "2.26");
    let ppm = percent * Exact::whole(10_000);
    assert!((ppm - Exact::whole(22_600)).size() < Exact::whole(50));
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

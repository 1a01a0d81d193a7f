//! Sterilising, limits of water and gas, powder and water, fluoride.

use crate::bedside::clinic;

use clinic::numbers::{
    entry::{Clock, number},
    exact::Exact,
    fluoride, limit, proportion,
    spore::{Control, Decision, Load, Spores, decide},
    sterilising,
    unit::Unit,
};

fn exact(text: &str) -> Exact {
    number(text).expect(text)
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

//! Cutting edges against the formulas on their handles.

use crate::instruments::{drawn, is};

use drawing::{Blade, Cut, Drawing, End, Grip, Hand, Handle, Measured, Segment, Tip};

const BLACK: &str = "Black, Technical Procedures in Filling Teeth, 1899, p. 26; Operative Dentistry vol. 2, 1908, pp. 22-24";

fn measured(blade: Blade) -> Measured {
    let end = End {
        root: 2.8,
        neck: 1.5,
        shank: vec![
            Segment {
                length: 9.0,
                bend: 0.0,
                curve: 0.0,
            },
            Segment {
                length: 8.0,
                bend: -26.0,
                curve: 0.0,
            },
        ],
        tip: Tip::Blade(blade),
        turned: false,
    };
    let hand = Hand {
        handle: Handle {
            length: 104.0,
            diameter: 6.0,
            grip: Grip::Octagonal,
            mark: String::new(),
        },
        ends: vec![end],
    };
    let drawing = Drawing::Hand(hand);
    drawing
        .measured_blade(0)
        .expect("a blade by Black's formula")
}

/// Name, formula, and what it comes to: width and length in mm, angle and edge in degrees.
#[test]
fn blades_measure_what_blacks_formula_says() {
    type Row = (&'static str, f32, Option<f32>, f32, f32, Cut, f32, f32);
    const ROWS: [Row; 6] = [
        ("15-8-14 hoe", 15.0, None, 8.0, 14.0, Cut::Hoe, 1.5, 50.4),
        (
            "10-7-14 hatchet",
            10.0,
            None,
            7.0,
            14.0,
            Cut::Hatchet,
            1.0,
            50.4,
        ),
        (
            "10-85-8-14 angle former",
            10.0,
            Some(85.0),
            8.0,
            14.0,
            Cut::Hatchet,
            1.0,
            50.4,
        ),
        (
            "13-95-8-14 trimmer",
            13.0,
            Some(95.0),
            8.0,
            14.0,
            Cut::Hatchet,
            1.3,
            50.4,
        ),
        (
            "13-80-8-14 trimmer",
            13.0,
            Some(80.0),
            8.0,
            14.0,
            Cut::Hatchet,
            1.3,
            50.4,
        ),
        (
            "20-95-8-12 trimmer",
            20.0,
            Some(95.0),
            8.0,
            12.0,
            Cut::Hatchet,
            2.0,
            43.2,
        ),
    ];
    for (name, width_tenths, edge_centigrades, length, angle_centigrades, cut, mm, degrees) in ROWS
    {
        let found = measured(Blade {
            width_tenths,
            edge_centigrades,
            length,
            angle_centigrades,
            cut,
            curved: false,
        });
        assert!(is(found.width_mm, mm, 0.02), "{name}: {found:?} ({BLACK})");
        assert!(
            is(found.length_mm, length, 0.1),
            "{name}: {found:?} ({BLACK})"
        );
        assert!(
            is(found.angle_degrees, degrees, 0.5),
            "{name}: {found:?} ({BLACK})"
        );
        if let Some(edge) = edge_centigrades {
            assert!(
                is(found.edge_degrees, edge * 3.6, 1.0),
                "{name}: {found:?} ({BLACK})"
            );
        }
    }
}

/// The catalogue's own cutting instruments: both ends as drawn.
#[test]
fn drawn_cutting_instruments_measure_what_their_formula_says() {
    for (item, width, edge, angle) in [
        ("enamel-hatchet", 1.5, None, 50.4),
        ("gingival-margin-trimmer-mesial", 1.3, Some(288.0), 50.4),
        ("gingival-margin-trimmer-distal", 1.3, Some(342.0), 50.4),
    ] {
        for end in 0..2 {
            let found = drawn(item).measured_blade(end).expect("a blade");
            assert!(
                is(found.width_mm, width, 0.03),
                "{item}: {found:?} ({BLACK})"
            );
            assert!(
                is(found.angle_degrees, angle, 0.6),
                "{item}: {found:?} ({BLACK})"
            );
            if let Some(edge) = edge {
                assert!(
                    is(found.edge_degrees, edge, 1.5),
                    "{item}: {found:?} ({BLACK})"
                );
            }
        }
    }
}

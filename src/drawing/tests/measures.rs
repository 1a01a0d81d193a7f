//! What is drawn agrees with the measurements, read back from the points.

use drawing::{
    Blade, Bur, BurShank, CENTIGRADE, Cut, Cutting, Drawing, End, Hand, Handle, Head, Mark, Needle,
    Part, Plate, Segment, Tip,
};

fn with_blade(blade: Blade, shank: Vec<Segment>) -> Drawing {
    let end = End {
        shank,
        root: 2.8,
        neck: 1.4,
        tip: Tip::Blade(blade),
        turned: false,
    };
    Drawing::Hand(Hand {
        handle: Handle {
            length: 104.0,
            diameter: 6.0,
            grip: drawing::Grip::Octagonal,
            mark: String::new(),
        },
        ends: vec![end.clone(), end],
    })
}

fn segment(length: f32, bend: f32) -> Segment {
    Segment {
        length,
        bend,
        curve: 0.0,
    }
}

fn near(drawn: f32, meant: f32, what: &str) {
    assert!((drawn - meant).abs() < 0.02, "{what}: {drawn}, not {meant}");
}

/// Width in tenths, edge, length, angle, how it cuts, name.
type Formula = (f32, Option<f32>, f32, f32, Cut, &'static str);

/// Black's formulas and what they mean in millimetres and degrees. The examples are those of a
/// handbook of operative dentistry (values from memory); the rule that reads them is Black's own
/// (*Technical Procedures*, 1899, p. 26; *Operative Dentistry* vol. 2, 1908, pp. 22-24).
const FORMULAS: [Formula; 5] = [
    (15.0, None, 8.0, 14.0, Cut::Hoe, "15-8-14 hoe"),
    (10.0, None, 7.0, 14.0, Cut::Hatchet, "10-7-14 hatchet"),
    (
        10.0,
        Some(85.0),
        8.0,
        14.0,
        Cut::Hoe,
        "10-85-8-14 angle former",
    ),
    (
        13.0,
        Some(95.0),
        8.0,
        14.0,
        Cut::Hatchet,
        "13-95-8-14 margin trimmer",
    ),
    (
        13.0,
        Some(80.0),
        8.0,
        14.0,
        Cut::Hatchet,
        "13-80-8-14 margin trimmer",
    ),
];

#[test]
fn blades_are_drawn_to_their_formula_whatever_the_shank() {
    let shanks = [
        vec![segment(12.0, 0.0)],
        vec![segment(9.0, 0.0), segment(8.0, -26.0), segment(3.0, 30.0)],
        vec![segment(6.0, 10.0), segment(6.0, -35.0), segment(4.0, 50.0)],
    ];
    for (width_tenths, edge_centigrades, length, angle_centigrades, cut, name) in FORMULAS {
        for shank in &shanks {
            let blade = Blade {
                width_tenths,
                edge_centigrades,
                length,
                angle_centigrades,
                cut,
                curved: false,
            };
            let drawing = with_blade(blade, shank.clone());
            drawing.check().unwrap_or_else(|f| panic!("{name}: {f}"));
            let drawn = drawing.measured_blade(0).expect(name);
            near(drawn.width_mm, width_tenths / 10.0, name);
            near(drawn.length_mm, length, name);
            near(drawn.angle_degrees, angle_centigrades * CENTIGRADE, name);
            if let Some(edge) = edge_centigrades {
                near(drawn.edge_degrees, edge * CENTIGRADE, name);
            }
        }
    }
}

#[test]
fn the_edge_of_a_distal_trimmer_leans_away_from_the_handle_and_of_a_mesial_one_towards_it() {
    let reach = |edge: f32| {
        let blade = Blade {
            width_tenths: 13.0,
            edge_centigrades: Some(edge),
            length: 8.0,
            angle_centigrades: 14.0,
            cut: Cut::Hatchet,
            curved: true,
        };
        let plate = with_blade(blade, vec![segment(9.0, 0.0)]).plate().unwrap();
        // The last blade drawn is on the right; its outline runs base, edge, edge, base.
        let blade = plate.shapes.iter().rev().find_map(|s| match &s.mark {
            Mark::Closed(points) if s.part == Part::Working => Some(points.clone()),
            _ => None,
        });
        let [base_in, edge_in, edge_out, base_out] = blade.unwrap()[..] else {
            panic!("a blade has four corners");
        };
        assert!(base_in.x < base_out.x, "the first side faces the handle");
        (edge_out - base_out).length() - (edge_in - base_in).length()
    };
    assert!(reach(95.0) > 0.0, "95: distal");
    assert!(reach(100.0) > 0.0, "100: distal");
    assert!(reach(80.0) < 0.0, "80: mesial");
    assert!(reach(75.0) < 0.0, "75: mesial");
}

/// Width of the part's outlines square to the long way of a level drawing.
fn height(plate: &Plate, part: Part) -> f32 {
    let points = plate.shapes.iter().filter(|s| s.part == part);
    let ys: Vec<f32> = points
        .flat_map(drawing::Shape::points)
        .map(|p| p.y)
        .collect();
    let high = ys.iter().copied().fold(f32::MIN, f32::max);
    high - ys.iter().copied().fold(f32::MAX, f32::min)
}

/// US numbers and head diameters, nominal sizes of ISO 2157 (values from memory).
#[test]
fn bur_heads_and_shanks_have_their_diameters() {
    let table: [(&str, Head, f32, f32); 24] = [
        ("1/4", Head::Round, 0.5, 0.48),
        ("1/2", Head::Round, 0.6, 0.58),
        ("1", Head::Round, 0.8, 0.76),
        ("2", Head::Round, 1.0, 0.95),
        ("4", Head::Round, 1.4, 1.3),
        ("6", Head::Round, 1.8, 1.7),
        ("8", Head::Round, 2.3, 2.1),
        ("33 1/2", Head::InvertedCone, 0.6, 0.6),
        ("35", Head::InvertedCone, 1.0, 0.9),
        ("39", Head::InvertedCone, 1.8, 1.6),
        ("329", Head::Pear, 0.7, 1.3),
        ("330", Head::Pear, 0.8, 1.6),
        ("332", Head::Pear, 1.2, 2.0),
        ("245", Head::Pear, 0.8, 3.0),
        ("55", Head::Cylinder, 0.8, 3.5),
        ("56", Head::Cylinder, 0.9, 3.6),
        ("57", Head::Cylinder, 1.0, 4.0),
        ("557", Head::Cylinder, 1.0, 4.0),
        ("558", Head::Cylinder, 1.2, 4.2),
        ("169", Head::Cone, 0.9, 4.2),
        ("171", Head::Cone, 1.2, 4.2),
        ("701", Head::Cone, 1.2, 4.2),
        ("271", Head::RoundedCone, 0.8, 4.0),
        ("957", Head::EndCutting, 1.0, 1.5),
    ];
    for (number, head, diameter, head_length) in table {
        for (shank, thick, length) in [
            (BurShank::FrictionGrip, 1.6, 19.0),
            (BurShank::Latch, 2.35, 22.0),
            (BurShank::Handpiece, 2.35, 44.5),
        ] {
            let bur = Drawing::Bur(Bur {
                head,
                diameter,
                head_length,
                cutting: Cutting::Blades,
                shank,
                length,
                neck: 0.0,
                rings: 0,
            });
            bur.check().unwrap();
            let plate = bur.plate().unwrap();
            near(height(&plate, Part::Working), diameter, number);
            near(height(&plate, Part::Shank), thick, number);
        }
    }
}

/// Outside diameters by ISO 6009 (values from memory).
#[test]
fn needles_are_as_thick_as_their_gauge_says() {
    for (gauge, thick) in [(25, 0.5), (27, 0.4), (30, 0.3)] {
        let needle = Drawing::Needle(Needle {
            gauge,
            length: 25.0,
        });
        near(
            height(&needle.plate().unwrap(), Part::Working),
            thick,
            "needle",
        );
    }
    assert!(
        Drawing::Needle(Needle {
            gauge: 12,
            length: 25.0
        })
        .check()
        .is_err()
    );
}

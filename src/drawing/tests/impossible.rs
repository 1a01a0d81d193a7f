//! Any admissible measurements give sound geometry; impossible ones are refused with their field.

use drawing::{
    Bur, BurShank, Cutting, Drawing, End, Grip, Hand, Handle, Head, Mark, PaddleEnd, Plate,
    Segment, Tip, Toe,
};
use proptest::prelude::*;

fn hand(end: End) -> Drawing {
    Drawing::Hand(Hand {
        handle: Handle {
            length: 104.0,
            diameter: 6.0,
            grip: Grip::Knurled,
            mark: String::new(),
        },
        ends: vec![end],
    })
}

fn end(tip: Tip) -> End {
    End {
        shank: vec![Segment {
            length: 10.0,
            bend: 0.0,
            curve: 0.0,
        }],
        root: 2.6,
        neck: 1.0,
        tip,
        turned: false,
    }
}

fn ball(diameter: f32) -> Drawing {
    hand(end(Tip::Ball { diameter }))
}

fn refusal(drawing: &Drawing) -> String {
    drawing.check().unwrap_err().to_string()
}

#[test]
fn a_refusal_names_the_field_and_what_would_be_right() {
    for (drawing, says) in [
        (
            ball(-1.0),
            "end 1, tip, diameter is -1 mm; it must be above 0 and at most 6 mm",
        ),
        (ball(0.0), "end 1, tip, diameter is 0 mm"),
        (ball(f32::NAN), "end 1, tip, diameter is 0 mm"),
        (
            ball(7.0),
            "end 1, tip, diameter is 7 mm; it must be above 0 and at most 6 mm",
        ),
        (
            hand(End {
                neck: 3.0,
                ..end(Tip::Point)
            }),
            "end 1, neck is 3 mm; it must be above 0 and at most 2.6 mm",
        ),
        (
            hand(End {
                shank: vec![Segment {
                    length: -4.0,
                    bend: 0.0,
                    curve: 0.0,
                }],
                ..end(Tip::Point)
            }),
            "end 1, shank, segment 1, length is -4 mm",
        ),
        (
            hand(End {
                shank: vec![Segment {
                    length: 2.0,
                    bend: 0.0,
                    curve: 300.0,
                }],
                ..end(Tip::Point)
            }),
            "end 1, shank, the curve is tighter than the body is thick there",
        ),
        (
            hand(End {
                shank: vec![Segment {
                    length: 250.0,
                    bend: 0.0,
                    curve: 0.0,
                }],
                ..end(Tip::Point)
            }),
            "the whole length is 357",
        ),
        (
            Drawing::Hand(Hand {
                handle: Handle {
                    length: 8.0,
                    diameter: 6.0,
                    grip: Grip::Smooth,
                    mark: String::new(),
                },
                ends: vec![end(Tip::Point)],
            }),
            "handle, length is less than twice the diameter",
        ),
        (
            Drawing::Group(Vec::new()),
            "the drawing has no shapes to show",
        ),
    ] {
        let said = refusal(&drawing);
        assert!(said.starts_with(says), "{said}");
    }
}

#[test]
fn an_outline_that_crosses_itself_is_refused() {
    let text = r#"
        [[drawing]]
        id = "bow-tie"
        [drawing.form.figure]
        pieces = [{ outline = { points = [[0, 0], [10, 10], [10, 0], [0, 10]] } }]
    "#;
    let sheet: drawing::Sheet = toml::from_str(text).unwrap();
    assert!(refusal(&sheet.drawing[0].form).starts_with("the outline crosses itself"));
}

fn inside(plate: &Plate) {
    for shape in &plate.shapes {
        for point in shape.points() {
            assert!(point.x.is_finite() && point.y.is_finite(), "{shape:?}");
            assert!((0.0..=plate.width_mm).contains(&point.x), "{shape:?}");
            assert!((0.0..=plate.height_mm).contains(&point.y), "{shape:?}");
        }
        if let Mark::Closed(points) = &shape.mark {
            assert!(points.len() >= 3, "{shape:?}");
        }
    }
    let svg = plate.to_svg();
    assert!(!svg.contains("NaN") && !svg.contains("inf"), "{svg}");
}

fn any_tip() -> impl Strategy<Value = Tip> {
    let mm = 0.2f32..8.0;
    prop_oneof![
        Just(Tip::Point),
        mm.clone().prop_map(|diameter| Tip::Mirror { diameter }),
        mm.clone().prop_map(|diameter| Tip::Ball { diameter }),
        mm.clone().prop_map(|diameter| Tip::Discoid { diameter }),
        (mm.clone(), mm.clone()).prop_map(|(width, length)| Tip::Spoon { width, length }),
        (mm.clone(), mm.clone()).prop_map(|(width, length)| Tip::Cleoid { width, length }),
        (mm.clone(), mm.clone()).prop_map(|(width, length)| Tip::Leaf { width, length }),
        (mm.clone(), mm.clone(), any::<bool>()).prop_map(|(diameter, length, serrated)| {
            Tip::Condenser {
                diameter,
                length,
                serrated,
            }
        }),
        (mm.clone(), mm.clone(), any::<bool>()).prop_map(|(diameter, length, pointed)| {
            Tip::Egg {
                diameter,
                length,
                pointed,
            }
        }),
        (mm.clone(), mm.clone(), mm.clone()).prop_map(|(width, length, thickness)| Tip::Paddle {
            width,
            length,
            thickness,
            end: PaddleEnd::Round,
        }),
        (mm.clone(), mm, -170f32..170.0).prop_map(|(width, length, curve)| Tip::Hook {
            width,
            length,
            curve,
            toe: Toe::Pointed,
            face: 90.0,
        }),
    ]
}

fn any_shank() -> impl Strategy<Value = Vec<Segment>> {
    let piece =
        (-1f32..40.0, -100f32..100.0, -200f32..200.0).prop_map(|(length, bend, curve)| Segment {
            length,
            bend,
            curve,
        });
    prop::collection::vec(piece, 0..4)
}

fn any_head() -> impl Strategy<Value = Head> {
    prop::sample::select(vec![
        Head::Round,
        Head::InvertedCone,
        Head::Pear,
        Head::Cylinder,
        Head::RoundedCylinder,
        Head::Cone,
        Head::RoundedCone,
        Head::Flame,
        Head::Football,
        Head::Needle,
        Head::EndCutting,
        Head::Wheel,
    ])
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(400))]

    #[test]
    fn whatever_is_admitted_lies_inside_its_plate(
        tip in any_tip(),
        shank in any_shank(),
        root in 0.5f32..7.0,
        neck in 0.1f32..3.0,
        turned in any::<bool>(),
    ) {
        let drawing = hand(End { shank, root, neck, tip, turned });
        match (drawing.plate(), drawing.working_end()) {
            (Ok(plate), Ok(close)) => {
                inside(&plate);
                close.iter().for_each(inside);
                prop_assert!(plate.width_mm > 100.0);
            }
            (Err(fault), _) | (_, Err(fault)) => prop_assert!(!fault.field.is_empty()),
        }
    }

    #[test]
    fn every_bur_of_sound_size_is_drawn_and_crosses_nothing(
        head in any_head(),
        diameter in 0.4f32..5.0,
        slim in 0.6f32..5.0,
    ) {
        let bur = Drawing::Bur(Bur {
            head,
            diameter,
            head_length: (diameter * slim).min(11.0),
            cutting: Cutting::Diamond,
            shank: BurShank::FrictionGrip,
            length: 22.0,
            neck: 0.0,
            rings: 0,
        });
        prop_assert_eq!(bur.check(), Ok(()));
        inside(&bur.plate().unwrap());
    }
}

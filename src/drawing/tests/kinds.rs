//! Canal files, elevators and clamps, read back from the points that are drawn.

use drawing::{CanalFile, Drawing, End, Flutes, Hand, Handle, Mark, Part, Segment, Tip};

fn near(drawn: f32, meant: f32, what: &str) {
    assert!((drawn - meant).abs() < 0.02, "{what}: {drawn}, not {meant}");
}

/// Sizes and colours of ISO 3630-1; the diameter at the tip is the size in hundredths of a
/// millimetre, and a taper of 0.02 adds 0.32 mm over the 16 mm that cut (values from memory).
#[test]
fn canal_files_have_their_diameters_and_their_colours() {
    let table = [
        (6, "pink", 0.38),
        (8, "grey", 0.40),
        (10, "purple", 0.42),
        (15, "white", 0.47),
        (20, "yellow", 0.52),
        (25, "red", 0.57),
        (30, "blue", 0.62),
        (35, "green", 0.67),
        (40, "black", 0.72),
        (45, "white", 0.77),
        (60, "blue", 0.92),
        (80, "black", 1.12),
        (90, "white", 1.22),
        (140, "black", 1.72),
    ];
    for (size, colour, at_16) in table {
        assert_eq!(CanalFile::colour(size), Some(colour), "size {size}");
        let file = |flutes| CanalFile {
            flutes,
            size,
            taper: 2,
            length: 25.0,
        };
        // A broach is smooth but for its barbs, so its outline is the taper itself.
        let plate = Drawing::CanalFile(file(Flutes::Barbs)).plate().unwrap();
        let blade = plate.shapes.iter().find_map(|s| match &s.mark {
            Mark::Closed(points) if s.part == Part::Working => Some(points.clone()),
            _ => None,
        });
        let blade = blade.unwrap();
        let tip = f32::from(size) / 100.0;
        let highest = |low: f32, high: f32| {
            let left = blade.iter().map(|p| p.x).fold(f32::MAX, f32::min);
            let ys = blade.iter().filter(|p| (low..high).contains(&(p.x - left)));
            let ys: Vec<f32> = ys.map(|p| p.y).collect();
            ys.iter().copied().fold(f32::MIN, f32::max)
                - ys.iter().copied().fold(f32::MAX, f32::min)
        };
        near(highest(24.99, 25.02 + tip), tip, "at the tip");
        near(highest(-0.01, 9.1), at_16, "16 mm behind it");
        for flutes in [
            Flutes::Twisted,
            Flutes::Loose,
            Flutes::Cones,
            Flutes::Rotary,
        ] {
            Drawing::CanalFile(file(flutes)).check().unwrap();
        }
    }
    assert_eq!(CanalFile::colour(12), None);
    assert_eq!(CanalFile::colour(65), None);
}

/// The point of a pennant elevator lies on the side its name says, seen along it from the handle.
#[test]
fn left_and_right_elevators_are_mirror_images() {
    let drawn = |right: bool| {
        let end = End {
            shank: vec![Segment {
                length: 50.0,
                bend: 0.0,
                curve: 0.0,
            }],
            root: 8.0,
            neck: 4.0,
            tip: Tip::Pennant {
                width: 11.0,
                length: 13.0,
                right,
            },
            turned: false,
        };
        let drawing = Drawing::Hand(Hand {
            handle: Handle {
                length: 60.0,
                diameter: 26.0,
                grip: drawing::Grip::Pear,
                mark: String::new(),
            },
            ends: vec![end],
        });
        let plate = drawing.plate().unwrap();
        let blade = plate.shapes.iter().find_map(|s| match &s.mark {
            Mark::Closed(points) if s.part == Part::Working => Some(points.clone()),
            _ => None,
        });
        // The tip lies to the left of its handle and y runs down, so right of the axis is above it.
        let axis = blade.as_ref().unwrap()[..2]
            .iter()
            .map(|p| p.y)
            .sum::<f32>()
            / 2.0;
        let ys = blade.unwrap().into_iter().map(|p| p.y - axis);
        ys.max_by(|a, b| a.abs().total_cmp(&b.abs())).unwrap()
    };
    near(drawn(true), -11.0, "right");
    near(drawn(false), 11.0, "left");
}

/// The distance between the jaws is the span; wings and a second bow are there when named, as on
/// the clamps of the handbooks: 9 has two bows, W7 has no wings (values from memory).
#[test]
fn clamps_have_the_wings_bows_and_span_they_are_given() {
    for (number, span, winged, double_bow, outlines) in [
        ("7", 6.0, true, false, 7),
        ("W7", 6.0, false, false, 5),
        ("2", 3.2, true, false, 7),
        ("9", 2.6, false, true, 6),
    ] {
        let clamp = Drawing::Clamp(drawing::Clamp {
            span,
            jaw: 6.0,
            winged,
            serrated: false,
            double_bow,
        });
        clamp.check().unwrap();
        let plate = clamp.plate().unwrap();
        let closed = |s: &&drawing::Shape| matches!(s.mark, Mark::Closed(_));
        assert_eq!(
            plate.shapes.iter().filter(closed).count(),
            outlines,
            "{number}"
        );
        let edges = plate.shapes.iter().filter(|s| s.ink == drawing::Ink::Edge);
        let xs: Vec<f32> = edges
            .flat_map(drawing::Shape::points)
            .map(|p| p.x - plate.width_mm / 2.0)
            .collect();
        let nearest = xs.iter().map(|x| x.abs()).fold(f32::MAX, f32::min);
        near(2.0 * nearest, span, number);
    }
}

#[test]
fn a_drawing_without_words_keeps_its_shape_and_the_scale_of_its_enlargement() {
    let file = Drawing::Figure(drawing::Figure {
        pieces: vec![
            drawing::Piece::Block {
                at: [0.0, 0.0],
                size: [40.0, 10.0],
                round: 0.0,
                ink: drawing::Ink::Steel,
            },
            drawing::Piece::Words {
                at: [20.0, 5.0],
                size: 4.0,
                text: "GIVEAWAY".into(),
            },
        ],
        close: vec![
            drawing::Piece::Block {
                at: [0.0, 0.0],
                size: [20.0, 10.0],
                round: 0.0,
                ink: drawing::Ink::Steel,
            },
            drawing::Piece::Words {
                at: [10.0, 5.0],
                size: 4.0,
                text: "GIVEAWAY".into(),
            },
        ],
    });
    let whole = file.plate().unwrap();
    let bare = whole.clone().without_words();
    assert!(whole.to_svg().contains("GIVEAWAY") && !bare.to_svg().contains("GIVEAWAY"));
    assert_eq!(
        (bare.width_mm, bare.height_mm),
        (whole.width_mm, whole.height_mm)
    );
    assert_eq!(bare.shapes.len() + 1, whole.shapes.len());
    let close = file
        .working_end()
        .unwrap()
        .unwrap()
        .without_words()
        .to_svg();
    assert!(close.contains("5 mm") && !close.contains("GIVEAWAY"));
}

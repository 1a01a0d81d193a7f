//! The drawings of the catalogue.

use drawing::{BurShank, Drawing, Ink, Mark, Piece, Sheet, Tip, Toe};
use std::collections::BTreeMap;
use std::fs;
use std::path::Path;

fn all() -> BTreeMap<String, Drawing> {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../content/drawings");
    let mut drawings = BTreeMap::new();
    for file in fs::read_dir(folder).unwrap() {
        let path = file.unwrap().path();
        let sheet: Sheet = toml::from_str(&fs::read_to_string(&path).unwrap())
            .unwrap_or_else(|e| panic!("{}: {e}", path.display()));
        for entry in sheet.drawing {
            let twice = drawings.insert(entry.id.clone(), entry.form);
            assert!(twice.is_none(), "{} is drawn twice", entry.id);
        }
    }
    drawings
}

#[test]
fn every_drawing_is_possible_and_survives_packing() {
    for (id, drawing) in all() {
        drawing.check().unwrap_or_else(|f| panic!("{id}: {f}"));
        let packed = postcard::to_allocvec(&drawing).unwrap();
        assert_eq!(
            postcard::from_bytes::<Drawing>(&packed).unwrap(),
            drawing,
            "{id}"
        );
    }
}

#[test]
fn no_two_items_share_a_picture() {
    let mut seen = BTreeMap::new();
    for (id, drawing) in all() {
        let picture = drawing.plate().unwrap().to_svg();
        if let Some(other) = seen.insert(picture, id.clone()) {
            panic!("{id} and {other} look the same");
        }
    }
}

/// The formulas the handbooks give for the instruments drawn (values from memory).
#[test]
fn trimmers_and_hatchet_are_drawn_to_formula() {
    let all = all();
    for (id, width, length, angle, edge) in [
        ("enamel-hatchet", 1.5, 8.0, 50.4, None),
        (
            "gingival-margin-trimmer-mesial",
            1.3,
            8.0,
            50.4,
            Some(288.0),
        ),
        (
            "gingival-margin-trimmer-distal",
            1.3,
            8.0,
            50.4,
            Some(342.0),
        ),
    ] {
        let drawn = all[id].measured_blade(0).expect(id);
        assert!((drawn.width_mm - width).abs() < 0.02, "{id} {drawn:?}");
        assert!((drawn.length_mm - length).abs() < 0.02, "{id} {drawn:?}");
        assert!((drawn.angle_degrees - angle).abs() < 0.05, "{id} {drawn:?}");
        if let Some(edge) = edge {
            let edge: f32 = edge;
            assert!((drawn.edge_degrees - edge).abs() < 0.05, "{id} {drawn:?}");
        }
    }
}

/// Diameters of threads that are not of gut, by USP size in millimetres (values from memory).
#[test]
fn suture_threads_are_as_thick_as_their_size_says() {
    let all = all();
    for (id, thinnest, thickest) in [
        ("suture-silk-3-0", 0.2, 0.249),
        ("suture-resorbable-4-0", 0.15, 0.199),
    ] {
        let Drawing::Figure(figure) = &all[id] else {
            panic!("{id} is a figure");
        };
        let Some(Piece::Rod { widths, .. }) = figure.close.first() else {
            panic!("the enlargement of {id} begins with the thread");
        };
        let thick = 2.0 * widths[0][1];
        assert!((thinnest..=thickest).contains(&thick), "{id}: {thick}");
    }
}

/// Head diameters and shanks of the burs drawn: US numbers, nominal sizes of ISO 2157; shanks and
/// lengths of ISO 1797 (values from memory).
#[test]
fn burs_of_the_catalogue_have_their_nominal_sizes() {
    let all = all();
    for (id, diameter, shank) in [
        ("bur-round-half", 0.6, BurShank::FrictionGrip),
        ("bur-round-2", 1.0, BurShank::FrictionGrip),
        ("bur-round-4-latch", 1.4, BurShank::Latch),
        ("bur-round-6-latch", 1.8, BurShank::Latch),
        ("bur-round-8-latch", 2.3, BurShank::Latch),
        ("bur-round-long-latch", 1.0, BurShank::Latch),
        ("bur-surgical-round", 2.3, BurShank::Handpiece),
        ("bur-330", 0.8, BurShank::FrictionGrip),
        ("bur-245", 0.8, BurShank::FrictionGrip),
        ("bur-56", 0.9, BurShank::FrictionGrip),
        ("bur-557", 1.0, BurShank::FrictionGrip),
        ("bur-169l", 0.9, BurShank::FrictionGrip),
        ("bur-surgical-fissure-703", 2.1, BurShank::Handpiece),
        ("gates-glidden-2", 0.7, BurShank::Latch),
        ("gates-glidden-3", 0.9, BurShank::Latch),
    ] {
        let Drawing::Bur(bur) = &all[id] else {
            panic!("{id} is a bur");
        };
        assert!((bur.diameter - diameter).abs() < 0.001, "{id}");
        assert_eq!(bur.shank, shank, "{id}");
    }
}

/// Gates-Glidden burs tell their size by rings on the shank (value from memory).
#[test]
fn gates_glidden_burs_carry_as_many_rings_as_their_size() {
    let all = all();
    for (id, rings) in [("gates-glidden-2", 2), ("gates-glidden-3", 3)] {
        let plate = all[id].plate().unwrap();
        let drawn = plate.shapes.iter().filter(|s| s.ink == Ink::Accent);
        assert_eq!(drawn.count(), rings, "{id}");
    }
}

/// Both edges of a sickle and of a universal curette cut; of a Gracey the lower one alone.
#[test]
fn scalers_show_the_edges_that_cut() {
    let all = all();
    for (id, toe, face) in [
        ("scaler-sickle-anterior", Toe::Pointed, 90.0),
        ("scaler-sickle-posterior", Toe::Pointed, 90.0),
        ("curette-universal", Toe::Rounded, 90.0),
        ("gracey-1-2", Toe::Rounded, 70.0),
        ("gracey-11-12", Toe::Rounded, 70.0),
        ("gracey-13-14", Toe::Rounded, 70.0),
    ] {
        let close = all[id].working_end().unwrap().unwrap();
        let mut edges = close.shapes.iter().filter_map(|s| match &s.mark {
            Mark::Lines(lines) if s.ink == Ink::Edge => Some(lines.len()),
            _ => None,
        });
        // The blade from the side shows one edge; its section shows those that cut.
        let cutting = edges.next_back();
        assert_eq!(cutting, Some(if face > 80.0 { 2 } else { 1 }), "{id}");
        let Drawing::Hand(hand) = &all[id] else {
            panic!("{id} is a hand instrument");
        };
        for end in &hand.ends {
            assert!(
                matches!(end.tip, Tip::Hook { toe: t, face: f, .. } if t == toe && (f - face).abs() < 0.1),
                "{id}"
            );
        }
    }
}

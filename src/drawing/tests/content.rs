//! The drawings of the catalogue.

use drawing::{Drawing, Sheet};
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

//! Instruments against the standards and handbooks: sizes measured from the
//! drawings as the page shows them, and what each needs between patients.

use crate::bedside::clinic;
use catalogue::items::Reprocessing::{self, Critical, NonCritical, SemiCritical, SingleUse};
use drawing::{Bur, CanalFile, Clamp, Drawing, Flutes, Needle, Part};

const ISO_2157: &str = "ISO 2157 and ADA specification 23, nominal sizes; value from memory";
const ISO_1797: &str = "ISO 1797";
const ISO_3630: &str = "ISO 3630-1; value from memory";
const ISO_6009: &str = "ISO 6009; value from memory";
const CDC_2008: &str = "CDC, Guideline for Disinfection and Sterilization, 2008";
const CDC_2003: &str =
    "CDC, Infection Control in Dental Health-Care Settings, 2003; value from memory";

pub fn drawn(item: &str) -> Drawing {
    let clinic = clinic();
    let drawing = clinic.catalogue().drawing(&item.into());
    drawing
        .unwrap_or_else(|| panic!("{item} is not drawn"))
        .clone()
}

/// How far shapes of a part reach across the instrument, in millimetres, within
/// a part of its length, counted from the working end on the right.
pub fn across(drawing: &Drawing, part: Part, within_mm: f32) -> f32 {
    let plate = drawing.plate().expect("a plate");
    let points: Vec<_> = plate
        .shapes
        .iter()
        .filter(|s| s.part == part)
        .flat_map(drawing::Shape::points)
        .collect();
    let tip = points.iter().map(|p| p.x).fold(f32::MIN, f32::max);
    let near = points.iter().filter(|p| p.x >= tip - within_mm);
    let (low, high) = near.fold((f32::MAX, f32::MIN), |(low, high), p| {
        (low.min(p.y), high.max(p.y))
    });
    high - low
}

pub fn is(measured: f32, wanted: f32, tolerance: f32) -> bool {
    (measured - wanted).abs() <= tolerance
}

/// Item, largest diameter of the head, diameter of the shank.
#[test]
fn bur_heads_and_shanks_measure_what_the_standards_say() {
    const ROWS: [(&str, f32, f32); 12] = [
        ("bur-round-half", 0.6, 1.6),
        ("bur-round-2", 1.0, 1.6),
        ("bur-round-4-latch", 1.4, 2.35),
        ("bur-round-6-latch", 1.8, 2.35),
        ("bur-round-8-latch", 2.3, 2.35),
        ("bur-surgical-round", 2.3, 2.35),
        ("bur-330", 0.8, 1.6),
        ("bur-245", 0.8, 1.6),
        ("bur-56", 0.9, 1.6),
        ("bur-557", 1.0, 1.6),
        ("bur-169l", 0.9, 1.6),
        ("bur-surgical-fissure-703", 2.1, 2.35),
    ];
    for (item, head, shank) in ROWS {
        let drawing = drawn(item);
        let Drawing::Bur(bur) = &drawing else {
            panic!("{item} is no bur");
        };
        let measured = across(&drawing, Part::Working, bur.head_length);
        assert!(
            is(measured, head, 0.05),
            "{item}: head {measured} mm and not {head} ({ISO_2157})"
        );
        assert!(
            is(bur.shank.diameter(), shank, 0.001),
            "{item}: shank ({ISO_1797})"
        );
    }
}

/// The 245 is a 330 made long: head 3 mm (value from memory).
#[test]
fn a_245_is_longer_than_a_330_and_as_wide() {
    let (Drawing::Bur(short), Drawing::Bur(long)) = (drawn("bur-330"), drawn("bur-245")) else {
        panic!("both are burs");
    };
    assert!(is(long.head_length, 3.0, 0.001) && short.head_length < 2.0);
    assert!(is(long.diameter, short.diameter, 0.001));
}

/// Standard lengths by the shank codes 104, 204 and 314 (value from memory; 204 read).
#[test]
fn burs_have_the_length_of_their_shank_code() {
    for (item, length) in [
        ("bur-330", 19.0),
        ("bur-557", 19.0),
        ("bur-round-4-latch", 22.0),
        ("bur-surgical-round", 44.5),
    ] {
        let Drawing::Bur(Bur { length: own, .. }) = drawn(item) else {
            panic!("{item} is no bur");
        };
        assert!(is(own, length, 0.001), "{item}: {own} mm and not {length}");
    }
}

/// Size, colour, diameter at the tip and 16 mm behind it with a taper of 0.02.
#[test]
fn files_have_the_colours_and_diameters_of_the_standard() {
    const ROWS: [(u8, &str, f32, f32); 21] = [
        (6, "pink", 0.06, 0.38),
        (8, "grey", 0.08, 0.40),
        (10, "purple", 0.10, 0.42),
        (15, "white", 0.15, 0.47),
        (20, "yellow", 0.20, 0.52),
        (25, "red", 0.25, 0.57),
        (30, "blue", 0.30, 0.62),
        (35, "green", 0.35, 0.67),
        (40, "black", 0.40, 0.72),
        (45, "white", 0.45, 0.77),
        (50, "yellow", 0.50, 0.82),
        (55, "red", 0.55, 0.87),
        (60, "blue", 0.60, 0.92),
        (70, "green", 0.70, 1.02),
        (80, "black", 0.80, 1.12),
        (90, "white", 0.90, 1.22),
        (100, "yellow", 1.00, 1.32),
        (110, "red", 1.10, 1.42),
        (120, "blue", 1.20, 1.52),
        (130, "green", 1.30, 1.62),
        (140, "black", 1.40, 1.72),
    ];
    for (size, colour, tip, sixteen_back) in ROWS {
        assert_eq!(CanalFile::colour(size), Some(colour), "{size} ({ISO_3630})");
        let file = Drawing::CanalFile(CanalFile {
            flutes: Flutes::Twisted,
            size,
            taper: 2,
            length: 25.0,
        });
        let blade = across(&file, Part::Working, 17.0);
        assert!(
            is(blade, sixteen_back, 0.06),
            "{size}: {blade} mm at D16 and not {sixteen_back} ({ISO_3630})"
        );
        assert!(is(sixteen_back - tip, 0.32, 0.001));
    }
    for none in [5, 7, 12, 65, 75, 150] {
        assert_eq!(CanalFile::colour(none), None, "there is no size {none}");
    }
}

/// Gauge, outside diameter; item, gauge and length.
#[test]
fn needles_have_the_diameter_of_their_gauge() {
    for (gauge, mm) in [(25, 0.5), (27, 0.4), (30, 0.3)] {
        assert_eq!(Needle::diameter(gauge), Some(mm), "{gauge} ({ISO_6009})");
    }
    // Short 20 to 25 mm, long 32 to 35 mm: Malamed, value from memory.
    for (item, gauge, short, long) in [
        ("needle-short-30", 30, 20.0, 25.0),
        ("needle-long-27", 27, 32.0, 35.0),
    ] {
        let drawing = drawn(item);
        let Drawing::Needle(needle) = &drawing else {
            panic!("{item} is no needle");
        };
        assert_eq!(needle.gauge, gauge, "{item}");
        assert!((short..=long).contains(&needle.length), "{item}");
        let measured = across(&drawing, Part::Working, 10.0);
        let wanted = Needle::diameter(gauge).expect("a diameter");
        assert!(
            is(measured, wanted, 0.02),
            "{item}: {measured} mm ({ISO_6009})"
        );
    }
}

/// Clamps by tooth: a molar clamp opens wider and bites longer than one for a
/// premolar; the kinds in the catalogue have wings to carry the sheet (Bird and
/// Robinson, value from memory).
#[test]
fn clamps_are_of_their_kind() {
    let kind = |item: &str| -> Clamp {
        let Drawing::Clamp(clamp) = drawn(item) else {
            panic!("{item} is no clamp");
        };
        clamp
    };
    let (molar, premolar) = (kind("dam-clamp-molar"), kind("dam-clamp-premolar"));
    assert!(molar.span > premolar.span && molar.jaw > premolar.jaw);
    assert!(molar.winged && premolar.winged);
    assert!(
        !molar.double_bow && !premolar.double_bow,
        "a double bow is for front teeth"
    );
}

/// Classes by Spaulding; what is thrown away is single-use whatever its class.
#[test]
fn instruments_are_reprocessed_by_their_class() {
    type Rows = &'static [(&'static str, Reprocessing, &'static str)];
    #[rustfmt::skip]
    const ROWS: Rows = &[
        ("forceps-150", Critical, CDC_2008), ("forceps-151", Critical, CDC_2008), ("forceps-23", Critical, CDC_2008),
        ("forceps-53r", Critical, CDC_2008), ("forceps-53l", Critical, CDC_2008), ("forceps-210s", Critical, CDC_2008),
        ("surgical-chisel", Critical, CDC_2008), ("bur-surgical-round", Critical, CDC_2008),
        ("bur-surgical-fissure-703", Critical, CDC_2008), ("scaler-sickle-anterior", Critical, CDC_2008),
        ("scaler-sickle-posterior", Critical, CDC_2008), ("curette-universal", Critical, CDC_2008),
        ("gracey-1-2", Critical, CDC_2008), ("gracey-13-14", Critical, CDC_2008),
        ("blade-11", SingleUse, CDC_2008), ("blade-12", SingleUse, CDC_2008), ("blade-15", SingleUse, CDC_2008),
        ("scalpel-handle-3", Critical, CDC_2003), ("bone-file", Critical, CDC_2003), ("elevator-301", Critical, CDC_2003),
        ("elevator-34s", Critical, CDC_2003), ("periosteal-elevator-molt-9", Critical, CDC_2003),
        ("surgical-curette", Critical, CDC_2003), ("rongeur", Critical, CDC_2003), ("needle-holder", Critical, CDC_2003),
        ("k-file", Critical, CDC_2003), ("h-file", Critical, CDC_2003), ("reamer", Critical, CDC_2003),
        ("niti-rotary-file", Critical, CDC_2003), ("suture-silk-3-0", SingleUse, CDC_2003),
        ("amalgam-condenser-small", SemiCritical, CDC_2008), ("amalgam-condenser-large", SemiCritical, CDC_2008),
        ("mouth-mirror", SemiCritical, CDC_2003), ("high-speed-handpiece", SemiCritical, CDC_2008),
        ("low-speed-handpiece", SemiCritical, CDC_2008), ("impression-tray-perforated", SemiCritical, CDC_2003),
        ("radiograph-holder", SemiCritical, CDC_2003), ("dam-clamp-molar", SemiCritical, CDC_2003),
        ("prophy-angle", SingleUse, CDC_2003), ("curing-light", NonCritical, CDC_2003),
        ("patient-mirror", NonCritical, CDC_2003), ("needle-long-27", SingleUse, "ISO 7885: single use"),
        ("needle-short-30", SingleUse, "ISO 7885: single use"), ("gloves-nitrile", SingleUse, CDC_2003),
        ("mask", SingleUse, CDC_2003), ("gauze", SingleUse, CDC_2003),
    ];
    let clinic = clinic();
    for (item, wanted, source) in ROWS {
        let all = &clinic.catalogue().instruments;
        let own = all.iter().find(|i| i.id.as_str() == *item);
        let own = own.unwrap_or_else(|| panic!("{item} is no instrument"));
        assert_eq!(own.reprocessing, *wanted, "{item} ({source})");
    }
}

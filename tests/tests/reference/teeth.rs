//! Teeth: three systems of notation, and when they come.

use crate::bedside::clinic;

use clinic::{
    numbers::teeth::{Moment, System, eruption, facts, read, written},
    tooth::Tooth,
};

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

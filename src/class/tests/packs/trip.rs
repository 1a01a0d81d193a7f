//! A pack comes back as it was written, passes the checks, and says what is its own.

use super::{added, built_in, small};
use class::{
    bank::Version,
    pack::{self, Pack, PackFile, copy, over, place::Kind},
};

#[test]
fn a_pack_comes_back_from_its_file() {
    let mut pack = small();
    pack.version = 3;
    let text = built_in().get("rules/depth.toml").unwrap();
    let replaces = PackFile {
        text: text.to_owned(),
        replaces: true,
    };
    pack.put("rules/depth.toml", replaces).unwrap();
    let written = pack.write();
    assert_eq!(pack::read(written.as_bytes()), Ok(pack));
    // As Windows saves it.
    let marked = format!("\u{feff}{written}");
    assert!(pack::read(marked.as_bytes()).is_ok());
}

#[test]
fn a_copy_of_a_built_in_procedure_passes_the_same_checks() {
    let pack = small();
    let over = over::read(built_in(), &[&pack]).unwrap();
    let own = over.catalogue.procedure(&"our-stitches".into()).unwrap();
    let built_in = over.catalogue.procedure(&"suture-removal".into()).unwrap();
    assert_eq!(own.steps, built_in.steps);
    let origin = over.from.origin("procedure", "our-stitches").unwrap();
    assert_eq!((origin.title.as_str(), origin.version), ("Our practice", 1));
    assert!(over.from.origin("lesson", "our-stitches").is_some());
    assert!(over.from.origin("procedure", "suture-removal").is_none());
}

#[test]
fn every_thing_that_can_be_copied_passes_the_checks_as_a_copy() {
    for kind in Kind::ALL {
        let starts = copy::starts(built_in(), kind);
        assert!(starts.len() >= 3, "{kind:?}: {}", starts.len());
        for start in [&starts[0], &starts[starts.len() - 1]] {
            let mut pack = Pack::new("a", "A", Version(0)).unwrap();
            let files = copy::copied(built_in(), kind, &start.id, "a-copy").unwrap();
            for (path, text) in files {
                pack.put(&path, added(&text)).unwrap();
            }
            // A drawing shows the item with its id, and an item on a tray has one.
            match (kind, over::read(built_in(), &[&pack])) {
                (Kind::Drawings, Err(faults)) => {
                    assert!(
                        faults.iter().any(|f| f.message.contains("'a-copy'")),
                        "{faults:?}"
                    );
                }
                (Kind::Instruments | Kind::Materials, Err(faults)) => {
                    assert!(
                        faults.iter().all(|f| f.message.contains("no drawing")),
                        "{faults:?}"
                    );
                }
                (_, Err(faults)) => panic!("{kind:?} {}: {faults:?}", start.id),
                (_, Ok(_)) => {}
            }
        }
    }
}

#[test]
fn the_bank_changes_with_the_packs_in_use_and_not_with_their_order() {
    let (one, mut two) = (small(), small());
    two.version = 2;
    let built_in = Version(5);
    let of = |packs: &[&Pack]| pack::bank(built_in, packs.iter().map(|pack| pack.checksum()));
    assert_eq!(of(&[]), built_in);
    assert_ne!(of(&[&one]), built_in);
    assert_ne!(of(&[&one]), of(&[&two]));
    assert_eq!(of(&[&one, &two]), of(&[&two, &one]));
    assert_eq!(one.content_checksum(), two.content_checksum());
}

#[test]
fn built_in_sources_without_a_pack_are_the_catalogue() {
    let over = over::read(built_in(), &[]).unwrap();
    let content = std::path::Path::new(env!("CARGO_MANIFEST_DIR")).join("../../content");
    assert_eq!(over.catalogue, catalogue::source::read(&content).unwrap());
    let packed = built_in().pack();
    assert_eq!(
        catalogue::source::Files::unpack(&packed).as_ref(),
        Ok(built_in())
    );
}

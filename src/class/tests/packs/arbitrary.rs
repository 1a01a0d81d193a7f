//! Whatever bytes come, the reader of packs ends, in words or with a pack.

use super::{added, built_in, small};
use class::{
    bank::Version,
    pack::{self, Pack, over},
};
use proptest::prelude::*;

proptest! {
    #[test]
    fn any_bytes_end_in_words(bytes in proptest::collection::vec(any::<u8>(), 0..2000)) {
        prop_assert!(pack::read(&bytes).is_err());
    }

    #[test]
    fn any_change_of_a_byte_is_told_or_makes_no_difference(at in any::<prop::sample::Index>(), byte in any::<u8>()) {
        let before = small();
        let mut bytes = before.write().into_bytes();
        let at = at.index(bytes.len());
        bytes[at] = byte;
        if let Ok(pack) = pack::read(&bytes) {
            prop_assert_eq!(pack, before);
        }
    }

    #[test]
    fn what_is_cut_off_is_told(at in any::<prop::sample::Index>()) {
        let bytes = small().write().into_bytes();
        // The last byte is the end of the last line.
        prop_assert!(pack::read(&bytes[..at.index(bytes.len() - 1)]).is_err());
    }
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(24))]

    /// The words of a built-in file in disorder: the reader of content ends in words.
    #[test]
    fn any_text_in_a_file_ends_in_words_or_passes(
        picked in proptest::collection::vec(any::<prop::sample::Index>(), 0..60),
        path in prop::sample::select(vec![
            ("rules/x.toml", "rules/depth.toml"),
            ("cases/x.toml", "cases/deep-caries.toml"),
            ("materials/x.toml", "materials/zinc-oxide.toml"),
            ("instruments/x.toml", "instruments/mixing.toml"),
            ("drawings/x.toml", "drawings/burs.toml"),
            ("preference-cards/x.toml", "preference-cards/examples.toml"),
            ("lessons/x.md", "lessons/pulp-protection.md"),
        ]),
        whole_lines in any::<bool>(),
    ) {
        let (path, from) = path;
        let source = built_in().get(from).unwrap();
        let parts: Vec<&str> = if whole_lines {
            source.split_inclusive('\n').collect()
        } else {
            source.split_inclusive([' ', '\n', '"', '[', ']']).collect()
        };
        let text: String = picked.iter().map(|it| *it.get(&parts)).collect();
        let mut pack = Pack::new("any", "Any", Version(0)).unwrap();
        if pack.put(path, added(&text)).is_ok()
            && let Err(faults) = over::read(built_in(), &[&pack])
        {
            prop_assert!(faults.iter().all(|f| f.line >= 1 && f.column >= 1));
        }
    }
}

//! Packed files that arrive damaged, or are none: whatever the bytes say, they
//! are read or refused in a sentence, and take no more memory than they bring.

use catalogue::{pack, pack_outline, unpack, unpack_outline};
use proptest::{collection::vec, prelude::*, sample::Index};
use std::{path::Path, sync::LazyLock};

/// The catalogue as it is taught, and its outline, packed.
static PACKED: LazyLock<[Vec<u8>; 2]> = LazyLock::new(|| {
    let content = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../content");
    let catalogue = catalogue::source::read(&content).expect("content without faults");
    [pack(&catalogue), pack_outline(&catalogue)]
});

proptest! {
    #![proptest_config(ProptestConfig::with_cases(64))]

    #[test]
    fn any_bytes_can_be_unpacked(bytes in vec(any::<u8>(), 0..400)) {
        for mark in [&b""[..], b"TWc2", b"TWo1"] {
            let bytes = [mark, &bytes].concat();
            let _ = unpack(&bytes);
            let _ = unpack_outline(&bytes);
        }
    }

    #[test]
    fn a_changed_catalogue_is_read_or_refused(changes in vec((any::<Index>(), vec(any::<u8>(), 0..9), 0..4_usize), 1..4)) {
        for (packed, what) in PACKED.iter().zip(["catalogue", "outline"]) {
            let mut bytes = packed.clone();
            for (at, put, count) in &changes {
                let from = at.index(bytes.len());
                let to = (from + count).min(bytes.len());
                bytes.splice(from..to, put.iter().copied());
            }
            let refused = match what {
                "catalogue" => unpack(&bytes).err(),
                _ => unpack_outline(&bytes).err(),
            };
            prop_assert!(refused.is_none_or(|says| says.contains("Reload the page")));
        }
    }
}

/// A length of almost everything where few bytes follow.
#[test]
fn a_length_takes_no_room_before_its_bytes_are_there() {
    let long = [255, 255, 255, 255, 255, 255, 255, 255, 127];
    for mark in [b"TWc2", b"TWo1"] {
        let bytes = [&mark[..], &long, b"abc"].concat();
        assert!(unpack(&bytes).is_err() && unpack_outline(&bytes).is_err());
    }
}

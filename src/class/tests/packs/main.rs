//! Packs: they come back as they were written, what is hostile is named and does
//! nothing, and what differs is told.

mod arbitrary;
mod bounds;
mod changes;
mod hostile;
mod trip;

use catalogue::source::Files;
use class::{
    bank::Version,
    pack::{Pack, PackFile, copy, place::Kind},
};
use std::{path::Path, sync::OnceLock};

/// The built-in sources.
fn built_in() -> &'static Files {
    static FILES: OnceLock<Files> = OnceLock::new();
    FILES.get_or_init(|| {
        let content = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../content");
        Files::read_folder(&content).expect("content that can be read")
    })
}

/// A file of a pack that is added.
fn added(text: &str) -> PackFile {
    PackFile {
        text: text.to_owned(),
        replaces: false,
    }
}

/// A pack with a copy of a built-in procedure under another id.
fn small() -> Pack {
    let mut pack = Pack::new("our-practice", "Our practice", Version(7)).expect("a pack");
    let copied = copy::copied(
        built_in(),
        Kind::Procedure,
        "suture-removal",
        "our-stitches",
    );
    for (path, text) in copied.expect("a built-in procedure") {
        pack.put(&path, added(&text)).expect("room for it");
    }
    pack
}

//! What the families about mixing share.

use super::{
    Desk,
    text::{alike, marks},
};
use catalogue::items::{Material, Mixing};

/// The materials that are mixed.
pub(super) fn mixed(desk: &Desk) -> impl Iterator<Item = (&Material, &Mixing)> {
    desk.catalogue()
        .materials
        .iter()
        .filter_map(|m| Some((m, m.mixing.as_ref()?)))
}

/// Whether no part of one text says what a part of the other says. A text may
/// give alternatives: `a paper pad, or a glass slab`.
pub(super) fn parts_apart(a: &str, b: &str) -> bool {
    fn parts(text: &str) -> impl Iterator<Item = &str> {
        text.split([',', ';']).flat_map(|p| p.split(" or "))
    }
    let apart = |p: &str, q: &str| {
        let (p, q) = (p.trim(), q.trim());
        !p.eq_ignore_ascii_case(q) && alike(marks(p), marks(q)) < 0.6
    };
    parts(a).all(|p| parts(b).all(|q| p.trim().is_empty() || q.trim().is_empty() || apart(p, q)))
}

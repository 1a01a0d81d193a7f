//! Plates: all drawings by family, to know things by sight; with their names
//! hidden to test oneself, and at life size on paper.

mod all;
mod family;
mod life_size;

pub use all::AllPlatesScreen;
pub use family::PlatesScreen;
pub use life_size::LifeSizeScreen;

use catalogue::{Catalogue, Item};

/// A family of items.
#[derive(Clone)]
struct Family {
    /// What it is called.
    name: &'static str,
    /// Its things, in the order of the catalogue.
    items: Vec<Item<'static>>,
}

/// All families in the order of the catalogue, with what has a drawing.
fn families(catalogue: &'static Catalogue) -> Vec<Family> {
    let mut families: Vec<Family> = Vec::new();
    for item in catalogue
        .items()
        .filter(|it| catalogue.drawing(it.id()).is_some())
    {
        match families
            .iter_mut()
            .find(|family| family.name == item.family())
        {
            Some(family) => family.items.push(item),
            None => families.push(Family {
                name: item.family(),
                items: vec![item],
            }),
        }
    }
    families
}

/// A family as it is named in an address.
pub fn slug(family: &str) -> String {
    family.replace(' ', "-")
}

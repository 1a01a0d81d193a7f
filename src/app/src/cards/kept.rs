//! The cards that are kept in the record, and which one is in use.
//!
//! A card is a setting: `card/<id>` with the text of the card, empty once it
//! was thrown away. So every change of a card stays in the record, and two
//! devices end up with the later one.

use super::text;
use catalogue::{Catalogue, preference::Card};
use std::collections::BTreeMap;

/// The setting that names the card in use; empty where none is.
pub const IN_USE: &str = "card-in-use";

/// The settings of a record.
pub type Settings = BTreeMap<String, String>;

/// The setting that a card is kept under.
pub fn key(id: &str) -> String {
    format!("card/{id}")
}

/// The own cards that can be read, by name, and those that cannot.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Own {
    /// The cards.
    pub cards: Vec<Card>,
    /// The ids of cards that are set aside, with what is wrong.
    pub set_aside: Vec<(String, Vec<String>)>,
}

impl Own {
    /// Reads them from the settings.
    pub fn of(settings: &Settings, catalogue: &Catalogue) -> Self {
        let mut own = Self::default();
        for (key, value) in settings {
            let Some(id) = key.strip_prefix("card/").filter(|_| !value.is_empty()) else {
                continue;
            };
            match text::read(value, catalogue) {
                Ok(card) => own.cards.push(card),
                Err(faults) => own.set_aside.push((id.into(), faults)),
            }
        }
        own.cards.sort_by(|a, b| a.name.cmp(&b.name));
        own
    }
}

/// A card by its id, own or an example of the catalogue.
pub fn find(settings: &Settings, catalogue: &Catalogue, id: &str) -> Option<Card> {
    let own = settings.get(&key(id)).filter(|text| !text.is_empty());
    match own {
        Some(text) => text::read(text, catalogue).ok(),
        None => example(catalogue, id).cloned(),
    }
}

/// An example of the catalogue by its id.
pub fn example<'c>(catalogue: &'c Catalogue, id: &str) -> Option<&'c Card> {
    catalogue.cards.iter().find(|card| card.id.as_str() == id)
}

/// The card in use, if one is and can be read.
pub fn in_use(settings: &Settings, catalogue: &Catalogue) -> Option<Card> {
    let id = settings.get(IN_USE).filter(|id| !id.is_empty())?;
    find(settings, catalogue, id)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn card(id: &str, name: &str) -> Card {
        Card {
            id: id.into(),
            name: name.into(),
            ..Card::default()
        }
    }

    fn settings(pairs: &[(&str, &str)]) -> Settings {
        let owned = pairs.iter().map(|&(k, v)| (k.to_owned(), v.to_owned()));
        owned.collect()
    }

    #[test]
    fn own_cards_come_by_name_and_damaged_ones_are_set_aside() {
        let (b, a) = (
            text::write(&card("b", "First")),
            text::write(&card("a", "Second")),
        );
        let settings = settings(&[
            ("card/a", &a),
            ("card/b", &b),
            ("card/gone", ""),
            ("card/torn", "{"),
            ("theme", "dark"),
        ]);
        let own = Own::of(&settings, &Catalogue::default());
        let ids: Vec<&str> = own.cards.iter().map(|c| c.id.as_str()).collect();
        assert_eq!(ids, ["b", "a"]);
        assert_eq!(own.set_aside.len(), 1);
        assert_eq!(own.set_aside[0].0, "torn");
    }

    #[test]
    fn the_card_in_use_is_own_or_an_example_or_none() {
        let catalogue = Catalogue {
            cards: vec![card("dam", "Dam")],
            ..Catalogue::default()
        };
        let own = text::write(&card("own", "Own"));
        for (in_use_id, found) in [
            ("dam", Some("Dam")),
            ("own", Some("Own")),
            ("", None),
            ("x", None),
        ] {
            let settings = settings(&[("card/own", &own), (IN_USE, in_use_id)]);
            let name = in_use(&settings, &catalogue).map(|card| card.name);
            assert_eq!(name.as_deref(), found, "{in_use_id}");
        }
    }
}

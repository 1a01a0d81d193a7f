//! Changing cards: every change is an event of the record.

use super::{kept, text};
use crate::{
    browser::chance,
    log::{OpenLog, log},
    taught::catalogue,
};
use catalogue::{
    ids::CardId,
    preference::{Card, Wish},
};
use leptos::prelude::*;
use record::{SettingChanged, What, folds};

/// The own cards, in any handler.
#[derive(Clone, Copy)]
pub struct Cards {
    log: OpenLog,
    catalogue: &'static catalogue::Catalogue,
}

/// The cards of this page.
pub fn cards() -> Cards {
    Cards {
        log: log(),
        catalogue: catalogue(),
    }
}

impl Cards {
    /// The own cards, followed.
    pub fn own(self) -> Memo<kept::Own> {
        let catalogue = self.catalogue;
        self.log
            .memo(move |events| kept::Own::of(&folds::settings(events), catalogue))
    }

    /// A card by its id, own or example, followed.
    pub fn find(self, id: CardId) -> Memo<Option<Card>> {
        let catalogue = self.catalogue;
        self.log
            .memo(move |events| kept::find(&folds::settings(events), catalogue, id.as_str()))
    }

    /// Whether a card is an example of the catalogue, which stays as it is.
    pub fn is_example(self, id: &CardId) -> bool {
        kept::example(self.catalogue, id.as_str()).is_some()
    }

    /// Keeps a card as it is now.
    pub fn keep(self, card: &Card) {
        self.set(kept::key(card.id.as_str()), text::write(card));
    }

    /// Keeps a copy of a card under an id of its own, which it gives.
    pub fn copy(self, card: &Card, name: String) -> CardId {
        let id = CardId(format!("own-{:012x}", chance::bits() >> 16));
        self.keep(&Card {
            id: id.clone(),
            name,
            ..card.clone()
        });
        id
    }

    /// Throws a card away. If it was in use, none is.
    pub fn throw_away(self, id: &CardId) {
        let used = self.look(|settings| settings.get(kept::IN_USE).cloned());
        if used.as_deref() == Some(id.as_str()) {
            self.use_none();
        }
        self.set(kept::key(id.as_str()), String::new());
    }

    /// Puts a card in use.
    pub fn put_in_use(self, id: &CardId) {
        self.set(kept::IN_USE.into(), id.to_string());
    }

    /// Goes back to the standard.
    pub fn use_none(self) {
        self.set(kept::IN_USE.into(), String::new());
    }

    /// Puts one more wish on an own card.
    pub fn add_wish(self, id: &CardId, wish: Wish) {
        self.change(id, |card| card.wishes.push(wish));
    }

    /// Takes a wish off an own card.
    pub fn take_wish_off(self, id: &CardId, place: usize) {
        self.change(id, |card| {
            if place < card.wishes.len() {
                card.wishes.remove(place);
            }
        });
    }

    /// Changes an own card; an example, or a card that is not there, stays.
    pub fn change(self, id: &CardId, change: impl FnOnce(&mut Card)) {
        let found = self.look(|settings| kept::find(settings, self.catalogue, id.as_str()));
        if let Some(mut card) = found.filter(|_| !self.is_example(id)) {
            let before = card.clone();
            change(&mut card);
            if card != before {
                self.keep(&card);
            }
        }
    }

    fn look<T>(self, look: impl FnOnce(&kept::Settings) -> T) -> T {
        self.log.look(|events| look(&folds::settings(events)))
    }

    fn set(self, key: String, value: String) {
        self.log
            .append(What::SettingChanged(SettingChanged { key, value }));
    }
}

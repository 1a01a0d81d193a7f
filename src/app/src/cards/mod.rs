//! Preference cards: what one dentist, or one practice's protocol, wants done
//! differently.
//!
//! - `kept`, `text`: how cards are kept, and how they are checked on the way in
//! - `applied`: the card that applies, and the line that says so
//! - `list`, `card`, `difference`, `file`: the screens
//! - `refused`: what a set-up does not grant
//! - `wish`: putting a wish on a card, and saying one in words
//!
//! Nothing here decides what may be granted: it asks [`clinic`].

mod applied;
mod card;
mod difference;
mod file;
#[cfg(test)]
mod hostile;
mod kept;
mod list;
mod own;
mod refused;
mod text;
mod wish;

pub use applied::{Applied, CardNote, WithCard, applied};
pub use card::CardScreen;
pub use list::CardsScreen;
pub use refused::RefusedWishes;
pub use text::{read, write};
pub use wish::WishScreen;

use catalogue::preference::Card;
use leptos::prelude::*;

/// The own cards that can be read, as they are now.
pub fn all_own() -> Vec<Card> {
    own::cards().own().with_untracked(|own| own.cards.clone())
}

//! The card that applies: which one is in use, whether the reader looks at the
//! standard for once, and the line that says so wherever it matters.

use super::kept;
use crate::{
    log::OpenLog,
    parts::choice::{Choice, Choosable},
    place::Place,
    taught::clinic,
};
use catalogue::{Catalogue, preference::Card};
use leptos::prelude::*;
use record::folds;

/// The card in use, and whether it is put aside for now.
#[derive(Clone, Copy)]
pub struct Applied {
    in_use: Memo<Option<Card>>,
    aside: RwSignal<bool>,
}

impl Applied {
    /// Follows the record, and makes itself known to all views below.
    pub fn provide(log: OpenLog, catalogue: &'static Catalogue) -> Self {
        let applied = Self {
            in_use: log.memo(move |events| kept::in_use(&folds::settings(events), catalogue)),
            aside: RwSignal::new(false),
        };
        // Another card in use is looked at.
        Effect::new(move |before: Option<()>| {
            applied.in_use.with(|_| ());
            if before.is_some() {
                applied.aside.set(false);
            }
        });
        provide_context(applied);
        applied
    }

    /// The card that applies: the one in use, unless it is put aside.
    pub fn card(self) -> Signal<Option<Card>> {
        let card = Memo::new(move |_| {
            let aside = self.aside.get();
            self.in_use.get().filter(|_| !aside)
        });
        card.into()
    }

    /// The card in use.
    pub fn in_use(self) -> Memo<Option<Card>> {
        self.in_use
    }
}

/// The card that applies, within reach of every view.
pub fn applied() -> Applied {
    expect_context()
}

/// Says which card is in use, with a switch to the standard and back. Nothing
/// where none is.
#[component]
pub fn WithCard() -> impl IntoView {
    let applied = applied();
    let switch = move || {
        let card = applied.in_use.get()?;
        let to = Place::Card(card.id.clone(), None, Vec::new()).fragment();
        let options = vec![
            Choosable::new("card", "With the card"),
            Choosable::new("standard", "Standard"),
        ];
        let chosen = move || {
            if applied.aside.get() {
                "standard"
            } else {
                "card"
            }
        };
        Some(view! {
            <div class="with-card" data-test="with-card">
                <p class="with-card-name">"Preference card: " <a href=to>{card.name}</a></p>
                <Choice
                    legend="Set-up"
                    options
                    chosen=Signal::derive(move || chosen().to_string())
                    choose=move |value: String| applied.aside.set(value == "standard")
                    test="set-up"
                />
            </div>
        })
    };
    view! { {switch} }
}

/// Says which card applies here and stays, as in a case under way. Nothing
/// where none does.
#[component]
pub fn CardNote() -> impl IntoView {
    let card = clinic().card().map(|card| card.name.clone());
    card.map(|name| {
        view! { <span class="card-line" data-test="card-note">"With the card: " {name}</span> }
    })
}

//! The button of a hint, and what it rules out.

use super::{Draft, Hint};
use crate::parts::announce::announcer;
use leptos::prelude::*;

/// The key of the choice that the hint has ruled out, once it is shown.
pub fn ruled_out(
    draft: RwSignal<Draft>,
    clue: StoredValue<Option<Hint>>,
) -> Signal<Option<String>> {
    Signal::derive(move || {
        let shown = draft.with(|it| it.hint);
        clue.with_value(|clue| match clue {
            Some(Hint::RuledOut(key)) if shown => Some(key.clone()),
            _ => None,
        })
    })
}

/// A hint on request; it makes a right answer count as recalled with strain.
#[component]
pub fn Clue(
    /// The answer as it stands.
    draft: RwSignal<Draft>,
    /// The hint; none where every hint would be the answer.
    clue: StoredValue<Option<Hint>>,
) -> impl IntoView {
    let announcer = announcer();
    let words = move || {
        clue.with_value(|clue| match clue {
            Some(Hint::Says(words)) => words.clone(),
            Some(Hint::RuledOut(_)) => "One choice is ruled out.".into(),
            None => String::new(),
        })
    };
    let shown = move || {
        if draft.with(|it| it.hint) {
            view! { <p class="q-hint" data-test="hint-shown">"Hint: " {words()}</p> }.into_any()
        } else {
            view! {
                <button
                    type="button"
                    class="button button-quiet q-hint-button"
                    data-test="hint"
                    on:click=move |_| {
                        draft.update(|it| {
                            it.hint = true;
                            if let Some(Hint::RuledOut(out)) = clue.get_value() {
                                it.keys.retain(|key| *key != out);
                            }
                        });
                        announcer.say(words());
                    }
                >
                    "Hint"
                </button>
            }
            .into_any()
        }
    };
    clue.with_value(Option::is_some).then_some(shown)
}

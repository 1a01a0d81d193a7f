//! Setting a question aside, with a note for whoever mends it.

use crate::{
    log::log,
    parts::{announce::announcer, fold::Fold},
};
use leptos::prelude::*;
use record::{QuestionSetAside, What, folds};

/// Sets a question aside, or takes it back.
#[component]
pub fn SetAside(
    /// The id of the question.
    question: String,
) -> impl IntoView {
    let (log, announcer) = (log(), announcer());
    let id = StoredValue::new(question.clone());
    let note = log.memo(move |events| folds::aside(events).remove(&question));
    let typed = RwSignal::new(String::new());
    let put = move |note: Option<String>, says: &'static str| {
        log.append(What::QuestionSetAside(QuestionSetAside {
            question: id.get_value(),
            note,
        }));
        announcer.say(says);
    };
    move || match note.get() {
        Some(note) => view! {
            <div class="q-aside" data-test="set-aside-note">
                <p>"Set aside: it is not asked any more. " {note}</p>
                <button
                    type="button"
                    class="button button-quiet"
                    data-test="take-back"
                    on:click=move |_| put(None, "Taken back: it is asked again.")
                >
                    "Take it back"
                </button>
            </div>
        }
        .into_any(),
        None => view! {
            <Fold title="Set this question aside" test="set-aside-fold">
                <label class="q-note-field">
                    <span>"What is wrong with it? The note stays in your record."</span>
                    <textarea
                        rows="2"
                        data-test="aside-note"
                        prop:value=typed
                        on:input=move |event| typed.set(event_target_value(&event))
                    ></textarea>
                </label>
                <button
                    type="button"
                    class="button button-quiet"
                    data-test="put-aside"
                    on:click=move |_| {
                        let note = typed.get_untracked().trim().to_owned();
                        put(Some(note), "Set aside: it is not asked any more.");
                    }
                >
                    "Set it aside"
                </button>
            </Fold>
        }
        .into_any(),
    }
}

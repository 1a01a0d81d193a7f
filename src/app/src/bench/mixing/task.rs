//! A mix that an assignment asks for: the room and the moment are those of the
//! seat, it is made once, and how it is mixed is a hint.

use super::{
    Board,
    session::{Session, Stage},
};
use crate::{
    parts::{announce::announcer, mixing::MixingCard},
    taught::catalogue,
};
use class::mixes::Drawn;
use clinic::mixing::Mix;
use leptos::prelude::*;
use record::SittingId;

/// The bench of a task.
#[component]
pub fn MixTask(
    /// What the seat has to mix.
    drawn: Drawn,
    /// The run of work that it is done in.
    sitting: SittingId,
    /// Whether it may be looked up how the material is mixed.
    hints: bool,
) -> impl IntoView {
    let (material, usage) = (drawn.offer.material.clone(), drawn.offer.usage.clone());
    let clean = Mix::new(catalogue(), &material, Some(&usage), drawn.room);
    let Ok(clean) = clean else {
        return view! { <p class="lead">"This material is not mixed step by step here."</p> }
            .into_any();
    };
    let session = Session::open_task(drawn, clean, sitting);
    let mixing = catalogue()
        .material(&material)
        .and_then(|it| it.mixing.as_ref());
    let announcer = announcer();
    let hint = move || {
        let mixing = mixing?;
        let over = session.stage.get() == Stage::Handed;
        if session.hinted.get() || over {
            return Some(
                view! {
                    <section class="group" data-test="hint-shown">
                        <h2 class="stage-label">"How it is mixed"</h2>
                        <MixingCard mixing />
                    </section>
                }
                .into_any(),
            );
        }
        hints.then(|| {
            view! {
                <div class="actions">
                    <button
                        type="button"
                        class="button button-quiet"
                        data-test="hint"
                        on:click=move |_| {
                            session.look_up();
                            announcer.say("How it is mixed is shown below.");
                        }
                    >
                        "Hint: how it is mixed"
                    </button>
                </div>
            }
            .into_any()
        })
    };
    view! {
        <Board session />
        {hint}
    }
    .into_any()
}

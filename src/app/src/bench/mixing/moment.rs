//! The clock of the mix and the dentist's moment, told quietly: once a second,
//! without colour, and aloud only when the dentist is ready.

use super::{
    session::{Session, Stage},
    way::Way,
};
use crate::parts::announce::announcer;
use clinic::mixing::Mix;
use leptos::prelude::*;

/// Whole seconds of a number that is no time before the epoch.
fn whole(seconds: f64) -> i64 {
    #[expect(
        clippy::cast_possible_truncation,
        reason = "a mix is followed for six hours at most"
    )]
    let whole = seconds.floor() as i64;
    whole
}

/// Minutes and seconds: `1:05`.
fn shown(seconds: i64) -> String {
    format!("{}:{:02}", seconds / 60, seconds % 60)
}

/// The line under the pad.
#[component]
pub fn MomentLine(
    /// The mix.
    session: Session,
) -> impl IntoView {
    let ready = whole(session.wanted().ready.get());
    let left = Memo::new(move |_| ready - whole(session.seconds.get()));
    let age = Memo::new(move |_| {
        session.seconds.track();
        session.with(Mix::age).map(|age| whole(age.get()))
    });
    let open = Memo::new(move |_| session.stage.get() == Stage::Open);
    let (way, running) = (session.way, session.running);
    let aloud = announcer();
    Effect::new(move |before: Option<bool>| {
        let is_ready = open.get() && way.get() != Way::Calm && left.get() <= 0;
        if is_ready && before == Some(false) {
            aloud.say("The dentist is ready.");
        }
        is_ready
    });
    let dentist = move || match (open.get(), way.get(), left.get()) {
        (false, ..) => String::new(),
        (_, Way::Calm, _) => "The dentist waits for you.".into(),
        (_, _, left) if left > 0 => format!("The dentist is ready in {}.", shown(left)),
        (_, _, left) if left > -5 => "The dentist is ready.".into(),
        (_, _, left) => format!("The dentist has waited for {}.", shown(-left)),
    };
    let age = move || match age.get() {
        Some(age) if open.get() => format!("Mixed for {}", shown(age)),
        _ => String::new(),
    };
    let pause = move || {
        (open.get() && way.get() == Way::Clock).then(|| {
            view! {
                <button
                    type="button"
                    class="button button-quiet"
                    data-test="pause"
                    on:click=move |_| {
                        if running.get_untracked() { session.pause() } else { session.go_on() }
                    }
                >
                    {move || if running.get() { "Pause" } else { "Go on" }}
                </button>
            }
        })
    };
    view! {
        <div class="mb-moment" class:mb-open=open>
            <p class="mb-dentist" data-test="dentist">{dentist}</p>
            <p class="mb-age" data-test="mix-age">{age}</p>
            {pause}
        </div>
    }
}

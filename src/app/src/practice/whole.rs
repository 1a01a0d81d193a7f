//! All questions of a form at a glance, its time, its pause, and handing it in.

use super::{run::Run, time};
use crate::{
    browser::focus,
    parts::{
        announce::announcer,
        assigned::{BackToAssignment, belongs_to},
        notice::{Notice, Tone},
        page::Page,
    },
    place::Place,
};
use leptos::{leptos_dom::helpers::set_interval_with_handle, prelude::*};
use std::time::Duration;

/// The whole form.
#[component]
pub fn Whole(
    /// The form.
    run: Run,
) -> impl IntoView {
    let asked = move || run.form().map_or(0, |form| form.begun.questions.len());
    let answered = move || run.form().map_or(0, |form| form.answers.len());
    let flagged = move || run.form().map_or(0, |form| form.flagged.len());
    let sure = RwSignal::new(false);
    let blank = move || asked() - answered().min(asked());
    let cells = move || (0..asked()).map(|at| cell(run, at)).collect_view();
    let hand_in = move |_| {
        if blank() > 0 && !sure.get_untracked() {
            sure.set(true);
            focus::first("[data-test=\"hand-in\"]");
        } else {
            run.finish();
        }
    };
    let (over, up) = belongs_to(Some(run.id), "Practice forms", &Place::Forms(String::new()));
    view! {
        <Page title="The whole form" over up>
            <p class="lead" data-test="form-state">
                {answered} " of " {asked} " answered, " {flagged} " flagged."
            </p>
            <TimeLeft run />
            <ol class="q-cells" data-test="cells">{cells}</ol>
            {move || (sure.get() && blank() > 0).then(|| view! {
                <Notice tone=Tone::Attention>
                    <p data-test="blank-left" role="alert">
                        {blank} " left blank, and they count as not right. Press once more to hand it in all the same."
                    </p>
                </Notice>
            })}
            <div class="actions">
                <button type="button" class="button" data-test="hand-in" on:click=hand_in>
                    "Hand it in"
                </button>
                <PauseButton run />
            </div>
            <BackToAssignment sitting=Some(run.id) quiet=true />
        </Page>
    }
}

fn cell(run: Run, at: usize) -> impl IntoView {
    let is_answered = run
        .form()
        .is_some_and(|form| form.answers.contains_key(&run.question_id(at)));
    let is_flagged = run.is_flagged(at);
    let says = match (is_answered, is_flagged) {
        (true, true) => "answered, flagged",
        (true, false) => "answered",
        (false, true) => "blank, flagged",
        (false, false) => "blank",
    };
    let class = if is_answered {
        "q-cell q-cell-done"
    } else {
        "q-cell"
    };
    view! {
        <li>
            <a class=class href=run.place(at).fragment() data-test=format!("cell-{}", at + 1)>
                <span class="unseen">"Question "</span>
                {at + 1}
                <span class="unseen">", " {says}</span>
                {is_flagged.then(|| view! { <span class="q-flag" aria-hidden="true">"⚑"</span> })}
            </a>
        </li>
    }
}

/// The pause, which the result tells of.
#[component]
pub fn PauseButton(
    /// The form.
    run: Run,
) -> impl IntoView {
    view! {
        <button
            type="button"
            class="button button-quiet"
            data-test="pause-form"
            on:click=move |_| run.pause(true)
        >
            "Pause"
        </button>
    }
}

/// The form at rest. Its questions are hidden meanwhile.
#[component]
pub fn Paused(
    /// The form.
    run: Run,
) -> impl IntoView {
    focus::heading();
    let (over, up) = belongs_to(Some(run.id), "Practice forms", &Place::Forms(String::new()));
    view! {
        <Page title="Paused" over up>
            <p class="lead" data-test="paused">
                "No time runs. Nothing is lost, even when you close the page. The result will say that there was a pause."
            </p>
            <div class="actions">
                <button
                    type="button"
                    class="button"
                    data-test="resume-form"
                    on:click=move |_| {
                        run.pause(false);
                        focus::heading();
                    }
                >
                    "Go on"
                </button>
            </div>
        </Page>
    }
}

/// The time left, where the form has a limit. When it is up, the form is
/// handed in as it stands.
#[component]
pub fn TimeLeft(
    /// The form.
    run: Run,
) -> impl IntoView {
    let left = RwSignal::new(run.left());
    let announcer = announcer();
    if left.get_untracked().is_some() {
        let tick = set_interval_with_handle(
            move || {
                let now = run.left();
                if now == Some(0) {
                    announcer.say("The time is up. The form is handed in as it stands.");
                    run.finish();
                } else if let Some(seconds) = now.filter(|seconds| time::is_said(*seconds)) {
                    announcer.say(time::words(seconds));
                }
                left.try_set(now);
            },
            Duration::from_secs(1),
        );
        if let Ok(tick) = tick {
            on_cleanup(move || tick.clear());
        }
    }
    // Drawn afresh only when the words change, not every second.
    let words = Memo::new(move |_| left.get().map(time::words));
    let away = run.away();
    view! {
        {move || {
            words
                .get()
                .map(|words| view! { <p class="q-time" data-test="time-left">{words}</p> })
        }}
        {away.map(|words| view! { <p class="q-note" data-test="away">{words}</p> })}
    }
}

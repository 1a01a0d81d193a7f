//! The verdict on a mix that was handed over: the cause, what else was found,
//! how to mend it and how never to, what happens next, and whose word it is.

use super::session::Session;
use crate::{
    cases::verdict,
    log::log,
    parts::{
        announce::announcer,
        assigned::BackToAssignment,
        icon::icon,
        sources::SourceNotes,
        verdict::{class, shape, word},
    },
    place::Place,
};
use clinic::{
    mixing::{Action, Mix, verdict::Finding},
    standing::Standing,
};
use leptos::prelude::*;
use record::folds;

/// The verdict.
#[component]
pub fn Judged(
    /// The mix.
    session: Session,
) -> impl IntoView {
    let Some(judged) = session.verdict() else {
        return ().into_any();
    };
    let standing = verdict(judged.standing);
    announcer().say(format!("{}. {}", word(standing), judged.cause));
    let line = |label: &'static str, says: String, hook: &'static str| {
        (!says.is_empty()).then(|| {
            view! { <p data-test=hook><strong>{label}</strong> {says}</p> }
        })
    };
    let also = (!judged.also.is_empty()).then(|| {
        let all = judged.also.iter().map(found).collect_view();
        view! {
            <h3 class="stage-label mb-label">"Also"</h3>
            <ul class="mb-also" data-test="mix-also">{all}</ul>
        }
    });
    let offer = session.offer();
    let task = session.task();
    let case = log().look(|events| {
        if task.is_some() {
            return None;
        }
        let waiting = folds::under_way(events).pop()?;
        Some(Place::of_sitting(
            &waiting.case,
            waiting.seed,
            waiting.with.as_deref(),
        ))
    });
    let case = case.map(|place| {
        view! { <a class="button" href=place.fragment() data-test="to-case">"On with the case"</a> }
    });
    let own = task.is_none();
    let mends = line("To mend it: ", judged.mend.clone(), "mix-mend");
    let never = line("Never: ", judged.never.clone(), "mix-never");
    view! {
        <section data-test="mix-judged">
            <div class=format!("judged {}", class(standing))>
                <h2 id="verdict" class="judged-word" tabindex="-1" data-test="mix-verdict">
                    {icon(shape(standing))} {word(standing)}
                </h2>
                <p class="judged-sum" data-test="mix-cause">{judged.cause.clone()}</p>
            </div>
            <p class="hint" data-test="mix-marks">{judged.marks} " of 100"</p>
            {mends}
            {never}
            {also}
            {line("Next: ", judged.next.clone(), "mix-next")}
            <After session />
            <BackToAssignment sitting=task />
            <div class="actions">
                {case}
                {own.then(|| view! {
                    <button type="button" class="button" data-test="mix-again" on:click=move |_| session.again()>
                        "Mix it again"
                    </button>
                })}
                <a class="button button-quiet" href=Place::Item(offer.material.clone()).fragment()>
                    "Study: " {offer.name.clone()}
                </a>
                {own.then(|| view! {
                    <a class="button button-quiet" href=Place::Bench.fragment()>"Another material"</a>
                })}
            </div>
            <p class="hint mb-label" data-test="mix-label">{judged.label.clone()}</p>
            <SourceNotes ids=judged.sources.clone() />
        </section>
    }
    .into_any()
}

fn found(finding: &Finding) -> impl IntoView + use<> {
    let standing = verdict(finding.standing);
    let mark = (finding.standing != Standing::Right).then(|| {
        view! { <span class=format!("verdict {}", class(standing))>{icon(shape(standing))} {word(standing)}</span> " " }
    });
    view! { <li>{mark} {finding.sentence.clone()}</li> }
}

/// What can still be done once it is in its place: the light, or time.
#[component]
fn After(session: Session) -> impl IntoView {
    let moves = session.moves();
    let buttons = moves.into_iter().map(|it| {
        let action = it.action;
        let hook = if matches!(action, Action::Cure(_)) { "cure" } else { "let-it-lie" };
        view! {
            <button type="button" class="button button-quiet" data-test=hook on:click=move |_| session.act(action)>
                {it.label}
            </button>
        }
    });
    let set = move || {
        session.turn.track();
        let per_cent = session.with(Mix::set_fraction) * 100.0;
        format!("Set so far: {per_cent:.0} %.")
    };
    view! {
        <div class="mb-after">
            <p data-test="mix-set">{set}</p>
            <div class="actions">{buttons.collect_view()}</div>
        </div>
    }
}

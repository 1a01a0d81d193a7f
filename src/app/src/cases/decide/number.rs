//! A number is the answer: typed with its unit, worked out in the head, on
//! paper, or with the tool of the bench that has this patient's figures filled in.

use crate::{
    browser::focus,
    cases::play::Play,
    parts::{announce::announcer, typed::Typed},
    place::Place,
};
use clinic::{case::Form, numbers::unit::Unit};
use leptos::prelude::*;

/// The box, and the way to the tool.
#[component]
pub fn DecideNumber(
    /// The sitting.
    play: Play,
    /// Which decision.
    at: usize,
) -> impl IntoView {
    let asked = play.asked(at);
    let Form::Number(sum) = &asked.form else {
        return ().into_any();
    };
    let typed = play.typed(at);
    let why = RwSignal::new(String::new());
    let aloud = announcer();
    let submit = move |event: leptos::ev::SubmitEvent| {
        event.prevent_default();
        if let Err(sentence) = play.give_typed(at) {
            aloud.say(sentence.clone());
            why.set(sentence);
            focus::first("#answer");
        }
    };
    let unit = sum.problem.answer.unit().map(Unit::sign);
    let frame = sum.problem.working.frame;
    let frame = frame.map(|says| view! { <p class="num-frame" data-test="dose-frame">{says}</p> });
    // Whoever set the case wants to see the student's own arithmetic.
    let tool = (!play.is_assigned()).then(|| {
        let mut entries = sum.entries.0.clone();
        entries.push((Place::FROM_CASE.into(), play.place().fragment()));
        let to = Place::Tool(sum.tool.id().into(), entries);
        view! {
            <section class="by-hand" data-test="at-the-bench">
                <h2 class="stage-label">"Or work it out at the bench"</h2>
                <p class="hint">
                    "The tool opens with these figures filled in and shows every step. Come back and type what it comes to."
                </p>
                <a class="button button-quiet" href=to.fragment() data-test="open-tool">
                    {sum.tool.name()}
                </a>
            </section>
        }
    });
    view! {
        <form class="num-form" novalidate on:submit=submit>
            <Typed typed unit change=move |text| play.take_typed(at, &text) />
            <p class="num-why" id="why-answer" data-test="why-answer">{why}</p>
            <div class="case-go">
                <button
                    type="submit"
                    class="button"
                    data-test="answer"
                    disabled=move || typed.with(|typed| typed.trim().is_empty())
                >
                    "Answer"
                </button>
            </div>
        </form>
        {frame}
        {tool}
    }
    .into_any()
}

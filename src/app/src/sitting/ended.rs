//! The end of a sitting: what was learnt and what is next.

use super::{opening::lengths, play::Play, player::Plain};
use crate::{
    parts::fold::Fold,
    place::Place,
    questions::{Questions, days, studied, told::study_link},
};
use leptos::prelude::*;
use study::{
    answer::Answer,
    day::Day,
    question::Study as Next,
    sitting::{Summary, Then},
};

/// The end of a sitting.
#[component]
pub fn Ended(
    /// The sitting.
    play: Play,
) -> impl IntoView {
    let questions = play.questions();
    let studied = studied(questions);
    let own = own(play, studied.today);
    let summary = Summary::of(
        questions.items(),
        &studied.shown.memory,
        &studied.schedule,
        &own,
        studied.today,
    );
    let words = summary.words.iter();
    let words = words
        .map(|words| view! { <p>{words.clone()}</p> })
        .collect_view();
    let by_competency = summary.by_competency.iter().map(|(name, right, all)| {
        view! { <tr><th scope="row">{name.clone()}</th><td>{*right}</td><td>{*all}</td></tr> }
    });
    let by_competency = by_competency.collect_view();
    let any_competency = !summary.by_competency.is_empty();
    let any_shaky = !summary.shaky.is_empty();
    let any_learnt = !summary.learnt.is_empty();
    let shaky = listed(questions, &summary.shaky, studied.today);
    let learnt = listed(questions, &summary.learnt, studied.today);
    let next = to_study(questions, &summary.shaky);
    view! {
        <Plain title="What you learnt">
            <div class="prose" data-test="summary">{words}</div>
            {any_competency.then(|| view! {
                <div class="table-frame" tabindex="0" role="region" aria-label="By competency">
                    <table class="numbers">
                        <thead><tr>
                            <th scope="col">"Competency"</th>
                            <th scope="col">"Right at last"</th>
                            <th scope="col">"Asked"</th>
                        </tr></thead>
                        <tbody>{by_competency}</tbody>
                    </table>
                </div>
            })}
            {any_shaky.then(|| view! {
                <section class="group">
                    <h2 class="stage-label">"Not firm yet"</h2>
                    <ul class="q-told-list">{shaky}</ul>
                </section>
            })}
            {(!next.is_empty()).then(|| view! {
                <section class="group" data-test="study-next">
                    <h2 class="stage-label">"Study next"</h2>
                    <ul class="rows">{next.iter().filter_map(study_link).collect_view()}</ul>
                </section>
            })}
            {any_learnt.then(|| view! {
                <Fold title="What you knew, and when it comes back">
                    <ul class="q-told-list">{learnt}</ul>
                </Fold>
            })}
            <section class="group">
                <h2 class="stage-label">"Another sitting"</h2>
                {lengths("Another sitting")}
            </section>
            <div class="case-go">
                <a class="button" href=Place::Today.fragment() data-test="done">"To Today"</a>
            </div>
        </Plain>
    }
}

/// The answers of this sitting as study takes them.
fn own(play: Play, today: Day) -> Vec<Answer> {
    let answers = play.study().map(|study| study.answers).unwrap_or_default();
    let taken = answers.into_iter().map(|answer| Answer {
        question: answer.question,
        competency: answer.competency,
        right: answer.verdict == record::Verdict::Right,
        hint: answer.hint,
        unsure: answer.unsure,
        seconds: answer.seconds,
        first_try: false,
        day: today,
    });
    taken.collect()
}

/// Questions by what they ask, with the day on which they come back.
fn listed(questions: Questions, all: &[Then], today: Day) -> impl IntoView + use<> {
    let items = questions.items().items();
    let row = |then: &Then| {
        let question = questions.write(&items[then.place].id, 0)?;
        let back = match then.day.since(today) {
            0 | 1 => "comes back tomorrow".to_owned(),
            days if days < 15 => format!("comes back in {days} days"),
            _ => format!("comes back on {}", days::words(then.day)),
        };
        Some(view! {
            <li class="q-told">
                <span class="q-told-words">{question.stem}</span>
                <span class="q-because">{then.grade.words()} "; " {back}</span>
            </li>
        })
    };
    all.iter().filter_map(row).collect_view()
}

/// What the shaky questions teach, each once, a few at most.
fn to_study(questions: Questions, shaky: &[Then]) -> Vec<Next> {
    const MOST: usize = 4;
    let items = questions.items().items();
    let mut next: Vec<Next> = Vec::new();
    for then in shaky {
        let study = questions.write(&items[then.place].id, 0).map(|q| q.study);
        for each in study.into_iter().flatten() {
            if next.len() < MOST && !next.contains(&each) {
                next.push(each);
            }
        }
    }
    next
}

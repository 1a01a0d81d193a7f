//! What a day and so many minutes allow, in words. It is worked out apart from
//! the touch that asks for it, because it plays every day forward.

use crate::{
    browser::breath::Sliced,
    parts::fold::Fold,
    questions::{Questions, Studied, days, following},
};
use leptos::prelude::*;
use study::memory::{Feasibility, Outlook, Week};

/// What was worked out.
struct Feasible {
    words: String,
    weeks: Vec<Week>,
}

/// What is feasible by what is set.
pub fn feasible(questions: Questions) -> impl IntoView {
    let says = "Working out what is feasible…";
    following(questions, "q-feasible", says, work_out, draw)
}

async fn work_out(questions: Questions, studied: &Studied, work: &mut Sliced) -> Feasible {
    let (bank, memory) = (questions.items(), &studied.shown.memory);
    let (today, schedule, plan) = (studied.today, &studied.schedule, studied.plan);
    let mut pause = async || work.rest().await;
    let ahead = plan.examination().filter(|it| it.0 > today);
    let (words, days) = match ahead {
        Some(examination) => {
            let (pace, minutes) = (schedule.multiplier, plan.minutes);
            let feasible =
                Feasibility::in_slices(bank, memory, examination, pace, today, minutes, &mut pause);
            (feasible.await.words, examination.0.since(today))
        }
        None => (
            format!("{} minutes a day, for as long as you like.", plan.minutes),
            28,
        ),
    };
    let (days, minutes) = (days.clamp(7, 56), Some(plan.minutes));
    let outlook = Outlook::in_slices(bank, memory, schedule, today, days, minutes, &mut pause);
    Feasible {
        words,
        weeks: outlook.await.weeks(),
    }
}

fn draw(_: Questions, _: &Studied, feasible: &Feasible) -> impl IntoView + use<> {
    let weeks = table(&feasible.weeks);
    view! {
        <div class="q-feasible">
            <p class="lead" data-test="feasible">{feasible.words.clone()}</p>
            <Fold title="The coming weeks" test="weeks">{weeks}</Fold>
        </div>
    }
}

fn table(weeks: &[Week]) -> impl IntoView + use<> {
    let row = |week: &Week| {
        view! {
            <tr>
                <th scope="row">{days::words(week.from)}</th>
                <td>{week.reviews}</td>
                <td>{week.new}</td>
                <td>{week.minutes}</td>
            </tr>
        }
    };
    view! {
        <div class="table-frame" tabindex="0" role="region" aria-label="The coming weeks">
            <table class="numbers">
                <thead><tr>
                    <th scope="col">"Week from"</th>
                    <th scope="col">"Reviews"</th>
                    <th scope="col">"New"</th>
                    <th scope="col">"Minutes"</th>
                </tr></thead>
                <tbody>{weeks.iter().map(row).collect_view()}</tbody>
            </table>
        </div>
    }
}

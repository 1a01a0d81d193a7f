//! What a day and so many minutes allow, in words. It is worked out apart from
//! the touch that asks for it, because it plays every day forward.

use crate::{
    browser::breath::{self, Sliced},
    parts::fold::Fold,
    questions::{Questions, days, plan::Plan, studied},
};
use leptos::{prelude::*, task::spawn_local};
use study::memory::{Feasibility, Outlook, Week};

/// What was worked out.
#[derive(Clone)]
struct Worked {
    words: String,
    weeks: Vec<Week>,
}

/// What is feasible.
#[component]
pub fn Feasible(
    /// All questions.
    questions: Questions,
    /// What is set.
    plan: Plan,
) -> impl IntoView {
    let worked = RwSignal::new(None::<Worked>);
    let studied = studied(questions);
    spawn_local(async move {
        breath::take().await;
        let mut work = Sliced::begun();
        let bank = questions.items();
        let ahead = plan.examination().filter(|it| it.0 > studied.today);
        let (words, days) = match ahead {
            Some(examination) => {
                let feasible = Feasibility::in_slices(
                    bank,
                    &studied.memory,
                    examination,
                    studied.schedule.multiplier,
                    studied.today,
                    plan.minutes,
                    &mut async || work.rest().await,
                )
                .await;
                (feasible.words, examination.0.since(studied.today))
            }
            None => (
                format!("{} minutes a day, for as long as you like.", plan.minutes),
                28,
            ),
        };
        let outlook = Outlook::in_slices(
            bank,
            &studied.memory,
            &studied.schedule,
            studied.today,
            days.clamp(7, 56),
            Some(plan.minutes),
            &mut async || work.rest().await,
        )
        .await;
        worked.try_set(Some(Worked {
            words,
            weeks: outlook.weeks(),
        }));
    });
    move || match worked.get() {
        None => view! { <p class="q-note" aria-busy="true">"Working out what is feasible…"</p> }
            .into_any(),
        Some(Worked { words, weeks }) => view! {
            <p class="lead" data-test="feasible">{words}</p>
            <Fold title="The coming weeks" test="weeks">{table(weeks)}</Fold>
        }
        .into_any(),
    }
}

fn table(weeks: Vec<Week>) -> impl IntoView {
    let row = |week: Week| {
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
                <tbody>{weeks.into_iter().map(row).collect_view()}</tbody>
            </table>
        </div>
    }
}

//! On Today: what is due, what comes next, and how much is coming.

use crate::{
    browser::breath::Sliced,
    parts::fold::Fold,
    place::Place,
    questions::{Questions, Studied, days, following, prepare, questions},
};
use leptos::prelude::*;
use study::memory::{DayLoad, Outlook, Queue};

/// Said until anything can be; the same all the while, so that nothing flickers.
const GETTING_READY: &str = "Getting the questions ready…";

/// What is due and what is coming, once the questions are ready.
#[component]
pub fn Ahead() -> impl IntoView {
    prepare();
    move || match questions() {
        Some(questions) => following(questions, "q-ahead", GETTING_READY, coming, draw).into_any(),
        None => view! {
            <div class="q-ahead" aria-busy="true">
                <p class="q-note" data-test="questions-awaited">{GETTING_READY}</p>
            </div>
        }
        .into_any(),
    }
}

/// What is due, and how much is coming.
struct Coming {
    due: usize,
    seconds: u32,
    begun: usize,
    /// Nothing comes where nothing was begun.
    week: Option<Outlook>,
}

async fn coming(questions: Questions, studied: &Studied, work: &mut Sliced) -> Coming {
    let (bank, memory) = (questions.items(), &studied.shown.memory);
    let (schedule, today) = (&studied.schedule, studied.today);
    let budget = studied.plan.minutes * 60;
    let (queue, _) = Queue::within(bank, memory, schedule, today, budget);
    work.rest().await;
    let begun = memory.known().count();
    let mut pause = async || work.rest().await;
    let week = match begun {
        0 => None,
        _ => Some(Outlook::in_slices(bank, memory, schedule, today, 7, None, &mut pause).await),
    };
    Coming {
        due: queue.due.len(),
        seconds: queue.pressing_seconds(),
        begun,
        week,
    }
}

fn draw(questions: Questions, studied: &Studied, coming: &Coming) -> impl IntoView + use<> {
    let begun = coming.begun;
    let all = questions.items().items().len();
    let examination = studied
        .plan
        .examination()
        .map(|examination| examination.words(studied.today));
    let remarks = studied.remarks.iter();
    let remarks = remarks.filter(|remark| Some(*remark) != examination.as_ref());
    let remarks = remarks.map(|words| view! { <p class="q-note">{words.clone()}</p> });
    view! {
        <div class="q-ahead" data-test="ahead">
            <p data-test="due">{due_words(coming.due, coming.seconds)}</p>
            <p class="q-note">{begun} " of " {all} " questions begun. "
                {examination.clone()} " "
                <a href=Place::Plan.fragment() data-test="to-plan">
                    {if examination.is_some() { "Change the day" } else { "Set an examination day" }}
                </a>
            </p>
            {remarks.collect_view()}
            {coming.week.as_ref().map(forecast)}
        </div>
    }
}

fn due_words(due: usize, seconds: u32) -> String {
    match (due, seconds.div_ceil(60)) {
        (0, _) => "No review is due. A sitting goes on with something new.".into(),
        (1, minutes) => format!("1 review is due, about {} min.", minutes.max(1)),
        (many, minutes) => format!("{many} reviews are due, about {} min.", minutes.max(1)),
    }
}

/// Reviews in the coming week as bars, with the numbers behind them.
fn forecast(outlook: &Outlook) -> AnyView {
    let most = outlook
        .days
        .iter()
        .map(|day| day.reviews)
        .max()
        .unwrap_or(0)
        .max(1);
    let total: u32 = outlook.days.iter().map(|day| day.reviews).sum();
    let label = format!("Reviews in the coming week: {total} in all, {most} on the fullest day");
    let bars: Vec<_> = (0_u32..)
        .zip(&outlook.days)
        .map(|(at, day)| bar(at, day, most))
        .collect();
    let rows = outlook.days.iter().map(|day| {
        let minutes = day.seconds.div_ceil(60);
        view! {
            <tr>
                <th scope="row">{days::weekday(day.day)} " " {days::words(day.day)}</th>
                <td>{day.reviews}</td>
                <td>{minutes}</td>
            </tr>
        }
    });
    let rows = rows.collect_view();
    view! {
        <svg class="q-week" viewBox="0 0 210 64" role="img" aria-label=label>{bars}</svg>
        <Fold title="Reviews in the coming week">
            <div class="table-frame" tabindex="0" role="region" aria-label="Reviews in the coming week">
                <table class="numbers">
                    <thead><tr>
                        <th scope="col">"Day"</th>
                        <th scope="col">"Reviews"</th>
                        <th scope="col">"Minutes"</th>
                    </tr></thead>
                    <tbody>{rows}</tbody>
                </table>
            </div>
        </Fold>
    }
    .into_any()
}

fn bar(at: u32, day: &DayLoad, most: u32) -> impl IntoView + use<> {
    let height = 40 * day.reviews / most;
    let (left, middle) = (at * 30 + 4, at * 30 + 15);
    view! {
        <rect class="q-bar" x=left y=48 - height width="22" height=height.max(1) />
        <text class="q-bar-label" x=middle y="60" text-anchor="middle">{days::weekday(day.day)}</text>
        <text class="q-bar-label" x=middle y=44 - height text-anchor="middle">
            {(day.reviews > 0).then_some(day.reviews)}
        </text>
    }
}

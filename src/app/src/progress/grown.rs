//! Mastery over time: what would have been expected at the end of each span of
//! days, from the answers given until then.

use crate::{
    browser::breath::Sliced,
    parts::fold::Fold,
    questions::{Questions, Studied, days, following, studied},
};
use leptos::prelude::*;
use study::{
    day::Day,
    item::Bank,
    mastery::{FirstTries, Mastery, Percent, THIN},
};

/// At so many points at most.
const POINTS: u32 = 10;

/// What was expected on a day, by competency and over all.
pub struct Point {
    day: Day,
    all: Option<Percent>,
    by_competency: Vec<Option<Percent>>,
}

/// The days to look at: evenly from the first answer to today, today included.
fn days_to_look_at(first: Day, today: Day) -> Vec<Day> {
    let span = today.since(first);
    let steps = span.clamp(1, POINTS - 1);
    let mut found: Vec<Day> = (0..=steps)
        .map(|step| first.plus(span * step / steps))
        .collect();
    found.dedup();
    found
}

/// The points of a record.
async fn points(questions: Questions, studied: &Studied, work: &mut Sliced) -> Vec<Point> {
    let (bank, answers, today) = (questions.items(), &studied.shown.answers, studied.today);
    let Some(first) = answers.iter().map(|answer| answer.day).min() else {
        return Vec::new();
    };
    let mut tries = FirstTries::default();
    let mut rest = answers.iter().peekable();
    let mut points = Vec::new();
    for day in days_to_look_at(first.min(today), today) {
        while let Some(answer) = rest.next_if(|answer| answer.day <= day) {
            tries.take(bank, answer);
        }
        let mastery = Mastery::of(bank, &tries);
        points.push(Point {
            day,
            all: mastery.percent,
            by_competency: mastery.standings.iter().map(|it| it.percent).collect(),
        });
        work.rest().await;
    }
    points
}

/// The section, where there is enough to be drawn.
pub fn over_time(questions: Questions) -> Option<impl IntoView> {
    let enough = studied(questions).shown.tries.count() >= THIN;
    enough.then(|| following(questions, "q-space", super::WORKING, points, draw))
}

/// One line over all, with its interval, and the table behind it.
fn draw(questions: Questions, _: &Studied, points: &Vec<Point>) -> Option<impl IntoView + use<>> {
    let bank = questions.items();
    let known: Vec<(f64, Percent)> = (0_u32..)
        .zip(points)
        .filter_map(|(at, point)| Some((f64::from(at), point.all?)))
        .collect();
    let last = known.last()?.1;
    let first = known.first()?.1;
    let wide = (study::numeric::real(points.len()) - 1.0).max(1.0);
    let x = |at: f64| 24.0 + 268.0 * at / wide;
    let y = |percent: u32| 110.0 - f64::from(percent);
    let line: Vec<String> = known
        .iter()
        .map(|(at, p)| format!("{:.1},{:.1}", x(*at), y(p.expected)))
        .collect();
    let high = known
        .iter()
        .map(|(at, p)| format!("{:.1},{:.1}", x(*at), y(p.high)));
    let low = known
        .iter()
        .rev()
        .map(|(at, p)| format!("{:.1},{:.1}", x(*at), y(p.low)));
    let area: Vec<String> = high.chain(low).collect();
    let label = format!(
        "Expected per cent over all competencies: {} at first, {} now",
        first.expected, last.expected
    );
    let dots = known.iter().map(|(at, p)| {
        view! { <circle class="q-dot" cx=format!("{:.1}", x(*at)) cy=format!("{:.1}", y(p.expected)) r="2.5" /> }
    });
    let rules = [0_u32, 50, 100].map(|percent| {
        view! {
            <path class="q-rule" d=format!("M24 {0}H292", y(percent)) />
            <text class="q-bar-label" x="20" y=y(percent) + 3.0 text-anchor="end">{percent}</text>
        }
    });
    let from = points.first().map(|point| days::words(point.day));
    let table = table(bank, points);
    Some(view! {
        <section class="group" data-test="over-time">
            <h2>"Over time"</h2>
            <svg class="q-chart" viewBox="0 0 300 128" role="img" aria-label=label>
                {rules.collect_view()}
                <polygon class="q-band-area" points=area.join(" ") />
                <polyline class="q-line" points=line.join(" ") />
                {dots.collect_view()}
                <text class="q-bar-label" x="24" y="124">{from}</text>
                <text class="q-bar-label" x="292" y="124" text-anchor="end">"today"</text>
            </svg>
            <p class="q-note">"Expected per cent over all competencies, with the 80 % interval."</p>
            <Fold title="The numbers, by competency" test="over-time-numbers">{table}</Fold>
        </section>
    })
}

fn table(bank: &Bank, points: &[Point]) -> impl IntoView + use<> {
    let heads = points
        .iter()
        .map(|point| view! { <th scope="col">{days::iso(point.day)}</th> })
        .collect_view();
    let cell = |percent: Option<Percent>| {
        let text = percent.map_or_else(|| "thin".to_owned(), |p| format!("{} %", p.expected));
        view! { <td>{text}</td> }
    };
    let all = points.iter().map(|point| cell(point.all)).collect_view();
    let rows = bank.blueprint().0.iter().enumerate().map(|(at, share)| {
        let cells = points.iter().map(|point| cell(point.by_competency[at]));
        view! { <tr><th scope="row">{share.name.clone()}</th>{cells.collect_view()}</tr> }
    });
    view! {
        <div class="table-frame" tabindex="0" role="region" aria-label="Mastery over time">
            <table class="numbers">
                <thead><tr><th scope="col">"Competency"</th>{heads}</tr></thead>
                <tbody><tr><th scope="row">"All"</th>{all}</tr>{rows.collect_view()}</tbody>
            </table>
        </div>
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_points_run_from_the_first_day_to_today() {
        let look = |first, today| {
            let days = days_to_look_at(Day(first), Day(today));
            days.iter().map(|day| day.0).collect::<Vec<_>>()
        };
        assert_eq!(look(5, 5), [5]);
        assert_eq!(look(5, 7), [5, 6, 7]);
        assert_eq!(look(0, 90), [0, 10, 20, 30, 40, 50, 60, 70, 80, 90]);
    }
}

//! Calibration of the memory model: what it forecast against what happened.

use crate::{
    browser::breath::Sliced,
    parts::fold::Fold,
    questions::{Questions, Studied, following},
};
use leptos::prelude::*;
use study::memory::{Bin, Calibration, Fit, Recalibration};

/// The section.
pub fn calibration(questions: Questions) -> impl IntoView {
    following(questions, "q-space-tall", super::WORKING, work_out, draw)
}

type Judged = (Calibration, Recalibration);

async fn work_out(_: Questions, studied: &Studied, work: &mut Sliced) -> Judged {
    let reviews = studied.shown.memory.reviews();
    let calibration = Calibration::of(reviews);
    work.rest().await;
    (calibration, Recalibration::of(reviews))
}

fn draw(_: Questions, _: &Studied, (calibration, bent): &Judged) -> impl IntoView + use<> {
    let marks: Vec<_> = calibration.bins.iter().filter_map(mark).collect();
    let picture = (!marks.is_empty()).then(|| {
        view! {
            <svg class="q-chart q-square" viewBox="0 0 150 140" role="img" aria-label="Forecast against what happened; the table below has the numbers">
                <path class="q-rule" d="M30 10V110H130" />
                <path class="q-rule q-dashed" d="M30 110L130 10" />
                <text class="q-bar-label" x="26" y="14" text-anchor="end">"100"</text>
                <text class="q-bar-label" x="26" y="112" text-anchor="end">"0"</text>
                <text class="q-bar-label" x="130" y="122" text-anchor="end">"100 %"</text>
                <text class="q-bar-label" x="80" y="134" text-anchor="middle">"forecast"</text>
                {marks}
            </svg>
        }
    });
    let rows = calibration.bins.iter().map(row).collect_view();
    let loss = calibration.log_loss.zip(calibration.plain_log_loss);
    let loss = loss.map(|(own, plain)| {
        view! {
            <p>{format!("Log loss {own:.3}; always forecasting your overall share would have {plain:.3}. Less is better.")}</p>
        }
    });
    let fit = bent.fit;
    view! {
        <section class="group" data-test="calibration">
            <h2>"How far the forecast of memory held"</h2>
            <p>{calibration.words.clone()}</p>
            <p data-test="recalibration">{bent.words.clone()}</p>
            {picture}
            <Fold title="The numbers" test="calibration-numbers">
                <div class="table-frame" tabindex="0" role="region" aria-label="Forecast against what happened">
                    <table class="numbers">
                        <thead><tr>
                            <th scope="col">"Forecast"</th>
                            <th scope="col">"Reviews"</th>
                            <th scope="col">"Mean forecast"</th>
                            <th scope="col">"Right"</th>
                            <th scope="col">"95 % interval"</th>
                        </tr></thead>
                        <tbody>{rows}</tbody>
                    </table>
                </div>
                {loss}
                {fit.map(fitted)}
            </Fold>
        </section>
    }
}

/// The numbers of the recalibration, and what they are not used for.
fn fitted(fit: Fit) -> impl IntoView {
    view! {
        <p data-test="recalibration-numbers">
            {format!(
                "Fitted to your reviews, log-odds of right = {:+.2} (± {:.2}) + {:.2} (± {:.2}) × log-odds of the forecast. Brier score {:.3} as forecast, {:.3} so bent; less is better. No date is reckoned by this fit.",
                fit.shift,
                fit.shift_error,
                fit.slope,
                fit.slope_error,
                fit.before,
                fit.after,
            )}
        </p>
    }
}

/// A group of reviews: where it lies, with its interval as an upright line.
fn mark(bin: &Bin) -> Option<impl IntoView + use<>> {
    let (predicted, observed) = bin.predicted.zip(bin.observed)?;
    let (x, y) = (30.0 + 100.0 * predicted, |share: f64| 110.0 - 100.0 * share);
    let (low, high) = (y(bin.interval.low), y(bin.interval.high));
    Some(view! {
        <path class="q-line" d=format!("M{x:.1} {low:.1}V{high:.1}") />
        <circle class="q-dot" cx=format!("{x:.1}") cy=format!("{:.1}", y(observed)) r="3" />
    })
}

fn row(bin: &Bin) -> impl IntoView + use<> {
    let share = |share: Option<f64>| {
        share.map_or_else(|| "–".to_owned(), |share| format!("{:.0} %", share * 100.0))
    };
    let interval = bin.observed.map_or_else(
        || "–".to_owned(),
        |_| {
            format!(
                "{:.0}–{:.0} %",
                bin.interval.low * 100.0,
                bin.interval.high * 100.0
            )
        },
    );
    view! {
        <tr>
            <th scope="row">{format!("{:.0}–{:.0} %", bin.from * 100.0, bin.to * 100.0)}</th>
            <td>{bin.count}</td>
            <td>{share(bin.predicted)}</td>
            <td>{share(bin.observed)}</td>
            <td>{interval}</td>
        </tr>
    }
}

//! Items: how hard, how far they go with the others, and who takes what.

use super::{Worked, competency, figure, per_cent, titled, with_interval};
use crate::parts::{fold::Fold, more::More};
use class::report::{Gate, ItemReport, OptionReport};
use leptos::prelude::*;
use std::rc::Rc;

/// How many items are drawn at once: where each seat has its own patients,
/// there are many.
const AT_ONCE: usize = 60;

/// The items.
#[component]
pub fn Items(
    /// What was worked out.
    worked: Rc<Worked>,
) -> impl IntoView {
    let shown = RwSignal::new(AT_ONCE);
    let count = worked.report.items.len();
    let gates: Vec<Gate> = [Gate::Counts, Gate::Provisional, Gate::Full]
        .into_iter()
        .filter(|gate| worked.report.items.iter().any(|item| item.gate == *gate))
        .collect();
    let none_taken = !worked.report.items.iter().any(tells_options);
    let kept = StoredValue::new_local(worked);
    let rows = move || {
        let shown = shown.get();
        kept.with_value(|worked| {
            worked
                .report
                .items
                .iter()
                .take(shown)
                .map(row)
                .collect_view()
        })
    };
    let folds = move || {
        let shown = shown.get();
        kept.with_value(|worked| {
            let items = worked.report.items.iter().take(shown);
            let with = items.filter(|item| tells_options(item));
            with.map(options).collect_view()
        })
    };
    view! {
        <section class="dk-section" hidden=count == 0>
            <h2>"Items"</h2>
            <ul class="hint">{gates.into_iter().map(|gate| view! { <li>{gate.words()}</li> }).collect_view()}</ul>
            <div class="table-frame" tabindex="0" role="region" aria-label="Items">
                <table class="dk-table numbers" data-test="items-table">
                    <thead>
                        <tr>
                            <th scope="col">"Task"</th>
                            <th scope="col">"Item"</th>
                            <th scope="col">"Competency"</th>
                            <th scope="col">"Right"</th>
                            <th scope="col">"Difficulty"</th>
                            <th scope="col">"Goes with the rest (r)"</th>
                            <th scope="col">"Upper less lower 27 %"</th>
                            <th scope="col">"Unsafe"</th>
                            <th scope="col">"Open"</th>
                            <th scope="col">"Seconds"</th>
                            <th scope="col">"Worth a look"</th>
                        </tr>
                    </thead>
                    <tbody>{rows}</tbody>
                </table>
            </div>
            <More
                shown
                count=count.into()
                at_once=AT_ONCE
                says=move |_| format!("Show more of {count} items")
                test="more-items"
            />
            <p class="hint">
                "Difficulty is the share that had it right: the higher, the easier. r is the correlation with the score on the other items that every seat was asked, with its 95 per cent interval."
            </p>
            <div class="dk-who-takes" hidden=none_taken>
                <h3>"Who takes what"</h3>
                {folds}
            </div>
        </section>
    }
}

/// Whether who takes what means anything.
fn tells_options(item: &ItemReport) -> bool {
    item.gate > Gate::Counts && !item.options.is_empty()
}

fn row(item: &ItemReport) -> impl IntoView + use<> {
    let counts = item.gate == Gate::Counts;
    let difficulty = if counts {
        "–".to_owned()
    } else {
        per_cent(item.p)
    };
    let r = match (counts, item.r, item.r_interval) {
        (true, ..) | (_, None, _) => "–".to_owned(),
        (_, Some(r), interval) => with_interval(r, interval),
    };
    let d27 = item.d27.filter(|_| !counts);
    let d27 = d27.map_or_else(|| "–".to_owned(), |d| figure(d, 2));
    let quiet = if item.gate == Gate::Full {
        ""
    } else {
        "dk-quiet"
    };
    let flags: Vec<_> = item
        .flags
        .iter()
        .map(|flag| view! { <li>{flag.to_string()}</li> })
        .collect();
    let flags = (!flags.is_empty()).then(|| view! { <ul class="dk-flags">{flags}</ul> });
    view! {
        <tr data-test="item">
            <td>{item.place + 1}</td>
            <th scope="row" class="dk-item">{item.name.to_string()}</th>
            <td class="dk-words">{competency(&item.competency)}</td>
            <td>{item.right} " of " {item.asked}</td>
            <td>{difficulty}</td>
            <td class=quiet>{r}</td>
            <td class=quiet>{d27}</td>
            <td>{item.harmful}</td>
            <td>{item.blank}</td>
            <td>{format!("{:.0}", item.mean_seconds)}</td>
            <td class="dk-words">{flags}</td>
        </tr>
    }
}

/// Who takes which option: in the low, the middle and the high third.
fn options(item: &ItemReport) -> impl IntoView + use<> {
    let mut all: Vec<&OptionReport> = item.options.iter().collect();
    all.sort_by(|a, b| {
        let key = |option: &OptionReport| option.r.unwrap_or(-2.0);
        key(b).total_cmp(&key(a))
    });
    let rows: Vec<_> = all
        .into_iter()
        .map(|option| {
            let [low, middle, high] = option.thirds;
            let fits = match (option.fits, option.fails) {
                (true, false) => "right",
                (true, true) => "right for some",
                _ => "wrong",
            };
            let r = option.r.map_or_else(|| "–".to_owned(), |r| figure(r, 2));
            view! {
                <tr>
                    <th scope="row">{option.label.to_string()}</th>
                    <td>{fits}</td>
                    <td>{option.count} " (" {per_cent(option.share)} ")"</td>
                    <td>{low}</td>
                    <td>{middle}</td>
                    <td>{high}</td>
                    <td>{r}</td>
                </tr>
            }
        })
        .collect();
    let title = titled(item);
    let label = format!("Who takes what: {title}");
    view! {
        <Fold title test="options">
            <div class="table-frame" tabindex="0" role="region" aria-label=label>
                <table class="dk-table numbers">
                    <thead>
                        <tr>
                            <th scope="col">"Option"</th>
                            <th scope="col">"It is"</th>
                            <th scope="col">"Taken by"</th>
                            <th scope="col">"Low third"</th>
                            <th scope="col">"Middle"</th>
                            <th scope="col">"High third"</th>
                            <th scope="col">"r"</th>
                        </tr>
                    </thead>
                    <tbody>{rows}</tbody>
                </table>
            </div>
        </Fold>
    }
}

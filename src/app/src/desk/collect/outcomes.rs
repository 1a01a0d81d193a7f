//! What became of everything that was read just now, those that need
//! attention first; and what is kept in all.

use super::Reader;
use crate::{
    parts::notice::{Notice, Tone},
    place::{ClassPlace, Place},
};
use class::handin::{Outcome, Received};
use leptos::prelude::*;

/// How many lines are listed at once.
const AT_ONCE: usize = 100;

/// How many letters of a line are shown.
const SHOWN: usize = 28;

/// What became of a line.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Read {
    /// Its number among those read at once, from 1.
    number: usize,
    /// The end of what stood there.
    what: String,
    /// One word for it.
    word: &'static str,
    /// A sentence.
    says: String,
    /// Whether it counts.
    counts: bool,
}

impl Read {
    /// From a line and what became of it.
    pub fn of((line, received): &(String, Received)) -> Self {
        let letters: Vec<char> = line.chars().collect();
        let from = letters.len().saturating_sub(SHOWN);
        let start = if from > 0 { "…" } else { "" };
        let end: String = letters[from..].iter().collect();
        Self {
            number: received.number,
            what: format!("{start}{end}"),
            word: received.outcome.word(),
            says: received.outcome.to_string(),
            counts: matches!(received.outcome, Outcome::Accepted(_)),
        }
    }
}

/// How many there are of each kind, in a sentence.
pub fn tally(read: &[Read]) -> String {
    let mut counts: Vec<(&str, usize)> = Vec::new();
    for each in read {
        match counts.iter_mut().find(|(word, _)| *word == each.word) {
            Some((_, count)) => *count += 1,
            None => counts.push((each.word, 1)),
        }
    }
    counts.sort_by_key(|(word, _)| (*word != "accepted", *word));
    let parts: Vec<String> = counts
        .iter()
        .map(|(word, count)| format!("{count} {word}"))
        .collect();
    format!("Read {}: {}.", read.len(), parts.join(", "))
}

/// The outcomes.
#[component]
pub fn Outcomes(
    /// What reads hand-ins.
    reader: Reader,
) -> impl IntoView {
    let kept = move || {
        let (count, seats) = reader.kept.get();
        match (count, seats) {
            (0, _) => "No hand-in is kept yet.".to_owned(),
            (1, _) => "1 hand-in is kept.".into(),
            (count, seats) if count == seats => format!("{count} hand-ins are kept, one a seat."),
            (count, seats) => format!("{count} hand-ins of {seats} seats are kept."),
        }
    };
    let id = reader.id.get_value();
    let to_report = Place::Class(ClassPlace::Report(id)).fragment();
    let listed = move || {
        let mut read = reader.read.get();
        (!read.is_empty()).then(|| {
            let says = tally(&read);
            read.sort_by_key(|it| it.counts);
            let more = read.len().saturating_sub(AT_ONCE);
            read.truncate(AT_ONCE);
            let (taken, refused): (Vec<Read>, Vec<Read>) =
                read.into_iter().partition(|it| it.counts);
            let rest = (more > 0)
                .then(|| view! { <p class="hint">{more} " more counted without remark."</p> });
            view! {
                <section class="group" data-test="outcomes">
                    <h2 class="stage-label">"Read just now"</h2>
                    <p class="lead" data-test="tally">{says}</p>
                    {table(refused, "Not counted", "refused")}
                    {table(taken, "Counted", "counted")}
                    {rest}
                </section>
            }
        })
    };
    view! {
        {move || {
            reader
                .fault
                .get()
                .map(|says| {
                    view! {
                        <Notice tone=Tone::Attention>
                            <p data-test="collect-fault">{says}</p>
                        </Notice>
                    }
                })
        }}
        {listed}
        <div class="dk-kept">
            <p data-test="kept">{kept}</p>
            <div class="actions">
                <a class="button" href=to_report data-test="to-report">"See the report"</a>
            </div>
        </div>
    }
}

fn table(read: Vec<Read>, title: &'static str, test: &'static str) -> Option<impl IntoView> {
    let rows: Vec<_> = read
        .into_iter()
        .map(|it| {
            view! {
                <tr>
                    <td>{it.number}</td>
                    <th scope="row">{it.word}</th>
                    <td>{it.says}</td>
                    <td class="dk-line">{it.what}</td>
                </tr>
            }
        })
        .collect();
    (!rows.is_empty()).then(|| {
        view! {
            <div class="table-frame" tabindex="0" role="region" aria-label=title data-test=test>
                <table class="dk-table">
                    <caption>{title}</caption>
                    <thead>
                        <tr>
                            <th scope="col">"No."</th>
                            <th scope="col">"What it is"</th>
                            <th scope="col">"What became of it"</th>
                            <th scope="col">"Its end"</th>
                        </tr>
                    </thead>
                    <tbody>{rows}</tbody>
                </table>
            </div>
        }
    })
}

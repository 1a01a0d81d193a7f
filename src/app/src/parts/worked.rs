//! A number that was worked out: the result, the steps to it, what to heed,
//! where other rules differ, and whose word each is.

use super::{
    notice::{Notice, Tone},
    sources::{SourceNotes, known},
};
use crate::taught::catalogue;
use catalogue::ids::SourceId;
use clinic::numbers::working::{Line, Other, Working};
use leptos::prelude::*;

/// What follows by calculation alone needs nobody's word.
const ARITHMETIC: &str = "arithmetic";

/// Whose word a step is, in short: the titles of its sources.
fn whose(sources: &[SourceId]) -> String {
    let stated = sources.iter().filter(|id| id.as_str() != ARITHMETIC);
    let titles = stated.filter_map(|id| catalogue().source(id));
    let titles = titles.map(|it| format!("{} ({})", it.title, known(it.reading)));
    titles.collect::<Vec<_>>().join("; ")
}

/// A working.
#[component]
pub fn Worked(
    /// What was worked out.
    working: Working,
) -> impl IntoView {
    let line = |line: Line| {
        let from = whose(&line.sources);
        view! {
            <li class="num-step">
                <span class="num-what">{line.what}</span>
                {(!line.formula.is_empty()).then(|| view! { <span class="num-formula">{line.formula}</span> })}
                <span class="num-numbers">{line.numbers}</span>
                {(!from.is_empty()).then(|| view! { <span class="num-whose">{from}</span> })}
            </li>
        }
    };
    let other = |other: Other| {
        let from = whose(&other.sources);
        view! {
            <li>
                "By " {other.rule} ": " <strong>{other.result}</strong>
                <span class="num-whose">{from}</span>
            </li>
        }
    };
    let cautions = (!working.cautions.is_empty()).then(|| {
        let all = working.cautions.clone().into_iter();
        view! {
            <Notice tone=Tone::Attention>
                <div data-test="cautions">{all.map(|it| view! { <p>{it}</p> }).collect_view()}</div>
            </Notice>
        }
    });
    let others = (!working.others.is_empty()).then(|| {
        let all = working.others.clone().into_iter().map(other).collect_view();
        view! {
            <h3 class="stage-label">"Where rules differ"</h3>
            <ul class="num-others" data-test="other-rules">{all}</ul>
        }
    });
    let frame = working
        .frame
        .map(|frame| view! { <p class="num-frame">{frame}</p> });
    view! {
        <section class="num-worked" data-test="worked">
            <p class="num-result" data-test="result">{working.result.clone()}</p>
            <ol class="num-steps" data-test="working">
                {working.lines.clone().into_iter().map(line).collect_view()}
            </ol>
            {cautions}
            {others}
            {frame}
            <SourceNotes ids=working.sources.clone() />
        </section>
    }
}

//! Reasons, each with where it is from.

use crate::taught::catalogue;
use catalogue::{
    ids::SourceId,
    sources::{Reading, Source},
};
use clinic::Reason;
use leptos::prelude::*;

/// Reasons as short paragraphs. Two rules may give the same one; it is said once.
pub fn reasons(reasons: &[Reason]) -> impl IntoView + use<> {
    let one = |reason: &Reason| {
        view! {
            <div class="reason">
                <p>{reason.because.clone()}</p>
                {cited(&reason.sources)}
            </div>
        }
    };
    let said_before = |at: usize| {
        reasons[..at]
            .iter()
            .any(|it| it.because == reasons[at].because)
    };
    let new = (0..reasons.len()).filter(|&at| !said_before(at));
    new.map(|at| one(&reasons[at])).collect_view()
}

/// Where something is from, in one line.
pub fn cited(ids: &[SourceId]) -> impl IntoView + use<> {
    let sources: Vec<&Source> = ids.iter().filter_map(|id| catalogue().source(id)).collect();
    (!sources.is_empty()).then(|| {
        let label = if sources.len() == 1 {
            "Source"
        } else {
            "Sources"
        };
        let lines: Vec<String> = sources.into_iter().map(line).collect();
        view! { <p class="cited">{label} ": " {lines.join(" · ")}</p> }
    })
}

fn line(source: &Source) -> String {
    let year = if source.year > 0 {
        format!(", {}", source.year)
    } else {
        String::new()
    };
    format!("{}{year} ({})", short(&source.title), known(source.reading))
}

/// How a source is known.
fn known(reading: Reading) -> &'static str {
    match reading {
        Reading::Read => "read",
        Reading::FromMemory => "from memory",
        Reading::Custom => "custom of the trade",
    }
}

/// The title as far as one needs it to know the source again; the whole of it
/// stands in About.
fn short(title: &str) -> &str {
    title.split(['.', ';']).next().unwrap_or(title)
}

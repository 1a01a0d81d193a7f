//! Where a fact is from, and how well its source is known.

use crate::{parts::fold::Fold, taught::catalogue};
use catalogue::{
    ids::SourceId,
    sources::{Reading, Source},
};
use leptos::prelude::*;

/// What is said of how well a source is known.
pub fn known(reading: Reading) -> &'static str {
    match reading {
        Reading::Read => "text read",
        Reading::FromMemory => "value from memory, text not read",
        Reading::Custom => "custom, no published text",
    }
}

/// One source, as a line to look it up by.
#[component]
pub fn SourceLine(
    /// The source.
    source: &'static Source,
) -> impl IntoView {
    let year = (source.year > 0).then(|| format!(", {}", source.year));
    let part = (!source.part.is_empty()).then(|| format!("; {}", source.part));
    view! {
        <span class="source">
            {source.title.as_str()} {year} {part} " "
            <span class="source-known">"(" {known(source.reading)} ")"</span>
        </span>
    }
}

/// The sources of a fact, folded.
#[component]
pub fn SourceNotes(
    /// Their ids.
    ids: Vec<SourceId>,
) -> impl IntoView {
    let sources: Vec<&'static Source> =
        ids.iter().filter_map(|id| catalogue().source(id)).collect();
    (!sources.is_empty()).then(|| {
        let title = match sources.len() {
            1 => "Source".to_string(),
            many => format!("{many} sources"),
        };
        view! {
            <div class="sources">
                <Fold title=title>
                    <ul>
                        {sources
                            .into_iter()
                            .map(|source| view! { <li><SourceLine source /></li> })
                            .collect_view()}
                    </ul>
                </Fold>
            </div>
        }
    })
}

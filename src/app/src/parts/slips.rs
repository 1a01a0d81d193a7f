//! What can slip, and how it is mended.

use catalogue::procedures::Slip;
use leptos::prelude::*;

/// Slips with their mends.
#[component]
pub fn SlipList(
    /// The slips.
    slips: Vec<Slip>,
) -> impl IntoView {
    let slip = |each: Slip| {
        view! {
            <div class="slip">
                <dt>{each.slip}</dt>
                <dd>{each.mend}</dd>
            </div>
        }
    };
    view! { <dl class="slips">{slips.into_iter().map(slip).collect_view()}</dl> }
}

//! The treatments that a tray may be for, the likeliest first.

use super::words::likelihood;
use crate::{
    place::{Place, View},
    taught::catalogue,
};
use clinic::reading::Reading;
use leptos::prelude::*;

/// How many are shown.
const MOST: usize = 4;

/// The list, each with its likelihood in words and as a bar.
pub fn ranked(readings: &[Reading]) -> impl IntoView + use<> {
    let one = |reading: &Reading| {
        let procedure = catalogue().procedure(&reading.procedure)?;
        let to = Place::Procedure(procedure.id.clone(), View::SetUp, Vec::new()).fragment();
        Some(view! {
            <li class="reading" data-test=format!("reading-{}", procedure.id)>
                <a class="reading-name" href=to>{procedure.name.as_str()}</a>
                <span class="reading-word">{likelihood(reading.likelihood)}</span>
                {bar(reading.likelihood)}
            </li>
        })
    };
    let shown = readings.iter().take(MOST).filter_map(one);
    view! { <ol class="readings" data-test="readings">{shown.collect_view()}</ol> }
}

/// A bar of a share of the whole. The words beside it say the same.
fn bar(share: f64) -> impl IntoView {
    let width = format!("{:.1}", share * 100.0);
    view! {
        <svg class="reading-bar" viewBox="0 0 100 4" preserveAspectRatio="none" aria-hidden="true">
            <rect class="reading-room" width="100" height="4" />
            <rect class="reading-share" width=width height="4" />
        </svg>
    }
}

//! What can be looked up at any moment of the visit: the chart, and the tray
//! once it was laid.

use super::{chart::Chart, explain::tray::stages, play::Play};
use clinic::case::Form;
use leptos::prelude::*;

/// A sheet to look at.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Sheet {
    Chart,
    Tray,
}

impl Sheet {
    fn name(self) -> &'static str {
        match self {
            Self::Chart => "Chart",
            Self::Tray => "Tray",
        }
    }

    fn hook(self) -> &'static str {
        match self {
            Self::Chart => "chart-panel",
            Self::Tray => "tray-panel",
        }
    }
}

/// The ways to the sheets, and the one that is open.
#[component]
pub fn Sheets(
    /// The sitting.
    play: Play,
    /// The decision that is on screen.
    at: usize,
) -> impl IntoView {
    let open = RwSignal::new(None);
    let laid = laid(play, at);
    let sheet = move || {
        let body = match open.get()? {
            Sheet::Chart => view! { <Chart play at /> }.into_any(),
            Sheet::Tray => stages(&play.case().decisions[laid?]).into_any(),
        };
        Some(view! { <section id="sheet" class="sheet" data-test="sheet">{body}</section> })
    };
    view! {
        <div class="sheet-ways">
            {way(Sheet::Chart, open)} {laid.map(|_| way(Sheet::Tray, open))}
        </div>
        {sheet}
    }
}

/// The decision in which the tray was laid, if that lies behind.
fn laid(play: Play, at: usize) -> Option<usize> {
    play.case().decisions[..at]
        .iter()
        .rposition(|decision| matches!(decision.form, Form::Tray { .. }))
}

fn way(sheet: Sheet, open: RwSignal<Option<Sheet>>) -> impl IntoView {
    let is_open = move || open.get() == Some(sheet);
    view! {
        <button
            type="button"
            class="sheet-way"
            aria-expanded=move || if is_open() { "true" } else { "false" }
            aria-controls="sheet"
            data-test=sheet.hook()
            on:click=move |_| open.update(|it| *it = (*it != Some(sheet)).then_some(sheet))
        >
            {sheet.name()}
        </button>
    }
}

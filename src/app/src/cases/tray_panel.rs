//! The tray as it stands, one tap away once it was laid.

use super::{explain::tray::stages, play::Play};
use clinic::case::Form;
use leptos::prelude::*;

/// The tray that was laid, set right, folded. Nothing before it was laid.
#[component]
pub fn TrayPanel(
    /// The sitting.
    play: Play,
    /// The decision that is on screen.
    at: usize,
) -> impl IntoView {
    let case = play.case();
    let laid = case.decisions[..at]
        .iter()
        .rposition(|decision| matches!(decision.form, Form::Tray { .. }))?;
    Some(view! {
        <details class="case-panel" name="case-panel" data-test="tray-panel">
            <summary>"Tray"</summary>
            <div class="case-panel-body">{stages(&case.decisions[laid])}</div>
        </details>
    })
}

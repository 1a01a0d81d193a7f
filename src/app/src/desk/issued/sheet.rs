//! The sheet that is printed and pinned up.

use super::{before_letters, groups};
use crate::assignments::{self, Symbol, bank};
use class::{assignment::Assignment, qr};
use leptos::prelude::*;

/// The sheet that is printed and pinned up.
#[component]
pub fn Sheet(
    /// What was set.
    assignment: Assignment,
) -> impl IntoView {
    let prefix = before_letters();
    let letters = assignment.letters();
    let fits = qr::Symbol::of(&prefix, &letters).is_some();
    let due = assignment
        .due
        .map(|day| view! { <p class="dk-sheet-due">"Hand in by " <strong>{assignments::due(day)}</strong></p> });
    let tasks: Vec<_> = assignments::tasks(&assignment.tasks)
        .into_iter()
        .map(|says| view! { <li>{says}</li> })
        .collect();
    let typed = assignment.typed(&bank()).map(|code| {
        view! { <p>"Or type this under Today, Assignments: " <strong class="dk-code">{groups(&code)}</strong></p> }
    });
    view! {
        <section class="dk-sheet" data-test="sheet" aria-label="The sheet">
            <h2>{assignment.name()}</h2>
            {due}
            <ul>{tasks}</ul>
            <p>"To pass: " {assignment.pass_mark} " per cent right."</p>
            {fits.then(|| view! { <Symbol prefix letters label="The assignment as a symbol for a camera" /> })}
            {typed}
            <ol>
                <li>"Point the camera of your phone at the symbol, or open the link that you were sent."</li>
                <li>"Type the number of your seat. No name is asked for."</li>
                <li>"Do the tasks, in any order, with or without a signal."</li>
                <li>"Hand in: send the link, show the symbol, or send the file."</li>
            </ol>
        </section>
    }
}

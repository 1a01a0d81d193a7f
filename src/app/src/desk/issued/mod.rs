//! What goes out of an assignment: link, symbol, sheet, typed code, calendar,
//! files for other systems.

mod for_bank;
mod further;
mod other_systems;
mod sheet;

use super::way::{TakeAway, of_set};
use crate::{
    assignments::{Outward, bank},
    browser::handing,
    packs,
    place::ClassPlace,
};
use class::assignment::{Assignment, MOST_TYPED_TASKS};
use further::Further;
use leptos::prelude::*;
use sheet::Sheet;

/// The screen.
#[component]
pub fn IssuedScreen(
    /// The id of the assignment.
    id: String,
) -> impl IntoView {
    let here = ClassPlace::Issued(id.clone());
    of_set(id.clone(), here, |assignment| {
        let body = view! {
            <div class="dk-issued">
                <section class="dk-noprint">
                    <h2>"For the class"</h2>
                    <Outward
                        prefix=packs::set_prefix()
                        letters=assignment.letters()
                        bytes=assignment.bytes()
                        title=assignment.name()
                        file=format!("assignment-{}.txt", assignment.title)
                    />
                    <Typed assignment=assignment.clone() />
                    <Further assignment=assignment.clone() id=id.clone() />
                </section>
                <Sheet assignment />
            </div>
            <TakeAway id />
        };
        Ok(body.into_any())
    })
}

/// The code that can be typed, where the assignment fits one.
#[component]
fn Typed(assignment: Assignment) -> impl IntoView {
    match assignment.typed(&bank()) {
        Some(code) => view! {
            <p>
                "Or typed under Today, Assignments: " <strong class="dk-code" data-test="typed">{groups(&code)}</strong>
            </p>
        }
        .into_any(),
        None => view! {
            <p class="hint">
                "It says too much for a code that is short enough to type: that has room for "{MOST_TYPED_TASKS}" kinds of task without conditions, with a pass mark in steps of five and at most three tries."
            </p>
        }
        .into_any(),
    }
}

/// What the letters of an assignment stand after in a link to this site.
fn before_letters() -> String {
    format!("{}{}", handing::base(), packs::set_prefix())
}

/// A code that can be typed, which may go on in a new line after each group only.
fn groups(code: &str) -> impl IntoView + use<> {
    let each = code.split_inclusive('-').map(str::to_owned);
    each.map(|group| view! { {group} <wbr /> }).collect_view()
}

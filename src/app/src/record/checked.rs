//! Skills that were checked off, the latest first.

use crate::{browser::clock, log::log, taught::catalogue};
use leptos::prelude::*;
use record::folds;

/// The list; nothing where nothing was checked off.
#[component]
pub fn Checked() -> impl IntoView {
    let checked = log().memo(|events| {
        let mut checked = folds::skills_checked(events);
        checked.reverse();
        checked
    });
    move || {
        let rows: Vec<_> = checked
            .get()
            .into_iter()
            .filter_map(|(at, skill)| {
                let procedure = catalogue().procedure(&skill.procedure.as_str().into())?;
                let all = skill.done.len() + skill.missed.len();
                let state = match (skill.shown, skill.critical) {
                    (true, _) => format!("All {all} steps shown"),
                    (_, true) => format!(
                        "{} of {all} steps shown, a critical one missed",
                        skill.done.len()
                    ),
                    _ => format!("{} of {all} steps shown", skill.done.len()),
                };
                Some(view! {
                    <li class="row" data-test="skill-checked">
                        <span class="row-name">{procedure.name.as_str()}</span>
                        <span class="row-note">{state} ", " {clock::day(at)}</span>
                    </li>
                })
            })
            .collect();
        (!rows.is_empty()).then(|| {
            view! {
                <section class="group" data-test="skills-checked">
                    <h2 class="stage-label">"Checked off by hand"</h2>
                    <ul class="rows">{rows}</ul>
                </section>
            }
        })
    }
}

//! What can be asked of a case: each thing as a list to choose from, or left open.

use super::level::level;
use crate::taught::catalogue;
use catalogue::cases::Level;
use clinic::case::avoidances;
use leptos::prelude::*;

const LEVELS: [Level; 3] = [Level::Basic, Level::Core, Level::Demanding];

/// A value with what it is called.
type Choices = Vec<(String, String)>;

/// One thing that can be asked for, or left open.
pub fn choose(
    label: &'static str,
    hook: &'static str,
    options: Choices,
    choose: impl Fn(String) + 'static,
) -> impl IntoView {
    let option = |(value, says)| view! { <option value=value>{says}</option> };
    view! {
        <label class="field">
            <span>{label}</span>
            <select data-test=hook on:change=move |event| choose(event_target_value(&event))>
                <option value="">"Anything"</option>
                {options.into_iter().map(option).collect_view()}
            </select>
        </label>
    }
}

/// The procedures that some frame is booked for.
pub fn booked() -> Choices {
    let all = catalogue().procedures.iter();
    let booked = all.filter(|it| catalogue().cases.iter().any(|frame| frame.booked == it.id));
    booked
        .map(|it| (it.id.to_string(), it.name.clone()))
        .collect()
}

/// How hard it may be.
pub fn levels() -> Choices {
    let all = LEVELS.iter().enumerate();
    all.map(|(at, it)| (at.to_string(), level(*it).to_owned()))
        .collect()
}

/// The level that one of [`levels`] stands for.
pub fn level_of(value: &str) -> Option<Level> {
    LEVELS.get(value.parse::<usize>().ok()?).copied()
}

/// The allergies and sensitivities that a patient may have to have.
pub fn flags() -> Choices {
    avoidances(catalogue())
        .map(|it| (it.id.to_string(), it.name.clone()))
        .collect()
}

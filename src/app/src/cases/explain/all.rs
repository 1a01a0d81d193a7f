//! Several options belonged to the answer: what was missed, what does not
//! belong, what was rightly taken, and the rest on request.

use super::{
    super::{
        decide::{drawing, words as label},
        play::Asked,
    },
    reasons::reasons,
};
use crate::parts::icon::{Icon, icon};
use clinic::{case::Choice, standing::Standing};
use leptos::prelude::*;

/// The options of a decision with several answers.
pub fn options(asked: &Asked, answer: &[String]) -> impl IntoView + use<> {
    let taken = |c: &Choice| answer.contains(&c.id);
    let of = |test: &dyn Fn(&Choice) -> bool| -> Vec<&Choice> {
        asked.choices.iter().filter(|c| test(c)).collect()
    };
    let right = |c: &Choice| c.standing == Standing::Right;
    let off = |c: &Choice| c.standing >= Standing::Wrong;
    view! {
        <div class="sorted" data-test="compared">
            {group(
                "Unsafe to take",
                Sort::Unsafe,
                &of(&|c| taken(c) && c.standing == Standing::Unsafe),
            )}
            {group(
                "Unsafe to miss",
                Sort::Unsafe,
                &of(&|c| !taken(c) && c.left_out == Standing::Unsafe),
            )}
            {group(
                "Missed",
                Sort::Missed,
                &of(&|c| !taken(c) && right(c) && c.left_out != Standing::Unsafe),
            )}
            {group(
                "Does not belong",
                Sort::Extra,
                &of(&|c| taken(c) && c.standing == Standing::Wrong),
            )}
            {group("Rightly taken", Sort::Right, &of(&|c| taken(c) && right(c)))}
            {group(
                "No fault to take",
                Sort::Plain,
                &of(&|c| taken(c) && c.standing == Standing::Acceptable),
            )}
            {rest(&of(&|c| !taken(c) && off(c)), "Rightly left")}
            {rest(
                &of(&|c| !taken(c) && c.standing == Standing::Acceptable),
                "Could have been taken as well",
            )}
        </div>
    }
}

/// How a group of options stands to the answer.
#[derive(Clone, Copy)]
pub enum Sort {
    /// Somebody could be hurt.
    Unsafe,
    /// It belongs and was not taken.
    Missed,
    /// It was taken and does not belong.
    Extra,
    /// It belongs and was taken.
    Right,
    /// It counts neither way.
    Plain,
}

impl Sort {
    fn drawn(self) -> (&'static str, Icon) {
        match self {
            Self::Unsafe => ("sort sort-unsafe", Icon::Unsafe),
            Self::Missed => ("sort sort-missed", Icon::Missing),
            Self::Extra => ("sort sort-extra", Icon::Wrong),
            Self::Right => ("sort sort-right", Icon::Right),
            Self::Plain => ("sort", Icon::Note),
        }
    }
}

/// A titled group of options with their reasons; nothing where it is empty.
pub fn group(title: &'static str, sort: Sort, choices: &[&Choice]) -> impl IntoView + use<> {
    (!choices.is_empty()).then(|| {
        let (class, drawn) = sort.drawn();
        let one = |choice: &&Choice| {
            view! {
                <li data-test=format!("why-{}", choice.id)>
                    <p class="sort-label">{label(choice)}</p>
                    {drawing(&choice.shows)}
                    {reasons(&choice.reasons)}
                </li>
            }
        };
        view! {
            <section class=class>
                <h3 class="sort-title">{icon(drawn)} {title}</h3>
                <ul>{choices.iter().map(one).collect_view()}</ul>
            </section>
        }
    })
}

/// A titled group of options whose reasons come on request.
fn rest(choices: &[&Choice], title: &'static str) -> impl IntoView + use<> {
    (!choices.is_empty()).then(|| {
        let one = |choice: &&Choice| {
            view! {
                <details class="fold other" data-test=format!("why-{}", choice.id)>
                    <summary><span>{label(choice)}</span></summary>
                    <div class="fold-body">{reasons(&choice.reasons)}</div>
                </details>
            }
        };
        view! {
            <section class="others">
                <h3 class="stage-label">{title}</h3>
                {choices.iter().map(one).collect_view()}
            </section>
        }
    })
}

//! The verdict on an answer, in words, shape and colour, and what the answer
//! came to in one sentence.

use super::super::play::{Asked, verdict};
use crate::parts::{
    icon::{Icon, icon},
    verdict::class,
};
use clinic::{
    case::{ByHand, Choice, Form, Grade},
    standing::Standing,
};
use leptos::prelude::*;

/// The verdict in words. An answer of several parts may be almost there; one
/// taken among several may be another way.
pub fn words(form: &Form, standing: Standing) -> &'static str {
    match (standing, form) {
        (Standing::Right, _) => "Right",
        (Standing::Acceptable, Form::One) => "Another way that is taught",
        (Standing::Acceptable, _) => "Nearly",
        (Standing::Wrong, Form::One | Form::Number(_)) => "Not this",
        (Standing::Wrong, _) => "Not yet",
        (Standing::Unsafe, _) => "Unsafe",
    }
}

/// The shape of a verdict.
pub fn shape(standing: Standing) -> Icon {
    match standing {
        Standing::Right => Icon::Right,
        Standing::Acceptable => Icon::Acceptable,
        Standing::Wrong => Icon::Wrong,
        Standing::Unsafe => Icon::Unsafe,
    }
}

/// The verdict as the heading that takes focus, with what the answer came to.
pub fn head(form: &Form, standing: Standing, summary: &str) -> impl IntoView + use<> {
    let sum = (!summary.is_empty()).then(|| summary.to_string());
    view! {
        <div class=format!("judged {}", class(verdict(standing))) data-test="judged">
            <h2 id="verdict" class="judged-word" tabindex="-1" data-test="verdict">
                {icon(shape(standing))} {words(form, standing)}
            </h2>
            {sum.map(|sum| view! { <p class="judged-sum">{sum}</p> })}
        </div>
    }
}

/// The verdict as a small mark beside a name.
pub fn mark(form: &Form, standing: Standing) -> impl IntoView + use<> {
    view! {
        <span class=format!("verdict {}", class(verdict(standing)))>
            {icon(shape(standing))} {words(form, standing)}
        </span>
    }
}

/// What an answer came to, in a sentence; empty where the word says it all.
pub fn summary(asked: &Asked, answer: &[String], grade: &Grade) -> String {
    match &asked.form {
        Form::One => mixed(asked, answer),
        Form::All => summary_of_all(asked, answer),
        Form::Order(_) => summary_of_order(grade),
        Form::Tray { .. } => summary_of_tray(grade),
        Form::Number(sum) => sum.judged(answer).map_or_else(
            || format!("No number was given. It is {}.", sum.problem.answer.words()),
            |judged| judged.sentence,
        ),
    }
}

/// The cause of the verdict on a mix; empty where an option was the answer.
fn mixed(asked: &Asked, answer: &[String]) -> String {
    let judged = || {
        let by_hand = asked.by_hand.as_ref()?;
        by_hand.verdict(ByHand::replay(answer)?)
    };
    judged().map_or_else(String::new, |verdict| verdict.cause)
}

fn summary_of_all(asked: &Asked, answer: &[String]) -> String {
    let taken = |choice: &Choice| answer.contains(&choice.id);
    let count = |test: &dyn Fn(&Choice) -> bool| asked.choices.iter().filter(|c| test(c)).count();
    let wanted = count(&|c| c.standing == Standing::Right);
    let hits = count(&|c| c.standing == Standing::Right && taken(c));
    let extra = count(&|c| c.standing >= Standing::Wrong && taken(c));
    let found = match (hits, wanted) {
        (_, 0) => "Nothing here had to be taken".into(),
        (hits, wanted) if hits == wanted => format!("{} found", all_of(wanted)),
        (hits, wanted) => format!("{hits} of {wanted} found"),
    };
    match extra {
        0 => format!("{found}."),
        1 => format!("{found}; 1 taken that does not belong."),
        extra => format!("{found}; {extra} taken that do not belong."),
    }
}

fn all_of(count: usize) -> String {
    match count {
        1 => "The one that fits is".into(),
        2 => "Both are".into(),
        count => format!("All {count} are"),
    }
}

fn summary_of_order(grade: &Grade) -> String {
    match grade.comparison.as_ref().map_or(0, |it| it.moved.len()) {
        0 => "Every move in its place.".into(),
        1 => "One move is out of place.".into(),
        moved => format!("{moved} moves are out of place."),
    }
}

/// The set and its order, one sentence each.
fn summary_of_tray(grade: &Grade) -> String {
    let Some(found) = &grade.comparison else {
        return String::new();
    };
    let (hits, wanted) = (found.taken.len(), found.taken.len() + found.forgotten.len());
    let set = match (found.forgotten.len(), found.extra.len()) {
        (0, 0) => format!("All {wanted} things are there, and nothing else."),
        (0, extra) => format!("All {wanted} things are there, and {extra} too many."),
        (_, 0) => format!("{hits} of {wanted} things are there."),
        (_, 1) => format!("{hits} of {wanted} things are there, and 1 that does not belong."),
        (_, extra) => {
            format!("{hits} of {wanted} things are there, and {extra} that do not belong.")
        }
    };
    let order = match (found.moved.len(), found.violated.is_empty()) {
        (_, false) => "The order would get in the way of the work.".to_string(),
        (0, true) if hits < 2 => String::new(),
        (0, true) => "The order is right.".into(),
        (1, true) => "One stands out of order.".into(),
        (moved, true) => format!("{moved} stand out of order."),
    };
    format!("{set} {order}").trim_end().into()
}

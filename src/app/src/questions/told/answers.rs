//! The right answer beside the own one, by the form of the question.

use crate::{
    parts::{
        drawing::ItemDrawing,
        fold::Fold,
        icon::{Icon, icon},
    },
    questions::ask::piece,
    taught::catalogue,
};
use clinic::standing::Standing;
use leptos::prelude::*;
use study::question::{Answer, Choice, Form, Piece, Question};

/// The answers of a question, right and own.
pub fn answers(question: &Question, answer: Option<&Answer>) -> AnyView {
    match &question.form {
        Form::Order { pieces, .. } => order(question, pieces, answer).into_any(),
        Form::Match { left, right, pairs } => pairs_told(left, right, pairs, answer).into_any(),
        Form::Number { unit, from, to } => {
            let range = if from == to {
                format!("{from} {unit}")
            } else {
                format!("{from} to {to} {unit}")
            };
            let own = match answer {
                Some(Answer::Number(own)) => Some(format!("You typed {own} {unit}.")),
                _ => None,
            };
            view! { <p class="q-number-told">"Right: " <strong>{range}</strong> ". " {own}</p> }
                .into_any()
        }
        form => choices(form.choices(), answer).into_any(),
    }
}

fn taken(answer: Option<&Answer>) -> Vec<String> {
    match answer {
        Some(Answer::One(key)) => vec![key.clone()],
        Some(Answer::Many(keys) | Answer::Order(keys)) => keys.clone(),
        _ => Vec::new(),
    }
}

/// What was taken and what belongs stand open; the rest is folded.
fn choices(all: &[Choice], answer: Option<&Answer>) -> impl IntoView + use<> {
    let taken = taken(answer);
    let own = |choice: &Choice| taken.contains(&choice.key);
    let right = |choice: &Choice| choice.standing <= Standing::Acceptable;
    let (open, rest): (Vec<&Choice>, Vec<&Choice>) = all.iter().partition(|c| own(c) || right(c));
    let row = |choice: &Choice| {
        let (mark, word) = match (right(choice), own(choice), choice.standing) {
            (true, true, _) => (Icon::Right, "Your answer, right"),
            (true, false, _) => (Icon::Missing, "Right here"),
            (false, true, Standing::Unsafe) => (Icon::Unsafe, "Your answer, unsafe"),
            (false, true, _) => (Icon::Wrong, "Your answer, not right"),
            (false, false, Standing::Unsafe) => (Icon::Unsafe, "Unsafe"),
            (false, false, _) => (Icon::Wrong, "Not this"),
        };
        let item = choice.item.as_ref().and_then(|id| catalogue().item(id));
        let because = (!choice.because.is_empty())
            .then(|| view! { <span class="q-because">{choice.because.clone()}</span> });
        view! {
            <li class="q-told" data-test=format!("told-{}", choice.key)>
                <span class="q-told-mark">{icon(mark)} {word}</span>
                <span class="q-told-words">{choice.text.clone()}</span>
                {because}
                {item.map(|item| view! { <span class="option-drawing"><ItemDrawing item /></span> })}
            </li>
        }
    };
    let others = (!rest.is_empty()).then(|| {
        let rows = rest.iter().map(|choice| row(choice)).collect_view();
        view! { <Fold title="The other options"><ul class="q-told-list">{rows}</ul></Fold> }
    });
    let rows = open.iter().map(|choice| row(choice)).collect_view();
    view! {
        <ul class="q-told-list">{rows}</ul>
        {others}
    }
}

fn order(question: &Question, pieces: &[Piece], answer: Option<&Answer>) -> impl IntoView + use<> {
    let own = taken(answer);
    let off = answer
        .map(|answer| question.grade(answer).wrong)
        .unwrap_or_default();
    let right = taken(Some(&question.best()));
    let list = |title: &'static str, keys: &[String], marked: bool| {
        let entry = |key: &String| {
            let found = pieces.iter().find(|piece| piece.key == *key)?;
            let moved = marked && off.contains(key);
            Some(view! {
                <li class=moved.then_some("order-off")>
                    {piece(found)}
                    {moved.then(|| view! { <span class="order-note">" (out of place)"</span> })}
                </li>
            })
        };
        view! {
            <section class="beside-column">
                <h2 class="stage-label">{title}</h2>
                <ol class="order-read">{keys.iter().filter_map(entry).collect_view()}</ol>
            </section>
        }
    };
    let differs = !off.is_empty() || own.is_empty();
    let own_list = (differs && !own.is_empty()).then(|| list("Your order", &own, true));
    let shown = if differs { &right } else { &own };
    view! { <div class="beside">{own_list} {list("In order", shown, false)}</div> }
}

fn pairs_told(
    left: &[Piece],
    right: &[Piece],
    pairs: &[(String, String)],
    answer: Option<&Answer>,
) -> impl IntoView + use<> {
    let own = match answer {
        Some(Answer::Pairs(own)) => own.clone(),
        _ => Vec::new(),
    };
    let name = |key: &String| {
        let found = right.iter().find(|piece| piece.key == *key);
        found.map(|piece| piece.text.clone()).unwrap_or_default()
    };
    let row = |of: &Piece| {
        let wanted = &pairs.iter().find(|(left, _)| *left == of.key)?.1;
        let said = own.iter().rev().find(|(left, _)| *left == of.key);
        let wrong = said.filter(|(_, said)| said != wanted);
        let (mark, word) = match (said, wrong) {
            (None, _) => (Icon::Missing, "Right here"),
            (_, None) => (Icon::Right, "Your answer, right"),
            (_, Some(_)) => (Icon::Wrong, "Not what you chose"),
        };
        let chose = wrong.map(|(_, said)| format!("You chose: {}", name(said)));
        Some(view! {
            <li class="q-told">
                <span class="q-told-mark">{icon(mark)} {word}</span>
                {piece(of)}
                <span class="q-told-words">{name(wanted)}</span>
                {chose.map(|chose| view! { <span class="q-because">{chose}</span> })}
            </li>
        })
    };
    view! { <ul class="q-told-list">{left.iter().filter_map(row).collect_view()}</ul> }
}

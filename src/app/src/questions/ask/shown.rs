//! What is shown with a question.

use crate::{
    parts::drawing::{ItemDrawing, Labels, Scale, WorkingEnd},
    taught::catalogue,
};
use catalogue::ids::ItemId;
use leptos::prelude::*;
use study::question::{Piece, Shown};

/// What a question shows beside its stem.
pub fn shown(shown: &Shown) -> AnyView {
    match shown {
        Shown::Nothing => ().into_any(),
        Shown::Items(items) => {
            let one = |id: &ItemId| {
                let item = catalogue().item(id)?;
                Some(view! {
                    <li class="q-item">
                        <ItemDrawing item />
                        <span>{item.name()}</span>
                    </li>
                })
            };
            view! { <ul class="q-items">{items.iter().filter_map(one).collect_view()}</ul> }
                .into_any()
        }
        Shown::Drawing(id) => view! {
            <div class="q-drawing" role="img" aria-label="A drawing without its name">
                {unnamed(id)}
            </div>
        }
        .into_any(),
        Shown::Lines(lines) => {
            let line = |line: &String| view! { <li>{line.clone()}</li> };
            view! { <ul class="q-lines">{lines.iter().map(line).collect_view()}</ul> }.into_any()
        }
    }
}

/// The drawing of an item without what is printed on it.
fn unnamed(id: &ItemId) -> Option<impl IntoView + use<>> {
    let item = catalogue().item(id)?;
    let labels = Labels::Hidden;
    Some(view! {
        <ItemDrawing item scale=Scale::Own labels />
        <WorkingEnd item labels />
    })
}

/// Something to move or to match: its words, or its drawing without words.
pub fn piece(piece: &Piece) -> AnyView {
    let item = piece.item.as_ref().and_then(|id| catalogue().item(id));
    match (piece.text.is_empty(), item) {
        (true, Some(item)) => view! {
            <span class="q-drawing">
                <ItemDrawing item scale=Scale::Own labels=Labels::Hidden />
            </span>
        }
        .into_any(),
        (_, Some(item)) => view! {
            <span>{piece.text.clone()}</span>
            <span class="option-drawing"><ItemDrawing item /></span>
        }
        .into_any(),
        (_, None) => view! { <span>{piece.text.clone()}</span> }.into_any(),
    }
}

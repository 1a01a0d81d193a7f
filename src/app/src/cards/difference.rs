//! A card as a difference from the standard set-up, for one procedure and one
//! supposed patient.

use super::wish::says;
use crate::{
    browser::address::Address,
    parts::{
        drawing::ItemDrawing,
        icon::{Icon, icon},
        item_link::name,
        sources::SourceNotes,
    },
    place::{Place, Supposed, View},
    procedures::{PatientControls, supposed_patient},
    taught::{catalogue, standard},
};
use catalogue::{
    ids::{ItemId, ProcedureId},
    preference::Card,
    procedures::{Procedure, ProcedureKind},
};
use clinic::difference::{Difference, Move, Outcome};
use leptos::prelude::*;

/// The section on a card's screen.
#[component]
pub fn Difference(
    /// The card.
    card: Signal<Card>,
    /// Where the reader is.
    place: Signal<Place>,
) -> impl IntoView {
    let address: Address = expect_context();
    let looked_at = move || match place.get() {
        Place::Card(_, procedure, supposed) => (procedure, supposed),
        _ => (None, Supposed::new()),
    };
    let over = Memo::new(move |_| {
        let asked = looked_at()
            .0
            .filter(|id| catalogue().procedure(id).is_some());
        asked.or_else(|| first(&card.get()))
    });
    let supposed = Memo::new(move |_| looked_at().1);
    let go = move |procedure: Option<ProcedureId>, supposed: Supposed| {
        let id = card.with_untracked(|card| card.id.clone());
        address.amend(Place::Card(id, procedure, supposed));
    };
    let choose = move |event| {
        let procedure: ProcedureId = event_target_value(&event).as_str().into();
        go(Some(procedure), Supposed::new());
    };
    let options = treatments().map(|it| {
        let id = it.id.clone();
        let selected = move || over.with(|over| over.as_ref() == Some(&id));
        view! { <option value=it.id.to_string() selected=selected>{it.name.as_str()}</option> }
    });
    let controls = move || {
        let procedure = catalogue().procedure(&over.get()?)?;
        let suppose = Callback::new(move |next| go(Some(procedure.id.clone()), next));
        Some(view! { <PatientControls procedure supposed suppose /> })
    };
    let standard = standard();
    let found = move || {
        let card = card.get();
        let procedure = catalogue().procedure(&over.get()?)?;
        let patient = supposed.with(|supposed| supposed_patient(&standard, supposed));
        let clinic = standard.with_card(Some(card.clone()));
        let difference = clinic.difference(&procedure.id, &patient);
        Some(shown(&card, procedure, difference))
    };
    view! {
        <section class="difference" data-test="difference">
            <h2>"What it changes"</h2>
            <label class="select difference-procedure">
                <span>"In this procedure"</span>
                <select data-test="difference-procedure" on:change=choose>{options.collect_view()}</select>
            </label>
            {controls}
            <div aria-live="polite">{found}</div>
        </section>
    }
}

fn treatments() -> impl Iterator<Item = &'static Procedure> {
    let all = catalogue().procedures.iter();
    all.filter(|it| it.kind == ProcedureKind::Treatment)
}

/// The first treatment in which the card changes the tray of the usual patient;
/// the first of all where it changes none.
fn first(card: &Card) -> Option<ProcedureId> {
    let standard = standard();
    let clinic = standard.with_card(Some(card.clone()));
    let patient = supposed_patient(&standard, &Supposed::new());
    let changed = treatments().find(|it| clinic.card_changes(&it.id, &patient));
    changed
        .or_else(|| treatments().next())
        .map(|it| it.id.clone())
}

fn shown(card: &Card, procedure: &'static Procedure, found: Difference) -> impl IntoView + use<> {
    let same = found.goes.is_empty() && found.comes.is_empty() && found.moves.is_empty();
    let to = Place::Procedure(procedure.id.clone(), View::SetUp, Vec::new()).fragment();
    let outcomes = card.wishes.iter().zip(found.wishes);
    let outcomes = outcomes
        .enumerate()
        .map(|(place, (wish, outcome))| one(place, says(wish), outcome));
    view! {
        <div class="two-trays">
            {list("Goes", "goes", &found.goes)}
            {list("Comes", "comes", &found.comes)}
            {moves(found.moves)}
        </div>
        {same.then(|| view! { <p data-test="same">"The tray is the standard one."</p> })}
        <p>
            <a href=to>"The standard set-up: " {procedure.name.as_str()}</a>
        </p>
        <h3 class="stage-label">"Wish by wish"</h3>
        <ul class="outcomes">{outcomes.collect_view()}</ul>
    }
}

fn list(title: &'static str, hook: &'static str, items: &[ItemId]) -> impl IntoView + use<> {
    let row = |id: &ItemId| {
        let item = catalogue().item(id);
        view! {
            <li>
                <span class="wish-drawing">{item.map(|item| view! { <ItemDrawing item /> })}</span>
                {name(id)}
            </li>
        }
    };
    (!items.is_empty()).then(|| {
        view! {
            <section class=format!("side side-{hook}") data-test=hook>
                <h3 class="stage-label">{title}</h3>
                <ul>{items.iter().map(row).collect_view()}</ul>
            </section>
        }
    })
}

fn moves(moves: Vec<Move>) -> impl IntoView {
    let row = |each: Move| {
        view! { <li>{name(&each.item)} <span class="move-stages">{each.from} " → " {each.to}</span></li> }
    };
    (!moves.is_empty()).then(|| {
        view! {
            <section class="side side-moves" data-test="moves">
                <h3 class="stage-label">"Moves"</h3>
                <ul>{moves.into_iter().map(row).collect_view()}</ul>
            </section>
        }
    })
}

/// What one wish comes to, with the rule and its source where it is refused.
fn one(place: usize, said: String, outcome: Outcome) -> impl IntoView {
    let (mark, word, class) = match &outcome {
        Outcome::Granted => (Icon::Right, "Granted", "outcome"),
        Outcome::Nothing => (
            Icon::Note,
            "Changes nothing here",
            "outcome outcome-nothing",
        ),
        Outcome::Later => (
            Icon::Time,
            "Counts once the tooth is open",
            "outcome outcome-nothing",
        ),
        Outcome::Refused(_) => (Icon::Wrong, "Refused", "outcome outcome-refused"),
    };
    let why = match outcome {
        Outcome::Refused(reason) => Some(view! {
            <p class="outcome-why">{reason.because}</p>
            <SourceNotes ids=reason.sources />
        }),
        _ => None,
    };
    view! {
        <li class=class data-test=format!("outcome-{place}")>
            <p class="outcome-word">{icon(mark)} {word}</p>
            <p>{said} "."</p>
            {why}
        </li>
    }
}

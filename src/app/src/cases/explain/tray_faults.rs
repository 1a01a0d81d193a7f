//! What is wrong with a laid tray: the set first, then the order.

use super::{
    super::play::Asked,
    all::{Sort, group},
};
use crate::parts::icon::{Icon, icon};
use clinic::{
    case::{Choice, Form},
    sequence::Comparison,
    standing::Standing,
};
use leptos::prelude::*;

/// The faults of a laid tray; nothing where it is right.
pub fn faults(asked: &Asked, answer: &[String]) -> impl IntoView + use<> {
    let found = asked.grade(answer).comparison?;
    let of =
        |ids: &[String]| -> Vec<&Choice> { ids.iter().filter_map(|id| asked.choice(id)).collect() };
    let taken: Vec<&Choice> = of(answer);
    let harm = |c: &&Choice| c.standing == Standing::Unsafe;
    let (harmful, extra): (Vec<&Choice>, Vec<&Choice>) =
        of(&found.extra).into_iter().partition(harm);
    let may: Vec<&Choice> = taken
        .into_iter()
        .filter(|c| !found.taken.contains(&c.id) && !found.extra.contains(&c.id))
        .collect();
    Some(view! {
        <div class="sorted" data-test="compared">
            {group("Unsafe on this tray", Sort::Unsafe, &harmful)}
            {group("Forgotten", Sort::Missed, &of(&found.forgotten))}
            {group("Does not belong", Sort::Extra, &extra)}
            {violated(asked, &found)}
            {moved(asked, &found)}
            {group("May lie there, for when it is called for", Sort::Plain, &may)}
        </div>
    })
}

/// Pairs that have to stand in order and do not, each with its reason.
fn violated(asked: &Asked, found: &Comparison<String>) -> impl IntoView + use<> {
    let Form::Tray { orders, .. } = &asked.form else {
        return None;
    };
    let name = |id: &String| {
        asked
            .choice(id)
            .map_or_else(String::new, |c| c.label.clone())
    };
    let why = |first: &String, then: &String| {
        let pair = orders.iter().find(|(a, b, _)| a == first && b == then);
        pair.map(|(.., because)| because.clone())
    };
    let one = |(first, then): &(String, String)| {
        view! {
            <li>
                <p class="sort-label">{name(first)} " before " {name(then)}</p>
                <p>{why(first, then)}</p>
            </li>
        }
    };
    (!found.violated.is_empty()).then(|| {
        view! {
            <section class="sort sort-missed">
                <h3 class="sort-title">{icon(Icon::Order)} "Has to stand before"</h3>
                <ul>{found.violated.iter().map(one).collect_view()}</ul>
            </section>
        }
    })
}

/// What to move, each with the stage it belongs to.
fn moved(asked: &Asked, found: &Comparison<String>) -> impl IntoView + use<> {
    let Form::Tray { target, titles, .. } = &asked.form else {
        return None;
    };
    let stage = |id: &String| {
        let place = target.stages.iter().position(|stage| stage.contains(id));
        place.and_then(|place| titles.get(place)).cloned()
    };
    let one = |id: &String| {
        let name = asked.choice(id).map(|c| c.label.clone());
        view! { <li><p><strong>{name}</strong> " belongs to: " {stage(id)}</p></li> }
    };
    (!found.moved.is_empty()).then(|| {
        view! {
            <section class="sort sort-extra">
                <h3 class="sort-title">{icon(Icon::Order)} "Out of order"</h3>
                <ul class="sort-short">{found.moved.iter().map(one).collect_view()}</ul>
            </section>
        }
    })
}

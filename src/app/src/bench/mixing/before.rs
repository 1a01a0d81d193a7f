//! Before the bench is opened: what it is mixed for, the room, and the way of
//! working.

use super::{session::Session, way::Way};
use crate::{
    browser::scroll,
    parts::{
        choice::{Choice, Choosable},
        sources::SourceNotes,
    },
    place::Place,
    taught::catalogue,
};
use clinic::mixing::wanted::{DAMPS, WARMTHS};
use leptos::prelude::*;

/// The choices, and the button that opens the bench.
#[component]
pub fn Before(
    /// The mix.
    session: Session,
) -> impl IntoView {
    let (offer, wanted) = (session.offer(), session.wanted());
    let warmth = RwSignal::new(WARMTHS[1].to_string());
    let damp = RwSignal::new(DAMPS[1].to_string());
    let number = |text: RwSignal<String>| text.get_untracked().parse().unwrap_or(0.0);
    let ways = Way::ALL.map(|way| Choosable::new(way.value(), way.label()));
    let way = session.way;
    let set = session.room_set();
    let own = |matters: bool| matters && set.is_none();
    let room = own(wanted.warmth).then(|| {
        let options = WARMTHS.map(|it| Choosable::new(it.to_string(), format!("{it} °C")));
        view! {
            <Choice
                legend="Room"
                options=options.to_vec()
                chosen=warmth
                choose=move |value| warmth.set(value)
                test="warmth"
            />
        }
    });
    let air = own(wanted.damp).then(|| {
        let options = DAMPS.map(|it| Choosable::new(it.to_string(), format!("{it} %")));
        view! {
            <Choice
                legend="Humidity"
                options=options.to_vec()
                chosen=damp
                choose=move |value| damp.set(value)
                test="damp"
            />
        }
    });
    let chair = wanted
        .procedure
        .as_ref()
        .and_then(|id| catalogue().procedure(id));
    let chair = chair.map(|procedure| {
        view! {
            <p data-test="wanted-in">
                "At the chair: " {procedure.short.as_str()} ". The dentist is ready "
                {wanted.ready.whole()} " after you open the bench, and places it in "
                {wanted.placing.whole()} "."
            </p>
        }
    });
    let set = set.map(|room| {
        view! {
            <p data-test="room-set">
                "The room, as it was set for your seat: " <strong>{room.temperature.to_string()}</strong> ", "
                <strong>{room.humidity.to_string()}</strong> " humidity."
            </p>
        }
    });
    let others = offer
        .uses
        .iter()
        .filter(|(id, _)| *id != offer.usage && session.task().is_none());
    let others = others
        .map(|(id, name)| {
            let to = Place::Mix(offer.material.clone(), Some(id.clone()));
            view! { <li><a href=to.fragment() data-test=format!("use-{id}")>{name.clone()}</a></li> }
        })
        .collect::<Vec<_>>();
    view! {
        <section data-test="bench-before">
            <p class="ready"><strong>"Ready when: "</strong> {offer.ready.clone()}</p>
            {chair}
            {set}
            {room}
            {air}
            <Choice
                legend="How you work"
                options=ways.to_vec()
                chosen=Signal::derive(move || way.get().value().to_string())
                choose=|value: String| Way::from_value(&value).choose()
                test="way"
            />
            <p class="hint mb-way">{move || way.get().says()}</p>
            <button
                type="button"
                class="button"
                data-test="open-bench"
                on:click=move |_| {
                    session.begin(number(warmth), number(damp));
                    // What takes the place of these choices is shorter.
                    scroll::to_top();
                }
            >
                "Open the bench"
            </button>
            {(!others.is_empty())
                .then(|| view! { <h2 class="stage-label mb-label">"Mix it for something else"</h2><ul>{others}</ul> })}
            <p class="hint mb-label" data-test="mix-label">{offer.label.clone()}</p>
            <SourceNotes ids=offer.sources.clone() />
        </section>
    }
}

//! The free tool: lay anything, and see what it would be for.

use super::{
    evidence::{evidence, missing},
    laid::Laid,
    ranked::ranked,
    words::likelihood,
};
use crate::{
    browser::address::Address,
    cases::next_seed,
    log::log,
    parts::{
        announce::announcer,
        choice::{Choice, Choosable},
        icon::{Icon, icon},
        item_link::name,
        item_picker::ItemPicker,
        page::Page,
    },
    place::Place,
    taught::{catalogue, standard},
};
use catalogue::ids::ItemId;
use clinic::{
    case::tray_reading::CASE,
    reading::{Evidence, Reading},
};
use leptos::prelude::*;

/// A tray as it is read: the ranking, and what each thing says for the best.
#[derive(Clone, PartialEq)]
struct Read {
    readings: Vec<Reading>,
    evidence: Vec<Evidence>,
}

/// The screen. What lies on the tray is in the address, so it survives a reload
/// and can be passed on.
#[component]
pub fn ReadingScreen(
    /// Where the reader is.
    place: Signal<Place>,
) -> impl IntoView {
    let (address, announcer): (Address, _) = (expect_context(), announcer());
    let laid = Memo::new(move |_| match place.get() {
        Place::Reading(laid) => known(laid),
        _ => Vec::new(),
    });
    let clinic = standard();
    let reader = StoredValue::new_local(None);
    let read = Memo::new(move |_| {
        let laid = laid.get();
        if laid.is_empty() {
            return None;
        }
        if reader.with_value(Option::is_none) {
            reader.set_value(Some(clinic.for_ever().tray_reader()));
        }
        reader.with_value(|reader| {
            let reader = reader.as_ref()?;
            let readings = reader.read(&laid);
            let evidence = reader.evidence(&laid, &readings.first()?.procedure);
            Some(Read { readings, evidence })
        })
    });
    let best = move || {
        let read = read.get()?;
        let first = read.readings.first()?;
        let procedure = catalogue().procedure(&first.procedure)?;
        Some(format!(
            "{}: {}",
            capital(likelihood(first.likelihood)),
            procedure.short
        ))
    };
    let turn = Callback::new(move |id: ItemId| {
        let mut next = laid.get_untracked();
        let lay = !next.contains(&id);
        if lay {
            next.push(id.clone());
        } else {
            next.retain(|each| *each != id);
        }
        address.amend(Place::Reading(next));
        let what = if lay { "laid" } else { "taken off" };
        let reads = untrack(best).unwrap_or_else(|| "The tray is empty".into());
        announcer.say(format!("{} {what}. {reads}.", name(&id)));
    });
    let clear = move |_| {
        address.amend(Place::Reading(Vec::new()));
        announcer.say("The tray is empty.");
    };
    let view = RwSignal::new(String::from("lay"));
    let count = move || match laid.with(Vec::len) {
        0 => "Nothing laid yet".to_string(),
        1 => "1 thing laid".into(),
        many => format!("{many} things laid"),
    };
    let result = move || {
        let Some(read) = read.get() else {
            return view! { <p class="hint">"Lay a thing or two first."</p> }.into_any();
        };
        shown(&read).into_any()
    };
    let options = vec![
        Choosable::new("lay", "Lay things"),
        Choosable::new("read", "What it is for"),
    ];
    view! {
        <Page title="Reading a tray" over="Cases" up=Place::Cases.fragment()>
            <p class="prose">
                "Lay anything and see which treatment it would be for, by the standard set-ups that are taught here."
            </p>
            <Exercise />
            <div class="reading-tool" data-view=move || view.get()>
                <div class="laying">
                    <Laid laid take_off=turn />
                    <div class="moves">
                        <p class="moves-state" data-test="reading-best">
                            {move || best().unwrap_or_else(count)}
                        </p>
                        <button
                            type="button"
                            class="button button-quiet"
                            data-test="reading-clear"
                            disabled=move || laid.with(Vec::is_empty)
                            on:click=clear
                        >
                            "Clear"
                        </button>
                    </div>
                </div>
                <div class="reading-switch">
                    <Choice legend="Show" options chosen=view choose=move |value| view.set(value) test="reading" />
                </div>
                <div class="reading-lay">
                    <ItemPicker label="Find by name" offered=Callback::new(on_trays) taken=laid take=turn />
                </div>
                <div class="reading-result" data-test="reading-result">{result}</div>
            </div>
        </Page>
    }
}

/// The way to the exercise.
#[component]
fn Exercise() -> impl IntoView {
    let next = log().memo(|events| next_seed(events, CASE));
    let to = move || Place::ReadingExercise(next.get()).fragment();
    view! {
        <p>
            <a class="button button-quiet" href=to data-test="reading-exercise">
                "Read a drawn tray" {icon(Icon::Onwards)}
            </a>
        </p>
    }
}

fn shown(read: &Read) -> impl IntoView + use<> {
    let best = read.readings.first();
    let strange = best.map(|best| {
        let names: Vec<String> = best.strange.iter().map(name).collect();
        match names.len() {
            0 => "Everything on the tray belongs to it.".to_string(),
            1 => format!("One thing does not belong to it: {}.", names.join("")),
            many => format!("{many} things do not belong to it: {}.", names.join("; ")),
        }
    });
    view! {
        <h2 class="stage-label">"What it would be for"</h2>
        {ranked(&read.readings)}
        <p data-test="strange">{strange}</p>
        {best.map(|best| missing(&best.missing))}
        {best.map(|best| evidence(best, read.evidence.clone()))}
        <p class="hint">
            "Likelihood among the treatments taught here, each taken as equally frequent beforehand; how often things are laid is an estimate of our own, without a published figure."
        </p>
    }
}

/// The things that wait on trays. What stands at the unit says nothing.
fn on_trays(id: ItemId) -> bool {
    let place = catalogue().item(&id).map(catalogue::Item::place);
    place == Some(catalogue::items::Place::Tray)
}

/// The ids that the catalogue has, each once: an old link still shows a tray.
fn known(ids: Vec<ItemId>) -> Vec<ItemId> {
    let mut known: Vec<ItemId> = Vec::new();
    for id in ids {
        if catalogue().item(&id).is_some() && !known.contains(&id) {
            known.push(id);
        }
    }
    known
}

fn capital(text: &str) -> String {
    let mut letters = text.chars();
    let first = letters.next().into_iter().flat_map(char::to_uppercase);
    first.chain(letters).collect()
}

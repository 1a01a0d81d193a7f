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
        announce::{Announcer, announcer},
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
    reading::{Evidence, Reading, TrayReader},
};
use leptos::prelude::*;

/// A tray as it is read: the ranking, and what each thing says for the best.
#[derive(Clone, PartialEq)]
struct Read {
    readings: Vec<Reading>,
    evidence: Vec<Evidence>,
}

/// The tray of this screen. Cheap to copy.
#[derive(Clone, Copy)]
struct Tool {
    laid: Memo<Vec<ItemId>>,
    /// Whether what is not there counts too.
    whole: RwSignal<bool>,
    read: Memo<Option<Read>>,
    address: Address,
    announcer: Announcer,
}

impl Tool {
    fn new(place: Signal<Place>) -> Self {
        let laid = Memo::new(move |_| match place.get() {
            Place::Reading(laid) => known(laid),
            _ => Vec::new(),
        });
        let whole = RwSignal::new(false);
        let clinic = standard();
        let reader = StoredValue::new_local(None);
        let read = Memo::new(move |_| {
            let laid = laid.get();
            if laid.is_empty() {
                return None;
            }
            // Made ready when the first thing is laid.
            if reader.with_value(Option::is_none) {
                reader.set_value(Some(clinic.for_ever().tray_reader()));
            }
            reader.with_value(|reader| read(reader.as_ref()?, &laid, whole.get()))
        });
        Self {
            laid,
            whole,
            read,
            address: expect_context(),
            announcer: announcer(),
        }
    }

    /// What it would be for, in a line; none while it is empty.
    fn best(self) -> Option<String> {
        let read = self.read.get()?;
        let first = read.readings.first()?;
        let procedure = catalogue().procedure(&first.procedure)?;
        let word = capital(likelihood(first.likelihood));
        Some(format!("{word}: {}", procedure.short))
    }

    /// Lays a thing, or takes it off where it lies there.
    fn turn(self, id: ItemId) {
        let mut next = self.laid.get_untracked();
        let lay = !next.contains(&id);
        if lay {
            next.push(id.clone());
        } else {
            next.retain(|each| *each != id);
        }
        self.address.amend(Place::Reading(next));
        let what = if lay { "laid" } else { "taken off" };
        let reads = untrack(move || self.best()).unwrap_or_else(|| "The tray is empty".into());
        self.announcer
            .say(format!("{} {what}. {reads}.", name(&id)));
    }

    fn clear(self) {
        self.address.amend(Place::Reading(Vec::new()));
        self.announcer.say("The tray is empty.");
    }

    /// How many things lie there.
    fn count(self) -> String {
        match self.laid.with(Vec::len) {
            0 => "Nothing laid yet".into(),
            1 => "1 thing laid".into(),
            many => format!("{many} things laid"),
        }
    }
}

fn read(reader: &TrayReader, laid: &[ItemId], whole: bool) -> Option<Read> {
    let readings = if whole {
        reader.read(laid)
    } else {
        reader.read_so_far(laid)
    };
    let evidence = reader.evidence(laid, &readings.first()?.procedure);
    Some(Read { readings, evidence })
}

/// The screen. What lies on the tray is in the address, so it survives a reload
/// and can be passed on.
#[component]
pub fn ReadingScreen(
    /// Where the reader is.
    place: Signal<Place>,
) -> impl IntoView {
    let tool = Tool::new(place);
    let view = RwSignal::new(String::from("lay"));
    let options = vec![
        Choosable::new("lay", "Lay things"),
        Choosable::new("read", "What it is for"),
    ];
    let take = Callback::new(move |id| tool.turn(id));
    view! {
        <Page title="Reading a tray" over="Cases" up=Place::Cases.fragment()>
            <p class="prose">
                "Lay anything and see which treatment it would be for, by the standard set-ups that are taught here."
            </p>
            <Exercise />
            <div class="reading-tool" data-view=move || view.get()>
                <OnTray tool />
                <div class="reading-switch">
                    <Choice legend="Show" options chosen=view choose=move |value| view.set(value) test="reading" />
                </div>
                <div class="reading-lay">
                    <ItemPicker label="Find by name" offered=Callback::new(on_trays) taken=tool.laid take />
                </div>
                <Result tool />
            </div>
        </Page>
    }
}

/// The tray with what it would be for.
#[component]
fn OnTray(tool: Tool) -> impl IntoView {
    view! {
        <div class="laying">
            <Laid laid=tool.laid take_off=Callback::new(move |id| tool.turn(id)) />
            <div class="moves">
                <p class="moves-state" data-test="reading-best">
                    {move || tool.best().unwrap_or_else(|| tool.count())}
                </p>
                <button
                    type="button"
                    class="button button-quiet"
                    data-test="reading-clear"
                    disabled=move || tool.laid.with(Vec::is_empty)
                    on:click=move |_| tool.clear()
                >
                    "Clear"
                </button>
            </div>
        </div>
    }
}

/// What the tray would be for, and why.
#[component]
fn Result(tool: Tool) -> impl IntoView {
    let whole = tool.whole;
    let result = move || match tool.read.get() {
        Some(read) => shown(&read).into_any(),
        None => view! { <p class="hint">"Lay a thing or two first."</p> }.into_any(),
    };
    view! {
        <div class="reading-result" data-test="reading-result">
            <label class="chip reading-whole">
                <input
                    type="checkbox"
                    data-test="reading-whole"
                    prop:checked=whole
                    on:change=move |event| whole.set(event_target_checked(&event))
                />
                <span>"This is the whole tray: what is missing counts too"</span>
            </label>
            {result}
        </div>
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

//! What there is to do at the bench: materials to mix, by use; numbers to
//! work; and what was done lately.

use super::numbers::ToolRows;
use crate::{
    browser::clock,
    log::log,
    parts::{
        capital::capital,
        fold::Fold,
        icon::{Icon, icon},
        page::Page,
        verdict::word,
    },
    place::Place,
    taught::catalogue,
};
use catalogue::kinetics::{Kinetics, Use};
use clinic::numbers::exercises::Family;
use leptos::prelude::*;
use record::{Event, MixHandedOver, Moment, QuestionAnswered, Verdict, What, folds};

/// How many things done lately are shown.
const LATELY: usize = 5;

/// The first part of the ids of exercises in the record.
pub const NUMBERS: &str = "numbers";

/// The screen.
#[component]
pub fn BenchScreen() -> impl IntoView {
    view! {
        <Page title="Bench">
            <Lately />
            <section class="group" data-test="to-mix">
                <h2>"Mix by hand"</h2>
                <p class="hint">
                    "Measure out, bring in, spatulate, test, and hand over when the dentist is ready: with your hand on the pad, or in words."
                </p>
                <ToMix />
            </section>
            <section class="group" data-test="to-work">
                <h2>"Work the numbers"</h2>
                <p class="hint">"Exercises without end, each with its worked solution."</p>
                <ToWork />
                <Fold title="Tools: enter a number, see it worked" test="tools-fold">
                    <ToolRows />
                </Fold>
                <p>
                    <a href=Place::Tools.fragment() data-test="all-tools">"All tools on a screen of their own"</a>
                </p>
            </section>
        </Page>
    }
}

/// A use without what tells it apart from others of its kind.
fn kind(usage: &Use) -> &str {
    usage.name.split(',').next().unwrap_or_default()
}

/// Materials by what they are mixed for, in the order of the catalogue.
fn by_use() -> Vec<(&'static str, Vec<(&'static Kinetics, &'static Use)>)> {
    let mut groups: Vec<(&str, Vec<_>)> = Vec::new();
    for kinetics in &catalogue().kinetics {
        for usage in &kinetics.uses {
            let kind = kind(usage);
            match groups.iter_mut().find(|(known, _)| *known == kind) {
                Some((_, all)) => all.push((kinetics, usage)),
                None => groups.push((kind, vec![(kinetics, usage)])),
            }
        }
    }
    groups
}

#[component]
fn ToMix() -> impl IntoView {
    let done = log().look(folds::mixes);
    let row = |kinetics: &'static Kinetics, usage: &'static Use| {
        let to = Place::Mix(kinetics.material.clone(), Some(usage.id.clone()));
        let hook = format!("mix-{}-{}", kinetics.material, usage.id);
        let note = usage.name.split_once(", ").map(|(_, rest)| rest);
        let mut last = done.iter().rev();
        let last = last
            .find(|it| it.mix.material == kinetics.material.as_str() && it.mix.usage == usage.id);
        let mark =
            last.map(|it| view! { <span class="row-mark">{it.mix.per_cent.to_string()}</span> });
        let onwards = last.is_none().then(|| icon(Icon::Onwards));
        view! {
            <li>
                <a class="row" href=to.fragment() data-test=hook>
                    <span class="row-name">{catalogue().item_name(&kinetics.material)}</span>
                    {note.map(|note| view! { <span class="row-note">{capital(note)}</span> })}
                    {mark}
                    {onwards}
                </a>
            </li>
        }
    };
    by_use()
        .into_iter()
        .map(|(kind, all)| {
            let rows = all.into_iter().map(|(k, u)| row(k, u)).collect_view();
            view! {
                <h3 class="stage-label bench-use">{capital(kind)}</h3>
                <ul class="rows">{rows}</ul>
            }
        })
        .collect_view()
}

/// The answers to exercises, each with when it was given and the family.
fn exercises(events: &[Event]) -> impl Iterator<Item = (Moment, &QuestionAnswered, Family)> {
    events.iter().filter_map(|event| match &event.what {
        What::QuestionAnswered(it) => {
            let rest = it.question.strip_prefix(NUMBERS)?.strip_prefix('.')?;
            let family = Family::with_id(rest.split_once('.')?.0)?;
            Some((event.at, it, family))
        }
        _ => None,
    })
}

/// How many exercises of each family were answered, and how many of them right.
fn tallies(events: &[Event]) -> Vec<(Family, u32, u32)> {
    let mut tallies: Vec<_> = Family::ALL.map(|family| (family, 0, 0)).into();
    for (_, answer, family) in exercises(events) {
        for (_, all, right) in tallies.iter_mut().filter(|(each, ..)| *each == family) {
            *all += 1;
            *right += u32::from(answer.verdict == Verdict::Right);
        }
    }
    tallies
}

#[component]
fn ToWork() -> impl IntoView {
    let row = |(family, all, right): (Family, u32, u32)| {
        // The next that was not drawn yet.
        let to = Place::Exercise(family.id().into(), u64::from(all) + 1);
        let note = (all > 0).then(|| format!("{right} of {all} right"));
        view! {
            <li>
                <a class="row" href=to.fragment() data-test=format!("exercise-{}", family.id())>
                    <span class="row-name">{family.name()}</span>
                    {note.map(|note| view! { <span class="row-note">{note}</span> })}
                    {icon(Icon::Onwards)}
                </a>
            </li>
        }
    };
    let rows = log().look(tallies).into_iter().map(row).collect_view();
    view! { <ul class="rows bench-families">{rows}</ul> }
}

/// Something that was done, ready to be shown.
struct Deed {
    at: Moment,
    name: String,
    says: String,
    place: Place,
}

fn mixed(at: Moment, mix: &MixHandedOver) -> Deed {
    Deed {
        at,
        name: catalogue()
            .item_name(&mix.material.as_str().into())
            .to_string(),
        says: format!("{}, {}", word(mix.verdict), mix.per_cent),
        place: Place::Mix(mix.material.as_str().into(), Some(mix.usage.clone())),
    }
}

fn worked(at: Moment, answer: &QuestionAnswered, family: Family) -> Deed {
    Deed {
        at,
        name: family.name().into(),
        says: word(answer.verdict).into(),
        place: Place::Exercise(family.id().into(), answer.wording),
    }
}

/// The last of all that was done, the latest first.
fn lately(events: &[Event]) -> Vec<Deed> {
    let mixes = events.iter().filter_map(|event| match &event.what {
        What::MixHandedOver(mix) => Some((event.at, mix)),
        _ => None,
    });
    let mixes = last_of(mixes, |(at, _)| *at);
    let exercises = last_of(exercises(events), |(at, ..)| *at);
    let mixes = mixes.into_iter().map(|(at, mix)| mixed(at, mix));
    let exercises = exercises.into_iter();
    let exercises = exercises.map(|(at, answer, family)| worked(at, answer, family));
    last_of(mixes.chain(exercises), |deed| deed.at)
}

/// As many as are shown, the latest first; of one moment, those that come first.
fn last_of<T>(all: impl Iterator<Item = T>, at: impl Fn(&T) -> Moment) -> Vec<T> {
    let mut all: Vec<T> = all.collect();
    all.sort_by_key(|it| std::cmp::Reverse(at(it).utc_ms));
    all.truncate(LATELY);
    all
}

#[component]
fn Lately() -> impl IntoView {
    let deeds = log().look(lately);
    let row = |deed: Deed| {
        view! {
            <li>
                <a class="row" href=deed.place.fragment() data-test="lately">
                    <span class="row-name">{deed.name}</span>
                    <span class="row-note">{deed.says} " · " {clock::day(deed.at)}</span>
                    {icon(Icon::Onwards)}
                </a>
            </li>
        }
    };
    (!deeds.is_empty()).then(|| {
        view! {
            <section class="group" data-test="done-lately">
                <h2 class="stage-label">"Done lately"</h2>
                <ul class="rows">{deeds.into_iter().map(row).collect_view()}</ul>
            </section>
        }
    })
}

//! One instrument or material: how to know it, what it is for, where it lies.

use super::uses::{comes_for, uses_of};
use crate::{
    parts::{
        condition,
        drawing::{ItemDrawing, Scale, WorkingEnd},
        item_link::{self, ItemLink},
        mixing::MixingCard,
        notice::{Notice, Tone},
        page::Page,
        sources::SourceNotes,
    },
    place::{Place, View},
    shell::NotHere,
    taught::catalogue,
};
use catalogue::{
    Item,
    ids::{ClassId, ItemId, SubstanceId},
    items::{Instrument, Lookalike, Material, Reprocessing},
    procedures::Procedure,
};
use leptos::prelude::*;

/// The page of an item.
#[component]
pub fn ItemScreen(
    /// The item.
    id: ItemId,
) -> impl IntoView {
    let Some(item) = catalogue().item(&id) else {
        return view! { <NotHere what="instrument or material" /> }.into_any();
    };
    let facts = match item {
        Item::Instrument(instrument) => view! { <InstrumentFacts instrument /> }.into_any(),
        Item::Material(material) => view! { <MaterialFacts material /> }.into_any(),
    };
    let also = (!item.also().is_empty())
        .then(|| view! { <p class="also">"Also asked for as: " {item.also().join(", ")}</p> });
    view! {
        <Page title=item.name() over="Instruments and materials" up=Place::Items.fragment()>
            <div class="item-page">
                <div class="item-look">
                    <div class="tray tray-single"><ItemDrawing item scale=Scale::Own /></div>
                    <WorkingEnd item />
                </div>
                <div class="item-facts">
                    <p class="lead">{item.purpose()}</p>
                    {also}
                    {facts}
                    <Lookalikes item />
                    <Uses item />
                    <SourceNotes ids=item.sources().to_vec() />
                </div>
            </div>
        </Page>
    }
    .into_any()
}

#[component]
fn InstrumentFacts(instrument: &'static Instrument) -> impl IntoView {
    view! {
        <section class="plate">
            <h2 class="stage-label">"How to know it"</h2>
            <p>{instrument.look.as_str()}</p>
            <dl class="facts">
                <dt>"Family"</dt>
                <dd>{instrument.family.as_str()}</dd>
                <dt>"Between patients"</dt>
                <dd>{between_patients(instrument.reprocessing)}</dd>
                {contains(&instrument.contains)}
            </dl>
        </section>
    }
}

fn between_patients(class: Reprocessing) -> &'static str {
    match class {
        Reprocessing::Critical => "critical: sterilise",
        Reprocessing::SemiCritical => "semi-critical: sterilise if it bears heat",
        Reprocessing::NonCritical => "non-critical: clean and disinfect, or cover",
        Reprocessing::SingleUse => "single use: throw away",
    }
}

/// What somebody may be allergic to.
fn contains(substances: &'static [SubstanceId]) -> impl IntoView {
    let names: Vec<&str> = substances.iter().map(SubstanceId::as_str).collect();
    (!names.is_empty()).then(|| {
        view! { <dt>"Contains"</dt><dd data-test="contains">{names.join(", ")}</dd> }
    })
}

#[component]
fn MaterialFacts(material: &'static Material) -> impl IntoView {
    let mixing = material.mixing.as_ref().map(|mixing| {
        view! {
            <section class="plate">
                <h2 class="stage-label">"Mixing"</h2>
                <MixingCard mixing />
            </section>
        }
    });
    view! {
        <section class="plate">
            <h2 class="stage-label">"What it is"</h2>
            <dl class="facts">
                <dt>"Family"</dt>
                <dd>{material.family.as_str()}</dd>
                <dt>"Form"</dt>
                <dd>{material.form.as_str()}</dd>
                <dt>"Kept"</dt>
                <dd>{material.storage.as_str()}</dd>
                {contains(&material.contains)}
            </dl>
        </section>
        <Touching material />
        {mixing}
    }
}

/// What it must not lie under, and what has to cover it.
#[component]
fn Touching(material: &'static Material) -> impl IntoView {
    let conflicts: Vec<_> = material
        .not_under
        .iter()
        .map(|conflict| {
            view! {
                <p><strong>"Not under " {class_name(&conflict.class)} ". "</strong>{conflict.because.as_str()}</p>
                <SourceNotes ids=conflict.sources.clone() />
            }
        })
        .collect();
    let cover = material.cover.as_ref().map(|cover| {
        let by: Vec<String> = cover.by.iter().map(class_name).collect();
        view! {
            <p><strong>"To be covered by " {by.join(" or ")} ". "</strong>{cover.because.as_str()}</p>
            <SourceNotes ids=cover.sources.clone() />
        }
    });
    (cover.is_some() || !conflicts.is_empty()).then(|| {
        view! {
            <section data-test="must-not-touch">
                <h2 class="stage-label">"What it may meet"</h2>
                <Notice tone=Tone::Attention>{conflicts} {cover}</Notice>
            </section>
        }
    })
}

/// A class of materials in words.
fn class_name(class: &ClassId) -> String {
    class.as_str().replace('-', " ")
}

/// What is easily taken for it, side by side with it.
#[component]
fn Lookalikes(item: Item<'static>) -> impl IntoView {
    let one = move |alike: &'static Lookalike| {
        catalogue().item(&alike.item).map(|other| {
            view! {
                <li>
                    <div class="side-by-side">
                        <figure><ItemDrawing item /><figcaption>{item.name()}</figcaption></figure>
                        <figure><ItemDrawing item=other /><figcaption><ItemLink item=other /></figcaption></figure>
                    </div>
                    <p>{alike.tell.as_str()}</p>
                </li>
            }
        })
    };
    (!item.lookalikes().is_empty()).then(|| {
        view! {
            <section class="plate" data-test="lookalikes">
                <h2 class="stage-label">"Easily taken for"</h2>
                <ul class="alikes">{item.lookalikes().iter().map(one).collect_view()}</ul>
            </section>
        }
    })
}

/// Where it is used, and for whom it takes another's place.
#[component]
fn Uses(item: Item<'static>) -> impl IntoView {
    let uses: Vec<_> = uses_of(catalogue(), item.id())
        .into_iter()
        .map(|each| {
            let called = if each.if_called { " If called for." } else { "" };
            view! { <dt>{set_up_link(each.procedure)}</dt><dd>{sentence(each.reason)} {called}</dd> }
        })
        .collect();
    let stands_in: Vec<_> = comes_for(catalogue(), item.id())
        .into_iter()
        .map(|(procedure, variation)| {
            view! {
                <dt>{set_up_link(procedure)}</dt>
                <dd>
                    "Instead of " {item_link::name(&variation.instead_of)} " for: "
                    {condition::words(catalogue(), &variation.when)} ". " {variation.because.as_str()}
                </dd>
            }
        })
        .collect();
    (!(uses.is_empty() && stands_in.is_empty())).then(|| {
        view! {
            <section class="plate" data-test="where-used">
                <h2 class="stage-label">"Where it is used"</h2>
                <dl class="uses-list">{uses} {stands_in}</dl>
            </section>
        }
    })
}

fn set_up_link(procedure: &'static Procedure) -> impl IntoView {
    let place = Place::Procedure(procedure.id.clone(), View::SetUp, Vec::new());
    view! { <a href=place.fragment()>{procedure.name.as_str()}</a> }
}

/// A reason as a sentence of its own.
fn sentence(reason: &str) -> String {
    let mut chars = reason.chars();
    chars.next().map_or_else(String::new, |first| {
        format!("{}{}.", first.to_uppercase(), chars.as_str())
    })
}

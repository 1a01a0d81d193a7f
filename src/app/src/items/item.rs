//! One instrument or material: how to know it, what it is for, where it lies.

use super::{alike::Lookalikes, meeting::Meeting, used::Uses};
use crate::{
    glossary::WordsFor,
    packs::FromPack,
    parts::{
        drawing::{ItemDrawing, Scale, WorkingEnd},
        mixing::MixingCard,
        page::Page,
        sources::SourceNotes,
    },
    place::{Drawn, Place},
    plates::slug,
    shell::NotHere,
    taught::catalogue,
};
use catalogue::{
    Item,
    glossary::See,
    ids::{ItemId, SubstanceId},
    items::{Instrument, Material, Reprocessing},
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
    let kind = match item {
        Item::Instrument(_) => "instrument",
        Item::Material(_) => "material",
    };
    let also = (!item.also().is_empty())
        .then(|| view! { <p class="also">"Also asked for as: " {item.also().join(", ")}</p> });
    let plates = Place::Plates(slug(item.family()), false).fragment();
    let life_size = Place::LifeSize(Drawn::Item(id.clone())).fragment();
    let ways = catalogue().drawing(&id).map(|_| {
        view! {
            <p class="item-ways">
                <a href=plates data-test="family-plates">"All " {item.family()}</a>
                <a href=life_size data-test="life-size">"At life size, to print"</a>
            </p>
        }
    });
    view! {
        <Page title=item.name() over="Instruments and materials" up=Place::Items.fragment()>
            <FromPack kind id=id.as_str() />
            <div class="item-page">
                <div class="item-look">
                    <div class="tray tray-single"><ItemDrawing item scale=Scale::Own /></div>
                    <WorkingEnd item />
                    {ways}
                </div>
                <div class="item-facts">
                    <p class="lead">{item.purpose()}</p>
                    {also}
                    {facts}
                    <Meeting item />
                    <Lookalikes item />
                    <Uses item />
                    <WordsFor what=See::Item(id) />
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
        {mixing}
    }
}

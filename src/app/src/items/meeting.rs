//! What a thing may meet: which layers it must not lie under or over, what
//! covers it, and for whom it is not used. Read in both directions.

use crate::{
    parts::{
        condition, item_link,
        notice::{Notice, Tone},
        sources::SourceNotes,
    },
    place::Place,
    taught::catalogue,
};
use catalogue::{
    Catalogue, Item,
    condition::When,
    ids::{ClassId, SourceId},
    items::{Material, Role},
    rules::{Conclusion, Strength},
};
use leptos::prelude::*;

/// One thing to heed: what, why, and where that is from.
struct Heed {
    what: AnyView,
    because: &'static str,
    sources: &'static [SourceId],
}

/// What an item may and must not meet. Nothing where nothing is to be heeded.
#[component]
pub fn Meeting(
    /// The item.
    item: Item<'static>,
) -> impl IntoView {
    let catalogue = catalogue();
    let mut heeds = Vec::new();
    if let Item::Material(material) = item {
        layers(catalogue, material, &mut heeds);
    }
    patients(catalogue, item, &mut heeds);
    let lines: Vec<_> = heeds.into_iter().map(line).collect();
    (!lines.is_empty()).then(|| {
        view! {
            <section data-test="must-not-touch">
                <h2 class="stage-label">"What it may meet"</h2>
                <Notice tone=Tone::Attention>{lines}</Notice>
            </section>
        }
    })
}

fn line(heed: Heed) -> impl IntoView {
    view! {
        <p><strong>{heed.what} ". "</strong>{heed.because}</p>
        <SourceNotes ids=heed.sources.to_vec() />
    }
}

/// What must not lie above it or below it, and what has to cover it.
fn layers(catalogue: &'static Catalogue, material: &'static Material, heeds: &mut Vec<Heed>) {
    for conflict in &material.not_under {
        heeds.push(Heed {
            what: view! { "Not under " {class(catalogue, &conflict.class)} }.into_any(),
            because: &conflict.because,
            sources: &conflict.sources,
        });
    }
    if let Some(cover) = &material.cover {
        let by: Vec<_> = cover.by.iter().map(|by| class(catalogue, by)).collect();
        let by: Vec<_> = by
            .into_iter()
            .enumerate()
            .map(|(at, by)| {
                view! { {(at > 0).then_some(" or ")} {by} }
            })
            .collect();
        heeds.push(Heed {
            what: view! { "To be covered by " {by} }.into_any(),
            because: &cover.because,
            sources: &cover.sources,
        });
    }
    for other in catalogue
        .materials
        .iter()
        .filter(|other| other.id != material.id)
    {
        for conflict in other
            .not_under
            .iter()
            .filter(|it| it.class == material.class)
        {
            heeds.push(Heed {
                what: view! { "Not over " {to(other)} }.into_any(),
                because: &conflict.because,
                sources: &conflict.sources,
            });
        }
    }
}

/// For whom it is not used, by what it contains or by a rule of its own.
fn patients(catalogue: &'static Catalogue, item: Item<'static>, heeds: &mut Vec<Heed>) {
    for rule in &catalogue.rules {
        for then in &rule.then {
            let what = match then {
                Conclusion::Avoid { substance } if item.contains().contains(substance) => {
                    format!(
                        "Contains {substance}; not for: {}",
                        whom(catalogue, &rule.when)
                    )
                }
                Conclusion::Material {
                    item: of,
                    role,
                    strength: Strength::MustNot,
                } if of == item.id() => {
                    format!(
                        "Never as a {}, for: {}",
                        role_name(*role),
                        whom(catalogue, &rule.when)
                    )
                }
                _ => continue,
            };
            heeds.push(Heed {
                what: what.into_any(),
                because: &rule.because,
                sources: &rule.sources,
            });
        }
    }
}

fn whom(catalogue: &Catalogue, when: &When) -> String {
    condition::words(catalogue, when)
}

fn role_name(role: Role) -> &'static str {
    match role {
        Role::Liner => "liner",
        Role::Base => "base",
        Role::Sealer => "sealer",
        Role::Temporary => "temporary",
        Role::Permanent => "permanent filling",
    }
}

/// A class of materials: the material itself where the class has only one.
fn class(catalogue: &'static Catalogue, class: &ClassId) -> AnyView {
    let mut members = catalogue.materials.iter().filter(|it| it.class == *class);
    match (members.next(), members.next()) {
        (Some(only), None) => to(only),
        _ => class.as_str().replace('-', " ").into_any(),
    }
}

fn to(material: &'static Material) -> AnyView {
    let place = Place::Item(material.id.clone());
    view! { <a href=place.fragment()>{item_link::name(&material.id)}</a> }.into_any()
}

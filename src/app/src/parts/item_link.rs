//! A link to an instrument or material, by its name.

use crate::{place::Place, taught::catalogue};
use catalogue::{Item, ids::ItemId};
use leptos::prelude::*;

/// The name of an item; a bare id where the catalogue has no such item.
pub fn name(id: &ItemId) -> String {
    catalogue()
        .item(id)
        .map_or_else(|| id.to_string(), |item| item.name().into())
}

/// A link to an item.
#[component]
pub fn ItemLink(
    /// The item.
    item: Item<'static>,
) -> impl IntoView {
    let to = Place::Item(item.id().clone()).fragment();
    view! { <a class="item-link" href=to>{item.name()}</a> }
}

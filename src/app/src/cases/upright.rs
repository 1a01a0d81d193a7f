//! An item as it lies on the tray: long instruments side by side, with the
//! working end away from the student; small things as they stand.

use crate::taught::catalogue;
use catalogue::{Item, ids::ItemId};
use drawing::Plate;
use leptos::prelude::*;

/// The room for one item, in pixels of the style sheet.
const ROOM: (f32, f32) = (72.0, 128.0);

/// The most pixels a millimetre takes.
const MOST: f32 = 2.6;

/// How long, in pixels, a small thing is drawn at the most: it can be known,
/// and an instrument beside it is still the larger one.
const SMALL: f32 = 76.0;

/// An item on the tray. Hidden from screen readers: its name stands beside it.
#[component]
pub fn Upright(
    /// The item.
    item: Item<'static>,
) -> impl IntoView {
    let plate = catalogue().drawing(item.id())?.plate().ok()?;
    // An instrument is drawn lying; turned, its left end is up.
    let turned = plate.width_mm > plate.height_mm * 1.6;
    let (wide, high) = if turned {
        (plate.height_mm, plate.width_mm)
    } else {
        (plate.width_mm, plate.height_mm)
    };
    let fits = (ROOM.0 / wide).min(ROOM.1 / high);
    let usual = ROOM.1 / 175.0;
    let scale = fits.min(MOST).min((SMALL / high.max(wide)).max(usual));
    let (width, height) = (ROOM.0 / scale, ROOM.1 / scale);
    let (left, top) = ((wide - width) / 2.0, (high - height) / 2.0);
    let turn = turned.then(|| format!("translate({wide:.2} 0) rotate(90)"));
    Some(view! {
        <svg
            class="d-plate upright"
            viewBox=format!("{left:.2} {top:.2} {width:.2} {height:.2}")
            aria-hidden="true"
            focusable="false"
        >
            <g transform=turn inner_html=shapes(&plate)></g>
        </svg>
    })
}

/// One thing laid: an item, or the first few of a set.
pub fn laid(shows: &[ItemId]) -> impl IntoView + use<> {
    let few = shows.iter().filter_map(|id| catalogue().item(id)).take(3);
    let class = if shows.len() > 1 {
        "laid-set"
    } else {
        "laid-one"
    };
    view! {
        <span class=class>{few.map(|item| view! { <Upright item /> }).collect_view()}</span>
    }
}

/// What stands between the tags of the plate's own SVG.
fn shapes(plate: &Plate) -> String {
    let svg = plate.to_svg();
    svg.split_once('>')
        .and_then(|(_, rest)| rest.rsplit_once("</svg>"))
        .map_or_else(String::new, |(inner, _)| inner.into())
}

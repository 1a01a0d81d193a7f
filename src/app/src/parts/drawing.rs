//! Drawings of items, in millimetres and true proportions.

use catalogue::Item;
use drawing::Plate;
use leptos::prelude::*;

use crate::taught::catalogue;

/// How large an item is drawn.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Scale {
    /// As large as there is room.
    Own,
    /// All items to one scale: the room is this many millimetres wide. What is
    /// longer fills the room.
    Shared(u16),
}

/// The room an instrument of usual length needs.
pub const TRAY_ROOM: Scale = Scale::Shared(175);

/// An item as it lies on the tray, seen from the side. Nothing where the
/// catalogue has no drawing of it: its name stands beside it in any case.
#[component]
pub fn ItemDrawing(
    /// The item.
    item: Item<'static>,
    /// How large.
    #[prop(default = TRAY_ROOM)]
    scale: Scale,
) -> impl IntoView {
    let plate = catalogue()
        .drawing(item.id())
        .and_then(|drawing| drawing.plate().ok());
    plate.map(|plate| plate_svg(&plate, scale, None))
}

/// The working end of an item, enlarged, above a bar of known length.
#[component]
pub fn WorkingEnd(
    /// The item.
    item: Item<'static>,
) -> impl IntoView {
    let plate = catalogue()
        .drawing(item.id())
        .and_then(|drawing| drawing.working_end().ok().flatten());
    plate.map(|plate| {
        let label = format!("{}: the working end, enlarged", item.name());
        view! {
            <figure class="working-end">
                {plate_svg(&plate, Scale::Own, Some(label))}
                <figcaption>"The working end, enlarged"</figcaption>
            </figure>
        }
    })
}

/// A plate as SVG; without a label it is hidden from screen readers.
fn plate_svg(plate: &Plate, scale: Scale, label: Option<String>) -> impl IntoView + use<> {
    let hidden = label.is_none().then_some("true");
    let role = label.is_some().then_some("img");
    let (view_box, class) = match scale {
        Scale::Shared(room) if plate.width_mm < f32::from(room) => {
            (format!("0 0 {room} {:.2}", plate.height_mm), "d-plate")
        }
        // A thing taller than wide would take the whole screen at full width.
        _ if plate.height_mm > plate.width_mm * 0.8 => (plate.view_box(), "d-plate d-tall"),
        _ => (plate.view_box(), "d-plate"),
    };
    view! {
        <svg
            class=class
            viewBox=view_box
            aria-hidden=hidden
            role=role
            aria-label=label
            focusable="false"
            inner_html=shapes(plate)
        ></svg>
    }
}

/// What stands between the tags of the plate's own SVG.
fn shapes(plate: &Plate) -> String {
    let svg = plate.to_svg();
    svg.split_once('>')
        .and_then(|(_, rest)| rest.rsplit_once("</svg>"))
        .map_or_else(String::new, |(inner, _)| inner.into())
}

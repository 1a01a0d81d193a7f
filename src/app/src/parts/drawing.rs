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
    /// All items to one scale, in a room this many millimetres wide; see [`Room`].
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
    let (view_box, mark) = match scale {
        Scale::Shared(room) => {
            let room = Room::of(plate, f32::from(room));
            (room.view_box(plate), room.mark(plate))
        }
        Scale::Own => (plate.view_box(), String::new()),
    };
    // A thing taller than wide would take the whole screen at full width.
    let tall = scale == Scale::Own && plate.height_mm > plate.width_mm * 0.6;
    view! {
        <svg
            class=if tall { "d-plate d-tall" } else { "d-plate" }
            viewBox=view_box
            aria-hidden=hidden
            role=role
            aria-label=label
            focusable="false"
            inner_html=shapes(plate) + &mark
        ></svg>
    }
}

/// How many times larger small things are drawn, so that they can be known.
const ENLARGED: f32 = 3.0;

/// A thing's room among others of one scale, in millimetres.
struct Room {
    width: f32,
    height: f32,
    enlarged: bool,
}

impl Room {
    /// Small things are enlarged, with a mark that says so; tall ones are
    /// drawn smaller, or one of them would push all others off the screen.
    fn of(plate: &Plate, shared: f32) -> Self {
        let enlarged = plate.width_mm.max(plate.height_mm) * 4.0 < shared;
        let width = if enlarged { shared / ENLARGED } else { shared };
        let width = width.max(plate.width_mm).max(plate.height_mm * 3.0);
        Self {
            width,
            height: plate.height_mm.max(width * 0.09),
            enlarged,
        }
    }

    fn view_box(&self, plate: &Plate) -> String {
        let above = (plate.height_mm - self.height) / 2.0;
        format!("0 {above:.2} {:.2} {:.2}", self.width, self.height)
    }

    fn mark(&self, plate: &Plate) -> String {
        if !self.enlarged {
            return String::new();
        }
        let size = self.width * 0.085;
        let (x, y) = (self.width - size * 0.2, plate.height_mm / 2.0 + size * 0.35);
        format!(
            "<text class=\"d-scale\" x=\"{x:.2}\" y=\"{y:.2}\" font-size=\"{size:.2}\" text-anchor=\"end\">×{ENLARGED}</text>"
        )
    }
}

/// What stands between the tags of the plate's own SVG.
fn shapes(plate: &Plate) -> String {
    let svg = plate.to_svg();
    svg.split_once('>')
        .and_then(|(_, rest)| rest.rsplit_once("</svg>"))
        .map_or_else(String::new, |(inner, _)| inner.into())
}

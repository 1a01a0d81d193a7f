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

/// Whether what is printed or engraved on a thing is drawn. In a question that
/// asks for its name it would give the answer away.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Labels {
    /// It is drawn.
    #[default]
    Shown,
    /// It is left out.
    Hidden,
}

/// The whole of an item. Nothing where the catalogue has no drawing of it.
pub fn whole(item: Item<'static>, labels: Labels) -> Option<Plate> {
    let drawing = catalogue().drawing(item.id())?;
    drawing.plate().ok().map(|plate| labelled(plate, labels))
}

/// The working end of an item, enlarged; nothing where that shows no more.
pub fn close_up(item: Item<'static>, labels: Labels) -> Option<Plate> {
    let drawing = catalogue().drawing(item.id())?;
    let plate = drawing.working_end().ok().flatten();
    plate.map(|plate| labelled(plate, labels))
}

fn labelled(plate: Plate, labels: Labels) -> Plate {
    match labels {
        Labels::Shown => plate,
        Labels::Hidden => plate.without_words(),
    }
}

/// An item as it lies on the tray, seen from the side. Nothing where the
/// catalogue has no drawing of it: its name stands beside it in any case.
#[component]
pub fn ItemDrawing(
    /// The item.
    item: Item<'static>,
    /// How large.
    #[prop(default = TRAY_ROOM)]
    scale: Scale,
    /// Whether what is printed on it is drawn.
    #[prop(optional)]
    labels: Labels,
) -> impl IntoView {
    whole(item, labels).map(|plate| plate_svg(&plate, scale, None))
}

/// The working end of an item, enlarged, above a bar of known length.
#[component]
pub fn WorkingEnd(
    /// The item.
    item: Item<'static>,
    /// Whether what is printed on it is drawn, and its name is said to those
    /// who do not see it.
    #[prop(optional)]
    labels: Labels,
) -> impl IntoView {
    close_up(item, labels).map(|plate| {
        let label = match labels {
            Labels::Shown => format!("{}: the working end, enlarged", item.name()),
            Labels::Hidden => "The working end, enlarged".into(),
        };
        view! {
            <figure class="working-end">
                {plate_svg(&plate, Scale::Own, Some(label))}
                <figcaption>"The working end, enlarged"</figcaption>
            </figure>
        }
    })
}

/// Two plates in one picture, one above the other, both to one scale.
pub fn pair_svg(above: &Plate, below: &Plate) -> impl IntoView + use<> {
    let (width, gap) = (above.width_mm.max(below.width_mm), 0.04);
    let start = above.height_mm + width * gap;
    let height = start + below.height_mm;
    let tall = height > width * 0.6;
    let inner = format!(
        "{}<g transform=\"translate(0 {start:.2})\">{}</g>",
        shapes(above),
        shapes(below)
    );
    view! {
        <svg
            class=if tall { "d-plate d-tall" } else { "d-plate" }
            viewBox=format!("0 0 {width:.2} {height:.2}")
            aria-hidden="true"
            focusable="false"
            inner_html=inner
        ></svg>
    }
}

/// The widest that a drawing at life size may be on a page, in millimetres:
/// A4 between margins of 12 mm, and a little less than Letter has.
const PAGE_WIDTH: f32 = 186.0;

/// A plate at life size: one millimetre of the thing is one on paper. What is
/// too long to lie across the page stands upright.
pub fn life_size_svg(plate: &Plate) -> impl IntoView + use<> {
    let upright = plate.width_mm > PAGE_WIDTH;
    let (width, height) = if upright {
        (plate.height_mm, plate.width_mm)
    } else {
        (plate.width_mm, plate.height_mm)
    };
    let inner = if upright {
        format!(
            "<g transform=\"translate({width:.2} 0) rotate(90)\">{}</g>",
            shapes(plate)
        )
    } else {
        shapes(plate)
    };
    view! {
        <svg
            class="d-plate d-life"
            width=format!("{width:.2}mm")
            height=format!("{height:.2}mm")
            viewBox=format!("0 0 {width:.2} {height:.2}")
            aria-hidden="true"
            focusable="false"
            inner_html=inner
        ></svg>
    }
}

/// A plate as SVG; without a label it is hidden from screen readers.
pub fn plate_svg(plate: &Plate, scale: Scale, label: Option<String>) -> impl IntoView + use<> {
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

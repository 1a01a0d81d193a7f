//! Instruments drawn from their measurements.
//!
//! A [`Drawing`] holds measurements in millimetres and degrees, as they stand in content. It becomes
//! a [`Plate`]: shapes in true proportion, seen from the side, that name style classes and no
//! colours. [`Drawing::working_end`] draws what touches the tooth again, alone and larger, from the
//! side and on its face.
//!
//! ```
//! use drawing::{Drawing, Bur, BurShank, Cutting, Head};
//!
//! let bur = Drawing::Bur(Bur {
//!     head: Head::Pear,
//!     diameter: 0.8,
//!     head_length: 1.6,
//!     cutting: Cutting::Blades,
//!     shank: BurShank::FrictionGrip,
//!     length: 19.0,
//!     neck: 0.0,
//!     rings: 0,
//! });
//! let svg = bur.plate().unwrap().to_svg();
//! assert!(svg.starts_with("<svg") && svg.contains("d-outline"));
//! ```

mod blade;
mod bottle;
mod bur;
mod canal_file;
mod clamp;
mod crossing;
mod fault;
mod figure;
mod hand;
mod hinged;
mod needle;
mod paste;
mod plate;
mod point;
mod spine;
mod tip;
mod tip_face;
mod tip_side;
mod vessel;

pub use blade::{Blade, CENTIGRADE, Cut, Measured};
pub use bottle::{Bottle, Closure};
pub use bur::{Bur, BurShank, Cutting, Head};
pub use canal_file::{CanalFile, Flutes};
pub use clamp::Clamp;
pub use fault::Fault;
pub use figure::{Figure, Piece};
pub use hand::{End, Grip, Hand, Handle};
pub use hinged::{Arm, Hinged, Pivot};
pub use needle::Needle;
pub use paste::PasteSyringe;
pub use plate::{Ink, Mark, Part, Plate, Shape, TRAY_MM};
pub use point::Point;
pub use spine::Segment;
pub use tip::{PaddleEnd, Tip, Toe};
pub use vessel::{Capsule, Tube};

use plate::{bounds, in_a_row};
use point::pt;
use serde::{Deserialize, Serialize};

/// A file of drawings: one family of items.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Sheet {
    /// The drawings.
    pub drawing: Vec<Entry>,
}

/// One drawing of a file, under the id of the item it shows.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Entry {
    /// The id of the instrument or material.
    pub id: String,
    /// Its measurements.
    pub form: Drawing,
}

/// The measurements of a thing on a tray, by the kind of thing it is.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub enum Drawing {
    /// A hand instrument.
    Hand(Hand),
    /// A two-armed instrument.
    Hinged(Hinged),
    /// A bur.
    Bur(Bur),
    /// A needle.
    Needle(Needle),
    /// A rubber dam clamp.
    Clamp(Clamp),
    /// A bottle or jar.
    Bottle(Bottle),
    /// A tube.
    Tube(Tube),
    /// A syringe of paste or liquid.
    PasteSyringe(PasteSyringe),
    /// A predosed capsule.
    Capsule(Capsule),
    /// A thing put together from pieces.
    Figure(Figure),
    /// Several things that belong together, side by side.
    Group(Vec<Drawing>),
    /// An instrument for a root canal.
    CanalFile(CanalFile),
}

impl Drawing {
    /// The whole thing from the side.
    ///
    /// # Errors
    /// When a measurement is impossible; the fault names the field.
    pub fn plate(&self) -> Result<Plate, Fault> {
        Plate::of(self.shapes()?)
    }

    /// What works on the tooth, alone and larger, above a bar of known length; nothing where an
    /// enlargement would show no more than the whole does.
    ///
    /// # Errors
    /// When a measurement is impossible; the fault names the field.
    pub fn working_end(&self) -> Result<Option<Plate>, Fault> {
        let rows = self.close_rows()?;
        if rows.iter().all(Vec::is_empty) {
            return Ok(None);
        }
        let mut shapes = arranged(rows);
        if let Some((low, high)) = bounds(&shapes) {
            shapes.extend(scale_bar(low, (high.x - low.x).max(high.y - low.y)));
        }
        Plate::of(shapes).map(Some)
    }

    /// Draws everything and looks for what cannot be: besides the faults of [`Drawing::plate`],
    /// outlines that cross themselves. For checking content, slower than drawing it.
    ///
    /// # Errors
    /// The first fault found.
    pub fn check(&self) -> Result<(), Fault> {
        let plates = [Some(self.plate()?), self.working_end()?];
        if plates.iter().flatten().any(|p| crossing::crossings(p) > 0) {
            return Err(Fault::new(
                "the outline",
                "crosses itself: some width is too large for the length or bend beside it",
            ));
        }
        Ok(())
    }

    /// The blade of a working end (0 or 1) measured from the points as they are drawn.
    ///
    /// Nothing where that end has no blade by Black's formula.
    pub fn measured_blade(&self, end: usize) -> Option<Measured> {
        match self {
            Self::Hand(hand) => hand.measured_blade(end),
            _ => None,
        }
    }

    fn shapes(&self) -> Result<Vec<Shape>, Fault> {
        match self {
            Self::Hand(hand) => hand.draw(),
            Self::Hinged(hinged) => hinged.draw(false),
            Self::Bur(bur) => bur.draw(false),
            Self::Needle(needle) => needle.draw(false),
            Self::Clamp(clamp) => clamp.draw(),
            Self::Bottle(bottle) => bottle.draw(),
            Self::Tube(tube) => tube.draw(),
            Self::PasteSyringe(syringe) => syringe.draw(),
            Self::Capsule(capsule) => capsule.draw(),
            Self::Figure(figure) => figure.draw(),
            Self::CanalFile(file) => file.draw(false),
            Self::Group(members) => {
                let drawn: Result<Vec<_>, _> = members.iter().map(Self::shapes).collect();
                Ok(in_a_row(drawn?, 6.0, true))
            }
        }
    }

    fn close_rows(&self) -> Result<Vec<Vec<Shape>>, Fault> {
        Ok(match self {
            Self::Hand(hand) => hand.draw_ends()?,
            Self::Hinged(hinged) => vec![hinged.draw_close()?],
            Self::Bur(bur) => vec![bur.draw(true)?],
            Self::Needle(needle) => vec![needle.draw(true)?],
            Self::Figure(figure) => vec![figure.draw_close()?],
            Self::CanalFile(file) => vec![file.draw(true)?],
            _ => Vec::new(),
        })
    }
}

/// Rows of shapes below one another, or side by side where that shows them larger in a wide frame.
fn arranged(rows: Vec<Vec<Shape>>) -> Vec<Shape> {
    let room = |shapes: &[Shape]| {
        bounds(shapes).map_or(0.0, |(low, high)| {
            (high.x - low.x).max(2.0 * (high.y - low.y))
        })
    };
    let beside = in_a_row(rows.clone(), 3.0, true);
    let below = stacked(rows);
    if room(&beside) < room(&below) {
        beside
    } else {
        below
    }
}

/// Rows of shapes below one another, all from the same left edge.
fn stacked(rows: Vec<Vec<Shape>>) -> Vec<Shape> {
    let mut floor = 0.0;
    let mut all = Vec::new();
    for row in rows {
        let Some((low, high)) = bounds(&row) else {
            continue;
        };
        let by = pt(-low.x, floor - high.y);
        floor -= (high.y - low.y) * 1.15 + 1.0;
        all.extend(row.into_iter().map(|shape| shape.moved(|p| p + by)));
    }
    all
}

/// A bar of 1, 2, 5 or 10 mm under an enlargement, so that its scale can be read.
fn scale_bar(low: Point, size: f32) -> [Shape; 2] {
    let (long, text) = [(10.0, "10 mm"), (5.0, "5 mm"), (2.0, "2 mm"), (1.0, "1 mm")]
        .into_iter()
        .find(|(long, _)| *long < size * 0.4)
        .unwrap_or((0.5, "0.5 mm"));
    let (tick, letters) = (size * 0.02, size * 0.05);
    let y = low.y - size * 0.08;
    let bar = vec![
        vec![pt(low.x, y), pt(low.x + long, y)],
        vec![pt(low.x, y - tick), pt(low.x, y + tick)],
        vec![pt(low.x + long, y - tick), pt(low.x + long, y + tick)],
    ];
    let words = Mark::Words {
        at: pt(low.x + long + letters * 2.4, y),
        size: letters,
        text: text.into(),
    };
    [
        Shape::lines(Part::Scale, Ink::Soft, bar),
        Shape {
            part: Part::Scale,
            ink: Ink::Soft,
            mark: words,
        },
    ]
}

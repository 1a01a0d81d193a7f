//! The finished drawing: shapes on a plate, in millimetres, ready to be shown at any scale.

use crate::fault::{Fault, decimal};
use crate::point::{Point, pt};
use serde::{Deserialize, Serialize};

/// The longest side of a tray, in millimetres: nothing drawn may be longer.
pub const TRAY_MM: f32 = 300.0;

/// How a shape is inked. Colours are the style sheet's affair; a shape only names its class.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Ink {
    /// A body: outline with the steel tint.
    #[default]
    Steel,
    /// An outline on the ground's own colour: glass, paper, cloth, an opening.
    Clear,
    /// A body with the amber tint: what is coloured, filled or to be noticed.
    Accent,
    /// A quiet line inside a body: grip, facet, scale, texture.
    Soft,
    /// A cutting edge or a working face.
    Edge,
    /// Filled with the ink itself: a dark band, a slot seen from above.
    Solid,
}

impl Ink {
    /// The class names of the style sheet.
    #[must_use]
    pub const fn class(self) -> &'static str {
        match self {
            Self::Steel => "d-outline d-fill",
            Self::Clear => "d-outline",
            Self::Accent => "d-outline d-accent",
            Self::Soft => "d-soft",
            Self::Edge => "d-edge",
            Self::Solid => "d-solid",
        }
    }
}

/// Which part of the thing a shape belongs to.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Part {
    /// What the hand holds.
    Handle,
    /// What joins the handle and the working end.
    Shank,
    /// The blade, nib, tip, beak or head.
    Working,
    /// The bar that tells the scale of an enlargement; no part of the thing.
    Scale,
    /// Anything else.
    #[default]
    Body,
}

/// The geometry of a shape.
#[derive(Clone, Debug, PartialEq)]
pub enum Mark {
    /// One closed outline.
    Closed(Vec<Point>),
    /// Any number of open lines.
    Lines(Vec<Vec<Point>>),
    /// Letters centred on a point; `size` is their height in millimetres.
    Words {
        /// The middle of the words.
        at: Point,
        /// Height of a capital letter's box in millimetres.
        size: f32,
        /// A short, generic label.
        text: String,
    },
}

/// One shape of a plate.
#[derive(Clone, Debug, PartialEq)]
pub struct Shape {
    /// Which part of the thing it belongs to.
    pub part: Part,
    /// How it is inked.
    pub ink: Ink,
    /// Where it runs.
    pub mark: Mark,
}

impl Shape {
    pub(crate) fn closed(part: Part, ink: Ink, points: Vec<Point>) -> Self {
        let mark = Mark::Closed(points);
        Self { part, ink, mark }
    }

    pub(crate) fn lines(part: Part, ink: Ink, lines: Vec<Vec<Point>>) -> Self {
        let mark = Mark::Lines(lines);
        Self { part, ink, mark }
    }

    /// The class names of the style sheet.
    #[must_use]
    pub const fn class(&self) -> &'static str {
        match (&self.mark, self.ink) {
            (Mark::Words { .. }, _) => "d-label",
            (Mark::Lines(_), Ink::Steel | Ink::Clear) => "d-line",
            (Mark::Lines(_), Ink::Accent) => "d-edge",
            (_, ink) => ink.class(),
        }
    }

    /// The path data of an SVG `path`, or nothing for words.
    #[must_use]
    pub fn path(&self) -> Option<String> {
        let mut data = String::new();
        match &self.mark {
            Mark::Closed(points) => {
                trace(&mut data, points);
                data.push('Z');
            }
            Mark::Lines(lines) => lines.iter().for_each(|line| trace(&mut data, line)),
            Mark::Words { .. } => return None,
        }
        Some(data)
    }

    /// Every point the shape must keep inside the plate.
    pub fn points(&self) -> Vec<Point> {
        match &self.mark {
            Mark::Closed(points) => points.clone(),
            Mark::Lines(lines) => lines.concat(),
            Mark::Words { at, size, text } => {
                let reach = pt(words_width(text, *size) / 2.0, size * 0.6);
                vec![*at - reach, *at + reach]
            }
        }
    }

    /// The shape with every point moved by `place`.
    pub(crate) fn moved(mut self, place: impl Fn(Point) -> Point) -> Self {
        match &mut self.mark {
            Mark::Closed(points) => points.iter_mut().for_each(|p| *p = place(*p)),
            Mark::Lines(lines) => lines.iter_mut().flatten().for_each(|p| *p = place(*p)),
            Mark::Words { at, .. } => *at = place(*at),
        }
        self
    }
}

/// Room that words take, in millimetres, for a plain face of that size.
pub(crate) fn words_width(text: &str, size: f32) -> f32 {
    text.chars().map(|_| size * 0.75).sum()
}

fn trace(data: &mut String, line: &[Point]) {
    for (i, point) in line.iter().enumerate() {
        data.push(if i == 0 { 'M' } else { 'L' });
        data.push_str(&decimal(point.x, 1000.0));
        data.push(' ');
        data.push_str(&decimal(point.y, 1000.0));
    }
}

/// A drawing on its ground: sizes and points in millimetres, y down, true proportions.
#[derive(Clone, Debug, PartialEq)]
pub struct Plate {
    /// Width in millimetres, margin included.
    pub width_mm: f32,
    /// Height in millimetres, margin included.
    pub height_mm: f32,
    /// The shapes, the hindmost first.
    pub shapes: Vec<Shape>,
}

impl Plate {
    /// Lays shapes (y up) on a plate that just holds them.
    ///
    /// # Errors
    /// When nothing is drawn, a point is no number, or the whole is longer than [`TRAY_MM`].
    pub(crate) fn of(shapes: Vec<Shape>) -> Result<Self, Fault> {
        let (low, high) =
            bounds(&shapes).ok_or_else(|| Fault::new("the drawing", "has no shapes to show"))?;
        let size = high - low;
        if !(size.x.is_finite() && size.y.is_finite()) {
            return Err(Fault::new(
                "the drawing",
                "has a measurement that is no number",
            ));
        }
        let longest = size.x.max(size.y);
        if longest > TRAY_MM {
            let is = decimal(longest, 10.0);
            return Err(Fault::new(
                "the whole length",
                [
                    "is ",
                    &is,
                    " mm; a tray is 300 mm long and nothing on it is longer",
                ]
                .concat(),
            ));
        }
        // Room for the stroke, which does not scale with the drawing.
        let margin = longest * 0.02 + 0.1;
        let place = |p: Point| pt(p.x - low.x + margin, high.y - p.y + margin);
        Ok(Self {
            width_mm: size.x + 2.0 * margin,
            height_mm: size.y + 2.0 * margin,
            shapes: shapes.into_iter().map(|s| s.moved(place)).collect(),
        })
    }

    /// The plate without what is printed or engraved on the thing, so that it
    /// is known by its shape alone. The bar of an enlargement keeps its words.
    #[must_use]
    pub fn without_words(mut self) -> Self {
        self.shapes
            .retain(|shape| shape.part == Part::Scale || !matches!(shape.mark, Mark::Words { .. }));
        self
    }

    /// The `viewBox` of the plate.
    #[must_use]
    pub fn view_box(&self) -> String {
        [
            "0 0 ",
            &decimal(self.width_mm, 1000.0),
            " ",
            &decimal(self.height_mm, 1000.0),
        ]
        .concat()
    }

    /// The plate as an SVG element that carries class names only.
    #[must_use]
    pub fn to_svg(&self) -> String {
        let mut svg = [
            "<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"d-plate\" viewBox=\"",
            &self.view_box(),
            "\">",
        ]
        .concat();
        for shape in &self.shapes {
            let class = shape.class();
            if let Mark::Words { at, size, text } = &shape.mark {
                let text = text.replace('&', "&amp;").replace('<', "&lt;");
                svg += &[
                    "<text class=\"",
                    class,
                    "\" x=\"",
                    &decimal(at.x, 1000.0),
                    "\" y=\"",
                    &decimal(at.y + size * 0.36, 1000.0),
                    "\" font-size=\"",
                    &decimal(*size, 1000.0),
                    "\" text-anchor=\"middle\">",
                    &text,
                    "</text>",
                ]
                .concat();
            } else if let Some(data) = shape.path() {
                svg += &["<path class=\"", class, "\" d=\"", &data, "\"/>"].concat();
            }
        }
        svg + "</svg>"
    }
}

/// The lowest and the highest corner of all shapes.
pub(crate) fn bounds(shapes: &[Shape]) -> Option<(Point, Point)> {
    // Not-a-number would vanish in min and max, so it is carried by the sum instead.
    let join = |(low, high): (Point, Point), p: Point| {
        let odd = p.x * 0.0 + p.y * 0.0;
        (
            pt(low.x.min(p.x) + odd, low.y.min(p.y) + odd),
            pt(high.x.max(p.x) + odd, high.y.max(p.y) + odd),
        )
    };
    shapes
        .iter()
        .flat_map(Shape::points)
        .fold(None, |all, p| Some(join(all.unwrap_or((p, p)), p)))
}

/// Lays groups of shapes in a row, `gap` millimetres apart; all on one floor, or on one middle line.
pub(crate) fn in_a_row(groups: Vec<Vec<Shape>>, gap: f32, on_floor: bool) -> Vec<Shape> {
    let mut x = 0.0;
    let mut all = Vec::new();
    for group in groups {
        let Some((low, high)) = bounds(&group) else {
            continue;
        };
        let y = if on_floor {
            low.y
        } else {
            f32::midpoint(low.y, high.y)
        };
        let by = pt(x - low.x, -y);
        x += high.x - low.x + gap;
        all.extend(group.into_iter().map(|shape| shape.moved(|p| p + by)));
    }
    all
}

//! Tubes and capsules, and the labels that all vessels share.

use crate::fault::{Fault, length, length_or_none};
use crate::figure::block;
use crate::plate::{Ink, Mark, Part, Shape, words_width};
use crate::point::{Point, pt};
use crate::spine::{Rod, Spine};
use serde::{Deserialize, Serialize};

/// A collapsible tube, lying with its cap to the right.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Tube {
    /// Width at the fold in millimetres.
    pub width: f32,
    /// Length without the cap in millimetres.
    pub length: f32,
    /// Whether it is the coloured one of a pair.
    #[serde(default)]
    pub marked: bool,
    /// A short generic label.
    #[serde(default)]
    pub label: String,
}

/// A predosed capsule, lying with its nozzle to the right.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Capsule {
    /// Diameter of the body in millimetres.
    pub diameter: f32,
    /// Length of the body in millimetres.
    pub length: f32,
    /// Length of the nozzle in millimetres; 0 for a capsule that is opened.
    pub nozzle: f32,
    /// Length of the plunger that is pressed in first; 0 for none.
    pub plunger: f32,
    /// A short generic label.
    #[serde(default)]
    pub label: String,
}

pub(crate) fn body(ink: Ink, outline: Vec<Point>) -> Shape {
    Shape::closed(Part::Body, ink, outline)
}

pub(crate) fn rule(lines: Vec<Vec<Point>>) -> Shape {
    Shape::lines(Part::Body, Ink::Soft, lines)
}

/// A label that fits a box: its lines as large as the box allows.
pub(crate) fn label(text: &str, middle: Point, width: f32, height: f32) -> Vec<Shape> {
    if text.is_empty() {
        return Vec::new();
    }
    let rows = text.split('|').fold(0.0, |n: f32, _| n + 1.0);
    let widest = text
        .split('|')
        .map(|row| words_width(row, 1.0))
        .fold(0.0, f32::max);
    let size = (width / widest.max(0.1)).min(height / rows / 1.2);
    let mut shapes = Vec::new();
    let mut y = middle.y + (rows - 1.0) * size * 0.6;
    for row in text.split('|') {
        shapes.push(Shape {
            part: Part::Body,
            ink: Ink::Soft,
            mark: Mark::Words {
                at: pt(middle.x, y),
                size,
                text: row.into(),
            },
        });
        y -= size * 1.2;
    }
    shapes
}

impl Tube {
    pub(crate) fn draw(&self) -> Result<Vec<Shape>, Fault> {
        length("width", self.width, 80.0)?;
        length("length", self.length, 220.0)?;
        let (w, l) = (self.width / 2.0, self.length);
        let r = w * 0.72;
        let outline = vec![
            pt(0.0, -w),
            pt(w * 0.5, -w),
            pt(l - r * 0.5, -r),
            pt(l, -r * 0.4),
            pt(l, r * 0.4),
            pt(l - r * 0.5, r),
            pt(w * 0.5, w),
            pt(0.0, w),
        ];
        let ink = if self.marked { Ink::Accent } else { Ink::Clear };
        let cap = vec![
            pt(l, -r * 0.62),
            pt(l + r * 1.3, -r * 0.5),
            pt(l + r * 1.3, r * 0.5),
            pt(l, r * 0.62),
        ];
        let ribs = [-0.3, 0.0, 0.3].map(|y| vec![pt(l + 0.4, y * r), pt(l + r * 1.2, y * r)]);
        let mut shapes = vec![
            body(ink, outline),
            rule(vec![
                vec![pt(w * 0.25, -w), pt(w * 0.25, w)],
                vec![pt(w * 0.5, -w), pt(w * 0.5, w)],
                vec![pt(l - r * 0.5, -r), pt(l - r * 0.5, r)],
            ]),
            body(Ink::Steel, cap),
            rule(ribs.to_vec()),
        ];
        shapes.extend(label(
            &self.label,
            pt(l * 0.5 + w * 0.15, 0.0),
            l - w * 1.8,
            w * 1.1,
        ));
        Ok(shapes)
    }
}

impl Capsule {
    pub(crate) fn draw(&self) -> Result<Vec<Shape>, Fault> {
        length("diameter", self.diameter, 20.0)?;
        length("length", self.length, 40.0)?;
        length_or_none("nozzle", self.nozzle, 25.0)?;
        length_or_none("plunger", self.plunger, 20.0)?;
        let (r, l) = (self.diameter / 2.0, self.length);
        let mut shapes = Vec::new();
        if self.plunger > 0.0 {
            let plunger = block(pt(-self.plunger, -r * 0.7), self.plunger, r * 1.4, r * 0.15);
            shapes.push(body(Ink::Accent, plunger));
        }
        if self.nozzle > 0.0 {
            let mut spine = Spine::lay(pt(l - 0.5, 0.0), 0.0, &[], 0.0)?;
            spine.run(self.nozzle * 0.5, 0.0);
            spine.run(self.nozzle * 0.5, -35.0);
            let widths = [
                [0.0, r * 0.55],
                [self.nozzle * 0.4, r * 0.34],
                [spine.end().s, r * 0.22],
            ];
            let rod = Rod {
                spine: &spine,
                widths: &widths,
                smooth: false,
                round: [false, false],
                from: 0.0,
            };
            shapes.push(body(Ink::Clear, rod.outline()?));
        }
        let round = if self.nozzle > 0.0 { r * 0.25 } else { r * 0.9 };
        shapes.push(body(Ink::Steel, block(pt(0.0, -r), l, r * 2.0, round)));
        let joint = if self.nozzle > 0.0 { 0.14 } else { 0.58 };
        shapes.push(rule(vec![vec![pt(l * joint, -r), pt(l * joint, r)]]));
        let (from, to) = if self.nozzle > 0.0 {
            (0.2, 0.96)
        } else {
            (0.12, 0.54)
        };
        shapes.extend(label(
            &self.label,
            pt(l * f32::midpoint(from, to), 0.0),
            l * (to - from) * 0.92,
            r * 1.3,
        ));
        Ok(shapes)
    }
}

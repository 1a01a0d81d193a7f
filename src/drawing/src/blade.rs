//! Blades given by Black's formula.
//!
//! Three numbers: width in tenths of a millimetre, length in millimetres, and the angle of the blade
//! with the long axis of the handle in centigrades, hundredths of a circle. Where the cutting edge
//! does not stand square to the blade, its angle with the handle comes second. (Black, *Technical
//! Procedures in Filling Teeth*, 1899, p. 26; *Operative Dentistry* vol. 2, 1908, pp. 22-24.)

use crate::fault::{Fault, length};
use crate::plate::{Ink, Mark, Part, Shape};
use crate::point::{Point, pt};
use serde::{Deserialize, Serialize};
use std::f32::consts::PI;

/// Degrees in one centigrade: a hundredth of a circle.
pub const CENTIGRADE: f32 = 3.6;

/// How a blade's width lies.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Cut {
    /// In the plane of the shank's bends, as in a hatchet: the edge runs with the handle.
    Hatchet,
    /// Across that plane, as in a hoe or a chisel: the edge runs across the handle.
    Hoe,
}

/// A flat blade by Black's formula.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Blade {
    /// Width in tenths of a millimetre: the first number.
    pub width_tenths: f32,
    /// Angle of the cutting edge with the handle, in centigrades above 50: the number in second
    /// place, absent where the edge stands square to the blade.
    #[serde(default)]
    pub edge_centigrades: Option<f32>,
    /// Length in millimetres.
    pub length: f32,
    /// Angle of the blade with the handle, in centigrades.
    pub angle_centigrades: f32,
    /// How the width lies.
    pub cut: Cut,
    /// Whether the blade is curved along its length, as a margin trimmer's is.
    #[serde(default)]
    pub curved: bool,
}

/// A blade as it was drawn, measured from the points of the drawing.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Measured {
    /// Width in millimetres, square to the blade.
    pub width_mm: f32,
    /// Length in millimetres, along the middle of the blade.
    pub length_mm: f32,
    /// Angle between the blade and the handle in degrees.
    pub angle_degrees: f32,
    /// Angle between the cutting edge and the handle in degrees, turning as the blade does: 180 to 360.
    pub edge_degrees: f32,
}

impl Blade {
    pub(crate) fn check(&self) -> Result<(), Fault> {
        length("width-tenths / 10", self.width_tenths / 10.0, 6.0)?;
        length("length", self.length, 40.0)?;
        if !(0.0..=25.0).contains(&self.angle_centigrades) {
            return Err(Fault::new(
                "angle-centigrades",
                "is not between 0 and 25: a blade at 25 already stands square to the handle",
            ));
        }
        let skew = self.skew();
        if skew.is_nan() || skew.abs() >= 60f32.to_radians() {
            return Err(Fault::new(
                "edge-centigrades",
                "puts the cutting edge along the blade: take a number near 75 plus the angle for a \
                 hatchet, near 75 for a hoe",
            ));
        }
        if self.half_width() * skew.tan().abs() * 1.5 >= self.length {
            return Err(Fault::new(
                "edge-centigrades",
                "slants the edge over the whole blade: a shorter slant or a longer blade is needed",
            ));
        }
        Ok(())
    }

    pub(crate) fn half_width(&self) -> f32 {
        self.width_tenths / 20.0
    }

    /// Angle with the handle in radians.
    pub(crate) fn angle(&self) -> f32 {
        (self.angle_centigrades * CENTIGRADE).to_radians()
    }

    /// How far the edge is turned from square to the blade, in radians, the way the blade bends.
    ///
    /// Square to the blade is square to the handle (75) plus, for a hatchet, the blade's own angle.
    fn skew(&self) -> f32 {
        let square = match self.cut {
            Cut::Hatchet => 75.0 + self.angle_centigrades,
            Cut::Hoe => 75.0,
        };
        ((self.edge_centigrades.unwrap_or(square) - square) * CENTIGRADE).to_radians()
    }

    /// The blade seen on its flat: outline, cutting edge, end of the bevel.
    pub(crate) fn flat(&self) -> Vec<Shape> {
        let (w, l) = (self.half_width(), self.length);
        let slant = w * self.skew().tan();
        let bevel = (w * 0.9).min(l * 0.25);
        let (inner, outer) = (pt(l - slant, w), pt(l + slant, -w));
        let outline = vec![pt(0.0, w), inner, outer, pt(0.0, -w)];
        let back = pt(-bevel, 0.0);
        vec![
            Shape::closed(Part::Working, Ink::Steel, outline),
            Shape::lines(
                Part::Working,
                Ink::Soft,
                vec![vec![inner + back, outer + back]],
            ),
            Shape::lines(Part::Working, Ink::Edge, vec![vec![inner, outer]]),
        ]
    }

    /// The blade seen on its thin side; `neck` is half the thickness where it begins.
    pub(crate) fn thin(&self, neck: f32) -> Vec<Shape> {
        let l = self.length;
        let t = neck.min(self.half_width()).max(0.2) * 0.8;
        let bevel = (t * 3.0).min(l * 0.4);
        let outline = vec![pt(0.0, t), pt(l, t), pt(l - bevel, -t), pt(0.0, -t)];
        let edge = vec![outline[1], outline[2]];
        let mut shapes = vec![
            Shape::closed(Part::Working, Ink::Steel, outline),
            Shape::lines(Part::Working, Ink::Edge, vec![edge]),
        ];
        if self.curved {
            // Rolled about a circle so that the last millimetre turns by half a right angle.
            let radius = l / (PI / 5.0);
            let lift = |p: Point| {
                let turn = p.x / radius;
                pt(0.0, radius) + pt(0.0, p.y - radius).turned(turn)
            };
            shapes = shapes.into_iter().map(|s| fine(s).moved(lift)).collect();
        }
        shapes
    }
}

/// The same shape with points put in, so that it can be bent.
fn fine(mut shape: Shape) -> Shape {
    if let Mark::Closed(points) = &mut shape.mark {
        let corners = points.clone();
        points.clear();
        for (i, &from) in corners.iter().enumerate() {
            let to = corners[(i + 1) % corners.len()];
            points.extend((0..12u8).map(|k| from + (to - from) * (f32::from(k) / 12.0)));
        }
    }
    shape
}

/// The direction of the longest straight side of a closed outline.
fn longest_side(outline: &[Point]) -> Option<Point> {
    let next = outline.iter().cycle().skip(1);
    outline
        .iter()
        .zip(next)
        .map(|(a, b)| *b - *a)
        .max_by(|a, b| a.length().total_cmp(&b.length()))
}

/// Reads a blade back from the shapes of a drawing (y up): the outline of the working part, its
/// edge, and the handle when it is there; without a handle the axis is level.
pub(crate) fn measure(shapes: &[Shape]) -> Option<Measured> {
    let outline = |part: Part| {
        shapes.iter().find_map(|shape| match &shape.mark {
            Mark::Closed(points) if shape.part == part => Some(points),
            _ => None,
        })
    };
    let edge = shapes.iter().find_map(|shape| match &shape.mark {
        Mark::Lines(lines) if shape.part == Part::Working && shape.ink == Ink::Edge => {
            Some((*lines.first()?.first()?, *lines.first()?.last()?))
        }
        _ => None,
    })?;
    let blade = outline(Part::Working)?;
    let axis = outline(Part::Handle).and_then(|handle| longest_side(handle));
    let axis = axis.map_or(0.0, Point::heading);
    let base = (*blade.first()? + *blade.last()?) * 0.5;
    let tip = (edge.0 + edge.1) * 0.5;
    let side = longest_side(blade)?;
    let across = side.left();
    let ends = edge.1 - edge.0;
    // Angles between lines, not arrows, so half turns are dropped.
    let half = |angle: f32| angle.rem_euclid(PI).to_degrees();
    let angle = half(side.heading() - axis);
    Some(Measured {
        width_mm: (ends.x * across.x + ends.y * across.y).abs(),
        length_mm: (tip - base).length(),
        angle_degrees: angle,
        edge_degrees: 180.0 + half(ends.heading() - axis),
    })
}

//! Teeth on two arches, as plain geometry for a drawing of our own.
//!
//! Each arch is half an ellipse of such a size that the crowns, one beside the
//! other from the midline, fill it to just behind its widest place. Seen as
//! one looks at the patient: the patient's right is on the left.

use super::eruption::facts;
use crate::tooth::Tooth;
use catalogue::{numbers::Numbers, quantity::Milli};
use std::f32::consts::FRAC_PI_2;

/// A crown on an arch, in mm; x runs to the viewer's right, y upwards.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Placed {
    /// The tooth.
    pub tooth: Tooth,
    /// The middle of its crown.
    pub middle: (f32, f32),
    /// How far its row turns from level there, in degrees.
    pub turn: f32,
    /// Width along the row.
    pub width: f32,
    /// Depth across the row.
    pub depth: f32,
}

impl Placed {
    /// The outline of the crown: a rounded square of 24 points.
    pub fn outline(&self) -> Vec<(f32, f32)> {
        let turn = self.turn.to_radians();
        (0..24_u8)
            .map(|i| {
                let t = f32::from(i) / 24.0 * 4.0 * FRAC_PI_2;
                let round = |v: f32| v.signum() * v.abs().sqrt();
                let (x, y) = (
                    round(t.cos()) * self.width / 2.0,
                    round(t.sin()) * self.depth / 2.0,
                );
                (
                    self.middle.0 + x * turn.cos() - y * turn.sin(),
                    self.middle.1 + x * turn.sin() + y * turn.cos(),
                )
            })
            .collect()
    }
}

/// How deep an arch is for its half width.
const DEEP: f32 = 1.35;
/// How far round the half ellipse the crowns reach, as part of a quarter turn.
const REACH: f32 = 0.98;
/// Half the room between the arches.
const GAP: f32 = 6.0;

/// The permanent or the primary teeth on both arches.
pub fn arch(numbers: &Numbers, primary: bool) -> Vec<Placed> {
    let mut all = Vec::new();
    for upper in [true, false] {
        let row: Vec<(Tooth, f32, f32)> = Tooth::all()
            .filter(|t| t.is_primary() == primary && t.is_upper() == upper && t.is_right())
            .filter_map(|t| {
                let facts = facts(numbers, t)?;
                Some((t, mm(facts.width), mm(facts.depth)))
            })
            .collect();
        place(&row, upper, &mut all);
    }
    all
}

#[expect(
    clippy::cast_precision_loss,
    reason = "thousandths of a few mm are exact in f32"
)]
fn mm(value: Milli) -> f32 {
    value.0 as f32 / 1000.0
}

fn place(row: &[(Tooth, f32, f32)], upper: bool, all: &mut Vec<Placed>) {
    let length: f32 = row.iter().map(|(_, width, _)| width).sum();
    let half = length / quarter(REACH).max(f32::EPSILON);
    let mut walked = 0.0;
    for (tooth, width, depth) in row {
        let turn = angle_at((walked + width / 2.0) / half);
        walked += width;
        let (x, down) = (half * turn.sin(), half * DEEP * (1.0 - turn.cos()));
        let slope = (DEEP * turn.sin()).atan2(turn.cos()).to_degrees();
        // The back teeth of both arches lie towards the middle of the drawing.
        let deepest = half * DEEP + GAP;
        let (y, slope) = if upper {
            (deepest - down, slope)
        } else {
            (down - deepest, -slope)
        };
        for (side, tooth) in [(-1.0, Some(*tooth)), (1.0, tooth.mirrored())] {
            let Some(tooth) = tooth else { continue };
            all.push(Placed {
                tooth,
                middle: (side * x, y),
                turn: -side * slope,
                width: *width,
                depth: *depth,
            });
        }
    }
}

/// The length of the ellipse of half width 1 from its front, up to this part of a quarter turn.
fn quarter(part: f32) -> f32 {
    walk(f32::INFINITY, part * FRAC_PI_2).1
}

/// The angle at which so much of the ellipse of half width 1 has been walked.
fn angle_at(length: f32) -> f32 {
    walk(length, FRAC_PI_2).0
}

fn walk(length: f32, to: f32) -> (f32, f32) {
    const STEP: f32 = 0.002;
    let (mut turn, mut walked) = (0.0_f32, 0.0_f32);
    while turn < to && walked < length {
        let middle = turn + STEP / 2.0;
        walked += STEP * middle.cos().hypot(DEEP * middle.sin());
        turn += STEP;
    }
    (turn, walked)
}

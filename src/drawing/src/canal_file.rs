//! Files and reamers for root canals, by size and taper (ISO 3630-1).

use crate::fault::{Fault, length, length_or_none};
use crate::figure::block;
use crate::plate::{Ink, Part, Shape};
use crate::point::{Point, fractions, pt};
use crate::spine::{Rod, Spine};
use crate::vessel::label;
use serde::{Deserialize, Serialize};

/// Length of the cutting part in millimetres (ISO 3630-1, value from memory).
const CUTTING: f32 = 16.0;

/// How the working part is made.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Flutes {
    /// A tight even twist: a K-file.
    Twisted,
    /// A loose twist: a reamer.
    Loose,
    /// Cones stacked into one another: an H-file.
    Cones,
    /// A wide spiral on a latch shank, turned by a motor.
    Rotary,
    /// A wire with barbs: a broach.
    Barbs,
}

/// A file, a reamer or a broach.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct CanalFile {
    /// How the working part is made.
    pub flutes: Flutes,
    /// Size: the diameter at the tip in hundredths of a millimetre.
    pub size: u8,
    /// Growth of the diameter towards the handle, in hundredths of a millimetre a millimetre.
    pub taper: u8,
    /// Length from the handle to the tip in millimetres.
    pub length: f32,
}

impl CanalFile {
    /// The colour ISO 3630-1 gives a size (values from memory); nothing for a size there is not.
    #[must_use]
    pub fn colour(size: u8) -> Option<&'static str> {
        const TURN: [&str; 6] = ["white", "yellow", "red", "blue", "green", "black"];
        let step = match size {
            6 => return Some("pink"),
            8 => return Some("grey"),
            10 => return Some("purple"),
            15..=60 if size.is_multiple_of(5) => size / 5 - 3,
            70..=140 if size.is_multiple_of(10) => size / 10 + 3,
            _ => return None,
        };
        Some(TURN[usize::from(step) % TURN.len()])
    }

    /// Half the diameter, `back` millimetres behind the tip.
    fn half_width(self, back: f32) -> f32 {
        let taper = f32::from(self.taper) / 200.0;
        f32::from(self.size) / 200.0 + taper * back.min(CUTTING)
    }

    /// The shapes, the tip to the right; only the last millimetres when `close`.
    pub(crate) fn draw(self, close: bool) -> Result<Vec<Shape>, Fault> {
        length("length", self.length, 35.0)?;
        length_or_none("taper", f32::from(self.taper), 12.0)?;
        let Some(colour) = Self::colour(self.size) else {
            return Err(Fault::new(
                "size",
                "is none of 6, 8, 10, 15, 20 and so on up to 60, 70, 80 up to 140",
            ));
        };
        let from = if close { self.length - 7.0 } else { 0.0 };
        let mut shapes = self.draw_blade(from)?;
        if !close {
            shapes.extend(self.draw_holder());
            let middle = pt(self.length * 0.5, -3.6);
            let words = [&self.size.to_string(), " ", colour].concat();
            shapes.extend(label(&words, middle, 20.0, 3.2));
        }
        Ok(shapes)
    }

    fn draw_blade(self, from: f32) -> Result<Vec<Shape>, Fault> {
        let l = self.length;
        let start = (l - CUTTING).max(from);
        let (turns, depth) = match self.flutes {
            Flutes::Twisted => (2.4, 0.12),
            Flutes::Loose => (0.65, 0.1),
            Flutes::Cones => (1.2, 0.5),
            Flutes::Rotary => (0.5, 0.25),
            Flutes::Barbs => (1.0, 0.0),
        };
        // Counted from the tip, so that whole and enlargement show the same flutes.
        let steps = (l - start) * turns;
        let mut widths = vec![[from, self.half_width(l - from)]];
        let mut lines = Vec::new();
        let mut step = 0.0;
        while step + 1.0 <= steps {
            let s = l - (steps - step) / turns;
            let half = self.half_width(l - s);
            let next = s + 1.0 / turns;
            if self.flutes == Flutes::Cones {
                widths.push([s + 0.02, half]);
                widths.push([next - 0.02, half * (1.0 - depth)]);
                lines.push(vec![pt(s + 0.02, half), pt(s + 0.02, -half)]);
            } else if self.flutes == Flutes::Barbs {
                lines.extend(barb(s, half, step));
            } else {
                widths.push([s + 0.02, half]);
                widths.push([s + 0.5 / turns, half * (1.0 - depth)]);
                let lean = 0.5 / turns;
                let thin = self.half_width(l - next);
                lines.push(vec![pt(s, -half), pt(s + lean, 0.0), pt(next, thin)]);
            }
            step += 1.0;
        }
        widths.retain(|row| row[0] >= from);
        widths.push([l, self.half_width(0.0)]);
        let mut spine = Spine::lay(pt(0.0, 0.0), 0.0, &[], 0.0)?;
        spine.run(l, 0.0);
        let rod = Rod {
            spine: &spine,
            widths: &widths,
            smooth: false,
            round: [false, true],
            from,
        };
        let ink = if self.flutes == Flutes::Barbs {
            Ink::Edge
        } else {
            Ink::Soft
        };
        Ok(vec![
            Shape::closed(Part::Working, Ink::Steel, rod.outline()?),
            Shape::lines(Part::Working, ink, lines),
        ])
    }

    fn draw_holder(self) -> Vec<Shape> {
        let body = |ink, outline| Shape::closed(Part::Handle, ink, outline);
        let rule = |lines| Shape::lines(Part::Handle, Ink::Soft, lines);
        let mut shapes = Vec::new();
        if self.flutes == Flutes::Rotary {
            let r = 1.175;
            let shank = vec![
                pt(0.0, r),
                pt(-9.3, r),
                pt(-9.3, 0.75),
                pt(-10.4, 0.75),
                pt(-10.4, r),
                pt(-12.0, r),
                pt(-12.0, -r),
                pt(-10.4, -r),
                pt(-10.4, -0.75),
                pt(-9.3, -0.75),
                pt(-9.3, -r),
                pt(0.0, -r),
            ];
            shapes.extend([
                body(Ink::Steel, shank),
                rule(vec![vec![pt(-12.0, 0.4), pt(-6.5, 0.4), pt(-6.5, r)]]),
                body(Ink::Accent, block(pt(-2.4, -r), 0.8, 2.0 * r, 0.0)),
                body(Ink::Accent, block(pt(-4.0, -r), 0.8, 2.0 * r, 0.0)),
            ]);
        } else {
            let (long, r) = if self.flutes == Flutes::Barbs {
                (16.0, 1.1)
            } else {
                (11.0, 1.9)
            };
            let ribs = fractions(8).map(|f| {
                let x = -1.6 - f * (long - 3.2);
                vec![pt(x, r * 0.8), pt(x, -r * 0.8)]
            });
            shapes.extend([
                body(Ink::Accent, block(pt(-long, -r), long, 2.0 * r, r * 0.6)),
                rule(ribs.collect()),
            ]);
        }
        if self.flutes != Flutes::Barbs {
            shapes.push(body(Ink::Clear, block(pt(4.0, -1.5), 1.3, 3.0, 0.3)));
        }
        shapes
    }
}

/// A pair of barbs that point back to the handle, each pair a quarter turn on from the one before.
fn barb(s: f32, half: f32, step: f32) -> Vec<Vec<Point>> {
    let out = if step % 2.0 < 0.5 { 1.0 } else { 0.55 };
    [1.0, -1.0]
        .map(|side| {
            let foot = pt(s + 0.35, side * half * 0.8);
            vec![foot, pt(s, side * (half + 0.16 * out))]
        })
        .to_vec()
}

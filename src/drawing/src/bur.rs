//! Burs and other rotary instruments: head, neck, shank.

use crate::fault::{Fault, length, length_or_none};
use crate::figure::block;
use crate::plate::{Ink, Part, Shape};
use crate::point::{fractions, pt, whole};
use crate::spine::{Rod, Spine};
use serde::{Deserialize, Serialize};
use std::f32::consts::{FRAC_PI_2, PI};

/// The shape of a head.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Head {
    /// A ball.
    Round,
    /// A cone, wide end foremost.
    InvertedCone,
    /// A pear, wide and rounded foremost.
    Pear,
    /// A cylinder with a flat end.
    Cylinder,
    /// A cylinder with a rounded end.
    RoundedCylinder,
    /// A cone, thin end foremost, flat.
    Cone,
    /// A cone, thin end foremost, rounded.
    RoundedCone,
    /// A flame.
    Flame,
    /// A football.
    Football,
    /// A long thin cone to a point.
    Needle,
    /// A cylinder that cuts with its end only.
    EndCutting,
    /// A wheel.
    Wheel,
    /// A bud with a blunt tip that follows a canal without cutting.
    Bud,
}

/// What cuts.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Cutting {
    /// A few plain blades.
    Blades,
    /// Blades with notches across.
    CrossCut,
    /// Many fine blades, for finishing.
    FineBlades,
    /// Diamond grit.
    Diamond,
    /// A smooth abrasive body: stone, rubber, felt.
    Abrasive,
    /// Blades on the sides only: the end is smooth.
    SafeEnd,
}

/// Shanks by ISO 1797.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum BurShank {
    /// Friction grip, 1.6 mm.
    FrictionGrip,
    /// Right angle with a latch, 2.35 mm.
    Latch,
    /// Straight handpiece, 2.35 mm.
    Handpiece,
}

impl BurShank {
    /// Diameter in millimetres (ISO 1797).
    #[must_use]
    pub const fn diameter(self) -> f32 {
        match self {
            Self::FrictionGrip => 1.6,
            Self::Latch | Self::Handpiece => 2.35,
        }
    }
}

/// A bur.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Bur {
    /// The shape of its head.
    pub head: Head,
    /// Largest diameter of the head in millimetres.
    pub diameter: f32,
    /// Length of the head in millimetres.
    pub head_length: f32,
    /// What cuts.
    pub cutting: Cutting,
    /// Its shank.
    pub shank: BurShank,
    /// Whole length in millimetres.
    pub length: f32,
    /// Length of the thin neck behind the head, in millimetres; 0 for the usual one.
    #[serde(default)]
    pub neck: f32,
    /// Coloured rings round the shank, which tell the grit or the size.
    #[serde(default)]
    pub rings: u8,
}

impl Bur {
    fn check(&self) -> Result<(), Fault> {
        length("diameter", self.diameter, 25.0)?;
        length("length", self.length, 70.0)?;
        length("head-length", self.head_length, self.length * 0.6)?;
        length_or_none("neck", self.neck, (self.length - self.head_length) * 0.8)?;
        if self.rings > 5 {
            return Err(Fault::new("rings", "are more than 5: a shank has no room"));
        }
        Ok(())
    }

    fn half_width(&self, f: f32, neck: f32) -> f32 {
        let r = self.diameter / 2.0;
        let rounded = |end: f32, body: f32| {
            let end = (end / self.head_length).min(0.9);
            let over = ((f - 1.0 + end) / end).clamp(0.0, 1.0);
            body * (1.0 - over * over).max(0.0).sqrt()
        };
        let rise = |to: f32, low: f32| low + (1.0 - low) * ((f / to).min(1.0) * FRAC_PI_2).sin();
        let half = match self.head {
            Head::Round => r * (1.0 - (2.0 * f - 1.0).powi(2)).max(0.0).sqrt(),
            Head::InvertedCone => r * (0.66 + 0.34 * f),
            Head::Pear => rounded(
                r * 0.95,
                r * rise(1.0 - (r / self.head_length).min(0.6), 0.5),
            ),
            Head::Cylinder | Head::EndCutting | Head::Wheel => r,
            Head::RoundedCylinder => rounded(r, r),
            Head::Cone => r * (1.0 - 0.3 * f),
            Head::RoundedCone => rounded(r * 0.7, r * (1.0 - 0.3 * f)),
            Head::Flame => {
                let fall = ((f - 0.35) / 0.65).max(0.0);
                r * rise(0.35, 0.6) * (1.0 - fall.powf(1.6))
            }
            Head::Football => r * (f * PI).sin().max(0.0).powf(0.75),
            Head::Needle => r * (1.0 - 0.92 * f),
            Head::Bud => {
                let fall = ((f - 0.4) / 0.6).max(0.0);
                (r * rise(0.4, 0.4) * (1.0 - fall.powf(1.4))).max(rounded(r * 0.4, r * 0.4))
            }
        };
        // The head never grows thinner than the neck where it sits on it.
        if f < 0.3 && self.head != Head::InvertedCone {
            half.max(neck.min(r))
        } else {
            half
        }
    }

    /// The shapes, the head to the right; only the head and neck when `close`.
    pub(crate) fn draw(&self, close: bool) -> Result<Vec<Shape>, Fault> {
        self.check()?;
        let shank = self.shank.diameter() / 2.0;
        let neck = (self.diameter * 0.25).clamp(0.17, shank * 0.6);
        let head_at = self.length - self.head_length;
        let mut spine = Spine::lay(pt(0.0, 0.0), 0.0, &[], 0.0)?;
        spine.run(head_at, 0.0);
        let (cone, waist) = if self.neck > 0.0 {
            let cone = head_at - self.neck;
            (cone, cone + self.neck * 0.3)
        } else {
            (head_at * 0.72, head_at * 0.86)
        };
        let mut widths = vec![
            [0.0, shank * 0.9],
            [0.3, shank],
            [cone, shank],
            [waist, neck * 1.25],
            [head_at, neck],
        ];
        if self.shank == BurShank::Latch {
            let groove = shank * 0.62;
            let cut = [[1.6, shank], [1.61, groove], [2.7, groove], [2.71, shank]];
            widths.splice(2..2, cut);
        }
        let from = if close {
            (head_at - self.head_length.max(self.diameter) * 0.9).max(cone)
        } else {
            0.0
        };
        let rod = Rod {
            spine: &spine,
            widths: &widths,
            smooth: false,
            round: [false, false],
            from,
        };
        let mut shapes = vec![Shape::closed(Part::Shank, Ink::Steel, rod.outline()?)];
        if self.shank == BurShank::Latch && !close {
            let y = shank * 0.3;
            let flat = vec![vec![pt(0.2, y), pt(5.5, y), pt(5.5, shank)]];
            shapes.push(Shape::lines(Part::Shank, Ink::Soft, flat));
        }
        if !close {
            let ring = |i: u8| {
                let x = cone - 1.4 - f32::from(i) * 1.7;
                let outline = block(pt(x, -shank), 0.6, 2.0 * shank, 0.0);
                Shape::closed(Part::Body, Ink::Accent, outline)
            };
            shapes.extend((0..self.rings).map(ring));
        }
        shapes.extend(self.draw_head(head_at, neck)?);
        Ok(shapes)
    }

    fn draw_head(&self, at: f32, neck: f32) -> Result<Vec<Shape>, Fault> {
        let l = self.head_length;
        let mut spine = Spine::lay(pt(at, 0.0), 0.0, &[], 0.0)?;
        spine.run(l, 0.0);
        let widths: Vec<[f32; 2]> = fractions(48)
            .map(|f| [f * l, self.half_width(f, neck)])
            .collect();
        let rod = Rod {
            spine: &spine,
            widths: &widths,
            smooth: false,
            round: [false, false],
            from: 0.0,
        };
        let slim = l / self.diameter;
        let wound = |count: u16, twist: f32| rod.windings(0.0, l, count, twist);
        let lines = match self.cutting {
            Cutting::Blades => wound(4, slim * 0.35 + 0.3),
            Cutting::SafeEnd => {
                let cut = l - self.diameter * 0.5;
                let mut lines = rod.windings(0.0, cut, 4, slim * 0.35 + 0.3);
                lines.push(rod.band(cut));
                lines
            }
            Cutting::FineBlades => wound(8, slim * 0.25 + 0.2),
            Cutting::CrossCut => {
                let mut lines = wound(3, slim * 0.35 + 0.3);
                let cuts = whole(slim * 3.0, 3);
                lines.extend(
                    fractions(cuts)
                        .skip(1)
                        .take(usize::from(cuts) - 1)
                        .map(|f| rod.band(f * l)),
                );
                lines
            }
            Cutting::Diamond => grit(l, self.diameter, |s| (at, rod.half_width(s))),
            Cutting::Abrasive => Vec::new(),
        };
        let lines = if self.head == Head::EndCutting {
            vec![rod.band(l * 0.93), rod.band(l * 0.86)]
        } else {
            lines
        };
        let ink = if self.cutting == Cutting::Abrasive {
            Ink::Accent
        } else {
            Ink::Steel
        };
        Ok(vec![
            Shape::closed(Part::Working, ink, rod.outline()?),
            Shape::lines(Part::Working, Ink::Soft, lines),
        ])
    }
}

/// Short strokes spread evenly, but in no rows, over the half of a head that is seen.
fn grit(l: f32, diameter: f32, place: impl Fn(f32) -> (f32, f32)) -> Vec<Vec<crate::point::Point>> {
    let count = whole(l / diameter * 34.0, 24).min(90);
    fractions(count)
        .enumerate()
        .map(|(i, f)| {
            let s = f * l * 0.97;
            let (at, half) = place(s);
            // The golden ratio spreads the turns without a pattern.
            let turn = (f32::from(u16::try_from(i).unwrap_or(0)) * 0.618_034).fract();
            let y = (turn * 1.8 - 0.9) * half;
            let d = diameter * 0.035;
            vec![pt(at + s, y), pt(at + s + d, y + d * 0.4)]
        })
        .collect()
}

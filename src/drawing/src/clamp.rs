//! Rubber dam clamps, seen from above.

use crate::fault::{Fault, length};
use crate::plate::{Ink, Part, Shape};
use crate::point::{Point, ellipse, pt, smoothed};
use crate::spine::{Rod, Spine};
use serde::{Deserialize, Serialize};
use std::f32::consts::{FRAC_PI_2, PI};

/// A rubber dam clamp.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Clamp {
    /// Distance between the points of the two jaws in millimetres.
    pub span: f32,
    /// Length of a jaw along the arch in millimetres.
    pub jaw: f32,
    /// Whether it has wings to carry the sheet.
    pub winged: bool,
    /// Whether the jaws are toothed.
    #[serde(default)]
    pub serrated: bool,
    /// Whether a second bow stands before the jaws, as on a clamp for front teeth.
    #[serde(default)]
    pub double_bow: bool,
}

impl Clamp {
    pub(crate) fn draw(&self) -> Result<Vec<Shape>, Fault> {
        length("span", self.span, 14.0)?;
        length("jaw", self.jaw, 14.0)?;
        let (inner, half) = (self.span / 2.0, self.jaw / 2.0);
        let outer = inner + 6.0;
        let mut shapes = vec![bow(inner + 4.0, half, 1.0)?];
        if self.double_bow {
            shapes.push(bow(inner + 4.0, half, -1.0)?);
        }
        for side in [-1.0, 1.0] {
            let place = move |p: Point| pt(p.x * side, p.y);
            let mut drawn = Vec::new();
            if self.winged {
                let wing = smoothed(
                    &[
                        pt(outer - 1.5, half * 0.7),
                        pt(outer + 2.6, half * 0.45),
                        pt(outer + 3.0, -half * 0.6),
                        pt(outer - 0.2, -half - 3.2),
                        pt(inner + 2.4, -half - 3.4),
                        pt(inner + 2.2, -half * 0.6),
                    ],
                    true,
                );
                drawn.push(Shape::closed(Part::Body, Ink::Steel, wing));
            }
            let mut bite = vec![pt(inner, half), pt(inner + 1.5, half * 0.4)];
            bite.extend([pt(inner + 1.5, -half * 0.4), pt(inner, -half)]);
            let mut bite = smoothed(&bite, false);
            if self.serrated {
                for (i, p) in bite.iter_mut().enumerate() {
                    p.x += if i % 4 < 2 { 0.0 } else { 0.7 };
                }
            }
            let back = [
                pt(inner + 1.2, -half - 0.7),
                pt(inner + 3.6, -half - 0.4),
                pt(outer, -half * 0.5),
                pt(outer, half * 0.5),
                pt(inner + 3.6, half + 0.4),
                pt(inner + 1.2, half + 0.7),
            ];
            let mut jaw = smoothed(&back, false);
            jaw.extend(&bite);
            drawn.push(Shape::closed(Part::Working, Ink::Steel, jaw));
            drawn.push(Shape::lines(Part::Working, Ink::Edge, vec![bite]));
            let hole = ellipse(pt(inner + 4.2, 0.0), 1.25, 1.25);
            drawn.push(Shape::closed(Part::Working, Ink::Clear, hole));
            shapes.extend(drawn.into_iter().map(|s| s.moved(place)));
        }
        Ok(shapes)
    }
}

/// The spring bow over the tooth behind (or before, when `side` is below 0).
fn bow(reach: f32, half: f32, side: f32) -> Result<Shape, Fault> {
    let mut spine = Spine::lay(pt(-reach, half * 0.4), FRAC_PI_2, &[], 0.0)?;
    spine.run(half * 0.6 + 1.0, 0.0);
    spine.run(PI * reach, -180.0);
    spine.run(half * 0.6 + 1.0, 0.0);
    let long = spine.end().s;
    let widths = [[0.0, 1.9], [long / 2.0, 1.35], [long, 1.9]];
    let rod = Rod {
        spine: &spine,
        widths: &widths,
        smooth: true,
        round: [false, false],
        from: 0.0,
    };
    let outline = rod.outline()?;
    let outline = outline.into_iter().map(|p| pt(p.x, p.y * side)).collect();
    Ok(Shape::closed(Part::Body, Ink::Steel, outline))
}

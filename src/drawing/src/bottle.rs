//! Bottles and jars, standing.

use crate::fault::{Fault, length};
use crate::figure::block;
use crate::plate::{Ink, Shape};
use crate::point::{Point, ellipse, pt};
use crate::vessel::{body, label, rule};
use serde::{Deserialize, Serialize};

/// What closes a bottle.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Closure {
    /// A screw cap.
    Cap,
    /// A dropper nozzle, its small cap on.
    Nozzle,
    /// A rubber bulb with a pipette.
    Pipette,
    /// A pump.
    Pump,
    /// A trigger sprayer.
    Spray,
}

/// A bottle or a jar, standing.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Bottle {
    /// Width of the body in millimetres.
    pub width: f32,
    /// Height of the body without its closure in millimetres.
    pub height: f32,
    /// Width of the neck in millimetres; as wide as the body for a jar.
    pub neck: f32,
    /// What closes it.
    pub closure: Closure,
    /// Whether it is of dark glass or plastic, against light.
    #[serde(default)]
    pub dark: bool,
    /// A short generic label; none when empty. A bar parts its lines.
    #[serde(default)]
    pub label: String,
}

impl Bottle {
    pub(crate) fn draw(&self) -> Result<Vec<Shape>, Fault> {
        length("width", self.width, 150.0)?;
        length("height", self.height, 260.0)?;
        length("neck", self.neck, self.width)?;
        let (w, h, n) = (self.width / 2.0, self.height, self.neck / 2.0);
        let jar = n > w * 0.9;
        let shoulder = if jar { 1.0 } else { (w - n) * 0.9 };
        let top = h - shoulder - if jar { 0.0 } else { h * 0.08 };
        let foot = w * 0.14;
        let mut outline = vec![
            pt(-w + foot, 0.0),
            pt(w - foot, 0.0),
            pt(w, foot),
            pt(w, top),
        ];
        outline.extend([
            pt(w * 0.93, top + shoulder * 0.45),
            pt(n, top + shoulder),
            pt(n, h),
        ]);
        let left: Vec<Point> = outline[3..].iter().rev().map(|p| pt(-p.x, p.y)).collect();
        outline.extend(left);
        outline.push(pt(-w, foot));
        let ink = if self.dark { Ink::Accent } else { Ink::Clear };
        let mut shapes = vec![body(ink, outline)];
        shapes.extend(self.draw_closure(n, h));
        let (low, high) = (top * 0.12, top * 0.88);
        if !self.label.is_empty() {
            let paper = block(pt(-w, low), 2.0 * w, high - low, 0.0);
            shapes.push(body(Ink::Clear, paper));
        }
        shapes.extend(label(
            &self.label,
            pt(0.0, f32::midpoint(low, high)),
            w * 1.75,
            (high - low) * 0.8,
        ));
        Ok(shapes)
    }

    fn draw_closure(&self, n: f32, h: f32) -> Vec<Shape> {
        let ribbed = |half: f32, low: f32, high: f32| {
            let ribs = [-0.7, -0.42, -0.14, 0.14, 0.42, 0.7]
                .map(|x| vec![pt(x * half, low + 0.5), pt(x * half, high - 0.5)]);
            vec![
                body(
                    Ink::Steel,
                    block(pt(-half, low), half * 2.0, high - low, half * 0.1),
                ),
                rule(ribs.to_vec()),
            ]
        };
        let c = n * 1.15;
        match self.closure {
            Closure::Cap => ribbed(c, h - n * 0.2, h + n.min(7.0) * 1.1 + 2.0),
            Closure::Nozzle => {
                let tip = vec![
                    pt(-n * 0.75, h + n * 0.4),
                    pt(-n * 0.3, h + n * 2.4),
                    pt(n * 0.3, h + n * 2.4),
                    pt(n * 0.75, h + n * 0.4),
                ];
                let mut shapes = vec![body(Ink::Clear, tip)];
                shapes.extend(ribbed(c, h - n * 0.2, h + n * 0.8));
                shapes.push(body(
                    Ink::Steel,
                    ellipse(pt(0.0, h + n * 3.9), n * 0.3, n * 0.48),
                ));
                shapes
            }
            Closure::Pipette => {
                let bulb = block(pt(-n * 0.6, h + n * 0.8), n * 1.2, n * 3.0, n * 0.6);
                let mut shapes = vec![body(Ink::Accent, bulb)];
                shapes.extend(ribbed(c, h - n * 0.2, h + n * 1.1));
                shapes
            }
            Closure::Pump => vec![
                body(Ink::Steel, block(pt(-n * 0.25, h), n * 0.5, n * 2.0, 0.0)),
                body(
                    Ink::Steel,
                    block(pt(-n * 0.8, h + n * 2.0), n * 2.6, n * 0.9, n * 0.3),
                ),
                body(Ink::Steel, block(pt(-c, h - n * 0.2), c * 2.0, n, n * 0.1)),
            ],
            Closure::Spray => vec![
                body(Ink::Steel, block(pt(-n * 0.5, h), n, n * 2.2, 0.0)),
                body(
                    Ink::Steel,
                    vec![
                        pt(-n * 1.5, h + n * 2.2),
                        pt(n * 2.6, h + n * 2.2),
                        pt(n * 2.6, h + n * 3.2),
                        pt(n * 1.6, h + n * 3.9),
                        pt(-n * 1.1, h + n * 3.9),
                    ],
                ),
                body(
                    Ink::Accent,
                    vec![
                        pt(n * 1.0, h + n * 2.2),
                        pt(n * 1.7, h + n * 2.2),
                        pt(n * 2.2, h + n * 0.5),
                        pt(n * 1.7, h + n * 0.4),
                    ],
                ),
                body(Ink::Steel, block(pt(-c, h - n * 0.2), c * 2.0, n, n * 0.1)),
            ],
        }
    }
}

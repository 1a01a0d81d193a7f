//! What materials come in: bottles, jars, tubes, syringes of paste, capsules.

use crate::fault::{Fault, length, length_or_none};
use crate::figure::block;
use crate::plate::{Ink, Mark, Part, Shape, words_width};
use crate::point::{Point, ellipse, pt};
use crate::spine::{Rod, Spine};
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

/// A syringe of paste or liquid, lying with its tip to the right.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct PasteSyringe {
    /// Outside diameter of the barrel in millimetres.
    pub diameter: f32,
    /// Length of the barrel in millimetres.
    pub length: f32,
    /// How much of the barrel is full, 0 to 1.
    pub full: f32,
    /// Length of the cannula in millimetres; 0 for a capped syringe.
    pub cannula: f32,
    /// Diameter of the cannula in millimetres.
    pub bore: f32,
    /// Bend of the cannula in degrees.
    #[serde(default)]
    pub bend: f32,
    /// Whether it keeps out light.
    #[serde(default)]
    pub dark: bool,
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

fn body(ink: Ink, outline: Vec<Point>) -> Shape {
    Shape::closed(Part::Body, ink, outline)
}

fn rule(lines: Vec<Vec<Point>>) -> Shape {
    Shape::lines(Part::Body, Ink::Soft, lines)
}

/// A label that fits a box: its lines as large as the box allows.
fn label(text: &str, middle: Point, width: f32, height: f32) -> Vec<Shape> {
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

impl PasteSyringe {
    pub(crate) fn draw(&self) -> Result<Vec<Shape>, Fault> {
        length("diameter", self.diameter, 40.0)?;
        length("length", self.length, 140.0)?;
        length_or_none("cannula", self.cannula, 60.0)?;
        length("bore", self.bore, self.diameter)?;
        if !(0.0..=1.0).contains(&self.full) {
            return Err(Fault::new("full", "is not between 0 and 1"));
        }
        let (r, l) = (self.diameter / 2.0, self.length);
        let out = l * (1.0 - self.full * 0.9) * 0.55 + r;
        let barrel = block(pt(0.0, -r), l, self.diameter, r * 0.12);
        // The plunger has gone in as far as the paste is used up.
        let head = l * (1.0 - self.full) * 0.9 + 1.0;
        let stem = |y: f32| vec![pt(head, y), pt(0.0, y)];
        let rod = block(
            pt(-l * self.full * 0.8 - out * 0.2, -r * 0.4),
            l * self.full * 0.8 + out * 0.2,
            r * 0.8,
            0.0,
        );
        let thumb = -l * self.full * 0.8 - out * 0.2 - 2.0;
        let mut shapes = vec![
            body(Ink::Clear, rod),
            body(Ink::Steel, block(pt(thumb, -r * 0.95), 2.2, r * 1.9, 0.8)),
            body(if self.dark { Ink::Steel } else { Ink::Clear }, barrel),
        ];
        if !self.dark {
            shapes.push(body(
                Ink::Accent,
                block(pt(head + 2.0, -r * 0.86), l - head - 2.6, r * 1.72, 0.0),
            ));
            shapes.push(body(
                Ink::Solid,
                block(pt(head, -r * 0.86), 2.0, r * 1.72, 0.5),
            ));
            shapes.push(rule(vec![stem(r * 0.4), stem(-r * 0.4)]));
        }
        shapes.push(body(
            Ink::Steel,
            block(pt(-1.2, -r * 1.75), 2.4, r * 3.5, 1.0),
        ));
        shapes.extend(self.draw_front(r, l)?);
        if !self.label.is_empty() {
            let (from, to) = (l * 0.3, l * 0.92);
            shapes.push(body(
                Ink::Clear,
                block(pt(from, -r * 0.7), to - from, r * 1.4, r * 0.1),
            ));
            shapes.extend(label(
                &self.label,
                pt(f32::midpoint(from, to), 0.0),
                (to - from) * 0.92,
                r * 1.3,
            ));
        }
        Ok(shapes)
    }

    fn draw_front(&self, r: f32, l: f32) -> Result<Vec<Shape>, Fault> {
        let cone = vec![
            pt(l, -r * 0.5),
            pt(l + r * 0.9, -r * 0.34),
            pt(l + r * 0.9, r * 0.34),
            pt(l, r * 0.5),
        ];
        let mut shapes = vec![body(Ink::Clear, cone)];
        if self.cannula <= 0.0 {
            let cap = block(pt(l + r * 0.3, -r * 0.55), r * 2.0, r * 1.1, r * 0.4);
            shapes.push(body(Ink::Accent, cap));
            return Ok(shapes);
        }
        let hub = l + r * 0.4;
        let bore = self.bore / 2.0;
        let mut spine = Spine::lay(pt(hub, 0.0), 0.0, &[], 0.0)?;
        spine.run(r * 1.6 + self.cannula * 0.35, 0.0);
        spine.bend(-self.bend, (bore * 2.0).max(0.8));
        spine.run(self.cannula * 0.65, 0.0);
        let widths = [
            [0.0, r * 0.55],
            [r * 1.1, r * 0.42],
            [r * 1.6, bore],
            [spine.end().s, bore],
        ];
        let rod = Rod {
            spine: &spine,
            widths: &widths,
            smooth: false,
            round: [false, false],
            from: 0.0,
        };
        shapes.push(body(Ink::Steel, rod.outline()?));
        shapes.push(rule(vec![rod.band(r * 1.1), rod.band(r * 1.6)]));
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

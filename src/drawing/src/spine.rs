//! A bent centreline, and the body that a varying thickness makes of it.
//!
//! Nearly everything on a tray is such a body: a shank, a handpiece, a bur, a bottle.

use crate::fault::{Fault, angle, length, length_or_none};
use crate::plate::TRAY_MM;
use crate::point::{Point, along, arc, fractions, pt, whole};
use serde::{Deserialize, Serialize};
use std::f32::consts::{FRAC_PI_2, PI};

/// A piece of a centreline: a bend where it begins, then a straight or evenly curved run.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Segment {
    /// Length in millimetres.
    pub length: f32,
    /// Bend at its beginning in degrees; above 0 turns up.
    #[serde(default)]
    pub bend: f32,
    /// Curve spread over its length in degrees; above 0 turns up.
    #[serde(default)]
    pub curve: f32,
}

/// A point of a centreline: how far along it lies, and which way the line runs there.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Node {
    pub s: f32,
    pub at: Point,
    pub heading: f32,
}

/// A bent centreline.
#[derive(Clone, Debug)]
pub(crate) struct Spine(pub Vec<Node>);

impl Spine {
    /// Lays the pieces end to end from `at`, heading `heading` radians.
    ///
    /// Bends are rounded to the inside radius that a bar of this thickness allows.
    ///
    /// # Errors
    /// When a length or an angle is impossible.
    pub fn lay(
        at: Point,
        heading: f32,
        pieces: &[Segment],
        half_width: f32,
    ) -> Result<Self, Fault> {
        let mut spine = Self(vec![Node {
            s: 0.0,
            at,
            heading,
        }]);
        for (i, piece) in pieces.iter().enumerate() {
            let place = |fault: Fault| fault.inside(&["segment ", &(i + 1).to_string()].concat());
            length("length", piece.length, TRAY_MM).map_err(place)?;
            angle("bend", piece.bend, 150.0).map_err(place)?;
            angle("curve", piece.curve, 350.0).map_err(place)?;
            spine.bend(piece.bend, half_width);
            spine.run(piece.length, piece.curve);
        }
        Ok(spine)
    }

    /// Adds a rounded bend.
    pub fn bend(&mut self, degrees: f32, half_width: f32) {
        let radius = half_width * 1.25 + 0.2;
        if degrees.abs() > 0.01 {
            self.run(radius * degrees.abs().to_radians(), degrees);
        }
    }

    /// Adds a run that turns evenly by `degrees`.
    pub fn run(&mut self, length: f32, degrees: f32) {
        let (from, turn) = (self.end(), degrees.to_radians());
        let steps = if turn.abs() < 1e-4 {
            1
        } else {
            whole(turn.abs() / 0.1, 2)
        };
        let mut at = from.at;
        let mut done = 0.0;
        for f in fractions(steps).skip(1) {
            // The chord of an arc runs half way between the headings at its two ends.
            let middle = from.heading + turn * f32::midpoint(f, done);
            let half = turn * (f - done) / 2.0;
            let shrink = if half.abs() < 1e-4 {
                1.0
            } else {
                half.sin() / half
            };
            at = at + pt((f - done) * length * shrink, 0.0).turned(middle);
            done = f;
            self.0.push(Node {
                s: from.s + length * f,
                at,
                heading: from.heading + turn * f,
            });
        }
    }

    /// Where the line ends.
    pub fn end(&self) -> Node {
        self.0.last().copied().unwrap_or(Node {
            s: 0.0,
            at: pt(0.0, 0.0),
            heading: 0.0,
        })
    }

    /// The node `s` millimetres along.
    pub fn at(&self, s: f32) -> Node {
        let after = self
            .0
            .iter()
            .position(|n| n.s > s)
            .unwrap_or(self.0.len() - 1)
            .max(1);
        let (Some(a), Some(b)) = (self.0.get(after - 1), self.0.get(after)) else {
            return self.end();
        };
        let t = ((s - a.s) / (b.s - a.s).max(1e-6)).clamp(0.0, 1.0);
        Node {
            s,
            at: a.at + (b.at - a.at) * t,
            heading: a.heading + (b.heading - a.heading) * t,
        }
    }

    /// All places from `from` to the end where the line or the table `rows` changes.
    pub fn stations(&self, rows: &[[f32; 2]], from: f32, smooth: bool) -> Vec<f32> {
        let end = self.end().s;
        let mut places: Vec<f32> = self
            .0
            .iter()
            .map(|node| node.s)
            .chain(rows.iter().map(|row| row[0]))
            .chain([from, end])
            .collect();
        if smooth {
            for pair in rows.windows(2) {
                let [low, high] = [pair[0][0], pair[1][0]];
                places.extend(fractions(8).map(|f| low + (high - low) * f));
            }
        }
        places.retain(|s| (from..=end).contains(s));
        places.sort_by(f32::total_cmp);
        places.dedup_by(|a, b| (*a - *b).abs() < 1e-3);
        places
    }
}

/// A body about a centreline: a table of half-widths, and how its ends look.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Rod<'a> {
    pub spine: &'a Spine,
    /// Rows of `[millimetres along, half-width]`.
    pub widths: &'a [[f32; 2]],
    pub smooth: bool,
    /// Whether the beginning and the end are rounded.
    pub round: [bool; 2],
    /// Where drawing begins, in millimetres along.
    pub from: f32,
}

impl Rod<'_> {
    pub fn half_width(&self, s: f32) -> f32 {
        along(self.widths, s, self.smooth).max(0.0)
    }

    /// The outline.
    ///
    /// # Errors
    /// When a bend is tighter than the body is thick, so that its inside would fold.
    pub fn outline(&self) -> Result<Vec<Point>, Fault> {
        for pair in self.spine.0.windows(2) {
            let (a, b) = (pair[0], pair[1]);
            let thick = self.half_width(a.s).max(self.half_width(b.s));
            if (b.heading - a.heading).abs() * thick > (b.s - a.s) * 1.0001 {
                return Err(Fault::new(
                    "the curve",
                    "is tighter than the body is thick there: lengthen the curve or thin the body",
                ));
            }
        }
        let places = self.spine.stations(self.widths, self.from, self.smooth);
        let side = |s: &f32, sign: f32| {
            let node = self.spine.at(*s);
            node.at + pt(0.0, sign * self.half_width(*s)).turned(node.heading)
        };
        let cap = |s: f32, heading: f32| {
            let r = self.half_width(s);
            let mut points = arc(pt(0.0, 0.0), r, r, FRAC_PI_2, -FRAC_PI_2);
            for p in &mut points {
                *p = self.spine.at(s).at + p.turned(heading);
            }
            points
        };
        let mut points: Vec<Point> = places.iter().map(|s| side(s, 1.0)).collect();
        let end = self.spine.end();
        if self.round[1] {
            points.extend(cap(end.s, end.heading));
        }
        points.extend(places.iter().rev().map(|s| side(s, -1.0)));
        if self.round[0] {
            points.extend(cap(self.from, self.spine.at(self.from).heading + PI));
        }
        points.dedup_by(|a, b| (*a - *b).length() < 1e-4);
        Ok(points)
    }

    /// A line across the body, `s` millimetres along.
    pub fn band(&self, s: f32) -> Vec<Point> {
        let node = self.spine.at(s);
        let half = pt(0.0, self.half_width(s)).turned(node.heading);
        vec![node.at - half, node.at + half]
    }

    /// Lines that wind about the body from `from` to `to`, as flutes or knurling do: `count` of them
    /// in the half that is seen, turning by `twist` radians over the whole.
    pub fn windings(&self, from: f32, to: f32, count: u16, twist: f32) -> Vec<Vec<Point>> {
        let mut lines = Vec::new();
        let turns = whole(twist.abs() / PI * f32::from(count), 0);
        let first = -i32::from(turns);
        for k in first..i32::from(count + turns) {
            let k = f32::from(i16::try_from(k).unwrap_or(0));
            let start = PI * (k + 0.5) / f32::from(count);
            let line: Vec<Point> = fractions(24)
                .map(|f| (from + (to - from) * f, start + twist * f))
                .filter(|(_, turn)| (0.0..=PI).contains(turn))
                .map(|(s, turn)| {
                    let node = self.spine.at(s);
                    node.at + pt(0.0, turn.cos() * self.half_width(s)).turned(node.heading)
                })
                .collect();
            if line.len() > 1 {
                lines.push(line);
            }
        }
        lines
    }
}

/// Refuses a table of half-widths that is empty, falls back or has a negative width.
pub(crate) fn check_widths(field: &str, rows: &[[f32; 2]]) -> Result<(), Fault> {
    if rows.is_empty() {
        return Err(Fault::new(
            field,
            "is empty; give at least one [place, half-width]",
        ));
    }
    for row in rows {
        length_or_none(field, row[0], TRAY_MM)?;
        length_or_none(field, row[1], TRAY_MM / 2.0)?;
    }
    if rows.windows(2).any(|pair| pair[1][0] <= pair[0][0]) {
        return Err(Fault::new(
            field,
            "must go forward: each place lies beyond the one before it",
        ));
    }
    Ok(())
}

//! Two-armed instruments: tweezers, forceps, scissors, holders, punches.
//!
//! The arms follow one bent centreline and stand off it on either side; where the distance changes
//! its sign they cross, at the pivot.

use crate::fault::{Fault, length, length_or_none};
use crate::figure::{Piece, draw_all};
use crate::plate::{Ink, Part, Shape, bounds, in_a_row};
use crate::point::{Point, along, ellipse, fractions, pt, whole};
use crate::spine::{Segment, Spine};
use serde::{Deserialize, Serialize};
use std::f32::consts::{FRAC_PI_2, PI};

/// One arm, from the handle to the end of the beak.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Arm {
    /// Rows of `[millimetres along, distance from the centreline, half-width]`.
    pub course: Vec<[f32; 3]>,
    /// Inside diameter of the finger ring at its beginning; 0 for none.
    #[serde(default)]
    pub ring: f32,
    /// Where the beak is cut crosswise, as `[from, to]` along; nothing when both are 0.
    #[serde(default)]
    pub teeth: [f32; 2],
}

/// The pin or box about which the arms turn.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Pivot {
    /// Its place along the centreline in millimetres.
    pub at: f32,
    /// Its diameter in millimetres.
    pub diameter: f32,
}

/// A two-armed instrument.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Hinged {
    /// The centreline from the handles to the beaks, as seen from the side.
    pub spine: Vec<Segment>,
    /// The first arm lies on top.
    pub first: Arm,
    /// The second arm; the mirror image of the first when absent.
    #[serde(default)]
    pub second: Option<Arm>,
    /// Where they turn; tweezers have none.
    #[serde(default)]
    pub pivot: Option<Pivot>,
    /// Length of what is enlarged as the working end, from the ends of the beaks.
    pub beak: f32,
    /// What else belongs to it, drawn over the arms; the origin is where the centreline begins.
    #[serde(default)]
    pub pieces: Vec<Piece>,
    /// The inner faces of its beaks, drawn beside them when they are enlarged; none when empty.
    #[serde(default)]
    pub faces: Vec<Piece>,
}

impl Arm {
    fn check(&self, end: f32) -> Result<(), Fault> {
        length_or_none("ring", self.ring, 40.0)?;
        if self.course.len() < 2 {
            return Err(Fault::new("course", "needs at least two rows"));
        }
        for [at, off, half] in &self.course {
            length_or_none("course, place", *at, end + 0.5)?;
            length_or_none("course, half-width", *half, 30.0)?;
            length_or_none("course, distance", off.abs(), 60.0)?;
        }
        if self.course.windows(2).any(|pair| pair[1][0] <= pair[0][0]) {
            return Err(Fault::new("course", "must go forward from row to row"));
        }
        Ok(())
    }

    fn mirrored(&self) -> Self {
        let course = self.course.iter().map(|[s, off, w]| [*s, -off, *w]);
        Self {
            course: course.collect(),
            ..self.clone()
        }
    }

    fn draw(&self, spine: &Spine, from: f32) -> Vec<Shape> {
        let track = self.track(spine, from);
        let whole = from == 0.0;
        let arm = Shape::closed(Part::Working, Ink::Steel, track.outline(whole));
        let mut shapes = Vec::new();
        if self.ring > 0.0 && whole {
            let (r, rim) = (self.ring / 2.0, track.half[0].max(0.8));
            let way = track.way(0);
            let centre = track.middle[0] - way * (r / way.length().max(1e-6));
            let disc = |r: f32, ink| Shape::closed(Part::Handle, ink, ellipse(centre, r, r));
            shapes.extend([disc(r + 2.0 * rim, Ink::Steel), arm, disc(r, Ink::Clear)]);
        } else {
            shapes.push(arm);
        }
        let [first, to] = self.teeth;
        if to > first {
            let cuts = track.cuts(first, to);
            shapes.push(Shape::lines(Part::Working, Ink::Soft, cuts));
        }
        shapes
    }

    fn track(&self, spine: &Spine, from: f32) -> Track {
        let column = |i: usize| -> Vec<[f32; 2]> {
            self.course.iter().map(|row| [row[0], row[i]]).collect()
        };
        let (off, half) = (column(1), column(2));
        let start = self.course.first().map_or(0.0, |row| row[0]).max(from);
        let end = self.course.last().map_or(0.0, |row| row[0]);
        let mut places = spine.stations(&off, start, true);
        // Places too close together would give their crosswise lines no sure direction.
        places.retain(|s| *s < end - 0.4);
        places.dedup_by(|next, s| *next - *s < 0.4);
        places.push(end);
        let stand = |s: &f32| {
            let node = spine.at(*s);
            node.at + pt(0.0, along(&off, *s, true)).turned(node.heading)
        };
        Track {
            middle: places.iter().map(stand).collect(),
            half: places
                .iter()
                .map(|s| along(&half, *s, true).max(0.05))
                .collect(),
            places,
        }
    }
}

/// The middle line of an arm, point by point, with the half-width at each.
struct Track {
    places: Vec<f32>,
    middle: Vec<Point>,
    half: Vec<f32>,
}

impl Track {
    fn last(&self) -> usize {
        self.middle.len() - 1
    }

    fn way(&self, i: usize) -> Point {
        self.middle[(i + 1).min(self.last())] - self.middle[i.saturating_sub(1)]
    }

    fn edge(&self, i: usize, sign: f32) -> Point {
        self.middle[i] + self.way(i).left() * (sign * self.half[i])
    }

    fn cap(&self, i: usize, heading: f32) -> impl Iterator<Item = Point> {
        let (centre, r) = (self.middle[i], self.half[i]);
        (1..8u8).map(move |k| {
            let turn = heading + FRAC_PI_2 - PI * f32::from(k) / 8.0;
            centre + pt(r, 0.0).turned(turn)
        })
    }

    /// The outline, rounded at the end and, for the whole arm, at the beginning.
    fn outline(&self, whole: bool) -> Vec<Point> {
        let last = self.last();
        let mut outline: Vec<Point> = (0..=last).map(|i| self.edge(i, 1.0)).collect();
        outline.extend(self.cap(last, self.way(last).heading()));
        outline.extend((0..=last).rev().map(|i| self.edge(i, -1.0)));
        if whole {
            outline.extend(self.cap(0, self.way(0).heading() + PI));
        }
        outline
    }

    /// Lines across the arm from one place to another, closer where it is thin.
    fn cuts(&self, first: f32, to: f32) -> Vec<Vec<Point>> {
        let mut cuts = Vec::new();
        for i in 0..self.last() {
            if self.places[i] < first || self.places[i] >= to {
                continue;
            }
            let gap = self.places[i + 1] - self.places[i];
            let count = whole(gap / (self.half[i] * 0.8).max(0.9), 1);
            let [left, right] =
                [1.0, -1.0].map(|sign| (self.edge(i, sign), self.edge(i + 1, sign)));
            let at = |(a, b): (Point, Point), f: f32| a + (b - a) * f;
            let steps = fractions(count).take(usize::from(count));
            cuts.extend(steps.map(|f| vec![at(left, f), at(right, f)]));
        }
        cuts
    }
}

impl Hinged {
    fn lay(&self) -> Result<Spine, Fault> {
        // A bend must leave room for the arm that runs on its inside.
        let bent = self.spine.first().map_or(0.0, |piece| piece.length) * 0.9;
        let beyond = self.first.course.iter().filter(|row| row[0] > bent);
        let thick = beyond.map(|row| row[1].abs() + row[2]).fold(1.0, f32::max);
        let spine = Spine::lay(pt(0.0, 0.0), 0.0, &self.spine, thick)
            .map_err(|fault| fault.inside("spine"))?;
        let end = spine.end().s;
        self.first.check(end).map_err(|f| f.inside("first arm"))?;
        if let Some(second) = &self.second {
            second.check(end).map_err(|f| f.inside("second arm"))?;
        }
        length("beak", self.beak, end)?;
        if let Some(pivot) = &self.pivot {
            length("pivot, at", pivot.at, end)?;
            length("pivot, diameter", pivot.diameter, 30.0)?;
        }
        Ok(spine)
    }

    /// The beaks from the side, and on their inner faces where those tell more.
    pub(crate) fn draw_close(&self) -> Result<Vec<Shape>, Fault> {
        let faces = draw_all(&self.faces).map_err(|f| f.inside("faces"))?;
        Ok(in_a_row(vec![self.draw(true)?, faces], 4.0, false))
    }

    /// The shapes from `from` millimetres before the ends of the beaks, or of the whole.
    pub(crate) fn draw(&self, close: bool) -> Result<Vec<Shape>, Fault> {
        let spine = self.lay()?;
        let from = if close {
            spine.end().s - self.beak
        } else {
            0.0
        };
        let second = self.second.clone().unwrap_or_else(|| self.first.mirrored());
        let mut shapes = second.draw(&spine, from);
        shapes.extend(self.first.draw(&spine, from));
        if let Some(pivot) = self.pivot.filter(|pivot| pivot.at > from) {
            let middle = spine.at(pivot.at);
            let r = pivot.diameter / 2.0;
            let slot = pt(r * 0.5, r * 0.5).turned(middle.heading);
            let line = vec![middle.at - slot, middle.at + slot];
            shapes.extend([
                Shape::closed(Part::Body, Ink::Steel, ellipse(middle.at, r, r)),
                Shape::lines(Part::Body, Ink::Soft, vec![line]),
            ]);
        }
        let near = spine.at(from).at.x;
        for piece in &self.pieces {
            let drawn = draw_all(std::slice::from_ref(piece))?;
            let in_view = bounds(&drawn).is_some_and(|(low, _)| low.x > near);
            if !close || in_view {
                shapes.extend(drawn);
            }
        }
        Ok(shapes)
    }
}

//! Hand instruments: a handle, and at one or both of its ends a shank and a working end.

use crate::blade::{self, Measured};
use crate::fault::{Fault, length};
use crate::plate::{Ink, Part, Shape, in_a_row};
use crate::point::{Point, pt};
use crate::spine::{Rod, Segment, Spine};
use crate::tip::Tip;
use crate::tip_face::{broad, section};
use crate::tip_side::narrow;
use crate::vessel::label;
use serde::{Deserialize, Serialize};

/// How a handle is made to be held.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Grip {
    /// Plain.
    #[default]
    Smooth,
    /// Crosswise knurling over the grip.
    Knurled,
    /// Rings round the grip.
    Ringed,
    /// Flat facets along the handle.
    Octagonal,
    /// A pear that fills the palm, as an elevator's does.
    Pear,
}

/// A handle.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Handle {
    /// Length in millimetres.
    pub length: f32,
    /// Diameter in millimetres.
    pub diameter: f32,
    /// How it is made to be held.
    #[serde(default)]
    pub grip: Grip,
    /// The number or letter cut into it; none when empty.
    #[serde(default)]
    pub mark: String,
}

/// A shank with its working end.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct End {
    /// The pieces of the shank, from the handle on.
    pub shank: Vec<Segment>,
    /// Diameter in millimetres where the shank leaves the handle.
    pub root: f32,
    /// Diameter in millimetres where the working end begins.
    pub neck: f32,
    /// The working end.
    pub tip: Tip,
    /// Whether the working end is turned a quarter about its axis.
    #[serde(default)]
    pub turned: bool,
}

/// A hand instrument with one or two ends.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Hand {
    /// The handle.
    pub handle: Handle,
    /// The ends: the first is drawn on the left.
    pub ends: Vec<End>,
}

impl Hand {
    fn check(&self) -> Result<(), Fault> {
        let handle = &self.handle;
        let place = |fault: Fault| fault.inside("handle");
        length("length", handle.length, 220.0).map_err(place)?;
        length("diameter", handle.diameter, 30.0).map_err(place)?;
        if handle.length < handle.diameter * 2.0 {
            return Err(Fault::new(
                "handle, length",
                "is less than twice the diameter: no hand could hold it",
            ));
        }
        if !(1..=2).contains(&self.ends.len()) {
            return Err(Fault::new("ends", "must be one or two"));
        }
        Ok(())
    }

    fn check_end(&self, end: &End) -> Result<(), Fault> {
        length("root", end.root, self.handle.diameter)?;
        length("neck", end.neck, end.root)?;
        end.tip
            .check(self.handle.diameter)
            .map_err(|fault| fault.inside("tip"))
    }

    /// The shapes of the whole instrument from the side, y up.
    pub(crate) fn draw(&self) -> Result<Vec<Shape>, Fault> {
        self.check()?;
        let half = self.handle.length / 2.0;
        let mut shapes = Vec::new();
        for (i, end) in self.ends.iter().enumerate() {
            let place = |fault: Fault| fault.inside(number(i));
            self.check_end(end).map_err(place)?;
            let sign = if i == 0 { -1.0 } else { 1.0 };
            let placed = |p: Point| pt(sign * (half + p.x), p.y);
            let end = if i == 0 { end.mirrored() } else { end.clone() };
            shapes.extend(
                end.side(None)
                    .map_err(place)?
                    .into_iter()
                    .map(|shape| shape.moved(placed)),
            );
        }
        shapes.extend(self.draw_handle()?);
        shapes.extend(label(
            &self.handle.mark,
            pt(0.0, 0.0),
            self.handle.length * 0.3,
            self.handle.diameter * 0.8,
        ));
        Ok(shapes)
    }

    fn draw_handle(&self) -> Result<Vec<Shape>, Fault> {
        let Handle {
            length: l,
            diameter,
            grip,
            ..
        } = self.handle;
        let r = diameter / 2.0;
        let pear = grip == Grip::Pear;
        let cone = (r * 1.8).min(l * 0.2);
        let root = |i: usize| self.ends.get(i).map(|end| end.root / 2.0);
        let single = root(1).is_none();
        let first = [0.0, root(0).unwrap_or(r)];
        let last = [l, root(1).unwrap_or(r * 0.9)];
        let widths = if pear {
            let neck = r * 0.45;
            vec![
                first,
                [l * 0.06, neck],
                [l * 0.2, neck * 1.1],
                [l * 0.68, r],
                [l * 0.84, r * 0.95],
                [l * 0.95, r * 0.66],
                [l, r * 0.24],
            ]
        } else {
            vec![first, [cone, r], [l - cone, r], last]
        };
        let mut spine = Spine::lay(pt(-l / 2.0, 0.0), 0.0, &[], 0.0)?;
        spine.run(l, 0.0);
        let rod = Rod {
            spine: &spine,
            widths: &widths,
            smooth: pear,
            round: [false, single],
            from: 0.0,
        };
        let outline = Shape::closed(Part::Handle, Ink::Steel, rod.outline()?);
        // Grips are cut where the fingers hold, near each working end.
        let long = (l * 0.3).min(32.0);
        let places = if single {
            vec![cone * 1.4]
        } else {
            vec![cone * 1.4, l - cone * 1.4 - long]
        };
        let mut lines = if pear {
            vec![rod.band(l * 0.06)]
        } else {
            vec![rod.band(cone), rod.band(l - cone)]
        };
        for from in places {
            let to = from + long;
            match grip {
                Grip::Knurled => {
                    lines.extend([rod.band(from), rod.band(to)]);
                    let turn = long / r;
                    lines.extend(rod.windings(from, to, 4, turn));
                    lines.extend(rod.windings(from, to, 4, -turn));
                }
                Grip::Ringed => {
                    let mut at = from;
                    while at <= to {
                        lines.push(rod.band(at));
                        at += 2.2;
                    }
                }
                Grip::Smooth | Grip::Octagonal | Grip::Pear => {}
            }
        }
        if grip == Grip::Octagonal {
            let facet = |y: f32| vec![pt(cone - l / 2.0, y * r), pt(l / 2.0 - cone, y * r)];
            lines.extend([facet(0.42), facet(-0.42)]);
        }
        Ok(vec![outline, Shape::lines(Part::Handle, Ink::Soft, lines)])
    }

    /// The working ends, large: each from the side and on its face.
    pub(crate) fn draw_ends(&self) -> Result<Vec<Vec<Shape>>, Fault> {
        self.check()?;
        let mut rows = Vec::new();
        for (i, end) in self.ends.iter().enumerate() {
            let place = |fault: Fault| fault.inside(number(i));
            self.check_end(end).map_err(place)?;
            let shown = i == 1 && *end == self.ends[0];
            // A blade as long as a finger is plain enough in the whole drawing.
            if shown || end.tip.reach() > 30.0 {
                continue;
            }
            let side = end.side(Some(end.tip.reach() * 1.6 + 2.0)).map_err(place)?;
            let mut views = vec![side];
            if end.has_second_view() {
                views.push(end.second_view().map_err(place)?);
            }
            rows.push(in_a_row(
                views,
                (end.tip.reach() * 0.7 + 1.0).min(6.0),
                false,
            ));
        }
        Ok(rows)
    }

    /// The blade of end `i` as drawn.
    pub(crate) fn measured_blade(&self, i: usize) -> Option<Measured> {
        let end = self.ends.get(i)?;
        let Tip::Blade(_) = end.tip else { return None };
        // Without a handle among the shapes the axis is level, as it is in an end's own frame.
        let side = blade::measure(&end.side(None).ok()?)?;
        if end.side_is_broad() {
            return Some(side);
        }
        let flat = blade::measure(&end.second_view().ok()?)?;
        Some(Measured {
            angle_degrees: side.angle_degrees,
            ..flat
        })
    }
}

fn number(i: usize) -> &'static str {
    if i == 0 { "end 1" } else { "end 2" }
}

impl End {
    /// The end whose mirror image is this one: it differs only where a tip is left- or right-handed.
    fn mirrored(&self) -> Self {
        let mut end = self.clone();
        if let Tip::Pennant { right, .. } = &mut end.tip {
            *right = !*right;
        }
        end
    }

    fn side_is_broad(&self) -> bool {
        self.tip.lies_flat() != self.turned
    }

    fn has_second_view(&self) -> bool {
        !matches!(
            self.tip,
            Tip::Point | Tip::Probe { .. } | Tip::Ball { .. } | Tip::Egg { .. }
        )
    }

    /// The shank and working end from the side, from the handle at the origin to the right; only the
    /// last `keep` millimetres of the shank when that is given.
    fn side(&self, keep: Option<f32>) -> Result<Vec<Shape>, Fault> {
        let thick = self.root / 2.0;
        let mut spine = Spine::lay(pt(0.0, 0.0), 0.0, &self.shank, thick)
            .map_err(|fault| fault.inside("shank"))?;
        if let Tip::Blade(blade) = &self.tip {
            spine.bend((blade.angle() - spine.end().heading).to_degrees(), thick);
        }
        let end = spine.end();
        let widths = [[0.0, thick], [end.s.max(0.01), self.neck / 2.0]];
        let rod = Rod {
            spine: &spine,
            widths: &widths,
            smooth: false,
            round: [false, self.tip == Tip::Point],
            from: keep.map_or(0.0, |keep| (end.s - keep).max(0.0)),
        };
        let mut shapes = Vec::new();
        if end.s > 0.0 {
            let outline = rod.outline().map_err(|fault| fault.inside("shank"))?;
            shapes.push(Shape::closed(Part::Shank, Ink::Steel, outline));
        }
        let tip = if self.side_is_broad() {
            broad(&self.tip, self.neck / 2.0)
        } else {
            narrow(&self.tip, self.neck / 2.0)
        };
        shapes.extend(
            tip.map_err(|fault| fault.inside("tip"))?
                .into_iter()
                .map(|shape| shape.moved(|p| end.at + p.turned(end.heading))),
        );
        Ok(shapes)
    }

    /// The working end alone, seen the other way.
    fn second_view(&self) -> Result<Vec<Shape>, Fault> {
        if let Tip::Hook {
            width, toe, face, ..
        } = self.tip
        {
            return Ok(section(width / 2.0, toe, face));
        }
        let neck = self.neck / 2.0;
        let stub = self.tip.reach() * 0.5 + 0.8;
        let grown = (neck * 1.3).min(self.root / 2.0);
        let mut shapes = Vec::new();
        let end_on = matches!(self.tip, Tip::Condenser { .. });
        if !end_on {
            let outline = vec![
                pt(-stub, grown),
                pt(0.0, neck),
                pt(0.0, -neck),
                pt(-stub, -grown),
            ];
            shapes.push(Shape::closed(Part::Shank, Ink::Steel, outline));
        }
        let view = if self.side_is_broad() {
            narrow(&self.tip, neck)
        } else {
            broad(&self.tip, neck)
        };
        shapes.extend(view.map_err(|fault| fault.inside("tip"))?);
        Ok(shapes)
    }
}

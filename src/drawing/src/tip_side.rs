//! Working ends seen from the side, the thin way of flat ones.
//!
//! Each is drawn from the neck at the origin along the x axis.

use crate::fault::Fault;
use crate::plate::{Ink, Part, Shape};
use crate::point::{Point, arc, fractions, pt, smoothed, whole};
use crate::spine::{Rod, Spine};
use crate::tip::{Tip, Toe};
use crate::tip_face::broad;
use std::f32::consts::PI;

const ORIGIN: Point = pt(0.0, 0.0);

pub(crate) fn body(outline: Vec<Point>) -> Shape {
    Shape::closed(Part::Working, Ink::Steel, outline)
}

pub(crate) fn line(ink: Ink, points: Vec<Point>) -> Shape {
    Shape::lines(Part::Working, ink, vec![points])
}

/// A body of revolution along the x axis from rows of `[place, half-width]`.
pub(crate) fn lathe(rows: &[[f32; 2]], smooth: bool, round_end: bool) -> Vec<Point> {
    let mut spine = Spine::lay(ORIGIN, 0.0, &[], 0.0).unwrap_or(Spine(Vec::new()));
    spine.run(rows.last().map_or(1.0, |row| row[0]), 0.0);
    let rod = Rod {
        spine: &spine,
        widths: rows,
        smooth,
        round: [false, round_end],
        from: 0.0,
    };
    // A straight body cannot fold, so there is no fault to report.
    rod.outline().unwrap_or_default()
}

/// A thin flat thing seen on edge: from thickness `2 × neck` to `2 × end`, one side straight.
fn wedge(neck: f32, length: f32, end: f32) -> Vec<Point> {
    vec![
        pt(0.0, neck),
        pt(length, neck * 0.6),
        pt(length, neck * 0.6 - end),
        pt(length * 0.4, -neck),
        pt(0.0, -neck),
    ]
}

/// A round outline that grows out of a neck: the part of the circle beyond it, and the neck.
pub(crate) fn round_on_neck(neck: f32, r: f32) -> Vec<Point> {
    let open = (neck / r).clamp(0.0, 1.0).asin();
    let centre = pt(r * open.cos(), 0.0);
    arc(centre, r, r, PI - open, -PI + open)
}

/// The view from the side: the thin way of flat tips.
pub(crate) fn narrow(tip: &Tip, neck: f32) -> Result<Vec<Shape>, Fault> {
    Ok(match tip {
        Tip::Point | Tip::Probe { .. } => return broad(tip, neck),
        Tip::Mirror { diameter } => vec![
            body(vec![
                pt(0.0, 1.1),
                pt(*diameter, 1.1),
                pt(*diameter, -1.1),
                pt(0.0, -1.1),
            ]),
            line(Ink::Edge, vec![pt(0.6, 1.1), pt(diameter - 0.6, 1.1)]),
        ],
        Tip::Spoon { width, length } => {
            let (d, l) = (width * 0.42, *length);
            let back = [
                pt(l, neck),
                pt(l * 0.86, neck - d * 0.7),
                pt(l * 0.6, neck - d - neck * 0.3),
                pt(l * 0.3, -neck - d * 0.25),
                pt(0.0, -neck),
            ];
            let mut outline = vec![
                pt(0.0, neck),
                pt(l * 0.35, neck * 0.7),
                pt(l * 0.7, neck * 0.75),
            ];
            outline.extend(smoothed(&back, false));
            vec![
                body(outline),
                line(
                    Ink::Edge,
                    vec![
                        pt(l * 0.4, neck * 0.7),
                        pt(l * 0.7, neck * 0.75),
                        pt(l, neck),
                    ],
                ),
            ]
        }
        Tip::Gouge { length, .. } => gouge(neck, *length),
        Tip::Discoid { diameter } => thin_edge(neck, *diameter),
        Tip::Cleoid { length, .. } | Tip::Leaf { length, .. } | Tip::Pennant { length, .. } => {
            thin_edge(neck, *length)
        }
        Tip::Blade(blade) => blade.thin(neck),
        Tip::Condenser {
            diameter,
            length,
            serrated,
        } => nib(neck, diameter / 2.0, *length, *serrated),
        Tip::Ball { diameter } => vec![body(round_on_neck(neck, diameter / 2.0))],
        Tip::Egg {
            diameter,
            length,
            pointed,
        } => {
            let (r, l) = (diameter / 2.0, *length);
            let rows: Vec<[f32; 2]> = fractions(24)
                .map(|f| {
                    let round = (f * PI).sin().max(0.0).sqrt();
                    let taper = if *pointed { 1.15 - 0.9 * f } else { 1.0 };
                    let low = if f < 0.5 { neck } else { 0.0 };
                    [f * l, (r * round * taper).min(r).max(low)]
                })
                .collect();
            vec![body(lathe(&rows, false, false))]
        }
        Tip::Paddle {
            length, thickness, ..
        } => {
            let t = thickness / 2.0;
            vec![body(lathe(
                &[
                    [0.0, neck],
                    [length * 0.2, t.max(neck * 0.6)],
                    [*length, t * 0.6],
                ],
                false,
                true,
            ))]
        }
        Tip::Hook {
            width,
            length,
            curve,
            toe,
            ..
        } => hook(neck, width / 2.0, *length, *curve, *toe)?,
    })
}

fn thin_edge(neck: f32, length: f32) -> Vec<Shape> {
    let outline = wedge(neck, length, neck * 0.3);
    let edge = vec![outline[1], outline[2], outline[3]];
    vec![body(outline), line(Ink::Edge, edge)]
}

/// A hollow blade seen on its side: the back swells, the rim of the hollow runs straight to the edge.
fn gouge(neck: f32, l: f32) -> Vec<Shape> {
    let rim = neck * 0.35;
    let mut outline = vec![pt(0.0, neck), pt(l * 0.12, rim), pt(l, 0.0)];
    let back = [
        pt(l, 0.0),
        pt(l * 0.8, -neck * 0.45),
        pt(l * 0.45, -neck * 0.85),
        pt(0.0, -neck),
    ];
    outline.extend(smoothed(&back, false).into_iter().skip(1));
    let hollow = [
        pt(l * 0.14, rim),
        pt(l * 0.4, -rim * 0.6),
        pt(l * 0.8, -rim * 0.3),
        pt(l * 0.96, 0.0),
    ];
    vec![
        body(outline),
        line(Ink::Soft, smoothed(&hollow, false)),
        line(Ink::Edge, vec![pt(l * 0.86, rim * 0.12), pt(l, 0.0)]),
    ]
}

fn nib(neck: f32, r: f32, l: f32, serrated: bool) -> Vec<Shape> {
    let mut outline = lathe(&[[0.0, neck], [l * 0.55, r * 0.86], [l, r]], false, false);
    let mut face = vec![pt(l, r), pt(l, -r)];
    if serrated {
        let depth = (r * 0.25).min(l * 0.2);
        let teeth = 2 * whole(r * 6.0, 3);
        face = fractions(teeth)
            .enumerate()
            .map(|(i, f)| pt(if i % 2 == 0 { l } else { l - depth }, r - 2.0 * r * f))
            .collect();
        let corner = outline.iter().rposition(|p| p.y > 0.0).map_or(0, |i| i + 1);
        outline.splice(corner..corner, face[1..face.len() - 1].iter().copied());
    }
    vec![body(outline), line(Ink::Edge, face)]
}

fn hook(neck: f32, w: f32, l: f32, curve: f32, toe: Toe) -> Result<Vec<Shape>, Fault> {
    let mut spine = Spine::lay(ORIGIN, 0.0, &[], 0.0)?;
    spine.run(l, curve);
    let end = if toe == Toe::Pointed { 0.06 } else { w * 0.62 };
    let widths = [
        [0.0, neck],
        [l * 0.25, w],
        [l * 0.7, (w + end) * 0.55],
        [l, end],
    ];
    let rod = Rod {
        spine: &spine,
        widths: &widths,
        smooth: false,
        round: [false, true],
        from: 0.0,
    };
    let inner = if curve < 0.0 { -1.0 } else { 1.0 };
    let places = spine.stations(&widths, l * 0.2, false);
    let side = |part: f32| -> Vec<Point> {
        places
            .iter()
            .map(|&s| {
                let node = spine.at(s);
                node.at + pt(0.0, inner * part * rod.half_width(s)).turned(node.heading)
            })
            .collect()
    };
    Ok(vec![
        body(rod.outline()?),
        line(Ink::Soft, side(0.25)),
        line(Ink::Edge, side(1.0)),
    ])
}

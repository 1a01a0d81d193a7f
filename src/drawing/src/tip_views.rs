//! The two views of a working end: from the side, and on its working face.
//!
//! Each is drawn from the neck at the origin along the x axis.

use crate::fault::Fault;
use crate::plate::{Ink, Part, Shape};
use crate::point::{Point, arc, ellipse, fractions, pt, smoothed, whole};
use crate::spine::{Rod, Spine};
use crate::tip::{PaddleEnd, Tip, Toe};
use std::f32::consts::{FRAC_PI_2, PI};

const ORIGIN: Point = pt(0.0, 0.0);

fn body(outline: Vec<Point>) -> Shape {
    Shape::closed(Part::Working, Ink::Steel, outline)
}

fn line(ink: Ink, points: Vec<Point>) -> Shape {
    Shape::lines(Part::Working, ink, vec![points])
}

/// A body of revolution along the x axis from rows of `[place, half-width]`.
fn lathe(rows: &[[f32; 2]], smooth: bool, round_end: bool) -> Vec<Point> {
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
fn round_on_neck(neck: f32, r: f32) -> Vec<Point> {
    let open = (neck / r).clamp(0.0, 1.0).asin();
    let centre = pt(r * open.cos(), 0.0);
    arc(centre, r, r, PI - open, -PI + open)
}

/// The view on the working face: the broad side.
#[expect(
    clippy::too_many_lines,
    reason = "one short arm a kind; apart they would hide that they are a table"
)]
pub(crate) fn broad(tip: &Tip, neck: f32) -> Result<Vec<Shape>, Fault> {
    Ok(match tip {
        Tip::Point => Vec::new(),
        Tip::Mirror { diameter } => {
            let r = diameter / 2.0;
            let c = pt(r, 0.0);
            let glint = |shift: f32, half: f32| {
                let middle = c + pt(shift, -shift) * r;
                vec![middle - pt(half, half) * r, middle + pt(half, half) * r]
            };
            vec![
                body(ellipse(c, r, r)),
                Shape::closed(Part::Working, Ink::Clear, ellipse(c, r * 0.88, r * 0.88)),
                Shape::lines(
                    Part::Working,
                    Ink::Soft,
                    vec![glint(-0.12, 0.42), glint(0.12, 0.3)],
                ),
            ]
        }
        Tip::Probe {
            length,
            diameter,
            bands,
            ball,
        } => {
            let (l, end) = (*length, diameter / 2.0);
            let half = |s: f32| neck + (end - neck) * s / l;
            let mut shapes = vec![body(lathe(&[[0.0, neck], [l, end]], false, true))];
            for [from, to] in bands {
                let (a, b) = (l - to, l - from);
                shapes.push(if b - a < 0.05 {
                    line(Ink::Steel, vec![pt(a, half(a)), pt(a, -half(a))])
                } else {
                    let ring = vec![
                        pt(a, half(a)),
                        pt(b, half(b)),
                        pt(b, -half(b)),
                        pt(a, -half(a)),
                    ];
                    Shape::closed(Part::Working, Ink::Solid, ring)
                });
            }
            if *ball > 0.0 {
                let r = ball / 2.0;
                shapes.push(body(ellipse(pt(l, 0.0), r, r)));
            }
            shapes
        }
        Tip::Spoon { width, length } => {
            let (w, l) = (width / 2.0, *length);
            let rows = [[0.0, neck], [l * 0.25, neck * 0.5 + w * 0.5], [l - w, w]];
            let mut cup = ellipse(pt(l * 0.58, 0.0), l * 0.3, w * 0.62);
            cup.push(cup[0]);
            vec![
                body(lathe(&rows, true, true)),
                line(Ink::Edge, arc(pt(l - w, 0.0), w, w, FRAC_PI_2, -FRAC_PI_2)),
                line(Ink::Soft, cup),
            ]
        }
        Tip::Discoid { diameter } => {
            let rim = round_on_neck(neck, diameter / 2.0);
            vec![body(rim.clone()), line(Ink::Edge, rim)]
        }
        Tip::Cleoid { width, length } => {
            let (w, l) = (width / 2.0, *length);
            let side = |sign: f32| {
                [[0.4, 1.0], [0.7, 0.72], [1.0, 0.0]].map(|[x, y]| pt(x * l, sign * y * w))
            };
            let mut outline = vec![pt(0.0, neck)];
            outline.extend(side(1.0));
            outline.extend(side(-1.0).into_iter().rev());
            outline.push(pt(0.0, -neck));
            let edges = vec![smoothed(&side(1.0), false), smoothed(&side(-1.0), false)];
            vec![
                body(outline),
                Shape::lines(Part::Working, Ink::Edge, edges),
                line(Ink::Soft, vec![pt(l * 0.3, 0.0), pt(l * 0.92, 0.0)]),
            ]
        }
        Tip::Blade(blade) => blade.flat(),
        Tip::Condenser {
            diameter, serrated, ..
        } => face(diameter / 2.0, *serrated),
        Tip::Ball { .. } | Tip::Egg { .. } | Tip::Hook { .. } => return narrow(tip, neck),
        Tip::Leaf { width, length } => {
            let (w, l) = (width / 2.0, *length);
            let up = [pt(l * 0.3, w), pt(l * 0.62, w * 0.78), pt(l, 0.0)];
            let edges = [
                smoothed(&up, false),
                smoothed(&up.map(|p| pt(p.x, -p.y)), false),
            ];
            let mut outline = vec![pt(0.0, neck)];
            outline.extend(&edges[0]);
            outline.extend(edges[1].iter().rev());
            outline.push(pt(0.0, -neck));
            vec![
                body(outline),
                line(Ink::Soft, vec![pt(l * 0.15, 0.0), pt(l * 0.9, 0.0)]),
                Shape::lines(Part::Working, Ink::Edge, edges.to_vec()),
            ]
        }
        Tip::Paddle {
            width, length, end, ..
        } => paddle(width / 2.0, *length, neck, *end),
    })
}

fn paddle(w: f32, l: f32, neck: f32, end: PaddleEnd) -> Vec<Shape> {
    let shoulder = (l * 0.25).min((w - neck).abs() * 2.0 + 0.3);
    let tail = if end == PaddleEnd::Round {
        w.min(l - shoulder)
    } else {
        0.0
    };
    let mut outline = lathe(
        &[
            [0.0, neck],
            [shoulder * 0.5, f32::midpoint(neck, w)],
            [shoulder, w],
            [l - tail, w],
        ],
        false,
        false,
    );
    let corner = outline.iter().rposition(|p| p.y > 0.0).map_or(0, |i| i + 1);
    match end {
        PaddleEnd::Square => {}
        PaddleEnd::Round => {
            let round = arc(pt(l - tail, 0.0), tail, w, FRAC_PI_2, -FRAC_PI_2);
            outline.splice(corner..corner, round);
        }
        PaddleEnd::Pointed => {
            outline.insert(corner, pt(l + w, 0.0));
        }
        PaddleEnd::Oblique => {
            outline.insert(corner, pt(l + w, -w * 0.7));
        }
    }
    vec![body(outline)]
}

/// A condenser's face seen end on, cut crosswise when `serrated`.
fn face(r: f32, serrated: bool) -> Vec<Shape> {
    let mut shapes = vec![body(ellipse(pt(r, 0.0), r, r))];
    if serrated {
        let chord = |y: f32| (r * r - y * y).max(0.0).sqrt();
        let places = [-0.5, 0.0, 0.5].map(|f| f * r);
        let cuts = places
            .iter()
            .flat_map(|&y| {
                let x = chord(y);
                [
                    vec![pt(r - x, y), pt(r + x, y)],
                    vec![pt(r + y, -x), pt(r + y, x)],
                ]
            })
            .collect();
        shapes.push(Shape::lines(Part::Working, Ink::Soft, cuts));
    }
    shapes.push(line(Ink::Edge, arc(pt(r, 0.0), r, r, 0.0, 2.0 * PI)));
    shapes
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
        Tip::Discoid { diameter } => thin_edge(neck, *diameter),
        Tip::Cleoid { length, .. } | Tip::Leaf { length, .. } => thin_edge(neck, *length),
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
        } => hook(neck, width / 2.0, *length, *curve, *toe)?,
    })
}

fn thin_edge(neck: f32, length: f32) -> Vec<Shape> {
    let outline = wedge(neck, length, neck * 0.3);
    let edge = vec![outline[1], outline[2], outline[3]];
    vec![body(outline), line(Ink::Edge, edge)]
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

//! Working ends seen on their working face: the broad side.
//!
//! Each is drawn from the neck at the origin along the x axis.

use crate::fault::Fault;
use crate::plate::{Ink, Part, Shape};
use crate::point::{Point, arc, ellipse, fractions, pt, smoothed};
use crate::tip::{PaddleEnd, Tip, Toe};
use crate::tip_side::{body, lathe, line, narrow, round_on_neck};
use std::f32::consts::{FRAC_PI_2, PI};

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
        Tip::Gouge { width, length } => gouge(width / 2.0, *length, neck),
        Tip::Pennant {
            width,
            length,
            right,
        } => pennant(*width, *length, neck, *right),
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
        PaddleEnd::Toothed => {
            let depth = w * 0.2;
            let tooth =
                |(i, f): (usize, f32)| pt(l - depth * f32::from(i % 2 == 1), w - 2.0 * w * f);
            let teeth: Vec<Point> = fractions(12).enumerate().map(tooth).collect();
            outline.splice(corner..corner, teeth[1..12].iter().copied());
        }
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

/// A blade with parallel sides and a hollow face.
fn gouge(w: f32, l: f32, neck: f32) -> Vec<Shape> {
    let tail = w * 0.8;
    let rows = [[0.0, neck], [l * 0.14, w * 0.86], [l - tail, w]];
    let mut outline = lathe(&rows, false, false);
    let corner = outline.iter().rposition(|p| p.y > 0.0).map_or(0, |i| i + 1);
    let end = arc(pt(l - tail, 0.0), tail, w, FRAC_PI_2, -FRAC_PI_2);
    outline.splice(corner..corner, end[1..end.len() - 1].iter().copied());
    let rim = |sign: f32| {
        let side = [[0.2, 0.1], [0.3, 0.5], [0.6, 0.62], [0.93, 0.6]];
        smoothed(&side.map(|[x, y]| pt(x * l, sign * y * w)), false)
    };
    vec![
        body(outline),
        Shape::lines(Part::Working, Ink::Soft, vec![rim(1.0), rim(-1.0)]),
        line(Ink::Edge, end),
    ]
}

/// A flag whose point stands out to one side; seen from the hand, right is below the axis.
fn pennant(w: f32, l: f32, neck: f32, right: bool) -> Vec<Shape> {
    let sign = if right { -1.0 } else { 1.0 };
    let place = |[x, y]: [f32; 2]| pt(x, sign * y);
    let near = [[l * 0.1, neck], [l * 0.3, w * 0.42], [l * 0.62, w]].map(place);
    let far = [
        [l * 0.62, w],
        [l * 0.92, w * 0.42],
        [l, -neck * 0.2],
        [l * 0.8, -neck],
    ]
    .map(place);
    let far = smoothed(&far, false);
    let mut outline = vec![place([0.0, -neck]), place([0.0, neck])];
    outline.extend(smoothed(&near, false));
    outline.extend(far.iter().skip(1));
    let rib = vec![place([l * 0.3, 0.0]), place([l * 0.6, w * 0.7])];
    vec![
        body(outline),
        line(Ink::Soft, rib),
        line(Ink::Edge, far[..far.len() * 2 / 3].to_vec()),
    ]
}

/// A scaler cut across, the shank above it: a triangle with two edges, or a half circle whose face
/// stands at `face` degrees to the shank; the edges that cut are marked.
pub(crate) fn section(w: f32, toe: Toe, face: f32) -> Vec<Shape> {
    let tilt = |p: Point| p.turned((face - 90.0).to_radians());
    let (left, right) = (pt(-w, 0.0), pt(w, 0.0));
    let outline = if toe == Toe::Pointed {
        vec![left, right, pt(0.0, -w * 1.7)]
    } else {
        arc(pt(0.0, 0.0), w, w * 1.1, 0.0, -PI)
    };
    let mut edges = vec![right];
    if face > 89.0 {
        edges.push(left);
    }
    let edges = edges.iter().map(|&corner| {
        vec![
            tilt(corner * 0.55),
            tilt(corner),
            tilt(corner * 0.9 + pt(0.0, -w * 0.45)),
        ]
    });
    let shank = [-0.3, 0.3].map(|x| {
        let foot = tilt(pt(x * w, 0.0));
        vec![foot, pt(foot.x, w * 2.6)]
    });
    vec![
        body(outline.into_iter().map(tilt).collect()),
        Shape::lines(Part::Shank, Ink::Soft, shank.to_vec()),
        Shape::lines(Part::Working, Ink::Edge, edges.collect()),
    ]
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

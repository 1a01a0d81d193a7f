//! Things that are no instrument by formula: put together from bodies, discs, blocks and lines.

use crate::fault::{Fault, angle, length, length_or_none};
use crate::plate::{Ink, Mark, Part, Shape, TRAY_MM};
use crate::point::{Point, arc, ellipse, pt, smoothed};
use crate::spine::{Rod, Segment, Spine, check_widths};
use serde::{Deserialize, Serialize};
use std::f32::consts::FRAC_PI_2;

/// A thing put together from pieces, the hindmost first.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Figure {
    /// The pieces.
    pub pieces: Vec<Piece>,
    /// The pieces of its working end, drawn on their own when that is enlarged; none when empty.
    #[serde(default)]
    pub close: Vec<Piece>,
}

/// One piece; points are `[x, y]` in millimetres, x to the right and y up.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub enum Piece {
    /// A body about a bent centreline.
    Rod {
        /// Where the centreline begins.
        #[serde(default)]
        at: [f32; 2],
        /// Which way it sets out, in degrees from the x axis.
        #[serde(default)]
        heading: f32,
        /// The pieces of the centreline.
        path: Vec<Segment>,
        /// Half-widths as `[millimetres along, half-width]`.
        widths: Vec<[f32; 2]>,
        /// Whether the sides run along a curve from one width to the next.
        #[serde(default)]
        smooth: bool,
        /// Whether the beginning and the end are rounded.
        #[serde(default)]
        round: [bool; 2],
        /// Places of rings round the body.
        #[serde(default)]
        bands: Vec<f32>,
        /// How it is inked.
        #[serde(default)]
        ink: Ink,
    },
    /// A disc or an ellipse.
    Disc {
        /// The middle.
        at: [f32; 2],
        /// Half its width and half its height.
        radii: [f32; 2],
        /// How it is inked.
        #[serde(default)]
        ink: Ink,
    },
    /// A rectangle.
    Block {
        /// The lower left corner.
        at: [f32; 2],
        /// Width and height.
        size: [f32; 2],
        /// Radius of its corners.
        #[serde(default)]
        round: f32,
        /// How it is inked.
        #[serde(default)]
        ink: Ink,
    },
    /// A closed outline through points.
    Outline {
        /// The points.
        points: Vec<[f32; 2]>,
        /// Whether it is a curve through them.
        #[serde(default)]
        smooth: bool,
        /// How it is inked.
        #[serde(default)]
        ink: Ink,
    },
    /// An open line through points.
    Line {
        /// The points.
        points: Vec<[f32; 2]>,
        /// Whether it is a curve through them.
        #[serde(default)]
        smooth: bool,
        /// How it is inked.
        #[serde(default)]
        ink: Ink,
    },
    /// Short, generic words.
    Words {
        /// Their middle.
        at: [f32; 2],
        /// Their height.
        size: f32,
        /// What they say.
        text: String,
    },
    /// The same pieces again and again.
    Row {
        /// How many times.
        count: u16,
        /// The way from one to the next.
        step: [f32; 2],
        /// What is repeated.
        pieces: Vec<Piece>,
    },
    /// The pieces, and the same again on the other side of the x axis.
    Mirrored {
        /// What is mirrored.
        pieces: Vec<Piece>,
    },
    /// The pieces moved and turned.
    Placed {
        /// Where their origin comes to lie.
        at: [f32; 2],
        /// Turn in degrees, counter-clockwise.
        #[serde(default)]
        turn: f32,
        /// What is placed.
        pieces: Vec<Piece>,
    },
}

fn point([x, y]: [f32; 2]) -> Point {
    pt(x, y)
}

fn points(
    list: &[[f32; 2]],
    least: usize,
    smooth: bool,
    closed: bool,
) -> Result<Vec<Point>, Fault> {
    if list.len() < least {
        let least = least.to_string();
        return Err(Fault::new(
            "points",
            ["are too few: at least ", &least, " are needed"].concat(),
        ));
    }
    let list: Vec<Point> = list.iter().copied().map(point).collect();
    Ok(if smooth {
        smoothed(&list, closed)
    } else {
        list
    })
}

impl Figure {
    pub(crate) fn draw(&self) -> Result<Vec<Shape>, Fault> {
        draw_all(&self.pieces)
    }

    pub(crate) fn draw_close(&self) -> Result<Vec<Shape>, Fault> {
        draw_all(&self.close)
    }
}

pub(crate) fn draw_all(pieces: &[Piece]) -> Result<Vec<Shape>, Fault> {
    let mut shapes = Vec::new();
    for (i, piece) in pieces.iter().enumerate() {
        let drawn = piece
            .draw()
            .map_err(|fault| fault.inside(&["piece ", &(i + 1).to_string()].concat()))?;
        shapes.extend(drawn);
    }
    Ok(shapes)
}

/// A rectangle from its lower left corner, with rounded corners.
pub(crate) fn block(corner: Point, w: f32, h: f32, round: f32) -> Vec<Point> {
    let r = round.min(w / 2.0).min(h / 2.0);
    if r <= 0.0 {
        return [pt(0.0, 0.0), pt(w, 0.0), pt(w, h), pt(0.0, h)]
            .map(|p| corner + p)
            .to_vec();
    }
    let corners = [pt(w - r, h - r), pt(r, h - r), pt(r, r), pt(w - r, r)];
    let mut outline = Vec::new();
    let mut from = 0.0;
    for middle in corners {
        outline.extend(arc(corner + middle, r, r, from, from + FRAC_PI_2));
        from += FRAC_PI_2;
    }
    outline.dedup_by(|a, b| (*a - *b).length() < 1e-4);
    outline
}

/// A body with rings round it.
fn banded(rod: &Rod, bands: &[f32], ink: Ink) -> Result<Vec<Shape>, Fault> {
    let mut shapes = vec![Shape::closed(Part::Body, ink, rod.outline()?)];
    if !bands.is_empty() {
        let rings = bands.iter().map(|s| rod.band(*s)).collect();
        shapes.push(Shape::lines(Part::Body, Ink::Soft, rings));
    }
    Ok(shapes)
}

/// The most shapes of a drawing: more than any eye tells apart.
const MOST_SHAPES: usize = 2000;

/// That a drawing comes to so many shapes.
fn few(shapes: usize) -> Result<(), Fault> {
    if shapes > MOST_SHAPES {
        return Err(Fault::new(
            "pieces",
            "come to more than 2000 shapes; draw fewer",
        ));
    }
    Ok(())
}

/// The shapes `count` times, each time one `step` further.
fn repeated(shapes: &[Shape], count: u16, step: Point) -> Vec<Shape> {
    (0..count)
        .map(|i| step * f32::from(i))
        .flat_map(|by| shapes.iter().cloned().map(move |s| s.moved(|p| p + by)))
        .collect()
}

impl Piece {
    fn draw(&self) -> Result<Vec<Shape>, Fault> {
        let closed = |ink: Ink, outline| vec![Shape::closed(Part::Body, ink, outline)];
        Ok(match self {
            Self::Rod {
                at,
                heading,
                path,
                widths,
                smooth,
                round,
                bands,
                ink,
            } => {
                check_widths("widths", widths)?;
                angle("heading", *heading, 360.0)?;
                let thick = widths.iter().map(|row| row[1]).fold(0.0, f32::max);
                let spine = Spine::lay(point(*at), heading.to_radians(), path, thick)
                    .map_err(|fault| fault.inside("path"))?;
                let rod = Rod {
                    spine: &spine,
                    widths,
                    smooth: *smooth,
                    round: *round,
                    from: 0.0,
                };
                banded(&rod, bands, *ink)?
            }
            Self::Disc { at, radii, ink } => {
                length("radii", radii[0], TRAY_MM / 2.0)?;
                length("radii", radii[1], TRAY_MM / 2.0)?;
                closed(*ink, ellipse(point(*at), radii[0], radii[1]))
            }
            Self::Block {
                at,
                size,
                round,
                ink,
            } => {
                length("size", size[0], TRAY_MM)?;
                length("size", size[1], TRAY_MM)?;
                length_or_none("round", *round, TRAY_MM)?;
                closed(*ink, block(point(*at), size[0], size[1], *round))
            }
            Self::Outline {
                points: list,
                smooth,
                ink,
            } => closed(*ink, points(list, 3, *smooth, true)?),
            Self::Line {
                points: list,
                smooth,
                ink,
            } => vec![Shape::lines(
                Part::Body,
                *ink,
                vec![points(list, 2, *smooth, false)?],
            )],
            Self::Words { at, size, text } => {
                length("size", *size, 60.0)?;
                vec![Shape {
                    part: Part::Body,
                    ink: Ink::Soft,
                    mark: Mark::Words {
                        at: point(*at),
                        size: *size,
                        text: text.clone(),
                    },
                }]
            }
            Self::Row {
                count,
                step,
                pieces,
            } => {
                if !(1..=60).contains(count) {
                    return Err(Fault::new("count", "must be from 1 to 60"));
                }
                let shapes = draw_all(pieces)?;
                // Rows within rows multiply: looked at before it is drawn.
                few(shapes.len() * usize::from(*count))?;
                repeated(&shapes, *count, point(*step))
            }
            Self::Mirrored { pieces } => {
                let mut shapes = draw_all(pieces)?;
                few(shapes.len() * 2)?;
                let other = shapes.clone();
                shapes.extend(other.into_iter().map(|s| s.moved(|p| pt(p.x, -p.y))));
                shapes
            }
            Self::Placed { at, turn, pieces } => {
                angle("turn", *turn, 360.0)?;
                let place = |p: Point| point(*at) + p.turned(turn.to_radians());
                draw_all(pieces)?
                    .into_iter()
                    .map(|s| s.moved(place))
                    .collect()
            }
        })
    }
}

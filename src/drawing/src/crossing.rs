//! Finds outlines that cross themselves: a sign that measurements do not fit each other.

use crate::plate::{Mark, Plate};
use crate::point::Point;

/// Whether the closed outline crosses itself.
fn crosses(outline: &[Point]) -> bool {
    let side = |a: Point, b: Point, p: Point| (b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x);
    // Touching is no crossing, so both ends must lie clear of the other line.
    let apart = |u: f32, v: f32| u.min(v) < -1e-4 && u.max(v) > 1e-4;
    let line = |i: usize| (outline[i], outline[(i + 1) % outline.len()]);
    (0..outline.len()).any(|i| {
        let (a, b) = line(i);
        (i + 2..outline.len()).any(|j| {
            let (c, d) = line(j);
            a.x.min(b.x) <= c.x.max(d.x)
                && c.x.min(d.x) <= a.x.max(b.x)
                && apart(side(a, b, c), side(a, b, d))
                && apart(side(c, d, a), side(c, d, b))
        })
    })
}

/// The number of closed outlines of a plate that cross themselves.
pub(crate) fn crossings(plate: &Plate) -> usize {
    plate
        .shapes
        .iter()
        .filter(|shape| matches!(&shape.mark, Mark::Closed(points) if crosses(points)))
        .count()
}

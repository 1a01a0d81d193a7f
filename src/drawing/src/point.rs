//! Points and lines in millimetres, x to the right and y up.

use std::ops::{Add, Mul, Sub};

/// A point, or the way from one point to another, in millimetres.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Point {
    /// To the right.
    pub x: f32,
    /// Up while a drawing is built; down once it lies on a [`crate::Plate`].
    pub y: f32,
}

/// Shorthand for a point.
pub(crate) const fn pt(x: f32, y: f32) -> Point {
    Point { x, y }
}

impl Point {
    /// The point turned about the origin, counter-clockwise, in radians.
    #[must_use]
    pub fn turned(self, angle: f32) -> Self {
        let (sin, cos) = angle.sin_cos();
        pt(self.x * cos - self.y * sin, self.x * sin + self.y * cos)
    }

    /// Distance from the origin.
    #[must_use]
    pub fn length(self) -> f32 {
        self.x.hypot(self.y)
    }

    /// The way to the left of this one, of length 1 (or nothing for no way).
    pub(crate) fn left(self) -> Self {
        let length = self.length().max(1e-6);
        pt(-self.y / length, self.x / length)
    }

    /// The direction, in radians from the x axis.
    #[must_use]
    pub fn heading(self) -> f32 {
        self.y.atan2(self.x)
    }
}

impl Add for Point {
    type Output = Self;
    fn add(self, other: Self) -> Self {
        pt(self.x + other.x, self.y + other.y)
    }
}

impl Sub for Point {
    type Output = Self;
    fn sub(self, other: Self) -> Self {
        pt(self.x - other.x, self.y - other.y)
    }
}

impl Mul<f32> for Point {
    type Output = Self;
    fn mul(self, by: f32) -> Self {
        pt(self.x * by, self.y * by)
    }
}

/// A whole number of steps from a real one: at least `least`, at most 400.
#[expect(
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "the value is clamped to 1..=400 first"
)]
pub(crate) fn whole(steps: f32, least: u16) -> u16 {
    (steps.ceil().clamp(1.0, 400.0) as u16).max(least)
}

/// `0, 1/n, 2/n … 1`.
pub(crate) fn fractions(n: u16) -> impl Iterator<Item = f32> {
    (0..=n).map(move |i| f32::from(i) / f32::from(n))
}

/// An arc about `centre` from angle `from` to `to` (radians), fine enough to look round.
pub(crate) fn arc(centre: Point, rx: f32, ry: f32, from: f32, to: f32) -> Vec<Point> {
    // A chord may leave its arc by 1/400 of the radius at most: invisible at any enlargement used.
    let steps = whole((to - from).abs() / 0.14, 2);
    fractions(steps)
        .map(|f| from + (to - from) * f)
        .map(|a| centre + pt(rx * a.cos(), ry * a.sin()))
        .collect()
}

/// A whole ellipse about `centre`.
pub(crate) fn ellipse(centre: Point, rx: f32, ry: f32) -> Vec<Point> {
    let mut points = arc(centre, rx, ry, 0.0, std::f32::consts::TAU);
    points.pop();
    points
}

/// The value at `s` of a table of `[position, value]` rows in rising order of position.
///
/// Straight between rows, or along a curve through them when `smooth`.
pub(crate) fn along(rows: &[[f32; 2]], s: f32, smooth: bool) -> f32 {
    let Some(last) = rows.len().checked_sub(1) else {
        return 0.0;
    };
    let after = rows.iter().position(|row| row[0] > s).unwrap_or(last);
    if after == 0 {
        return rows[0][1];
    }
    let ([s0, v0], [s1, v1]) = (rows[after - 1], rows[after]);
    let span = (s1 - s0).max(1e-6);
    let t = ((s - s0) / span).clamp(0.0, 1.0);
    if !smooth {
        return v0 + (v1 - v0) * t;
    }
    // Cubic Hermite with the slopes of the neighbouring rows.
    let slope = |low: usize, high: usize| {
        (rows[high][1] - rows[low][1]) / (rows[high][0] - rows[low][0]).max(1e-6) * span
    };
    let m0 = slope(after.saturating_sub(2), after);
    let m1 = slope(after - 1, (after + 1).min(last));
    let (t2, t3) = (t * t, t * t * t);
    (2.0 * t3 - 3.0 * t2 + 1.0) * v0
        + (t3 - 2.0 * t2 + t) * m0
        + (3.0 * t2 - 2.0 * t3) * v1
        + (t3 - t2) * m1
}

/// A curve through all `points`; closed when `closed`.
pub(crate) fn smoothed(points: &[Point], closed: bool) -> Vec<Point> {
    let n = points.len();
    if n < 3 {
        return points.to_vec();
    }
    let at = |i: usize, back: usize, on: usize| {
        if closed {
            points[(i + n + on - back) % n]
        } else {
            points[(i + on).saturating_sub(back).min(n - 1)]
        }
    };
    let mut curve = Vec::with_capacity(n * 8);
    for i in 0..(if closed { n } else { n - 1 }) {
        let (p0, p1, p2, p3) = (at(i, 1, 0), at(i, 0, 0), at(i, 0, 1), at(i, 0, 2));
        for t in (0..8u8).map(|step| f32::from(step) / 8.0) {
            let (t2, t3) = (t * t, t * t * t);
            curve.push(
                (p1 * 2.0
                    + (p2 - p0) * t
                    + (p0 * 2.0 - p1 * 5.0 + p2 * 4.0 - p3) * t2
                    + (p1 * 3.0 - p0 - p2 * 3.0 + p3) * t3)
                    * 0.5,
            );
        }
    }
    if !closed {
        curve.push(points[n - 1]);
    }
    curve
}

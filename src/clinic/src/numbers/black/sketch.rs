//! A blade by its formula as points and lines, for a drawing.

/// A point in mm; x runs along the handle towards the blade, y upwards.
pub type Point = (f32, f32);

/// A blade and what its formula measures, as points and lines in mm.
#[derive(Clone, Debug, PartialEq)]
pub struct Sketch {
    /// The end of the handle and its axis, carried on past the blade.
    pub axis: [Point; 2],
    /// The outline of the blade, from its heel round.
    pub blade: Vec<Point>,
    /// The cutting edge.
    pub edge: [Point; 2],
    /// From the axis to the blade: the last number.
    pub angle_arc: Vec<Point>,
    /// From the axis round to the edge: the second of four numbers.
    pub edge_arc: Vec<Point>,
}

impl Sketch {
    pub(super) fn of(width: f32, length: f32, angle: f32, edge: Option<f32>) -> Self {
        let turn = angle.to_radians();
        let (along, across) = ((turn.cos(), turn.sin()), (-turn.sin(), turn.cos()));
        let at = |x: f32, y: f32| (x * along.0 + y * across.0, x * along.1 + y * across.1);
        // The edge as a line through the middle of the tip; square to the
        // blade where the formula does not say otherwise.
        let slant = edge.map_or(0.0, |edge| {
            let skew = (edge - 270.0 - angle).to_radians();
            (width / 2.0 * skew.tan()).clamp(-length, length)
        });
        let half = width / 2.0;
        let (inner, outer) = (at(length - slant, half), at(length + slant, -half));
        Self {
            axis: [(-length * 1.5, 0.0), (length * 1.5, 0.0)],
            blade: vec![at(0.0, half), inner, outer, at(0.0, -half)],
            edge: [inner, outer],
            angle_arc: arc(length * 0.6, 0.0, angle),
            edge_arc: edge.map_or_else(Vec::new, |edge| arc(length * 0.35, 0.0, edge)),
        }
    }
}

/// Points of an arc round the heel of the blade, from one angle to another in degrees.
fn arc(radius: f32, from: f32, to: f32) -> Vec<Point> {
    (0..=24_u8)
        .map(|i| {
            let turn = (from + (to - from) * f32::from(i) / 24.0).to_radians();
            (radius * turn.cos(), radius * turn.sin())
        })
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_sketch_measures_what_the_formula_says() {
        let sketch = Sketch::of(1.3, 8.0, 50.4, Some(342.0));
        let (a, b) = (sketch.edge[0], sketch.edge[1]);
        let turn = (b.1 - a.1).atan2(b.0 - a.0).to_degrees().rem_euclid(360.0);
        assert!((turn - 342.0).abs() < 0.1, "{turn}");
        let end = (f32::midpoint(a.0, b.0), f32::midpoint(a.1, b.1));
        assert!((end.0.hypot(end.1) - 8.0).abs() < 0.01);
        assert!((end.1.atan2(end.0).to_degrees() - 50.4).abs() < 0.01);
        let square = Sketch::of(1.5, 8.0, 50.4, None);
        let (a, b) = (square.edge[0], square.edge[1]);
        assert!(((a.0 - b.0).hypot(a.1 - b.1) - 1.5).abs() < 0.01);
    }
}

//! Black's formulas: read, told in millimetres and degrees, and drawn.

mod sketch;

pub use sketch::{Point, Sketch};

use super::{
    entry::{Refusal, number, refuse},
    exact::Exact,
    figure, figure_sources,
    working::Working,
};
use catalogue::numbers::Numbers;

/// A blade by its formula of three or four numbers.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Formula {
    /// Width in tenths of a millimetre: the first number.
    pub width: Exact,
    /// Angle of the cutting edge in centigrades: the second of four numbers.
    pub edge: Option<Exact>,
    /// Length in millimetres.
    pub length: Exact,
    /// Angle of the blade with the handle in centigrades: the last number.
    pub angle: Exact,
}

/// Which edge of a box a margin trimmer is for.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Margin {
    /// The distal one.
    Distal,
    /// The mesial one.
    Mesial,
    /// Told in two ways; nothing rests on it.
    Undecided,
}

/// How the shank brings the edge back to the axis.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Bends {
    /// The edge is near enough without.
    None,
    /// One bend back: two angles.
    Binangle,
    /// Two bends back: three angles.
    TripleAngle,
}

/// Reads a formula such as `15-8-14` or `13-95-8-14 R`.
///
/// # Errors
/// A sentence, if there are not three or four numbers, or no blade could have them.
pub fn formula(text: &str) -> Result<Formula, Refusal> {
    let body = text.trim().trim_end_matches(['R', 'L', 'r', 'l']).trim();
    let parts: Vec<&str> = body
        .split(|c: char| "-–−/".contains(c) || c.is_whitespace())
        .filter(|p| !p.is_empty())
        .collect();
    let values: Result<Vec<Exact>, Refusal> = parts.iter().map(|p| number(p)).collect();
    let (width, edge, length, angle) = match *values?.as_slice() {
        [width, length, angle] => (width, None, length, angle),
        [width, edge, length, angle] => (width, Some(edge), length, angle),
        ref other => {
            return refuse(format!(
                "A formula has three or four numbers, such as 15-8-14 or 13-95-8-14; '{}' has {}.",
                text.trim(),
                other.len()
            ));
        }
    };
    let within =
        |value: Exact, from: i64, to: i64| value >= Exact::whole(from) && value <= Exact::whole(to);
    if !within(width, 1, 60) {
        return refuse("The first number is the width in tenths of a millimetre, 1 to 60.");
    }
    if edge.is_some_and(|edge| !within(edge, 51, 100)) {
        return refuse(
            "Of four numbers the second is the angle of the cutting edge, 51 to 100 hundredths of a circle.",
        );
    }
    if !within(length, 1, 40) {
        return refuse("The length of the blade comes before the last number: 1 to 40 mm.");
    }
    if !within(angle, 0, 25) {
        return refuse(
            "The last number is the angle of the blade, 0 to 25 hundredths of a circle; at 25 it stands square to the handle.",
        );
    }
    Ok(Formula {
        width,
        edge,
        length,
        angle,
    })
}

impl Formula {
    /// Width in millimetres.
    pub fn width_mm(self) -> Exact {
        self.width / Exact::whole(10)
    }

    /// Angle of the blade in degrees.
    pub fn angle_degrees(self, numbers: &Numbers) -> Exact {
        self.angle * figure(numbers, "centigrade")
    }

    /// Angle of the cutting edge in degrees.
    pub fn edge_degrees(self, numbers: &Numbers) -> Option<Exact> {
        Some(self.edge? * figure(numbers, "centigrade"))
    }

    /// As it stands on a handle: `13-95-8-14`.
    pub fn text(self) -> String {
        [
            Some(self.width),
            self.edge,
            Some(self.length),
            Some(self.angle),
        ]
        .into_iter()
        .flatten()
        .map(|n| n.text(2))
        .collect::<Vec<_>>()
        .join("-")
    }

    /// Which margin a trimmer with this edge is for; none without a number for the edge.
    pub fn margin(self, numbers: &Numbers) -> Option<Margin> {
        let between = figure(numbers, "edge-between");
        Some(match self.edge?.cmp(&between) {
            std::cmp::Ordering::Greater => Margin::Distal,
            std::cmp::Ordering::Less => Margin::Mesial,
            std::cmp::Ordering::Equal => Margin::Undecided,
        })
    }

    /// How far the edge would stand from the axis on a straight shank, in mm.
    pub fn off_axis(self) -> f32 {
        let turn = self.angle.for_drawing() / 50.0 * std::f32::consts::PI;
        self.length.for_drawing() * turn.sin()
    }

    /// What the formula says, step by step.
    pub fn working(self, numbers: &Numbers) -> Working {
        let mut working = Working::default();
        let (from, degree) = (
            figure_sources(numbers, "centigrade"),
            figure(numbers, "centigrade"),
        );
        let angle = |working: &mut Working, what: &str, value: Exact| {
            let degrees = value * degree;
            working.line(
                what,
                "hundredths of a circle × 3.6",
                format!(
                    "{} × {} = {}°",
                    value.text(2),
                    degree.text(2),
                    degrees.text(2)
                ),
                from,
            );
        };
        working.line(
            "How many numbers",
            "",
            if self.edge.is_some() {
                "four: the second is the edge, the third the length".into()
            } else {
                "three: the edge stands square, the second is the length".into()
            },
            from,
        );
        working.line(
            "Width of the blade",
            "first number ÷ 10",
            format!(
                "{} ÷ 10 = {} mm",
                self.width.text(2),
                self.width_mm().text(3)
            ),
            from,
        );
        if let Some(edge) = self.edge {
            angle(&mut working, "Angle of the edge", edge);
        }
        working.line(
            "Length of the blade",
            "",
            format!("{} mm", self.length.text(2)),
            from,
        );
        angle(&mut working, "Angle of the blade", self.angle);
        if let Some(margin) = self.margin(numbers) {
            let between = figure(numbers, "edge-between").text(0);
            working.line(
                "If it is a margin trimmer",
                "above or below",
                match margin {
                    Margin::Distal => format!("above {between}: distal"),
                    Margin::Mesial => format!("below {between}: mesial"),
                    Margin::Undecided => format!("exactly {between} is told in two ways"),
                },
                figure_sources(numbers, "edge-between"),
            );
        }
        let bends = bends(numbers, self.off_axis(), self.angle);
        working.line(
            "Shank",
            "length × sine of the angle, from the axis",
            format!(
                "{:.1} mm from the axis: {}",
                self.off_axis(),
                bends_words(bends)
            ),
            figure_sources(numbers, "contra-angle"),
        );
        working
            .heed("Pages that call the angles degrees are wrong: they are hundredths of a circle.");
        let edge = self
            .edge_degrees(numbers)
            .map(|e| format!(", edge at {}°", e.text(2)))
            .unwrap_or_default();
        working.comes_to(
            format!(
                "{} mm wide{edge}, {} mm long, blade at {}°",
                self.width_mm().text(3),
                self.length.text(2),
                self.angle_degrees(numbers).text(2)
            ),
            None,
        );
        working
    }

    /// The blade as plain geometry, in mm.
    pub fn sketch(self, numbers: &Numbers) -> Sketch {
        Sketch::of(
            self.width_mm().for_drawing(),
            self.length.for_drawing(),
            self.angle_degrees(numbers).for_drawing(),
            self.edge_degrees(numbers).map(Exact::for_drawing),
        )
    }
}

/// How a shank is bent whose edge would stand so far from the axis, in mm, at
/// this blade angle in centigrades.
pub fn bends(numbers: &Numbers, off_axis: f32, angle: Exact) -> Bends {
    if off_axis <= figure(numbers, "contra-angle").for_drawing() {
        Bends::None
    } else if angle <= figure(numbers, "binangle") {
        Bends::Binangle
    } else {
        Bends::TripleAngle
    }
}

const fn bends_words(bends: Bends) -> &'static str {
    match bends {
        Bends::None => "near enough, no bend back is needed",
        Bends::Binangle => "contra-angled with one bend back, two angles in all",
        Bends::TripleAngle => "contra-angled with two bends back, three angles in all",
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn formulas_are_read_or_refused() {
        let exact = Exact::whole;
        assert_eq!(
            formula("13-95-8-14 R"),
            Ok(Formula {
                width: exact(13),
                edge: Some(exact(95)),
                length: exact(8),
                angle: exact(14)
            })
        );
        assert_eq!(
            formula("15 8 14").map(Formula::text).as_deref(),
            Ok("15-8-14")
        );
        for (text, words) in [
            ("15-8", "has 2"),
            ("1-2-3-4-5", "has 5"),
            ("13-8-95-14", "second is the angle of the cutting edge"),
            ("15-14-80", "last number is the angle"),
            ("0-8-14", "first number"),
            ("15-a-14", "not a number"),
            ("", "has 0"),
        ] {
            let refusal = formula(text).expect_err(text);
            assert!(refusal.0.contains(words), "{text}: {refusal}");
        }
    }
}

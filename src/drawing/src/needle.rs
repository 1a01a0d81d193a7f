//! Needles for the cartridge syringe.

use crate::fault::{Fault, length};
use crate::figure::block;
use crate::plate::{Ink, Mark, Part, Shape};
use crate::point::pt;
use serde::{Deserialize, Serialize};

/// A needle for the cartridge syringe, beside its sheath.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Needle {
    /// Gauge: 25, 27 or 30.
    pub gauge: u8,
    /// Length from the hub to the point, in millimetres.
    pub length: f32,
}

impl Needle {
    /// Outside diameter in millimetres by ISO 6009 (value from memory), for the gauges in use.
    #[must_use]
    pub const fn diameter(gauge: u8) -> Option<f32> {
        match gauge {
            25 => Some(0.5),
            27 => Some(0.4),
            30 => Some(0.3),
            _ => None,
        }
    }

    /// The shapes: point to the right, the sheath below; only the point when `close`.
    pub(crate) fn draw(self, close: bool) -> Result<Vec<Shape>, Fault> {
        length("length", self.length, 45.0)?;
        let Some(diameter) = Self::diameter(self.gauge) else {
            return Err(Fault::new("gauge", "is not one of 25, 27 and 30"));
        };
        let (r, l) = (diameter / 2.0, self.length);
        let tube = |from: f32, bevel: f32| {
            let outline = vec![pt(from, r), pt(l - bevel, r), pt(l, -r), pt(from, -r)];
            Shape::closed(Part::Working, Ink::Steel, outline)
        };
        let bevel = diameter * 3.0;
        let edge = Shape::lines(
            Part::Working,
            Ink::Edge,
            vec![vec![pt(l - bevel, r), pt(l, -r)]],
        );
        if close {
            return Ok(vec![tube(l - bevel * 2.5, bevel), edge]);
        }
        let body = |ink, outline| Shape::closed(Part::Body, ink, outline);
        let back = vec![
            pt(-12.0, r),
            pt(-18.0, r),
            pt(-18.0 - bevel, -r),
            pt(-12.0, -r),
        ];
        let hub = vec![
            pt(-12.0, 3.2),
            pt(-5.0, 3.2),
            pt(-4.0, 1.6),
            pt(0.0, 0.9),
            pt(0.0, -0.9),
            pt(-4.0, -1.6),
            pt(-5.0, -3.2),
            pt(-12.0, -3.2),
        ];
        let ribs = [-11.0, -9.5, -8.0, -6.5].map(|x| vec![pt(x, 3.2), pt(x, -3.2)]);
        let sheath = block(pt(-6.0, -12.5), l + 9.0, 5.0, 2.2);
        let words = Mark::Words {
            at: pt(l / 2.0 - 2.0, -10.0),
            size: 3.4,
            text: [&self.gauge.to_string(), " G"].concat(),
        };
        Ok(vec![
            body(Ink::Steel, back),
            tube(0.0, bevel),
            body(Ink::Accent, hub),
            Shape::lines(Part::Body, Ink::Soft, ribs.to_vec()),
            body(Ink::Clear, sheath),
            Shape {
                part: Part::Body,
                ink: Ink::Soft,
                mark: words,
            },
        ])
    }
}

//! Syringes of paste and of liquid.

use crate::fault::{Fault, length, length_or_none};
use crate::figure::block;
use crate::plate::{Ink, Shape};
use crate::point::pt;
use crate::spine::{Rod, Spine};
use crate::vessel::{body, label, rule};
use serde::{Deserialize, Serialize};

/// A syringe of paste or liquid, lying with its tip to the right.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct PasteSyringe {
    /// Outside diameter of the barrel in millimetres.
    pub diameter: f32,
    /// Length of the barrel in millimetres.
    pub length: f32,
    /// How much of the barrel is full, 0 to 1.
    pub full: f32,
    /// Length of the cannula in millimetres; 0 for a capped syringe.
    pub cannula: f32,
    /// Diameter of the cannula in millimetres.
    pub bore: f32,
    /// Bend of the cannula in degrees.
    #[serde(default)]
    pub bend: f32,
    /// Whether it keeps out light.
    #[serde(default)]
    pub dark: bool,
    /// A short generic label.
    #[serde(default)]
    pub label: String,
}

impl PasteSyringe {
    pub(crate) fn draw(&self) -> Result<Vec<Shape>, Fault> {
        length("diameter", self.diameter, 40.0)?;
        length("length", self.length, 140.0)?;
        length_or_none("cannula", self.cannula, 60.0)?;
        length("bore", self.bore, self.diameter)?;
        if !(0.0..=1.0).contains(&self.full) {
            return Err(Fault::new("full", "is not between 0 and 1"));
        }
        let (r, l) = (self.diameter / 2.0, self.length);
        let out = l * (1.0 - self.full * 0.9) * 0.55 + r;
        let barrel = block(pt(0.0, -r), l, self.diameter, r * 0.12);
        // The plunger has gone in as far as the paste is used up.
        let head = l * (1.0 - self.full) * 0.9 + 1.0;
        let stem = |y: f32| vec![pt(head, y), pt(0.0, y)];
        let rod = block(
            pt(-l * self.full * 0.8 - out * 0.2, -r * 0.4),
            l * self.full * 0.8 + out * 0.2,
            r * 0.8,
            0.0,
        );
        let thumb = -l * self.full * 0.8 - out * 0.2 - 2.0;
        let mut shapes = vec![
            body(Ink::Clear, rod),
            body(Ink::Steel, block(pt(thumb, -r * 0.95), 2.2, r * 1.9, 0.8)),
            body(if self.dark { Ink::Steel } else { Ink::Clear }, barrel),
        ];
        if !self.dark {
            shapes.push(body(
                Ink::Accent,
                block(pt(head + 2.0, -r * 0.86), l - head - 2.6, r * 1.72, 0.0),
            ));
            shapes.push(body(
                Ink::Solid,
                block(pt(head, -r * 0.86), 2.0, r * 1.72, 0.5),
            ));
            shapes.push(rule(vec![stem(r * 0.4), stem(-r * 0.4)]));
        }
        shapes.push(body(
            Ink::Steel,
            block(pt(-1.2, -r * 1.75), 2.4, r * 3.5, 1.0),
        ));
        shapes.extend(self.draw_front(r, l)?);
        if !self.label.is_empty() {
            let (from, to) = (l * 0.3, l * 0.92);
            shapes.push(body(
                Ink::Clear,
                block(pt(from, -r * 0.7), to - from, r * 1.4, r * 0.1),
            ));
            shapes.extend(label(
                &self.label,
                pt(f32::midpoint(from, to), 0.0),
                (to - from) * 0.92,
                r * 1.3,
            ));
        }
        Ok(shapes)
    }

    fn draw_front(&self, r: f32, l: f32) -> Result<Vec<Shape>, Fault> {
        let cone = vec![
            pt(l, -r * 0.5),
            pt(l + r * 0.9, -r * 0.34),
            pt(l + r * 0.9, r * 0.34),
            pt(l, r * 0.5),
        ];
        let mut shapes = vec![body(Ink::Clear, cone)];
        if self.cannula <= 0.0 {
            let cap = block(pt(l + r * 0.3, -r * 0.55), r * 2.0, r * 1.1, r * 0.4);
            shapes.push(body(Ink::Accent, cap));
            return Ok(shapes);
        }
        let hub = l + r * 0.4;
        let bore = self.bore / 2.0;
        let mut spine = Spine::lay(pt(hub, 0.0), 0.0, &[], 0.0)?;
        spine.run(r * 1.6 + self.cannula * 0.35, 0.0);
        spine.bend(-self.bend, (bore * 2.0).max(0.8));
        spine.run(self.cannula * 0.65, 0.0);
        let widths = [
            [0.0, r * 0.55],
            [r * 1.1, r * 0.42],
            [r * 1.6, bore],
            [spine.end().s, bore],
        ];
        let rod = Rod {
            spine: &spine,
            widths: &widths,
            smooth: false,
            round: [false, false],
            from: 0.0,
        };
        shapes.push(body(Ink::Steel, rod.outline()?));
        shapes.push(rule(vec![rod.band(r * 1.1), rod.band(r * 1.6)]));
        Ok(shapes)
    }
}

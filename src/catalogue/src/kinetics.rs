//! How a two-part material behaves while it is mixed by hand: what its units
//! weigh, what it is mixed to, and what makes it faster or slower.
//!
//! Every value names its source. Where nothing is published a value is our own
//! inference and the whole course in time is marked an illustration; effects
//! of which nothing is known are left out, and then do nothing.

use crate::{
    ids::{ItemId, SourceId},
    quantity::{Milli, Span},
};
use serde::{Deserialize, Serialize};

/// The source key of values that nobody has published.
pub const OWN_INFERENCE: &str = "own-inference";

/// A value and who says so.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Stated {
    /// The value; its unit is in the description of the field that holds it.
    pub is: Milli,
    /// Where it is from.
    pub source: SourceId,
}

impl Stated {
    /// The value as a number for reckoning.
    pub fn number(&self) -> f64 {
        f64::from(self.is.0) / 1000.0
    }

    /// Whether nobody has published it.
    pub fn is_own_inference(&self) -> bool {
        self.source.as_str() == OWN_INFERENCE
    }
}

/// How thick a mix is: one scale for all materials, from thin to hard.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Consistency {
    /// It flows off the spatula.
    Runny,
    /// It spreads in a thin film and keeps a trace.
    Creamy,
    /// It draws a string between spatula and slab.
    String,
    /// It clings to spatula and gloves and pulls long strings.
    Sticky,
    /// It rolls into a ball and holds its shape.
    Putty,
    /// It can barely be pressed.
    Stiff,
    /// It breaks when it is pressed.
    Crumbly,
    /// It is hard.
    Set,
}

/// On what a material is mixed.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Surface {
    /// A coated paper pad, at the temperature of the room.
    Pad,
    /// A thick glass slab, which can be cooled.
    Slab,
    /// A flexible bowl, at the temperature of the room.
    Bowl,
}

/// Over how much of the surface it is worked.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Area {
    /// In one spot.
    Small,
    /// Over most of the surface, which draws heat off.
    Wide,
}

/// The colour of a part or of the mix: a token that the look gives a shade.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Tint {
    /// Colourless.
    Clear,
    /// White.
    White,
    /// Off-white.
    Ivory,
    /// Pale yellow.
    Cream,
    /// Yellow, as model stone.
    Yellow,
    /// Yellow-brown, as eugenol.
    Amber,
    /// Brown.
    Brown,
    /// Grey.
    Grey,
    /// Pink.
    Pink,
}

/// One of the two parts.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Part {
    /// What it is called: `powder`, `base paste`.
    pub name: String,
    /// In what it is measured out: `level scoop`, `drop`.
    pub unit: String,
    /// What one unit weighs, in grams.
    pub grams: Stated,
    /// Its colour.
    pub tint: Tint,
}

/// What may still be done with a mix that is too thin.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum IfThin {
    /// More powder is worked in.
    AddPowder,
    /// Liquid is drawn off with a dry pellet.
    DrawOff,
    /// Nothing: it is thrown away and measured anew.
    MeasureAnew,
}

/// What may still be done with a mix that is too thick though it is fresh.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum IfThick {
    /// A trace of its liquid is added.
    AddLiquid,
    /// Nothing: it is thrown away.
    MeasureAnew,
}

/// Where the setting time of a use was counted.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum SetsAt {
    /// In the mouth, at 37 °C, once it is mixed.
    Mouth,
    /// On the bench, at the temperature of the room.
    Bench,
}

/// The temperature that a published line runs over.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Over {
    /// Of the room.
    Room,
    /// Of the water.
    Water,
}

/// A published straight line: setting time in seconds over a temperature in °C.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Line {
    /// Over which temperature.
    pub over: Over,
    /// Its height at 0 °C, in seconds; only a way to write the line, no forecast.
    pub at_zero: Stated,
    /// Its slope, in seconds a degree.
    pub per_degree: Stated,
    /// The temperatures measured, in whole °C; outside them the line is an extrapolation.
    pub range: Span,
    /// Single values measured, which the line need not meet.
    #[serde(default)]
    pub measured: Vec<Measured>,
}

/// A measured setting time.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Measured {
    /// The temperature, in °C.
    pub degrees: Milli,
    /// The setting time, in seconds.
    pub seconds: Stated,
}

/// Why a mix does harm, beyond being of no use.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Harm {
    /// The sentence.
    pub because: String,
    /// Where this is from.
    pub sources: Vec<SourceId>,
}

/// What a material is mixed for. The first of a material is its usual one.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Use {
    /// Its key within the material.
    pub id: String,
    /// What it is called: `temporary filling`.
    pub name: String,
    /// How thick it has to be when it is handed over.
    pub consistency: Consistency,
    /// Units of powder, or of base, in one mix.
    pub powder_units: Stated,
    /// Units of liquid, or of accelerator, in one mix.
    pub liquid_units: Stated,
    /// The shares of the powder in the order they are brought in; they add up to 1.
    pub portions: Vec<Milli>,
    /// How long mixing takes, in seconds; as the material's where it is not said.
    pub mix_seconds: Option<Span>,
    /// Working time from the start of the mix, in seconds; as the material's where it is not said.
    pub work_seconds: Option<Span>,
    /// The working time that is reckoned with, in seconds; within the span.
    pub works: Stated,
    /// The setting time that is reckoned with, in seconds from the start of the mix.
    pub sets: Option<Stated>,
    /// Where that is counted.
    pub sets_at: SetsAt,
    /// Published lines of the setting time. The first gives it outright; a further
    /// one adds its slope for each degree that its water differs from the room.
    #[serde(default)]
    pub lines: Vec<Line>,
    /// Where this is from.
    pub sources: Vec<SourceId>,
}

/// How a material behaves while it is mixed. A rate of 1 is that of the
/// published way at 23 °C and 50 % humidity; effects multiply it.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Kinetics {
    /// The material.
    pub material: ItemId,
    /// Whether the course in time is an illustration, for want of published kinetics.
    pub illustration: bool,
    /// The part that is brought in: powder, or base paste.
    pub powder: Part,
    /// The part it is brought into: liquid, or accelerator paste.
    pub liquid: Part,
    /// The colour once it is mixed.
    pub tint: Tint,
    /// On what it can be mixed; the usual first.
    pub surfaces: Vec<Surface>,
    /// The temperature of the surface in the published way, in °C; that of the room where it is not said.
    pub surface_degrees: Option<Stated>,
    /// Over how much of it.
    pub area: Area,
    /// How it shines when it is fresh, from 0 to 1.
    pub gloss: Stated,
    /// By how many words of the scale of consistency it thickens when its powder doubles.
    pub thickens: Stated,
    /// By what part each degree of the mix makes it faster, compounded.
    pub per_degree: Option<Stated>,
    /// The temperature beyond which more warmth makes it no faster, in °C.
    pub fastest_at: Option<Stated>,
    /// By what part moisture of the air makes it faster, from half to fully damp.
    pub moisture: Option<Stated>,
    /// By what part water that condensed on a cold slab makes it faster, at most.
    pub water_speeds: Option<Stated>,
    /// By what part it is faster when its powder doubles.
    pub powder_speeds: Option<Stated>,
    /// By what part the hardest spatulation makes it faster while it lasts.
    pub stroke_speeds: Option<Stated>,
    /// By how many degrees its own heat would warm it, were all powder wetted at once.
    pub heat: Option<Stated>,
    /// How many times faster it is in the wet mouth than its warmth alone makes it.
    pub mouth_speeds: Option<Stated>,
    /// What part of its water it loses to dry air in a minute.
    pub dries: Option<Stated>,
    /// What may be done when it is too thin.
    pub if_thin: IfThin,
    /// What may be done when it is too thick though fresh.
    pub if_thick: IfThick,
    /// Whether the liquid must not stand before it is mixed.
    #[serde(default)]
    pub liquid_last: bool,
    /// Why a thin mix does harm, where it does.
    pub thin_harm: Option<Harm>,
    /// What it is mixed for.
    pub uses: Vec<Use>,
    /// Where this is from.
    pub sources: Vec<SourceId>,
}

impl Kinetics {
    /// The values that give the course in time, by the name of their field.
    pub fn rates(&self) -> [(&'static str, Option<&Stated>); 8] {
        [
            ("per-degree", self.per_degree.as_ref()),
            ("fastest-at", self.fastest_at.as_ref()),
            ("moisture", self.moisture.as_ref()),
            ("water-speeds", self.water_speeds.as_ref()),
            ("powder-speeds", self.powder_speeds.as_ref()),
            ("stroke-speeds", self.stroke_speeds.as_ref()),
            ("mouth-speeds", self.mouth_speeds.as_ref()),
            ("dries", self.dries.as_ref()),
        ]
    }

    /// A use by its key.
    pub fn use_of(&self, id: &str) -> Option<&Use> {
        self.uses.iter().find(|u| u.id == id)
    }
}

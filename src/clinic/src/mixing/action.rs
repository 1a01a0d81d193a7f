//! What can be done at the bench, as data: a list of these is a replay.

use super::units::{Celsius, Millis, Seconds, Share, Units};
use catalogue::kinetics::{Area, Surface};
use serde::{Deserialize, Serialize};

/// How hard it is worked, in per cent; kept in tens, so that the unsteady hand
/// of a gesture does not fill the log.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(from = "u8", into = "u8")]
pub struct Vigour(u8);

impl Vigour {
    /// Lightly.
    pub const GENTLE: Self = Self(30);
    /// As the handbooks mean it: firm strokes.
    pub const FIRM: Self = Self(60);
    /// Stropping hard.
    pub const HARD: Self = Self(90);

    /// From a per cent, to the nearest ten, 100 at most.
    pub fn per_cent(value: u8) -> Self {
        Self(value.min(100).saturating_add(5) / 10 * 10)
    }

    /// From 0 to 1.
    pub fn get(self) -> f64 {
        f64::from(self.0) / 100.0
    }
}

impl From<u8> for Vigour {
    fn from(value: u8) -> Self {
        Self::per_cent(value)
    }
}

impl From<Vigour> for u8 {
    fn from(vigour: Vigour) -> Self {
        vigour.0
    }
}

/// How it is worked.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Stroke {
    /// How hard.
    pub vigour: Vigour,
    /// Over how much of the surface.
    pub area: Area,
}

/// One thing done. Times lie in `Spatulate`, `Wait` and `Cure` alone; the rest
/// takes none.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub enum Action {
    /// Lays the surface out, cooled or not; before powder and liquid meet.
    LayOut {
        /// On what.
        surface: Surface,
        /// Its temperature; a pad and a bowl have that of the room.
        temperature: Celsius,
    },
    /// Takes water of this temperature; before powder and liquid meet.
    WaterAt(Celsius),
    /// Puts powder, or base, on the surface.
    DispensePowder(Units),
    /// Puts liquid, or accelerator, beside it.
    DispenseLiquid(Units),
    /// Brings in this share of the powder that was dispensed, or what is left of it.
    BringIn(Share),
    /// Works the mass.
    Spatulate {
        /// How.
        stroke: Stroke,
        /// How long.
        lasts: Millis,
    },
    /// Lets it lie.
    Wait(Millis),
    /// Rolls the putty or draws the string, to see.
    Test,
    /// Adds more powder to the mass.
    AddPowder(Units),
    /// Adds more liquid to the mass.
    AddLiquid(Units),
    /// Draws this share of the liquid out of the mass with a dry pellet.
    DrawOff(Share),
    /// Holds the curing light over it.
    Cure(Millis),
    /// Throws everything away, and wipes surface and spatula clean.
    Discard,
    /// Hands it over.
    HandOver {
        /// When the dentist is ready, on the clock of the mix.
        ready: Seconds,
        /// How long placing takes.
        placing: Seconds,
    },
}

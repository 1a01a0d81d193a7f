//! What lies on the bench beside the mass, what happened to it, and where every gram is.

use super::units::Grams;
use catalogue::kinetics::Surface;

/// What lies on the bench beside the mass.
#[derive(Clone, Copy, Debug)]
pub(super) struct Bench {
    pub surface: Surface,
    pub degrees: f64,
    pub water: f64,
    pub powder: f64,
    pub liquid: f64,
    /// When the liquid was put out, on the clock.
    pub liquid_since: Option<f64>,
    /// Grams dispensed since the bench was last clean.
    pub powder_out: f64,
    pub liquid_out: f64,
    pub powder_ever: f64,
    pub liquid_ever: f64,
    pub drawn_off: f64,
    pub discarded: f64,
}

/// What happened to the mass, for the verdict.
#[derive(Clone, Copy, Debug, Default)]
pub(super) struct Course {
    /// When powder and liquid met, on the clock.
    pub begun: Option<f64>,
    /// When its working time was over, on the clock.
    pub over: Option<f64>,
    /// When it had set, on the clock.
    pub set: Option<f64>,
    /// The first share of the powder brought in.
    pub first_share: Option<f64>,
    /// Grams of liquid added to the mass, and how ripe it was then.
    pub thinned: Option<f64>,
    /// How long the liquid had stood when it was used.
    pub liquid_stood: f64,
    /// How often everything was thrown away.
    pub discards: u32,
}

/// The hand-over.
#[derive(Clone, Copy, Debug)]
pub(super) struct Handed {
    pub at: f64,
    pub ready: f64,
    pub placing: f64,
}

/// Where every gram is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Ledger {
    /// Powder dispensed, from the start.
    pub powder_dispensed: Grams,
    /// Liquid dispensed, from the start.
    pub liquid_dispensed: Grams,
    /// Powder that lies beside the mass.
    pub powder_beside: Grams,
    /// Liquid that lies beside the mass.
    pub liquid_beside: Grams,
    /// Powder in the mass, wetted or not.
    pub powder_in: Grams,
    /// Liquid in the mass.
    pub liquid_in: Grams,
    /// Water lost to the air.
    pub lost: Grams,
    /// Liquid drawn off.
    pub drawn_off: Grams,
    /// Thrown away.
    pub discarded: Grams,
}

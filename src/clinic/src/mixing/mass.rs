//! The mass on the surface, and one step of time in it.

use super::recipe::{MOUTH, Recipe};
use catalogue::kinetics::{Area, Surface};

/// What surrounds the mass.
#[derive(Clone, Copy, Debug)]
pub(super) struct Setting {
    pub surface: Surface,
    /// Of the surface, in °C.
    pub degrees: f64,
    /// Of the air, in per cent.
    pub humidity: f64,
    /// How far the slab is below the dew point, in degrees; 0 where it is not.
    pub below_dew: f64,
    /// The rate by a published line, where there is one.
    pub line_rate: Option<f64>,
    pub in_mouth: bool,
}

/// The hand on the mass.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Hand {
    pub vigour: f64,
    pub area: Area,
}

/// The mass. Grams, °C and seconds.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub(super) struct Mass {
    /// Powder in it, dry or wetted.
    pub powder: f64,
    /// Of that, not wetted yet; of two pastes, not blended yet.
    pub dry: f64,
    pub liquid: f64,
    /// Water lost to the air.
    pub lost: f64,
    pub temperature: f64,
    /// The warmest it has been on the surface.
    pub warmest: f64,
    /// How far the reaction is: seconds of the published way.
    pub ripe: f64,
    /// Work put in: seconds at full vigour.
    pub work: f64,
    /// Seconds under the spatula.
    pub worked: f64,
    /// Condensed water worked in, in degrees below the dew point that it came from.
    pub damp: f64,
    /// Seconds since powder and liquid met.
    pub age: f64,
    /// Seconds under the light.
    pub lit: f64,
}

/// How many seconds of strokes take up most of the water on a slab.
const TAKES_UP: f64 = 5.0;
/// By how much a large lot clumps: a full lot is wetted so much more slowly.
const CLUMPS: f64 = 1.0;
/// Of what is dry, how many e-folds the published strokes wet of each portion.
const FOLDS: f64 = 5.0;

impl Mass {
    /// One step of `dt` seconds.
    pub fn step(&mut self, recipe: &Recipe, setting: &Setting, hand: Option<Hand>, dt: f64) {
        let vigour = hand.map_or(0.0, |h| h.vigour);
        let rate = recipe.pace(self, setting, vigour).rate();
        if let Some(hand) = hand {
            self.wet(recipe, hand, dt);
            self.work += hand.vigour * dt;
            self.worked += dt;
            self.damp += (setting.below_dew - self.damp).max(0.0) * (dt / TAKES_UP);
        }
        self.breathe(recipe, setting, hand, dt);
        self.ripe += rate * dt;
        self.age += dt;
    }

    /// The spatula wets what is dry: a large lot clumps and takes longer. What is wetted gives off heat.
    fn wet(&mut self, recipe: &Recipe, hand: Hand, dt: f64) {
        let whole = recipe.ratio() * self.liquid;
        if self.dry <= 0.0 || whole <= 0.0 {
            return;
        }
        let portions = f64::from(u32::try_from(recipe.target.portions.len()).unwrap_or(1));
        let firm = 0.6 * f64::from(recipe.mix_seconds().middle()) / portions;
        let clump = if recipe.is_pastes() { 0.0 } else { CLUMPS };
        let rate = FOLDS / firm / (1.0 + clump * self.dry / whole);
        let wetted = self.dry * (rate * hand.vigour * dt).min(1.0);
        self.dry -= wetted;
        self.temperature += recipe.rates.heat * wetted / whole;
    }

    /// Heat goes to the surface, water to the air.
    fn breathe(&mut self, recipe: &Recipe, setting: &Setting, hand: Option<Hand>, dt: f64) {
        let (around, seconds) = if setting.in_mouth {
            (MOUTH, 5.0)
        } else {
            let area = hand.map_or(recipe.kinetics.area, |h| h.area);
            (setting.degrees, Recipe::heat_seconds(setting.surface, area))
        };
        self.temperature += (around - self.temperature) * (dt / seconds).min(1.0);
        if !setting.in_mouth {
            self.warmest = self.warmest.max(self.temperature);
            let dryness = (100.0 - setting.humidity) / 50.0;
            let gone = self.liquid * recipe.rates.dries / 60.0 * dryness * dt;
            self.liquid -= gone;
            self.lost += gone;
        }
    }

    /// How well it is mixed through, from 0 to 1: nothing dry, and enough strokes.
    pub fn homogeneity(&self, recipe: &Recipe) -> f64 {
        if self.powder <= 0.0 {
            return 0.0;
        }
        let least = 0.6 * f64::from(recipe.mix_seconds().from.max(4)) / 4.0;
        let strokes = 1.0 - super::arithmetic::exp(-self.work / least);
        (1.0 - self.dry / self.powder) * strokes
    }
}

//! A material and a use made ready for reckoning: plain numbers, and how ripe
//! a mix is when its working time is over and when it has set.

use super::{
    arithmetic::exp,
    mass::{Mass, Setting},
    room::Room,
    way,
};
use catalogue::{
    Catalogue,
    ids::ItemId,
    items::Mixing,
    kinetics::{Area, Kinetics, Over, Stated, Surface, Use},
    quantity::Span,
};

/// The temperature of the mouth, in °C.
pub const MOUTH: f64 = 37.0;

/// A material and what it is mixed for.
#[derive(Clone, Debug)]
pub struct Recipe {
    /// What the material is called.
    pub name: String,
    /// How it behaves.
    pub kinetics: Kinetics,
    /// How it is brought to use.
    pub mixing: Mixing,
    /// What it is mixed for.
    pub target: Use,
    pub(super) rates: Rates,
    /// How ripe it is when its working time is over, in seconds of the published way.
    pub(super) ripe_works: f64,
    /// How ripe it is when it has set; none where only light sets it.
    pub(super) ripe_sets: Option<f64>,
}

/// The effects as numbers; 0 where nothing is known.
#[derive(Clone, Copy, Debug)]
pub(super) struct Rates {
    per_degree: f64,
    fastest_at: f64,
    reference: f64,
    moisture: f64,
    water: f64,
    powder: f64,
    stroke: f64,
    mouth: f64,
    pub heat: f64,
    pub dries: f64,
}

/// What makes a mix faster at one moment, each as a factor.
#[derive(Clone, Copy, Debug)]
pub(super) struct Pace {
    pub warmth: f64,
    pub moisture: f64,
    pub water: f64,
    pub powder: f64,
    pub stroke: f64,
    pub mouth: f64,
}

impl Pace {
    pub fn rate(self) -> f64 {
        self.warmth * self.moisture * self.water * self.powder * self.stroke * self.mouth
    }
}

impl Rates {
    fn of(kinetics: &Kinetics) -> Self {
        let number = |s: &Option<Stated>| s.as_ref().map_or(0.0, Stated::number);
        Self {
            per_degree: number(&kinetics.per_degree),
            fastest_at: kinetics
                .fastest_at
                .as_ref()
                .map_or(MOUTH + 63.0, Stated::number),
            reference: kinetics
                .surface_degrees
                .as_ref()
                .map_or(Room::usual().temperature.get(), Stated::number),
            moisture: number(&kinetics.moisture),
            water: number(&kinetics.water_speeds),
            powder: number(&kinetics.powder_speeds),
            stroke: number(&kinetics.stroke_speeds),
            mouth: kinetics.mouth_speeds.as_ref().map_or(1.0, Stated::number),
            heat: number(&kinetics.heat),
            dries: number(&kinetics.dries),
        }
    }
}

impl Recipe {
    /// A material for a use; for its usual one where none is named.
    ///
    /// # Errors
    /// A sentence, where the catalogue does not say how the material behaves or has no such use.
    pub fn new(catalogue: &Catalogue, id: &ItemId, usage: Option<&str>) -> Result<Self, String> {
        let name = catalogue.item_name(id).to_owned();
        let kinetics = catalogue
            .kinetics
            .iter()
            .find(|k| k.material == *id)
            .ok_or_else(|| {
                format!("{name} is not mixed step by step here; choose another material.")
            })?;
        let mixing = catalogue
            .material(id)
            .and_then(|m| m.mixing.as_ref())
            .ok_or_else(|| format!("{name} has no mixing data; choose another material."))?;
        let target = match usage {
            Some(key) => kinetics.use_of(key),
            None => kinetics.uses.first(),
        }
        .ok_or_else(|| {
            format!(
                "{name} is not mixed for '{}' here; choose another use.",
                usage.unwrap_or("any use")
            )
        })?;
        let mut recipe = Self {
            name,
            rates: Rates::of(kinetics),
            kinetics: kinetics.clone(),
            mixing: mixing.clone(),
            target: target.clone(),
            ripe_works: 0.0,
            ripe_sets: None,
        };
        (recipe.ripe_works, recipe.ripe_sets) = way::ripeness(&recipe);
        Ok(recipe)
    }

    /// How long mixing takes.
    pub fn mix_seconds(&self) -> Span {
        self.target.mix_seconds.unwrap_or(self.mixing.mix_seconds)
    }

    /// How long it can be worked, from the start of the mix.
    pub fn work_seconds(&self) -> Span {
        self.target.work_seconds.unwrap_or(self.mixing.work_seconds)
    }

    /// Grams of powder to a gram of liquid in the published way.
    pub(super) fn ratio(&self) -> f64 {
        self.powder_grams() / self.liquid_grams()
    }

    /// Grams of powder in one mix of the published way.
    pub(super) fn powder_grams(&self) -> f64 {
        self.target.powder_units.number() * self.kinetics.powder.grams.number()
    }

    /// Grams of liquid in one mix of the published way.
    pub(super) fn liquid_grams(&self) -> f64 {
        self.target.liquid_units.number() * self.kinetics.liquid.grams.number()
    }

    /// Whether it is mixed of two pastes.
    pub(super) fn is_pastes(&self) -> bool {
        self.kinetics.liquid.name.contains("paste")
    }

    /// The temperature of its surface in the published way, in a room.
    pub(super) fn usual_degrees(&self, room: Room) -> f64 {
        self.kinetics
            .surface_degrees
            .as_ref()
            .map_or(room.temperature.get(), Stated::number)
    }

    /// The setting time by the published lines, in seconds; none where there are none.
    pub(super) fn line_seconds(&self, room: f64, water: f64) -> Option<f64> {
        let (first, more) = self.target.lines.split_first()?;
        let at = match first.over {
            Over::Room => room,
            Over::Water => water,
        };
        let height = first.at_zero.number() + first.per_degree.number() * at;
        let further: f64 = more
            .iter()
            .filter(|l| l.over == Over::Water)
            .map(|l| l.per_degree.number() * (water - room))
            .sum();
        // A line drawn far beyond its range would reach 0; nothing sets in less than this.
        Some((height + further).max(10.0))
    }

    /// How fast it ripens, factor by factor.
    pub(super) fn pace(&self, mass: &Mass, setting: &Setting, vigour: f64) -> Pace {
        let r = self.rates;
        let warmth = match setting.line_rate {
            Some(rate) => rate,
            None if r.per_degree > 0.0 => {
                exp(r.per_degree * (mass.temperature.min(r.fastest_at) - r.reference))
            }
            None => 1.0,
        };
        let damp = mass.damp / (mass.damp + 1.0);
        Pace {
            warmth,
            moisture: (1.0 + r.moisture * (setting.humidity - 50.0) / 50.0).max(0.3),
            water: 1.0 + r.water * damp,
            powder: (1.0 + r.powder * (self.part_of_ratio(mass) - 1.0)).clamp(0.4, 1.8),
            stroke: 1.0 + r.stroke * vigour,
            mouth: if setting.in_mouth { r.mouth } else { 1.0 },
        }
    }

    /// Wetted powder to liquid, as a part of the published ratio.
    pub(super) fn part_of_ratio(&self, mass: &Mass) -> f64 {
        if mass.liquid > 0.0 {
            (mass.powder - mass.dry) / mass.liquid / self.ratio()
        } else {
            0.0
        }
    }

    /// How many seconds the mass takes to come to its surface's temperature, to about two thirds.
    /// Ours: a thick slab draws heat off, most of all from a thin film; a pad keeps it.
    pub(super) fn heat_seconds(surface: Surface, area: Area) -> f64 {
        match (surface, area) {
            (Surface::Slab, Area::Wide) => 8.0,
            (Surface::Slab, Area::Small) => 25.0,
            (Surface::Pad, Area::Wide) => 40.0,
            (Surface::Pad, Area::Small) => 60.0,
            (Surface::Bowl, _) => 120.0,
        }
    }
}

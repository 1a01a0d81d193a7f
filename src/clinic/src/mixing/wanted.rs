//! How a mix is wanted at the chair: in which visit, when, and for how long
//! the dentist places it.

use super::{
    causes::counted,
    mix::Mix,
    offer::Offer,
    recipe::Recipe,
    units::{Celsius, PerCent, Seconds},
};
use crate::{Clinic, timing::Window};
use catalogue::ids::ProcedureId;

/// How long before the latest start of the mix the bench is opened, in seconds:
/// time to lay out and to measure. Custom, no source.
const LEAD: u32 = 60;

/// Temperatures of a room to choose from, in °C: cool, usual, a hot summer.
pub const WARMTHS: [f64; 3] = [18.0, 23.0, 30.0];

/// Humidities to choose from, in per cent: dry, usual, damp.
pub const DAMPS: [f64; 3] = [30.0, 50.0, 80.0];

/// The competency that a mix speaks for.
pub const COMPETENCY: &str = "mixing";

/// How a mix is wanted.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Wanted {
    /// The procedure it is mixed in; none where no procedure mixes it.
    pub procedure: Option<ProcedureId>,
    /// When the dentist is ready, on the clock of the mix.
    pub ready: Seconds,
    /// How long placing takes.
    pub placing: Seconds,
    /// Whether the temperature of the room changes how it goes.
    pub warmth: bool,
    /// Whether the humidity of the room does.
    pub damp: bool,
}

impl Clinic {
    /// How a material is wanted at the chair, in the first procedure that mixes
    /// it, for the usual patient.
    pub fn wanted(&self, offer: &Offer) -> Wanted {
        let usual = self.usual_patient();
        let found = self.catalogue().procedures.iter().find_map(|procedure| {
            let line = self.timeline(&procedure.id, &usual);
            let mut windows = line.windows.into_iter();
            let window = windows.find(|it| it.material == offer.material)?;
            Some((procedure.id.clone(), window))
        });
        let recipe = Recipe::new(self.catalogue(), &offer.material, Some(&offer.usage)).ok();
        let kinetics = recipe.as_ref().map(|it| &it.kinetics);
        let lines = recipe
            .as_ref()
            .is_some_and(|it| !it.target.lines.is_empty());
        let (ready, placing) = match &found {
            Some((_, window)) => {
                let window = Window {
                    mix: offer.mix,
                    ..window.clone()
                };
                let before = i64::from(offer.mix.middle() + LEAD);
                Mix::moment(&window, i64::from(window.ready) - before)
            }
            None => (
                Seconds::of(f64::from(offer.mix.middle() + LEAD)),
                Seconds::of(0.0),
            ),
        };
        Wanted {
            procedure: found.map(|(id, _)| id),
            ready,
            placing,
            warmth: lines || kinetics.is_some_and(|k| k.per_degree.is_some()),
            damp: kinetics.is_some_and(|k| {
                k.moisture.is_some() || k.water_speeds.is_some() || k.dries.is_some()
            }),
        }
    }
}

impl Mix {
    /// What lies measured out beside the mass, in units: `2 level scoops of
    /// powder, 3 drops of liquid`; empty where nothing does.
    pub fn beside(&self) -> String {
        let k = &self.recipe.kinetics;
        let ledger = self.ledger();
        let parts = [
            (&k.powder, ledger.powder_beside),
            (&k.liquid, ledger.liquid_beside),
        ];
        let said = parts
            .iter()
            .filter(|(_, grams)| grams.get() > 0.0)
            .map(|(part, grams)| {
                let units = (grams.get() / part.grams.number() * 100.0).round() / 100.0;
                format!("{} of {}", counted(units, &part.unit), part.name)
            });
        said.collect::<Vec<_>>().join(", ")
    }

    /// On what it is mixed and how warm that is, in words.
    pub fn lies_on(&self) -> String {
        let degrees = Celsius::of(self.bench.degrees);
        match self.bench.surface {
            catalogue::kinetics::Surface::Pad => "On a coated paper pad".into(),
            catalogue::kinetics::Surface::Slab => format!("On a glass slab of {degrees}"),
            catalogue::kinetics::Surface::Bowl => {
                format!(
                    "In a rubber bowl, with water of {}",
                    Celsius::of(self.bench.water)
                )
            }
        }
    }

    /// The room in words: `23 °C, 50 %`.
    pub fn room_said(&self) -> String {
        let humidity: PerCent = self.room.humidity;
        format!("{}, {humidity} humidity", self.room.temperature)
    }
}

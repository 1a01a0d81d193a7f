//! A mix being made: actions go in, and what can be seen comes out.

use super::{
    action::{Action, Stroke},
    bench::{Bench, Course, Handed},
    judge,
    mass::Mass,
    recipe::Recipe,
    room::Room,
    seen::{self, TestSeen},
    units::{Millis, Seconds, Share, Units},
    verdict::Verdict,
    way,
};
use catalogue::{Catalogue, ids::ItemId, kinetics::Surface};

/// The time step, in milliseconds.
const TICK: Millis = Millis(20);

/// A mix being made.
#[derive(Clone, Debug)]
pub struct Mix {
    pub(super) recipe: Recipe,
    pub(super) room: Room,
    pub(super) bench: Bench,
    pub(super) mass: Mass,
    pub(super) course: Course,
    pub(super) handed: Option<Handed>,
    pub(super) verdict: Option<Verdict>,
    pub(super) tick: Millis,
    pub(super) clock: u32,
    pub(super) pending: u32,
    pub(super) log: Vec<Action>,
}

impl Mix {
    /// A clean bench for a material. `usage` names what it is mixed for; its usual use where it is not named.
    ///
    /// # Errors
    /// A sentence: the material is not mixed here, it has no such use, or nobody works in such a room.
    pub fn new(
        catalogue: &Catalogue,
        material: &ItemId,
        usage: Option<&str>,
        room: Room,
    ) -> Result<Self, String> {
        Ok(Self::of(
            Recipe::new(catalogue, material, usage)?,
            room.checked()?,
        ))
    }

    /// A clean bench for a recipe that is ready, in a room that was [checked](Room::checked).
    pub fn of(recipe: Recipe, room: Room) -> Self {
        let degrees = room.temperature.get();
        Self {
            bench: Bench {
                surface: way::surface(&recipe),
                degrees: recipe.usual_degrees(room),
                water: degrees,
                powder: 0.0,
                liquid: 0.0,
                liquid_since: None,
                powder_out: 0.0,
                liquid_out: 0.0,
                powder_ever: 0.0,
                liquid_ever: 0.0,
                drawn_off: 0.0,
                discarded: 0.0,
            },
            recipe,
            room,
            mass: Mass::default(),
            course: Course::default(),
            handed: None,
            verdict: None,
            tick: TICK,
            clock: 0,
            pending: 0,
            log: Vec::new(),
        }
    }

    /// The same bench with another time step, to check that the step does not matter.
    #[must_use]
    pub fn with_tick(mut self, tick: Millis) -> Self {
        self.tick = Millis(tick.0.max(1));
        self
    }

    /// Does one thing.
    ///
    /// # Errors
    /// A sentence that says why it cannot be done now; nothing has changed then.
    pub fn act(&mut self, action: Action) -> Result<(), String> {
        self.refuse(action)?;
        if !self.continues(action) {
            self.flush();
        }
        match action {
            Action::LayOut {
                surface,
                temperature,
            } => {
                self.bench.surface = surface;
                self.bench.degrees = if surface == Surface::Slab {
                    temperature.get()
                } else {
                    self.room.temperature.get()
                };
            }
            Action::WaterAt(temperature) => self.bench.water = temperature.get(),
            Action::DispensePowder(units) => self.powder(units),
            Action::DispenseLiquid(units) => self.liquid(units),
            Action::BringIn(share) => self.bring(share),
            Action::AddPowder(units) => {
                let beside = self.bench.powder;
                self.powder(units);
                let grams = self.bench.powder - beside;
                self.bench.powder = beside;
                self.mass.powder += grams;
                self.mass.dry += grams;
            }
            Action::AddLiquid(units) => {
                self.liquid(units);
                self.course.thinned.get_or_insert(self.mass.ripe);
                self.mass.liquid += std::mem::take(&mut self.bench.liquid);
            }
            Action::DrawOff(share) => {
                let grams = self.mass.liquid * share.get();
                self.mass.liquid -= grams;
                self.bench.drawn_off += grams;
            }
            Action::Spatulate { lasts, .. } | Action::Wait(lasts) | Action::Cure(lasts) => {
                self.pass(action, lasts);
            }
            Action::Discard => self.clear(),
            Action::HandOver { ready, placing } => {
                self.handed = Some(Handed {
                    at: self.clock().get(),
                    ready: ready.get(),
                    placing: placing.get(),
                });
                self.verdict = Some(judge::verdict(self));
            }
            Action::Test => {}
        }
        self.record(action);
        Ok(())
    }

    /// Puts powder, or base, on the surface.
    ///
    /// # Errors
    /// See [`Mix::act`]; so with all that follow.
    pub fn dispense_powder(&mut self, units: Units) -> Result<(), String> {
        self.act(Action::DispensePowder(units))
    }

    /// Puts liquid, or accelerator, beside it.
    ///
    /// # Errors
    /// See [`Mix::act`].
    pub fn dispense_liquid(&mut self, units: Units) -> Result<(), String> {
        self.act(Action::DispenseLiquid(units))
    }

    /// Brings in a share of the powder that was dispensed.
    ///
    /// # Errors
    /// See [`Mix::act`].
    pub fn bring_in(&mut self, share: Share) -> Result<(), String> {
        self.act(Action::BringIn(share))
    }

    /// Works the mass for a time step.
    ///
    /// # Errors
    /// See [`Mix::act`].
    pub fn spatulate(&mut self, stroke: Stroke, lasts: Millis) -> Result<(), String> {
        self.act(Action::Spatulate { stroke, lasts })
    }

    /// Lets a time step pass.
    ///
    /// # Errors
    /// See [`Mix::act`].
    pub fn wait(&mut self, lasts: Millis) -> Result<(), String> {
        self.act(Action::Wait(lasts))
    }

    /// Adds more powder to the mass.
    ///
    /// # Errors
    /// See [`Mix::act`].
    pub fn add_powder(&mut self, units: Units) -> Result<(), String> {
        self.act(Action::AddPowder(units))
    }

    /// Rolls the putty or draws the string.
    ///
    /// # Errors
    /// See [`Mix::act`].
    pub fn test(&mut self) -> Result<TestSeen, String> {
        self.act(Action::Test)?;
        Ok(seen::seen(self))
    }

    /// Throws everything away and wipes the bench clean; the clock goes on.
    ///
    /// # Errors
    /// See [`Mix::act`].
    pub fn discard(&mut self) -> Result<(), String> {
        self.act(Action::Discard)
    }

    /// Hands it over to a dentist who is ready at `ready` on the clock of the
    /// mix and needs `placing` to place it.
    ///
    /// # Errors
    /// See [`Mix::act`].
    pub fn hand_over(&mut self, ready: Seconds, placing: Seconds) -> Result<Verdict, String> {
        self.act(Action::HandOver { ready, placing })?;
        self.verdict
            .clone()
            .ok_or_else(|| "Nothing was handed over.".into())
    }
}

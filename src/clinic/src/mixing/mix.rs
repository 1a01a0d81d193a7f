//! A mix being made: actions go in, and what can be seen comes out.

use super::{
    action::{Action, Stroke},
    feel, judge,
    look::{self, Look},
    mass::Mass,
    recipe::Recipe,
    replay::Replay,
    room::Room,
    seen::{self, TestSeen},
    units::{Celsius, Grams, Millis, Seconds, Share, Units},
    verdict::Verdict,
    way,
};
use crate::timing::Window;
use catalogue::{
    Catalogue,
    ids::ItemId,
    kinetics::{Consistency, Surface},
};

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

    /// The verdict, once it has been handed over.
    pub fn verdict(&self) -> Option<&Verdict> {
        self.verdict.as_ref()
    }

    /// The test without doing it: what it would show now.
    pub fn seen(&self) -> TestSeen {
        seen::seen(self)
    }

    /// What can be seen now.
    pub fn look(&self) -> Look {
        look::look(self)
    }

    /// The material and its use.
    pub fn recipe(&self) -> &Recipe {
        &self.recipe
    }

    /// The room.
    pub fn room(&self) -> Room {
        self.room
    }

    /// Seconds since the bench was opened.
    pub fn clock(&self) -> Seconds {
        Seconds::of(f64::from(self.clock + self.pending) / 1000.0)
    }

    /// Seconds since powder and liquid met; none before.
    pub fn age(&self) -> Option<Seconds> {
        self.course
            .begun
            .map(|begun| Seconds::of(self.clock().get() - begun))
    }

    /// How long it can still be worked on the bench at the pace it has now; below 0
    /// by how long it has been too late. None before powder and liquid met.
    pub fn working_time_left(&self) -> Option<Seconds> {
        self.course.begun?;
        if let Some(over) = self.course.over {
            return Some(Seconds::of(over - self.clock().get()));
        }
        let rate = self
            .recipe
            .pace(&self.mass, &self.setting(false), 0.0)
            .rate();
        Some(Seconds::of(
            (self.recipe.ripe_works - self.mass.ripe) / rate,
        ))
    }

    /// When its working time was over, in seconds from the start of the mix; none before.
    pub fn worked_until(&self) -> Option<Seconds> {
        Some(Seconds::of(self.course.over? - self.course.begun?))
    }

    /// When it had set, in seconds from the start of the mix; none before.
    pub fn set_after(&self) -> Option<Seconds> {
        Some(Seconds::of(self.course.set? - self.course.begun?))
    }

    /// How much of it has set, from 0 to 1; 0.9 counts as set.
    pub fn set_fraction(&self) -> f64 {
        feel::set_fraction(&self.recipe, &self.mass)
    }

    /// How well it is mixed through, from 0 to 1.
    pub fn homogeneity(&self) -> f64 {
        self.mass.homogeneity(&self.recipe)
    }

    /// The place on the scale of consistency; none where there is no mass.
    pub fn firmness(&self) -> Option<feel::Firmness> {
        (self.mass.powder > 0.0).then(|| feel::firmness(&self.recipe, &self.mass))
    }

    /// The word for it.
    pub fn consistency(&self) -> Option<Consistency> {
        self.firmness().map(feel::Firmness::consistency)
    }

    /// The temperature of the mass.
    pub fn temperature(&self) -> Celsius {
        Celsius::of(self.mass.temperature)
    }

    /// Whether its surface lies below the dew point, so that water stands on it.
    pub fn is_wet_slab(&self) -> bool {
        self.setting(false).below_dew > 0.0
    }

    /// Where every gram is.
    pub fn ledger(&self) -> Ledger {
        let b = &self.bench;
        Ledger {
            powder_dispensed: Grams::of(b.powder_ever),
            liquid_dispensed: Grams::of(b.liquid_ever),
            powder_beside: Grams::of(b.powder),
            liquid_beside: Grams::of(b.liquid),
            powder_in: Grams::of(self.mass.powder),
            liquid_in: Grams::of(self.mass.liquid),
            lost: Grams::of(self.mass.lost),
            drawn_off: Grams::of(b.drawn_off),
            discarded: Grams::of(b.discarded),
        }
    }

    /// All that was done, to be done again elsewhere.
    pub fn replay(&self) -> Replay {
        Replay::of(self, self.log.clone())
    }

    /// When the dentist of a time line is ready and how long placing takes, on the
    /// clock of a mix that was opened at `opened` seconds of the visit.
    pub fn moment(window: &Window, opened: i64) -> (Seconds, Seconds) {
        let seconds = |s: i64| Seconds::of(f64::from(i32::try_from(s).unwrap_or(i32::MAX)));
        (
            seconds(i64::from(window.ready) - opened),
            seconds(i64::from(window.placing)),
        )
    }
}

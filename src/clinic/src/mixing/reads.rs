//! What can be read of a mix: its age, its working time, its feel, its grams.

use super::{
    bench::Ledger,
    feel,
    look::{self, Look},
    mix::Mix,
    recipe::Recipe,
    replay::Replay,
    room::Room,
    seen::{self, TestSeen},
    units::{Celsius, Grams, Seconds},
    verdict::Verdict,
};
use crate::timing::Window;
use catalogue::kinetics::Consistency;

impl Mix {
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

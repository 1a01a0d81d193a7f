//! What an action does to the bench and the mass, and how time passes over them.

use super::{
    action::Action,
    bench::Course,
    mass::{Hand, Mass, Setting},
    mix::Mix,
    units::{Millis, Share, Units},
};
use catalogue::kinetics::Surface;

impl Mix {
    pub(super) fn setting(&self, in_mouth: bool) -> Setting {
        let room = self.room.temperature.get();
        let dew = self.room.dew_point().get();
        let on_slab = self.bench.surface == Surface::Slab;
        let line_rate = self
            .recipe
            .line_seconds(23.0, 23.0)
            .and_then(|usual| Some(usual / self.recipe.line_seconds(room, self.bench.water)?));
        Setting {
            surface: self.bench.surface,
            degrees: self.bench.degrees,
            humidity: if in_mouth {
                100.0
            } else {
                self.room.humidity.get()
            },
            below_dew: if on_slab {
                (dew - self.bench.degrees).max(0.0)
            } else {
                0.0
            },
            line_rate,
            in_mouth,
        }
    }
    pub(super) fn powder(&mut self, units: Units) {
        let grams = units.get() * self.recipe.kinetics.powder.grams.number();
        self.bench.powder += grams;
        self.bench.powder_out += grams;
        self.bench.powder_ever += grams;
    }

    pub(super) fn liquid(&mut self, units: Units) {
        let grams = units.get() * self.recipe.kinetics.liquid.grams.number();
        self.bench.liquid += grams;
        self.bench.liquid_out += grams;
        self.bench.liquid_ever += grams;
        let now = self.clock().get();
        self.bench.liquid_since.get_or_insert(now);
    }

    pub(super) fn bring(&mut self, share: Share) {
        let mut grams = (share.get() * self.bench.powder_out).min(self.bench.powder);
        // What rounding leaves is no powder.
        if self.bench.powder - grams < self.bench.powder_out * 1e-6 {
            grams = self.bench.powder;
        }
        let now = self.clock().get();
        if self.course.begun.is_none() {
            self.course.begun = Some(now);
            self.course.first_share = Some(grams / self.bench.powder_out);
            self.course.liquid_stood = self.bench.liquid_since.map_or(0.0, |since| now - since);
            self.mass.temperature = self.bench.water;
            self.mass.warmest = self.bench.water;
        }
        self.mass.liquid += std::mem::take(&mut self.bench.liquid);
        self.bench.powder -= grams;
        self.mass.powder += grams;
        self.mass.dry += grams;
    }

    pub(super) fn clear(&mut self) {
        let b = &mut self.bench;
        b.discarded += b.powder + b.liquid + self.mass.powder + self.mass.liquid;
        // What went into the air or a pellet stays accounted for.
        let lost = self.mass.lost;
        b.powder = 0.0;
        b.liquid = 0.0;
        b.powder_out = 0.0;
        b.liquid_out = 0.0;
        b.liquid_since = None;
        self.mass = Mass {
            lost,
            ..Mass::default()
        };
        self.course = Course {
            discards: self.course.discards + 1,
            ..Course::default()
        };
    }

    /// Whether an action goes on with the motion that is under way.
    pub(super) fn continues(&self, action: Action) -> bool {
        match (self.log.last(), action) {
            (Some(Action::Spatulate { stroke, .. }), Action::Spatulate { stroke: more, .. }) => {
                *stroke == more
            }
            (Some(Action::Wait(_)), Action::Wait(_)) | (Some(Action::Cure(_)), Action::Cure(_)) => {
                true
            }
            _ => false,
        }
    }

    pub(super) fn record(&mut self, action: Action) {
        if self.continues(action)
            && let (
                Some(Action::Spatulate { lasts, .. } | Action::Wait(lasts) | Action::Cure(lasts)),
                Action::Spatulate { lasts: more, .. } | Action::Wait(more) | Action::Cure(more),
            ) = (self.log.last_mut(), action)
        {
            lasts.0 += more.0;
            return;
        }
        self.log.push(action);
    }

    /// Lets time pass in whole ticks; a rest waits for the motion to go on.
    pub(super) fn pass(&mut self, action: Action, lasts: Millis) {
        self.pending += lasts.0;
        while self.pending >= self.tick.0 {
            self.pending -= self.tick.0;
            self.step(action, self.tick);
        }
    }

    /// Lets the rest of the motion pass, because another begins.
    pub(super) fn flush(&mut self) {
        let rest = Millis(std::mem::take(&mut self.pending));
        if let (1.., Some(last)) = (rest.0, self.log.last().copied()) {
            self.step(last, rest);
        }
    }

    fn step(&mut self, action: Action, lasts: Millis) {
        self.clock += lasts.0;
        if self.course.begun.is_none() {
            return;
        }
        let dt = lasts.get();
        let hand = match action {
            Action::Spatulate { stroke, .. } => Some(Hand {
                vigour: stroke.vigour.get(),
                area: stroke.area,
            }),
            _ => None,
        };
        let setting = self.setting(self.handed.is_some());
        self.mass.step(&self.recipe, &setting, hand, dt);
        if matches!(action, Action::Cure(_)) {
            self.mass.lit += dt;
        }
        let now = f64::from(self.clock) / 1000.0;
        let ripe = self.mass.ripe;
        if ripe >= self.recipe.ripe_works {
            self.course.over.get_or_insert(now);
        }
        if self.recipe.ripe_sets.is_some_and(|sets| ripe >= sets) {
            self.course.set.get_or_insert(now);
        }
    }
}

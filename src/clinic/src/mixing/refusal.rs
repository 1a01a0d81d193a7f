//! What cannot be done at the bench now, and why.

use super::{
    action::Action,
    causes::capital,
    mix::Mix,
    units::{Celsius, Millis},
};
use catalogue::kinetics::Surface;

/// How much of one thing may be dispensed at once, in units: beyond it is a slip of the finger.
const MOST_UNITS: f64 = 200.0;

/// How long one mix may be followed: beyond it nothing changes any more.
const LONGEST: Millis = Millis(6 * 3_600_000);

impl Mix {
    /// Why an action cannot be done now.
    pub(super) fn refuse(&self, action: Action) -> Result<(), String> {
        let liquid = &self.recipe.kinetics.liquid.name;
        let powder = &self.recipe.kinetics.powder.name;
        let begun = self.course.begun.is_some();
        let no = |why: String| Err(why);
        match action {
            Action::Spatulate { lasts, .. } | Action::Wait(lasts) | Action::Cure(lasts)
                if lasts.0 > LONGEST.0 || self.clock.saturating_add(lasts.0) > LONGEST.0 =>
            {
                no("Nothing more happens in this mix; throw it away and begin anew.".into())
            }
            Action::Cure(_) if !begun => no("There is nothing yet to hold the light over.".into()),
            Action::Wait(_) | Action::Cure(_) => Ok(()),
            _ if self.handed.is_some() => no("It has been handed over; begin a new mix.".into()),
            Action::LayOut { .. } | Action::WaterAt(_) if begun => no(format!(
                "{} and {liquid} have met; throw the mix away first.",
                capital(powder)
            )),
            Action::LayOut {
                surface,
                temperature,
            } => self.refuse_surface(surface, temperature),
            Action::WaterAt(_) if !self.recipe.kinetics.surfaces.contains(&Surface::Bowl) => no(
                format!("{} is not mixed with water from a tap.", self.recipe.name),
            ),
            Action::WaterAt(t) if !(0.0..=60.0).contains(&t.get()) => {
                no("Take water from 0 to 60 °C.".into())
            }
            Action::DispensePowder(u)
            | Action::DispenseLiquid(u)
            | Action::AddPowder(u)
            | Action::AddLiquid(u)
                if u.get() <= 0.0 || u.get() > MOST_UNITS =>
            {
                no("Measure out more than nothing, and no more than one mix can take.".into())
            }
            Action::BringIn(_) if self.bench.powder <= 0.0 => no(format!(
                "There is no {powder} left to bring in; dispense some."
            )),
            Action::BringIn(_) if self.bench.liquid + self.mass.liquid <= 0.0 => no(format!(
                "There is no {liquid} to bring it into; dispense some."
            )),
            Action::BringIn(s) | Action::DrawOff(s) if s.get() <= 0.0 || s.get() > 1.0 => {
                no("Choose a share above 0 and up to the whole.".into())
            }
            Action::Spatulate { .. }
            | Action::Test
            | Action::AddPowder(_)
            | Action::AddLiquid(_)
            | Action::DrawOff(_)
            | Action::HandOver { .. }
                if !begun =>
            {
                no(format!(
                    "There is no mix yet; bring the {powder} and the {liquid} together."
                ))
            }
            _ => Ok(()),
        }
    }

    fn refuse_surface(&self, surface: Surface, temperature: Celsius) -> Result<(), String> {
        if !self.recipe.kinetics.surfaces.contains(&surface) {
            return Err(format!(
                "{} is not mixed on that; use {}.",
                self.recipe.name, self.recipe.mixing.surface
            ));
        }
        if !(-15.0..=60.0).contains(&temperature.get()) {
            return Err("Take a slab from -15 to 60 °C.".into());
        }
        Ok(())
    }
}

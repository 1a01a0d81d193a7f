//! The room: its temperature, its humidity, and the dew point that follows.

use super::{
    arithmetic::ln,
    units::{Celsius, PerCent},
};
use serde::{Deserialize, Serialize};

/// The room that is mixed in.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Room {
    /// The temperature of its air, of the bottles and of a pad.
    pub temperature: Celsius,
    /// The relative humidity of its air.
    pub humidity: PerCent,
}

impl Room {
    /// The room that handbook times are taken to hold for: 23 °C, 50 %.
    pub fn usual() -> Self {
        Self {
            temperature: Celsius::of(23.0),
            humidity: PerCent::of(50.0),
        }
    }

    /// The room, if anybody can work in it.
    ///
    /// # Errors
    /// A sentence that names the range.
    pub fn checked(self) -> Result<Self, String> {
        let (t, h) = (self.temperature.get(), self.humidity.get());
        if !(5.0..=45.0).contains(&t) {
            return Err(format!(
                "A room of {} is none to work in; enter a temperature from 5 to 45 °C.",
                self.temperature
            ));
        }
        if !(1.0..=100.0).contains(&h) {
            return Err(format!(
                "A humidity of {} cannot be; enter one from 1 to 100 %.",
                self.humidity
            ));
        }
        Ok(self)
    }

    /// The temperature at and below which water condenses on a surface, by the
    /// Magnus formula with 17.62 and 243.12 °C (WMO guide to instruments; value from memory).
    pub fn dew_point(self) -> Celsius {
        let t = self.temperature.get();
        let y = ln(self.humidity.get() / 100.0) + 17.62 * t / (243.12 + t);
        Celsius::of(243.12 * y / (17.62 - y))
    }
}

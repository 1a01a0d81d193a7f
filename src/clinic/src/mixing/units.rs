//! Units as types. Each keeps whole thousandths, so that what is written down
//! and read again is the same number on every device.

use catalogue::quantity::Milli;
use serde::{Deserialize, Serialize};
use std::fmt;

/// The nearest whole thousandth; far outside any use it stops at the ends of the type.
fn thousandths(value: f64) -> Milli {
    #[expect(
        clippy::cast_possible_truncation,
        reason = "a float cast to a whole number stops at the ends of the type, which is meant"
    )]
    Milli((value * 1000.0).round() as i32)
}

macro_rules! units {
    ($($(#[$doc:meta])* $name:ident, $sign:literal;)*) => {$(
        $(#[$doc])*
        #[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
        #[serde(transparent)]
        pub struct $name(Milli);

        impl $name {
            /// So many of them, to the nearest thousandth.
            pub fn of(value: f64) -> Self {
                Self(thousandths(value))
            }

            /// The number, for reckoning and drawing.
            pub fn get(self) -> f64 {
                f64::from(self.0.0) / 1000.0
            }
        }

        impl From<Milli> for $name {
            /// From thousandths.
            fn from(thousandths: Milli) -> Self {
                Self(thousandths)
            }
        }

        impl From<$name> for Milli {
            /// In thousandths.
            fn from(unit: $name) -> Self {
                unit.0
            }
        }

        impl fmt::Display for $name {
            /// To one decimal at most, with the unit: `22.5 °C`.
            fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
                write!(f, concat!("{} ", $sign), Self::of((self.get() * 10.0).round() / 10.0).0)
            }
        }
    )*};
}

units! {
    /// A temperature in degrees Celsius.
    Celsius, "°C";
    /// A time in seconds.
    Seconds, "s";
    /// A mass in grams.
    Grams, "g";
    /// A length in millimetres.
    Millimetres, "mm";
    /// A part of a hundred.
    PerCent, "%";
    /// How many units of a part: scoops, drops, lengths. Parts of one are allowed.
    Units, "units";
    /// A share of a whole, from 0 to 1.
    Share, "of 1";
}

impl Seconds {
    /// A whole number of seconds in words: `90 s`.
    pub fn whole(self) -> String {
        format!("{} s", self.get().round())
    }

    /// The same in whole milliseconds; none below 0.
    pub fn millis(self) -> Millis {
        Millis(u32::try_from(self.0.0).unwrap_or(0))
    }
}

/// A span of time in whole milliseconds: the time steps of a screen. Whole, so
/// that a motion cut into other steps adds up to the same.
#[derive(
    Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize,
)]
#[serde(transparent)]
pub struct Millis(pub u32);

impl Millis {
    /// So many whole seconds.
    pub fn seconds(seconds: u32) -> Self {
        Self(seconds.saturating_mul(1000))
    }

    /// The same in seconds.
    pub fn get(self) -> f64 {
        f64::from(self.0) / 1000.0
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn units_print_and_keep_their_thousandths() {
        assert_eq!(Celsius::of(22.54).to_string(), "22.5 °C");
        assert_eq!(Seconds::of(89.6).whole(), "90 s");
        assert_eq!(Grams::of(0.1235).get().to_bits(), 0.124_f64.to_bits());
        assert_eq!(Millis::seconds(2), Millis(2000));
    }
}

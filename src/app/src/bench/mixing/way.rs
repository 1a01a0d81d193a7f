//! How a student wants to work at the bench. The choice is a setting, so that
//! who needs it makes it once.

use crate::log::log;
use leptos::prelude::*;
use record::{SettingChanged, What, folds};

/// A way of working.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Way {
    /// By hand, while the clock runs.
    #[default]
    Clock,
    /// By hand; time passes only while the mass is worked.
    Calm,
    /// By choosing each move in words; time passes only with the moves.
    Words,
}

impl Way {
    /// All of them.
    pub const ALL: [Self; 3] = [Self::Clock, Self::Calm, Self::Words];

    /// The name of the setting in the record.
    const SETTING: &str = "bench-way";

    /// Its value in the record.
    pub fn value(self) -> &'static str {
        match self {
            Self::Clock => "clock",
            Self::Calm => "calm",
            Self::Words => "words",
        }
    }

    /// What its button says.
    pub fn label(self) -> &'static str {
        match self {
            Self::Clock => "Clock runs",
            Self::Calm => "No clock",
            Self::Words => "In words",
        }
    }

    /// What it means.
    pub fn says(self) -> &'static str {
        match self {
            Self::Clock => {
                "By hand, while the clock runs: the mass ages and the dentist gets on. Pause at any time."
            }
            Self::Calm => {
                "By hand, without hurry: time passes only while you work the mass, and the dentist waits for you."
            }
            Self::Words => {
                "By choosing each move from a list: the same material and the same time, no gesture and no hurry."
            }
        }
    }

    /// Reads a value; a strange one counts as the usual way.
    pub fn from_value(value: &str) -> Self {
        let mut all = Self::ALL.into_iter();
        all.find(|way| way.value() == value).unwrap_or_default()
    }

    /// Whether the mass is worked by hand.
    pub fn by_hand(self) -> bool {
        self != Self::Words
    }

    /// The way that was chosen.
    pub fn chosen() -> Memo<Self> {
        log().memo(|events| {
            let settings = folds::settings(events);
            settings
                .get(Self::SETTING)
                .map_or_else(Self::default, |value| Self::from_value(value))
        })
    }

    /// Chooses it from now on.
    pub fn choose(self) {
        log().append(What::SettingChanged(SettingChanged {
            key: Self::SETTING.into(),
            value: self.value().into(),
        }));
    }
}

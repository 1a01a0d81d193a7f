//! Mixes that were made by hand.

use crate::bench::MixHandedOver;
use crate::event::Event;
use crate::moment::Moment;
use crate::what::What;

/// A mix that was handed over, and when.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Mixed {
    /// When.
    pub at: Moment,
    /// The mix.
    pub mix: MixHandedOver,
}

/// The mixes that were handed over, in the order of the record.
pub fn mixes(events: &[Event]) -> Vec<Mixed> {
    let mixed = |event: &Event| match &event.what {
        What::MixHandedOver(mix) => Some(Mixed {
            at: event.at,
            mix: mix.clone(),
        }),
        _ => None,
    };
    events.iter().filter_map(mixed).collect()
}

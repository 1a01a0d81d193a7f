//! The numbers an assistant has to get right.
//!
//! - [`entry`]: what a person types, understood or refused with the reason
//! - [`exact`], [`unit`], [`civil`]: numbers, units and dates without surprises
//! - [`working`]: a number worked out step by step
//! - [`dose`]: anaesthetic maxima and cartridges under each named rule
//! - [`teeth`]: notation, eruption, and a drawn pair of arches
//! - [`black`], [`bur`], [`canal_file`], [`needle`]: what stands on instruments
//! - [`sterilising`], [`spore`], [`limit`]: what makes a load safe to use
//! - [`proportion`], [`fluoride`], [`recall_date`]: powder and water, fluoride, dates
//! - [`tools`]: each of these with its inputs, ready for a screen
//! - [`exercises`]: exercises without end, graded through the same entries

pub mod black;
pub mod bur;
pub mod canal_file;
pub mod civil;
pub mod dose;
pub mod entry;
pub mod exact;
pub mod exercises;
pub mod fluoride;
pub mod limit;
pub mod needle;
pub mod proportion;
pub mod recall_date;
pub mod spore;
pub mod sterilising;
pub mod teeth;
pub mod tools;
pub mod unit;
pub mod working;

use catalogue::{ids::SourceId, numbers::Numbers};
use exact::Exact;

/// A single figure of the catalogue; nothing where it is missing, which the
/// checks of the catalogue rule out.
fn figure(numbers: &Numbers, id: &str) -> Exact {
    numbers
        .figure(id)
        .map_or(Exact::ZERO, |f| Exact::from(f.value))
}

/// Where a single figure is from.
fn figure_sources<'n>(numbers: &'n Numbers, id: &str) -> &'n [SourceId] {
    numbers.figure(id).map_or(&[], |f| &f.sources)
}

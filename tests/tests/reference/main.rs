//! Checks against published values. Each row names its source; custom is
//! marked 'common practice, no source', and a value whose text was not read
//! 'value from memory'.

#![expect(
    clippy::too_many_lines,
    reason = "a table is one test, and is read from end to end"
)]

mod bedside;
mod dose_edges;
mod doses;
mod figures;
mod findings_to_plan;
mod instruments;
mod materials;
mod mixing;
mod mixing_model;
mod patterns;
mod plans;
mod recall;
mod sequence;
mod set_ups;
mod trays;

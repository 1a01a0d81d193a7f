//! Checks against published values. Each row names its source; custom is
//! marked 'common practice, no source', and a value whose text was not read
//! 'value from memory'.

#![expect(
    clippy::too_many_lines,
    reason = "a table is one test, and is read from end to end"
)]

mod argument;
mod bedside;
mod blades;
mod dose_answers;
mod dose_edges;
mod doses;
mod figures;
mod findings_to_plan;
mod instruments;
mod materials;
mod materials_under;
mod mixing;
mod mixing_model;
mod mixing_ranges;
mod patterns;
mod plans;
mod recall;
mod safety;
mod sequence;
mod set_ups;
mod teeth;
mod trays;

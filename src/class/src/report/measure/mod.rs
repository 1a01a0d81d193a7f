//! The mathematics of a class report: sums, one-dimensional integrals, and the
//! beta and binomial distributions. Nothing here knows what is measured.

pub mod beta;
pub mod correlation;
pub mod gauss;

//! Instruments drawn from their measurements.

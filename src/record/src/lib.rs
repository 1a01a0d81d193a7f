//! The event log of a student: what is stored, merged and exported.

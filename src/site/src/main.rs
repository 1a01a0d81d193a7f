//! cargo site: sets up the toolchain, builds, serves, checks and tests.

fn main() {}

//! Mastery: what a student can do, by competency, with how surely it is known,
//! and how ready that makes them for a form like ours.
//!
//! The headline is a Rasch ability estimated from first answers only; repeats
//! measure memory of a question, not the competency. Where a number would claim
//! too much, there is a sentence instead.

mod ability;
mod competency;
mod cut;
mod difficulty;
mod gate;
mod interval;
mod likelihood;
mod posterior;
mod readiness;
mod score;
mod tracing;

pub use ability::{Normal, Point, Posterior, Responses};
pub use competency::{FirstTries, Mastery, Percent, Standing, THIN};
pub use cut::{Angoff, angoff};
pub use difficulty::{recalibrated, slope};
pub use gate::{Decision, Sequential, enough};
pub use interval::{Interval, agresti_coull, clopper_pearson, jeffreys, wilson, wilson_corrected};
pub use posterior::{BetaPosterior, Forecast};
pub use readiness::{Band, Gate, LINKING, PassTable, Readiness, Target};
pub use score::{information, pass_chance, scores};
pub use tracing::{KnowledgeTracing, Traced};

//! Memory: when an answer would be forgotten, and so when it is asked again.
//!
//! A three-variable model (FSRS-6; Ye, Su and Cao 2022, Su and others 2023) with
//! its published default parameters, fed by graded answers. What is known of a
//! student is a fold over answers; when a question falls due is computed from
//! that, the examination day and the student's own pace, and never stored.

mod calibration;
mod course;
mod examination;
mod fold;
mod grade;
mod model;
mod outlook;
mod personal;
mod queue;
mod recalibration;
mod schedule;
mod steps;

pub use calibration::{Bin, Calibration, Prediction};
pub use examination::{Examination, stability_needed};
pub use fold::{Memory, Trace};
pub use grade::{Grade, Pace};
pub use model::{LONGEST_INTERVAL, Model, Parameters, State};
pub use outlook::{DayLoad, Feasibility, Outlook, Week};
pub use personal::{REVIEWS_NEEDED, multiplier};
pub use queue::{Due, Queue, by_weight};
pub use recalibration::{Fit, Recalibration};
pub use schedule::{Reason, Schedule};
pub use steps::{Phase, Steps, Within};

//! Cases: a patient drawn from a frame by a seed, and the decisions that the
//! visit asks of the assistant. Every option and its standing is computed from
//! the patient; a frame holds no answers.

mod by_hand;
mod cavity;
mod chairside;
mod chart;
mod choice;
mod draw;
mod hands;
mod later;
mod moments;
mod part;
mod reckon;
mod review;
mod seed;
mod set_up;
mod sets;
mod story;
mod sum;
pub mod tray_reading;
mod wanted;

pub use by_hand::ByHand;
pub use choice::{Choice, Decision, Form, Grade};
pub use draw::{Case, Fact};
pub use part::{Part, overall};
pub use reckon::Measures;
pub use seed::Seed;
pub use story::Told;
pub use sum::Sum;
pub use tray_reading::TrayReading;
pub use wanted::{Wanted, avoidances};

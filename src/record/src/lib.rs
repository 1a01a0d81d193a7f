//! The event log of a student: what is stored, merged and exported.
//!
//! The record is append-only. Everything the student has done is an [`Event`];
//! everything the page shows of it is a fold over the events ([`folds`]).
//! Events lie in numbered segments ([`segment`]) in a [`Store`], each line
//! with a checksum. Each tab writes only segments of its own, and reading is
//! the union of all, so nothing is ever overwritten. What is damaged, foreign
//! or of a later version is set aside, named ([`Report`]) and left untouched.
//!
//! The crate knows only ids: what a case, a lesson or a competency is, the
//! catalogue knows. Time and randomness come in as arguments.
//!
//! ```
//! use record::*;
//!
//! // The page passes the browser's storage and 64 fresh random bits.
//! let mut log = Log::open(MemoryStore::new(), Writer(0x7a11));
//! let at = Moment { utc_ms: 1_764_055_845_000, offset_min: 60 };
//!
//! let sitting = SittingId(1);
//! log.append(at, What::CaseStarted(CaseStarted {
//!     sitting,
//!     case: "deep-caries".into(),
//!     seed: 42,
//!     with: None,
//!     card: None,
//! }));
//! let appended = log.append(at, What::CaseAnswered(CaseAnswered {
//!     sitting,
//!     decision: "liner".into(),
//!     answer: vec!["calcium-hydroxide".into()],
//!     verdict: Verdict::Acceptable,
//!     per_cent: PerCent::of(70),
//!     competency: "pulp-protection".into(),
//!     seconds: 12,
//! }));
//! // A full or forbidden storage is said here; the log goes on in memory.
//! assert_eq!(appended.unsaved, None);
//!
//! // After a reload the case is where it was.
//! let again = Log::open(log.store().clone(), Writer(0x7a12));
//! let open = folds::under_way(again.events());
//! assert_eq!(open[0].seed, 42);
//! assert_eq!(open[0].answer_to("liner").unwrap().seconds, 12);
//!
//! // To another device, as a file.
//! let mut other = Log::open(MemoryStore::new(), Writer(0x7a13));
//! assert_eq!(other.import(again.export().as_bytes()).unwrap().new, 2);
//! assert_eq!(other.events(), again.events());
//! ```

mod bench;
mod checksum;
mod class;
mod current;
mod event;
mod export;
pub mod folds;
mod key;
mod line;
mod log;
mod memory;
mod moment;
mod outcome;
mod report;
mod seen;
pub mod segment;
mod store;
mod study;
mod union;
mod values;
mod what;

pub use bench::MixHandedOver;
pub use class::{AssignmentTaken, HandedIn, SkillChecked, TaskBegun};
pub use event::{Event, Id, Writer};
pub use export::{ImportError, read_export, write_export};
pub use key::SegmentKey;
pub use log::Log;
pub use memory::MemoryStore;
pub use moment::Moment;
pub use outcome::{Appended, Imported, Unsaved};
pub use report::{Fault, Report};
pub use store::{Store, StoreError};
pub use study::{
    FormBegun, FormFinished, FormFlagged, FormPaused, Given, QuestionAnswered, QuestionSetAside,
    SittingBegun, SittingEnded,
};
pub use union::union;
pub use values::{PerCent, SittingId, Verdict};
pub use what::{
    CaseAnswered, CaseFinished, CaseStarted, LessonRead, SettingChanged, Unknown, What,
};

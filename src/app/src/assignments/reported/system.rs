//! The school's system, begun once a visit, and what it knew before.

use crate::browser::{clock, lms::Lms};
use class::exchange::scorm;
use std::{cell::OnceCell, rc::Rc};

/// A system that listens.
pub struct System {
    /// Its object.
    pub lms: Lms,
    /// When this visit began, in milliseconds.
    begun: i64,
    /// Whether it had the assignment as passed before this visit.
    pub passed: bool,
    /// How many interactions it holds from before.
    pub interactions: usize,
    /// What was suspended, in letters.
    pub suspended: Option<String>,
}

thread_local! {
    /// It is begun once; none where there is none, or it does not listen.
    static SYSTEM: OnceCell<Option<Rc<System>>> = const { OnceCell::new() };
}

/// The system that this page runs in, begun if it was not.
pub fn system() -> Option<Rc<System>> {
    SYSTEM.with(|system| system.get_or_init(System::begin).clone())
}

impl System {
    fn begin() -> Option<Rc<Self>> {
        let lms = Lms::find().filter(Lms::begin)?;
        let begun = clock::now().utc_ms;
        lms.clone().finish_on_leaving(move |lms| {
            let (name, spent) = scorm::time(seconds(begun));
            lms.set(name, &spent);
        });
        let count = lms.get("cmi.interactions._count");
        Some(Rc::new(Self {
            begun,
            passed: lms.get("cmi.core.lesson_status").as_deref() == Some("passed"),
            interactions: count.and_then(|it| it.parse().ok()).unwrap_or(0),
            suspended: lms.get("cmi.suspend_data"),
            lms,
        }))
    }

    /// The seconds of this visit so far.
    pub fn seconds(&self) -> u64 {
        seconds(self.begun)
    }
}

fn seconds(since: i64) -> u64 {
    u64::try_from((clock::now().utc_ms - since) / 1000).unwrap_or(0)
}

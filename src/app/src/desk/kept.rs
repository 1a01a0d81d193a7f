//! What this device keeps of a class: the assignments that were set, the
//! hand-ins that were read, labels for seats. Beside the record, which is the
//! student's: no number follows the prefix of these keys, so it leaves them alone.

use super::sealed::{self, Unread};
use crate::{
    assignments::{bank, id},
    browser::storage::BrowserStore,
    packs,
};
use class::{
    assignment::Assignment,
    refusal::Refusal,
    roster::{self, Roster},
};
use record::{Store, StoreError};
use std::fmt;

const SET: &str = "trayward/class/set/";
const HAND_INS: &str = "trayward/class/hand-ins/";
const ROSTER: &str = "trayward/class/roster";
const DRAFT: &str = "trayward/class/draft";

/// Why something kept cannot be used: a sentence for the instructor.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Fault {
    /// The storage does not let the page in, or is full.
    Storage(StoreError),
    /// What lies there is damaged.
    Damaged,
    /// A newer version wrote it.
    Newer,
    /// The assignment is for other lessons, or cannot be read.
    Assignment(Refusal),
}

impl fmt::Display for Fault {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Storage(StoreError::Full) => f.write_str(
                "This browser's storage is full: what you do here is not kept. Save the files, then make room by taking assignments away that are over.",
            ),
            Self::Storage(_) => f.write_str(
                "This browser does not let the page store anything: what you do here is lost when the page is closed. Save the files you need.",
            ),
            Self::Damaged => f.write_str(
                "What this device kept of it is damaged and was left as it is. Read the hand-ins again.",
            ),
            Self::Newer => f.write_str(
                "This was kept by a newer version of this page. Reload the page to get it.",
            ),
            Self::Assignment(Refusal::OtherBank) => f.write_str(
                "This was set with other lessons than those in use on this device now: with another pack, or from an earlier state of the site. Its tasks cannot be drawn again here, so hand-ins to it cannot be graded. Put the pack in use that it was set with, or set it again.",
            ),
            Self::Assignment(refusal) => refusal.fmt(f),
        }
    }
}

impl From<StoreError> for Fault {
    fn from(error: StoreError) -> Self {
        Self::Storage(error)
    }
}

impl From<Unread> for Fault {
    fn from(why: Unread) -> Self {
        match why {
            Unread::Newer => Self::Newer,
            Unread::Damaged => Self::Damaged,
        }
    }
}

/// An assignment that was set.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Set {
    /// What tells it from others.
    pub id: String,
    /// When it was set, in milliseconds from 1 January 1970, UTC.
    pub made: i64,
    /// What was set, or why it cannot be read.
    pub assignment: Result<Assignment, Fault>,
    /// What its link stands for, with the packs that it needs; none where that
    /// cannot be read either.
    pub code: Option<String>,
}

impl Set {
    /// The code, where other packs may make it readable.
    pub fn needs_packs(&self) -> Option<String> {
        let other = self.assignment == Err(Fault::Assignment(Refusal::OtherBank));
        self.code.clone().filter(|_| other)
    }
}

/// All that were set, the latest first.
pub fn sets() -> Result<Vec<Set>, Fault> {
    let keys = BrowserStore.keys()?.into_iter();
    let ids = keys.filter_map(|key| key.strip_prefix(SET).map(str::to_owned));
    let mut sets: Vec<Set> = ids.filter_map(|id| set(&id)).collect();
    sets.sort_by(|a, b| b.made.cmp(&a.made).then_with(|| a.id.cmp(&b.id)));
    Ok(sets)
}

/// One that was set; none where nothing is kept of it.
pub fn set(id: &str) -> Option<Set> {
    let text = BrowserStore.get(&format!("{SET}{id}")).ok()??;
    let unread = |fault| Set {
        id: id.to_owned(),
        made: 0,
        assignment: Err(fault),
        code: None,
    };
    Some(opened(id, &text).unwrap_or_else(unread))
}

fn opened(id: &str, text: &str) -> Result<Set, Fault> {
    let lines = sealed::open(text)?;
    let [made, code] = &lines[..] else {
        return Err(Fault::Damaged);
    };
    Ok(Set {
        id: id.to_owned(),
        made: made.parse().map_err(|_| Fault::Damaged)?,
        assignment: Assignment::read(code, bank().version).map_err(Fault::Assignment),
        code: Some(code.clone()),
    })
}

/// Keeps an assignment that is set now, with the packs in use, and gives its id.
pub fn keep_set(assignment: &Assignment, made: i64) -> Result<String, Fault> {
    let id = id(assignment);
    let text = sealed::seal([made.to_string().as_str(), &packs::code(assignment)]);
    BrowserStore.put(&format!("{SET}{id}"), &text)?;
    Ok(id)
}

/// Takes an assignment away, with the hand-ins to it.
pub fn take_away(id: &str) -> Result<(), Fault> {
    BrowserStore.remove(&format!("{HAND_INS}{id}"))?;
    Ok(BrowserStore.remove(&format!("{SET}{id}"))?)
}

/// The hand-ins to an assignment that were read, a line each.
pub fn hand_ins(id: &str) -> Result<Vec<String>, Fault> {
    match BrowserStore.get(&format!("{HAND_INS}{id}"))? {
        Some(text) => Ok(sealed::open(&text)?),
        None => Ok(Vec::new()),
    }
}

/// Keeps the hand-ins to an assignment. Damaged ones of before stay beside them.
pub fn keep_hand_ins(id: &str, lines: &[String]) -> Result<(), Fault> {
    let key = format!("{HAND_INS}{id}");
    if let Some(before) = BrowserStore.get(&key)?
        && sealed::open(&before).is_err()
    {
        BrowserStore.put(&format!("{key}/set-aside"), &before)?;
    }
    let text = sealed::seal(lines.iter().map(String::as_str));
    Ok(BrowserStore.put(&key, &text)?)
}

/// The labels of seats.
pub fn roster() -> Result<Roster, String> {
    let text = BrowserStore
        .get(ROSTER)
        .map_err(|e| Fault::from(e).to_string())?;
    text.map_or_else(
        || Ok(Roster::default()),
        |text| roster::read(text.as_bytes()).map_err(|error| error.to_string()),
    )
}

/// Keeps the labels of seats.
pub fn keep_roster(roster: &Roster) -> Result<(), Fault> {
    Ok(BrowserStore.put(ROSTER, &roster::write(roster))?)
}

/// What is being chosen to be set; none where nothing is, or it is for other lessons.
pub fn draft() -> Option<Assignment> {
    let text = BrowserStore.get(DRAFT).ok()??;
    let lines = sealed::open(&text).ok()?;
    Assignment::read(lines.first()?, bank().version).ok()
}

/// Keeps what is being chosen. Where that fails, setting it will say so.
pub fn keep_draft(assignment: &Assignment) {
    let _ = BrowserStore.put(DRAFT, &sealed::seal([assignment.letters().as_str()]));
}

/// Forgets what was being chosen.
pub fn drop_draft() {
    let _ = BrowserStore.remove(DRAFT);
}

//! The log: all events in memory, and their way into the store.
//!
//! Invariants:
//! - `events` is in event order and holds everything ever read or appended.
//! - Every event of `events` stands in the store or waits in `unsaved`.
//! - A key is only written while it is empty or holds exactly what this log
//!   last put there. So nothing foreign, damaged or written by another tab is
//!   ever overwritten, even if a tab was copied together with its writer id.

use std::collections::{BTreeMap, VecDeque};

use crate::current::Current;
use crate::event::{Event, Id, Writer};
use crate::export::{ImportError, read_export, write_export};
use crate::key::{self, KeyKind, SegmentKey};
use crate::moment::Moment;
use crate::outcome::{Appended, Imported, Unsaved};
use crate::report::{Fault, Report};
use crate::seen::Seen;
use crate::segment::{self, CAPACITY};
use crate::store::{Store, StoreError};
use crate::union::{insert, new_among};
use crate::what::What;

/// Ticks above this are not followed (some 285,000 years of milliseconds), so
/// that no event, however it came in, can use the counter up.
const FOLLOWED_TICK: u64 = 1 << 53;

/// How many keys found taken in one attempt to save end it: only a store that
/// does not keep to its contract gets there.
const TAKEN_KEYS: usize = 16;

/// The student's record, open for reading and writing.
///
/// It always opens and never refuses an event: when the store fails, events
/// stay in memory, [`Log::unsaved`] says so, and each later append tries again.
#[derive(Debug)]
pub struct Log<S> {
    store: S,
    writer: Writer,
    events: Vec<Event>,
    unsaved: VecDeque<Event>,
    why: Option<StoreError>,
    current: Current,
    /// Each text read or written, so that a refresh reads only what changed.
    seen: BTreeMap<String, Seen>,
    reports: BTreeMap<String, Report>,
    own_tick: u64,
    followed_tick: u64,
}

impl<S: Store> Log<S> {
    /// Reads every segment in the store. `writer` should be drawn afresh each
    /// time the page opens.
    ///
    /// What could not be read is named by [`reports`](Self::reports); a store
    /// that cannot be read at all by [`unsaved`](Self::unsaved).
    pub fn open(store: S, writer: Writer) -> Self {
        let mut log = Self {
            store,
            writer,
            events: Vec::new(),
            unsaved: VecDeque::new(),
            why: None,
            current: Current::new(SegmentKey { writer, number: 1 }),
            seen: BTreeMap::new(),
            reports: BTreeMap::new(),
            own_tick: 0,
            followed_tick: 0,
        };
        log.refresh();
        if let Ok(keys) = log.store.keys() {
            log.current = Current::new(log.unused_key(&keys));
        }
        log
    }

    /// All events, in event order.
    pub fn events(&self) -> &[Event] {
        &self.events
    }

    /// Who writes through this log.
    pub fn writer(&self) -> Writer {
        self.writer
    }

    /// The store below.
    pub fn store(&self) -> &S {
        &self.store
    }

    /// The segments that were set aside, wholly or in part.
    pub fn reports(&self) -> impl Iterator<Item = &Report> {
        self.reports.values()
    }

    /// What is only in memory, and why; `None` when all is well.
    pub fn unsaved(&self) -> Option<Unsaved> {
        self.why.clone().map(|why| Unsaved {
            events: self.unsaved.len(),
            why,
        })
    }

    /// Adds an event that happens `at` this moment. It is in memory at once;
    /// whether it is in the store too is in the answer.
    pub fn append(&mut self, at: Moment, what: What) -> Appended {
        let id = Id {
            tick: self.next_tick(at),
            writer: self.writer,
        };
        let event = Event { id, at, what };
        self.follow(&event);
        self.unsaved.push_back(event.clone());
        insert(&mut self.events, vec![event]);
        Appended {
            id,
            unsaved: self.save_all(),
        }
    }

    /// Tries once more to save what is only in memory.
    pub fn retry(&mut self) -> Option<Unsaved> {
        if self.unsaved.is_empty() {
            self.refresh();
            self.unsaved()
        } else {
            self.save_all()
        }
    }

    /// Reads what changed in the store since it was last read, and gives the
    /// number of new events.
    pub fn refresh(&mut self) -> usize {
        match self.store.keys() {
            Ok(keys) => {
                if self.unsaved.is_empty() {
                    self.why = None;
                }
                let read = keys.iter().flat_map(|key| self.read_key(key)).collect();
                self.add(read)
            }
            Err(error) => {
                self.why = Some(error);
                0
            }
        }
    }

    /// Reads one key, as named by the browser when another tab wrote it, and
    /// gives the number of new events.
    pub fn refresh_key(&mut self, key: &str) -> usize {
        let read = self.read_key(key);
        self.add(read)
    }

    /// The whole record, with what is not saved, as the text of a file.
    pub fn export(&self) -> String {
        write_export(&self.events)
    }

    /// Takes in an exported file: the union of both records.
    ///
    /// # Errors
    /// [`ImportError`] when the file is not a whole, unchanged export; then
    /// nothing is changed.
    pub fn import(&mut self, file: &[u8]) -> Result<Imported, ImportError> {
        let read = read_export(file)?;
        let total = read.len();
        let new = new_among(&self.events, read);
        self.unsaved.extend(new.iter().cloned());
        let new = self.add(new);
        Ok(Imported {
            new,
            known: total - new,
            unsaved: self.save_all(),
        })
    }

    /// After the clock, after everything seen, after everything of our own.
    fn next_tick(&self, at: Moment) -> u64 {
        let clock = u64::try_from(at.utc_ms).unwrap_or(0).min(FOLLOWED_TICK);
        clock
            .max(self.followed_tick.saturating_add(1))
            .max(self.own_tick.saturating_add(1))
    }

    fn follow(&mut self, event: &Event) {
        let Id { tick, writer } = event.id;
        if tick <= FOLLOWED_TICK {
            self.followed_tick = self.followed_tick.max(tick);
        }
        if writer == self.writer {
            self.own_tick = self.own_tick.max(tick);
        }
    }

    fn add(&mut self, read: Vec<Event>) -> usize {
        let new = new_among(&self.events, read);
        for event in &new {
            self.follow(event);
        }
        let count = new.len();
        insert(&mut self.events, new);
        count
    }

    /// The events under a key, if it is one of the record and has changed.
    fn read_key(&mut self, key: &str) -> Vec<Event> {
        let place = match key::sort(key) {
            KeyKind::Segment(place) => place,
            KeyKind::Newer(version) => return self.set_aside(key, Fault::Newer(version)),
            KeyKind::Strange => return self.set_aside(key, Fault::StrangeKey),
            KeyKind::Elsewhere => return Vec::new(),
        };
        let seen = self.seen.get(key).copied();
        if seen.is_some_and(|seen| seen.settled) {
            return Vec::new();
        }
        let text = match self.store.get(key) {
            Ok(Some(text)) => text,
            Ok(None) => {
                self.reports.remove(key);
                return Vec::new();
            }
            Err(error) => return self.set_aside(key, Fault::Unreadable(error)),
        };
        if seen.is_some_and(|seen| seen.is_of(&text)) {
            return Vec::new();
        }
        let reading = segment::read(place, &text);
        let settled = reading.faults.is_empty() && reading.events.len() >= CAPACITY;
        self.seen.insert(key.to_owned(), Seen::new(&text, settled));
        self.report(key, reading.faults, reading.events.len());
        reading.events
    }

    fn set_aside(&mut self, key: &str, fault: Fault) -> Vec<Event> {
        self.report(key, vec![fault], 0);
        Vec::new()
    }

    fn report(&mut self, key: &str, faults: Vec<Fault>, kept: usize) {
        if faults.is_empty() {
            self.reports.remove(key);
            return;
        }
        let key = key.to_owned();
        self.reports
            .insert(key.clone(), Report { key, faults, kept });
    }

    /// A key of this writer after all that are in use, good or bad.
    fn unused_key(&self, in_use: &[String]) -> SegmentKey {
        let last = in_use
            .iter()
            .filter_map(|key| match key::sort(key) {
                KeyKind::Segment(place) if place.writer == self.writer => Some(place.number),
                _ => None,
            })
            .max();
        SegmentKey {
            writer: self.writer,
            number: last.unwrap_or(0).saturating_add(1),
        }
    }

    fn save_all(&mut self) -> Option<Unsaved> {
        if !self.unsaved.is_empty() {
            self.why = self.save().err();
        }
        self.unsaved()
    }

    /// Moves what waits into the store, segment by segment. What was moved
    /// before an error stays moved.
    fn save(&mut self) -> Result<(), StoreError> {
        let mut taken = 0;
        while !self.unsaved.is_empty() {
            if self.current.is_full() {
                self.current = self.current.next();
            }
            let key = self.current.key.to_string();
            let found = self.store.get(&key)?;
            if found.is_some() && found.as_deref() != self.current.stored() {
                // Somebody else wrote here. Leave it, and write again
                // elsewhere what this log had put under the key.
                let next = Current::new(self.unused_key(&self.store.keys()?));
                taken += 1;
                if taken > TAKEN_KEYS {
                    return Err(StoreError::Other(format!("{key} is taken")));
                }
                let written = core::mem::replace(&mut self.current, next);
                for event in written.into_events().into_iter().rev() {
                    self.unsaved.push_front(event);
                }
                continue;
            }
            let count = self.current.room().min(self.unsaved.len());
            let text = self.current.text_with(self.unsaved.iter().take(count));
            self.store.put(&key, &text)?;
            let seen = Seen::new(&text, count == self.current.room());
            self.seen.insert(key, seen);
            self.current.accept(self.unsaved.drain(..count), text);
        }
        Ok(())
    }
}

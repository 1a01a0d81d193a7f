//! A mix that is under way, kept beside the record, so that it survives a
//! reload: what was done so far is enough to do it all again.

use crate::browser::storage::BrowserStore;
use clinic::mixing::Replay;
use record::{SittingId, Store};

/// What every kept mix begins with: what it is, and the version of its form.
const HEAD: &str = "trayward-mix 1";

/// A mix under way.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Kept {
    /// The run of work that it belongs to.
    pub sitting: SittingId,
    /// What was done.
    pub replay: Replay,
}

/// Where a mix under way is kept. No number follows the prefixes, so the record
/// leaves it alone.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Shelf {
    /// At the bench, one for a material and a use.
    Bench(String, String),
    /// Of a task, by the run of work that it is done in.
    Task(SittingId),
}

impl Shelf {
    fn key(&self) -> String {
        match self {
            Self::Bench(material, usage) => format!("trayward/mix/{material}/{usage}"),
            Self::Task(sitting) => format!("trayward/mix-task/{sitting}"),
        }
    }

    /// What is kept.
    pub fn take(&self) -> Option<Kept> {
        Kept::read(&BrowserStore.get(&self.key()).ok().flatten()?)
    }

    /// Keeps a mix. Where the storage is full or forbidden the page has said so
    /// already, and goes on in memory.
    pub fn put(&self, kept: &Kept) {
        if let Some(text) = kept.write() {
            let _ = BrowserStore.put(&self.key(), &text);
        }
    }

    /// Forgets what is kept.
    pub fn clear(&self) {
        // What cannot be removed is replaced by the next mix.
        let _ = BrowserStore.remove(&self.key());
    }

    /// Whether the hint was looked at.
    pub fn is_hinted(&self) -> bool {
        let kept = BrowserStore.get(&format!("{}/hint", self.key()));
        kept.ok().flatten().is_some()
    }

    /// Keeps that the hint was looked at.
    pub fn hint(&self) {
        let _ = BrowserStore.put(&format!("{}/hint", self.key()), "1");
    }
}

impl Kept {
    /// The stored form.
    fn write(&self) -> Option<String> {
        let replay = serde_json::to_string(&self.replay).ok()?;
        Some(format!("{HEAD}\n{}\n{replay}", self.sitting))
    }

    /// Reads the stored form; none where it is damaged or of another version,
    /// which costs no more than the mix under way.
    fn read(text: &str) -> Option<Self> {
        let (head, rest) = text.split_once('\n')?;
        let (sitting, replay) = rest.split_once('\n')?;
        (head == HEAD).then_some(())?;
        Some(Self {
            sitting: SittingId::parse(sitting)?,
            replay: serde_json::from_str(replay).ok()?,
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use clinic::mixing::{Action, Room, Units};

    #[test]
    fn a_mix_comes_back_as_it_was_kept_and_a_damaged_one_is_none() {
        let kept = Kept {
            sitting: SittingId(7),
            replay: Replay {
                version: Replay::VERSION,
                material: "zinc-phosphate".into(),
                usage: "base".into(),
                room: Room::usual(),
                actions: vec![Action::DispensePowder(Units::of(1.5)), Action::Test],
            },
        };
        let text = kept.write().unwrap_or_default();
        assert_eq!(Kept::read(&text), Some(kept));
        for damaged in [
            "",
            "trayward-mix 1",
            "trayward-mix 2\n0\n{}",
            &text[..text.len() - 1],
        ] {
            assert_eq!(Kept::read(damaged), None, "{damaged}");
        }
    }
}

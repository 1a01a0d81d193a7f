//! A pack while it is written in: every change is kept on this device and
//! checked after a pause in typing.

use super::{
    checks::Checks,
    kept,
    sources::{Arriving, sources},
};
use class::pack::Pack;
use leptos::{leptos_dom::helpers::TimeoutHandle, prelude::*};
use std::time::Duration;

/// The pause in typing after which what was written is kept.
const TO_KEEP: Duration = Duration::from_millis(250);

/// The pause in typing after which the checks run.
const TO_CHECK: Duration = Duration::from_millis(900);

/// A pack that is open to be written in. Cheap to copy.
#[derive(Clone, Copy)]
pub struct Writing {
    /// The pack as it is now.
    pub pack: RwSignal<Pack>,
    /// The built-in sources as they arrive.
    pub sources: Arriving,
    /// What the checks say of it.
    pub checks: Checks,
    unkept: RwSignal<Option<String>>,
    keeping: StoredValue<Option<TimeoutHandle>>,
    checking: StoredValue<Option<TimeoutHandle>>,
}

impl Writing {
    /// Opens a pack of this device: none where there is none, or the sentences
    /// that say why it cannot be read.
    pub fn open(id: &str) -> Option<Result<Self, Vec<String>>> {
        Some(kept::one(id)?.pack.map(Self::on))
    }

    fn on(pack: Pack) -> Self {
        let writing = Self {
            pack: RwSignal::new(pack),
            sources: sources(),
            checks: Checks::new(),
            unkept: RwSignal::new(None),
            keeping: StoredValue::new(None),
            checking: StoredValue::new(None),
        };
        Effect::new(move |_| {
            if let Some(Ok(_)) = writing.sources.get() {
                writing.check();
            }
        });
        on_cleanup(move || writing.leave());
        writing
    }

    /// Why what was written last is not kept; none while it is.
    pub fn unkept(self) -> Signal<Option<String>> {
        self.unkept.into()
    }

    /// Changes the pack, keeps it and checks it after a pause.
    ///
    /// # Errors
    /// A sentence where the pack cannot be like that; it is as before then.
    pub fn change(self, act: impl FnOnce(&mut Pack) -> Result<(), String>) -> Result<(), String> {
        let mut pack = self.pack.get_untracked();
        act(&mut pack)?;
        self.pack.set(pack);
        again(self.keeping, TO_KEEP, move || self.keep());
        again(self.checking, TO_CHECK, move || self.check());
        Ok(())
    }

    /// Keeps the pack as it is now.
    pub fn keep(self) {
        if let Some(pack) = self.pack.try_get_untracked() {
            self.unkept.set(kept::keep(&pack).err());
        }
    }

    /// Runs the checks, where the built-in sources are here.
    pub fn check(self) {
        if let Some(Some(Ok(files))) = self.sources.try_get_untracked()
            && let Some(pack) = self.pack.try_get_untracked()
        {
            self.checks.run(files, pack);
        }
    }

    /// Keeps what was written since it was kept last. Only then: the pack may have
    /// been taken away, or another one taken in over it.
    fn leave(self) {
        if let Some(Some(timer)) = self.checking.try_update_value(Option::take) {
            timer.clear();
        }
        if let Some(Some(timer)) = self.keeping.try_update_value(Option::take) {
            timer.clear();
            if let Some(pack) = self.pack.try_get_untracked() {
                // Where it fails there is no screen left to say it on; the next
                // change says it.
                let _ = kept::keep(&pack);
            }
        }
    }
}

/// Does something after a pause, and begins the pause afresh where one is under way.
fn again(timer: StoredValue<Option<TimeoutHandle>>, pause: Duration, act: impl FnOnce() + 'static) {
    if let Some(Some(before)) = timer.try_update_value(Option::take) {
        before.clear();
    }
    let after = move || {
        timer.try_set_value(None);
        act();
    };
    timer.set_value(set_timeout_with_handle(after, pause).ok());
}

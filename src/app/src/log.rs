//! The student's record as the page holds it: one log, open for reading in
//! every view and for writing in every handler.

use crate::browser::{
    chance, clock,
    colours::Theme,
    persistence::{self, Kept},
    storage::BrowserStore,
};
use leptos::{ev, prelude::*};
use record::{
    Event, ImportError, Imported, Log, Report, SettingChanged, SittingId, Unsaved, What, Writer,
    folds,
};

/// The open log. Cheap to copy; every copy is the same log.
#[derive(Clone, Copy)]
pub struct OpenLog {
    log: RwSignal<Log<BrowserStore>, LocalStorage>,
    kept: RwSignal<Kept>,
    asked: StoredValue<bool>,
    theme: Memo<Theme>,
}

impl OpenLog {
    /// Opens the log, follows what other tabs write, and shows the page in
    /// the colours it asks for.
    pub fn open() -> Self {
        let log = RwSignal::new_local(Log::open(BrowserStore, Writer(chance::bits())));
        let kept = RwSignal::new(Kept::Asking);
        let theme = Memo::new(move |_| {
            log.with(|log| {
                let settings = folds::settings(log.events());
                Theme::from_value(settings.get(Theme::SETTING).map(String::as_str))
            })
        });
        Effect::new(move |_| theme.get().apply());
        window_event_listener(ev::storage, move |event| {
            follow(log, event.key().as_deref());
        });
        persistence::look(kept);
        let asked = StoredValue::new(false);
        Self {
            log,
            kept,
            asked,
            theme,
        }
    }

    /// A view of the events that is drawn afresh only when it changes.
    pub fn memo<T>(self, fold: impl Fn(&[Event]) -> T + Send + Sync + 'static) -> Memo<T>
    where
        T: PartialEq + Send + Sync + 'static,
    {
        Memo::new(move |_| self.log.with(|log| fold(log.events())))
    }

    /// Looks at the events once, without following them.
    pub fn look<T>(self, fold: impl FnOnce(&[Event]) -> T) -> T {
        self.log.with_untracked(|log| fold(log.events()))
    }

    /// Adds what happened just now, and gives what is not saved, if anything.
    /// The first event is the moment to ask the browser to keep the record.
    pub fn append(self, what: What) -> Option<Unsaved> {
        let appended = self.log.try_update(|log| log.append(clock::now(), what))?;
        self.ask_to_keep();
        appended.unsaved
    }

    /// A name for a run of study that begins now.
    #[expect(
        clippy::unused_self,
        reason = "names in the record are the log's to give"
    )]
    pub fn new_sitting(self) -> SittingId {
        SittingId(chance::bits())
    }

    /// What is only in memory, and why.
    pub fn unsaved(self) -> Memo<Option<Unsaved>> {
        let log = self.log;
        Memo::new(move |_| log.with(Log::unsaved))
    }

    /// Tries once more to save what is only in memory.
    pub fn retry(self) {
        self.log.update(|log| {
            log.retry();
        });
    }

    /// The stored parts that were set aside, in sentences.
    pub fn reports(self) -> Memo<Vec<Report>> {
        let log = self.log;
        Memo::new(move |_| log.with(|log| log.reports().cloned().collect()))
    }

    /// The whole record as the text of a file.
    pub fn export(self) -> String {
        self.log.with_untracked(Log::export)
    }

    /// Takes in an exported file.
    ///
    /// # Errors
    /// What is wrong with the file; then nothing is changed.
    pub fn import(self, file: &[u8]) -> Result<Imported, ImportError> {
        let imported = self.log.try_update(|log| log.import(file));
        let imported = imported.unwrap_or(Err(ImportError::Empty))?;
        self.ask_to_keep();
        Ok(imported)
    }

    /// Asks the browser to keep the record, once a visit: some browsers ask
    /// the reader in turn.
    fn ask_to_keep(self) {
        if !self.asked.get_value() {
            self.asked.set_value(true);
            persistence::request(self.kept);
        }
    }

    /// How safe the stored record is.
    pub fn kept(self) -> Signal<Kept> {
        self.kept.into()
    }

    /// The colour scheme of choice.
    pub fn theme(self) -> Memo<Theme> {
        self.theme
    }

    /// Chooses a colour scheme.
    pub fn set_theme(self, theme: Theme) {
        self.append(What::SettingChanged(SettingChanged {
            key: Theme::SETTING.into(),
            value: theme.value().into(),
        }));
    }
}

/// Reads what another tab wrote: one key, or everything where the browser
/// names none.
fn follow(log: RwSignal<Log<BrowserStore>, LocalStorage>, key: Option<&str>) {
    let new = log.try_update_untracked(|log| match key {
        Some(key) => log.refresh_key(key),
        None => log.refresh(),
    });
    if new.is_some_and(|new| new > 0) {
        log.notify();
    }
}

/// The open log of this page.
pub fn log() -> OpenLog {
    expect_context()
}

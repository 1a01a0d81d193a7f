//! The hand that lays: what lies on the tray, what is held, and every move,
//! each said aloud.

use crate::{
    browser::focus,
    cases::{
        decide::place::{moved, ordinal},
        play::{Asked, Play},
    },
    parts::announce::{Announcer, announcer},
};
use leptos::prelude::*;

/// Laying a tray. Cheap to copy.
#[derive(Clone, Copy)]
pub struct Laying {
    play: Play,
    asked: StoredValue<Asked>,
    /// The ids of what lies on the tray, in order.
    pub taken: Memo<Vec<String>>,
    chosen: RwSignal<Option<String>>,
    announcer: Announcer,
}

impl Laying {
    /// Goes on with the tray as it is.
    pub fn new(play: Play, at: usize) -> Self {
        Self {
            play,
            asked: StoredValue::new(play.asked(at)),
            taken: play.taken(at),
            chosen: RwSignal::new(None),
            announcer: announcer(),
        }
    }

    /// The decision.
    pub fn asked(self) -> Asked {
        self.asked.get_value()
    }

    /// How many things lie on the tray.
    pub fn count(self) -> usize {
        self.taken.with(Vec::len)
    }

    /// The place of a thing on the tray, from 1.
    pub fn place(self, id: &str) -> Option<usize> {
        let at = |taken: &Vec<String>| taken.iter().position(|each| each == id);
        self.taken.with(at).map(|at| at + 1)
    }

    /// The laid thing that is chosen, to be moved or taken back.
    pub fn chosen(self) -> Option<String> {
        let chosen = self.chosen.get()?;
        self.taken
            .with(|taken| taken.contains(&chosen))
            .then_some(chosen)
    }

    /// What a thing is called.
    pub fn name(self, id: &str) -> String {
        self.asked.with_value(|asked| {
            asked
                .choice(id)
                .map_or_else(String::new, |choice| choice.label.clone())
        })
    }

    /// Lays a thing at the end; one that lies there already is chosen.
    pub fn lay(self, id: &str) {
        if self
            .taken
            .with_untracked(|taken| taken.iter().any(|each| each == id))
        {
            return self.choose(id);
        }
        let mut taken = self.taken.get_untracked();
        taken.push(id.into());
        let place = taken.len();
        self.chosen.set(None);
        self.set(taken);
        self.say(format!("{} laid, {}.", self.name(id), ordinal(place)));
    }

    /// Chooses a laid thing; once more lets go of it.
    pub fn choose(self, id: &str) {
        let again = self.chosen.with_untracked(|it| it.as_deref() == Some(id));
        self.chosen.set((!again).then(|| id.into()));
        self.say(if again {
            "Nothing is chosen.".into()
        } else {
            format!("{} is chosen.", self.name(id))
        });
    }

    /// Moves a laid thing to a place, counted from 0.
    pub fn move_to(self, id: &str, to: usize) {
        let before = self.taken.get_untracked();
        let after = moved(&before, id, to);
        if after != before {
            self.set(after);
        }
    }

    /// Moves the chosen thing by one place to the left or to the right.
    pub fn shift(self, right: bool) {
        let Some(id) = self.chosen.get_untracked() else {
            return;
        };
        let Some(from) = self.place(&id) else { return };
        let to = if right { from } else { from.saturating_sub(2) };
        let last = self.taken.with_untracked(Vec::len) - 1;
        self.move_to(&id, to);
        let place = ordinal(to.min(last) + 1);
        self.say(format!("{}, now {place}.", self.name(&id)));
    }

    /// Takes the chosen thing back from the tray.
    pub fn take_back(self) {
        let Some(id) = self.chosen.get_untracked() else {
            return;
        };
        let mut taken = self.taken.get_untracked();
        taken.retain(|each| *each != id);
        self.chosen.set(None);
        self.set(taken);
        self.say(format!("{} taken back.", self.name(&id)));
        focus::first(format!("[data-test=\"lay-{id}\"]"));
    }

    fn set(self, taken: Vec<String>) {
        let at = self.asked.with_value(|asked| asked.at);
        self.play.take(at, taken);
    }

    fn say(self, sentence: String) {
        self.announcer.say(sentence);
    }
}

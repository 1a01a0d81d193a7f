//! A mix under way, as the page holds it: what can be read of it in a view and
//! what can be done with it in a handler. Nothing here decides how a mix
//! behaves or what it is worth; [`Mix`] does.
//!
//! - `opening`: taking it up where it was left
//! - here: doing one thing, handing it over, keeping it
//! - `frames`: the hand, the keys and the clock, frame by frame

mod frames;
mod opening;

use super::{
    hand::Hand,
    kept::{Kept, Shelf},
    picture::scale,
    way::Way,
};
use crate::{
    browser::{clock, focus},
    cases::verdict,
    log::OpenLog,
    parts::announce::Announcer,
};
use clinic::mixing::{
    Action, Celsius, Look, Mix, Offer, PerCent, Replay, Room, Seconds, Stroke, Verdict, Wanted,
    plan::Move, wanted::COMPETENCY,
};
use leptos::prelude::*;
use record::{MixHandedOver, PerCent as Marks, SittingId, What};
use std::sync::Arc;

/// How far the work at the bench has come.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Stage {
    /// The room and the way of working are chosen.
    Before,
    /// The bench is open.
    Open,
    /// The mix was handed over.
    Handed,
}

/// A mix under way. Cheap to copy; every copy is the same mix.
#[derive(Clone, Copy)]
pub struct Session {
    offer: StoredValue<Arc<Offer>>,
    wanted: StoredValue<Arc<Wanted>>,
    mix: StoredValue<Mix>,
    sitting: StoredValue<SittingId>,
    /// The room, where it is a task of an assignment.
    set: Option<Room>,
    shelf: StoredValue<Shelf>,
    log: OpenLog,
    aloud: Announcer,
    /// How the student wants to work.
    pub way: Memo<Way>,
    /// How far it has come.
    pub stage: RwSignal<Stage>,
    /// What is seen of the mass; another one with each frame of work.
    pub look: RwSignal<Look>,
    /// The clock of the mix.
    pub seconds: RwSignal<f64>,
    /// How far the spatula went through the mass in all.
    pub worked: RwSignal<f64>,
    /// Where the spatula is; none while it lies aside.
    pub spatula: RwSignal<Option<(f64, f64)>>,
    /// Whether the clock runs.
    pub running: RwSignal<bool>,
    /// What was said last: the outcome of a test, or why something cannot be done.
    pub said: RwSignal<String>,
    /// Whether the mass was tested and not worked since.
    pub tested: RwSignal<bool>,
    /// Counts what was done, apart from the work of the spatula.
    pub turn: RwSignal<u32>,
    hand: StoredValue<Option<Hand>>,
    /// The stroke of a key or button that is held.
    held: StoredValue<Option<Stroke>>,
    last: StoredValue<i64>,
    /// What was left of the last frame after whole steps, in milliseconds.
    rest: StoredValue<u32>,
    kept: StoredValue<i64>,
    /// Whether it was looked up how the material is mixed.
    pub hinted: RwSignal<bool>,
    /// Counts loops of frames: an older one ends when a newer has begun.
    frames: StoredValue<u32>,
}

impl Session {
    /// What there is to mix with.
    pub fn offer(self) -> Arc<Offer> {
        self.offer.get_value()
    }

    /// How it is wanted at the chair.
    pub fn wanted(self) -> Arc<Wanted> {
        self.wanted.get_value()
    }

    /// The run of work that it is a task's; none at the bench of one's own.
    pub fn task(self) -> Option<SittingId> {
        self.set.map(|_| self.sitting.get_value())
    }

    /// The room that was set; none where it is one's own to choose.
    pub fn room_set(self) -> Option<Room> {
        self.set
    }

    /// It was looked up how the material is mixed.
    pub fn look_up(self) {
        self.shelf.with_value(Shelf::hint);
        self.hinted.set(true);
    }

    /// Looks at the mix as it is now.
    pub fn with<T>(self, look: impl FnOnce(&Mix) -> T) -> T {
        self.mix.with_value(look)
    }

    /// The verdict, once it was handed over.
    pub fn verdict(self) -> Option<Verdict> {
        self.with(|mix| mix.verdict().cloned())
    }

    /// How many units of the drawing a millimetre takes.
    pub fn scale(self) -> f64 {
        self.offer.with_value(|offer| scale(offer))
    }

    /// Opens the bench in a room, and starts the clock where one runs.
    pub fn begin(self, warmth: f64, damp: f64) {
        let chosen = Room {
            temperature: Celsius::of(warmth),
            humidity: PerCent::of(damp),
        };
        let room = self.set.unwrap_or(chosen);
        match room.checked() {
            Ok(room) => {
                self.mix
                    .update_value(|mix| *mix = Mix::of(mix.recipe().clone(), room));
                self.said.set(String::new());
                self.stage.set(Stage::Open);
                self.done();
                self.go_on();
                focus::first("[data-test=bench-moves] h2");
            }
            Err(why) => self.say(why),
        }
    }

    /// Lays a clean bench for another mix.
    pub fn again(self) {
        self.shelf.with_value(Shelf::clear);
        self.sitting.set_value(self.log.new_sitting());
        self.mix
            .update_value(|mix| *mix = Mix::of(mix.recipe().clone(), mix.room()));
        self.said.set(String::new());
        self.worked.set(0.0);
        self.tested.set(false);
        self.stage.set(Stage::Before);
        self.seen();
        focus::heading();
    }

    /// What can be done next, in the order of the work.
    pub fn moves(self) -> Vec<Move> {
        let ready = self.ready();
        let placing = self.wanted().placing;
        self.with(|mix| mix.options(ready, placing))
    }

    /// When the dentist is ready: as the visit has it, or now where no clock runs.
    pub fn ready(self) -> Seconds {
        if self.way.get_untracked() == Way::Calm {
            self.with(Mix::clock)
        } else {
            self.wanted().ready
        }
    }

    /// Does one thing.
    pub fn act(self, action: Action) {
        let action = match action {
            // The moment is that of the tap, not that of the offer.
            Action::HandOver { placing, .. } => Action::HandOver {
                ready: self.ready(),
                placing,
            },
            other => other,
        };
        let done = self.mix.try_update_value(|mix| mix.act(action));
        match done {
            Some(Ok(())) => self.after(action),
            Some(Err(why)) => self.say(why),
            None => {}
        }
    }

    fn after(self, action: Action) {
        self.tested.set(action == Action::Test);
        match action {
            Action::Test => {
                let seen = self.with(Mix::seen);
                self.say(seen.sentence);
            }
            Action::HandOver { .. } => self.hand_over(),
            Action::Spatulate { lasts, .. } => {
                self.worked.update(|way| *way += lasts.get() * 60.0);
                self.say_look();
            }
            _ => self.say_look(),
        }
        self.done();
    }

    /// Tells what is seen to those who do not see it.
    fn say_look(self) {
        self.said.set(String::new());
        self.aloud.say(self.with(|mix| mix.look().sentence));
    }

    fn say(self, sentence: String) {
        self.aloud.say(sentence.clone());
        self.said.set(sentence);
    }

    fn hand_over(self) {
        let Some(judged) = self.verdict() else { return };
        self.lift();
        self.running.set(false);
        self.said.set(String::new());
        self.stage.set(Stage::Handed);
        let (replay, seconds) = self.with(|mix| (mix.replay(), mix.clock().get()));
        #[expect(
            clippy::cast_possible_truncation,
            clippy::cast_sign_loss,
            reason = "a mix is followed for six hours at most"
        )]
        let seconds = seconds.round() as u32;
        let (sitting, hint) = (self.sitting.get_value(), self.hinted.get_untracked());
        let handed = handed_over(sitting, replay, &judged, hint, seconds);
        self.log.append(What::MixHandedOver(handed));
        focus::first("#verdict");
    }

    /// Something was done: it is seen and kept.
    fn done(self) {
        self.seen();
        self.turn.update(|turn| *turn += 1);
        self.keep();
    }

    fn seen(self) {
        let (look, seconds) = self.with(|mix| (mix.look(), mix.clock().get()));
        self.look.set(look);
        self.seconds.set(seconds);
    }

    /// Keeps the mix, once the bench is open.
    fn keep(self) {
        if self
            .stage
            .try_get_untracked()
            .is_none_or(|it| it == Stage::Before)
        {
            return;
        }
        self.kept.set_value(now());
        let kept = Kept {
            sitting: self.sitting.get_value(),
            replay: self.with(Mix::replay),
        };
        self.shelf.with_value(|shelf| shelf.put(&kept));
    }
}

/// A mix that was handed over, as the record keeps it.
pub fn handed_over(
    sitting: SittingId,
    replay: Replay,
    judged: &Verdict,
    hint: bool,
    seconds: u32,
) -> MixHandedOver {
    MixHandedOver {
        sitting,
        material: replay.material.to_string(),
        replay: serde_json::to_string(&replay).unwrap_or_default(),
        usage: replay.usage,
        verdict: verdict(judged.standing),
        per_cent: Marks::of(judged.marks),
        competency: COMPETENCY.into(),
        hint,
        seconds,
    }
}

fn now() -> i64 {
    clock::now().utc_ms
}

//! A mix under way, as the page holds it: what can be read of it in a view and
//! what can be done with it in a handler. Nothing here decides how a mix
//! behaves or what it is worth; [`Mix`] does.

mod frames;

use super::{hand::Hand, kept::Kept, picture::scale, way::Way};
use crate::{
    browser::{clock, focus},
    cases::verdict,
    log::{OpenLog, log},
    parts::announce::{Announcer, announcer},
};
use clinic::mixing::{
    Action, Celsius, Look, Mix, Offer, PerCent, Room, Seconds, Stroke, Verdict, Wanted, plan::Move,
    wanted::COMPETENCY,
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
    kept: StoredValue<i64>,
    /// Counts loops of frames: an older one ends when a newer has begun.
    frames: StoredValue<u32>,
}

impl Session {
    /// Takes up the mix where it was left, or lays a clean bench.
    pub fn open(offer: Offer, wanted: Wanted, clean: Mix, kept: Option<(SittingId, Mix)>) -> Self {
        let log = log();
        let (sitting, mix, stage) = match kept {
            Some((sitting, mix)) if mix.verdict().is_some() => (sitting, mix, Stage::Handed),
            Some((sitting, mix)) => (sitting, mix, Stage::Open),
            None => (log.new_sitting(), clean, Stage::Before),
        };
        let said = if stage == Stage::Open {
            "Taken up where you left it. The clock stands until you go on.".into()
        } else {
            String::new()
        };
        let session = Self {
            look: RwSignal::new(mix.look()),
            seconds: RwSignal::new(mix.clock().get()),
            offer: StoredValue::new(Arc::new(offer)),
            wanted: StoredValue::new(Arc::new(wanted)),
            mix: StoredValue::new(mix),
            sitting: StoredValue::new(sitting),
            log,
            aloud: announcer(),
            way: Way::chosen(),
            stage: RwSignal::new(stage),
            worked: RwSignal::new(0.0),
            spatula: RwSignal::new(None),
            running: RwSignal::new(false),
            said: RwSignal::new(said),
            tested: RwSignal::new(false),
            turn: RwSignal::new(0),
            hand: StoredValue::new(None),
            held: StoredValue::new(None),
            last: StoredValue::new(0),
            kept: StoredValue::new(0),
            frames: StoredValue::new(0),
        };
        on_cleanup(move || {
            session.keep();
            session.frames.try_update_value(|frames| *frames += 1);
        });
        session
    }

    /// What there is to mix with.
    pub fn offer(self) -> Arc<Offer> {
        self.offer.get_value()
    }

    /// How it is wanted at the chair.
    pub fn wanted(self) -> Arc<Wanted> {
        self.wanted.get_value()
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
        let room = Room {
            temperature: Celsius::of(warmth),
            humidity: PerCent::of(damp),
        };
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
        let offer = self.offer();
        Kept::forget(offer.material.as_str(), &offer.usage);
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
        let text = serde_json::to_string(&replay).unwrap_or_default();
        #[expect(
            clippy::cast_possible_truncation,
            clippy::cast_sign_loss,
            reason = "a mix is followed for six hours at most"
        )]
        let seconds = seconds.round() as u32;
        self.log.append(What::MixHandedOver(MixHandedOver {
            sitting: self.sitting.get_value(),
            material: replay.material.to_string(),
            usage: replay.usage,
            replay: text,
            verdict: verdict(judged.standing),
            per_cent: Marks::of(judged.marks),
            competency: COMPETENCY.into(),
            seconds,
        }));
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
        Kept {
            sitting: self.sitting.get_value(),
            replay: self.with(Mix::replay),
        }
        .keep();
    }
}

fn now() -> i64 {
    clock::now().utc_ms
}

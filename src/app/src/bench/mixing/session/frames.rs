//! The work of the hand, frame by frame: the clock, the spatula, a key that is held.

use super::{Session, Stage, now};
use crate::bench::mixing::{hand::Hand, picture::MIDDLE, way::Way};
use catalogue::kinetics::Area;
use clinic::mixing::{Action, Millis, Stroke, Vigour};
use leptos::prelude::*;

/// The longest that one frame may last, in milliseconds: what is longer was no
/// frame, but a page that lay in the background.
const LONGEST_FRAME: i64 = 100;

/// The steps in which time passes over a mix, in milliseconds: those of the
/// model, so that what the hand did takes few letters to hand in.
const STEP: u32 = 20;

/// How often a mix under way is kept while it is worked, in milliseconds.
const KEPT_EVERY: i64 = 2000;

impl Session {
    /// Lets the clock run, where it runs.
    pub fn go_on(self) {
        if self.way.get_untracked() == Way::Clock && self.stage.get_untracked() == Stage::Open {
            self.running.set(true);
            self.frame_by_frame();
        }
    }

    /// Stops the clock.
    pub fn pause(self) {
        self.running.set(false);
        self.lift();
        self.say("Paused: nothing ages until you go on.".into());
        self.keep();
    }

    /// Whether the hand may work now; says why not where it may not.
    fn may_work(self) -> bool {
        if self.stage.get_untracked() != Stage::Open || !self.way.get_untracked().by_hand() {
            return false;
        }
        if self.way.get_untracked() == Way::Clock && !self.running.get_untracked() {
            self.say("The clock stands: go on first.".into());
            return false;
        }
        if self.with(|mix| mix.age().is_none()) {
            let offer = self.offer();
            self.say(format!(
                "There is no mix yet: put out the {} and the {}, then bring them together.",
                offer.powder.name, offer.liquid.name
            ));
            return false;
        }
        self.said.set(String::new());
        self.tested.set(false);
        true
    }

    /// The spatula is put on the pad.
    pub fn put_down(self, at: (f64, f64)) {
        if self.may_work() {
            let hand = Hand::down(at, float(now()), self.usual_area());
            self.hand.set_value(Some(hand));
            self.spatula.set(Some(at));
            self.frame_by_frame();
        }
    }

    /// The spatula goes on to here.
    pub fn draw_on(self, at: (f64, f64)) {
        let before = self.hand.with_value(|hand| hand.map(|hand| hand.at));
        if let Some(before) = before {
            self.hand.update_value(|hand| {
                if let Some(hand) = hand {
                    hand.moved(at);
                }
            });
            let way = (at.0 - before.0).hypot(at.1 - before.1);
            self.worked.update(|all| *all += way);
            self.spatula.set(Some(at));
        }
    }

    /// A key or a button is held: the spatula works by itself.
    pub fn hold(self, vigour: Vigour, area: Area) {
        if self.held.with_value(Option::is_none) && self.may_work() {
            self.held.set_value(Some(Stroke { vigour, area }));
            self.frame_by_frame();
        }
    }

    /// The spatula is lifted, the key let go.
    pub fn lift(self) {
        let worked = self.hand.with_value(Option::is_some) || self.held.with_value(Option::is_some);
        self.hand.set_value(None);
        self.held.set_value(None);
        self.spatula.set(None);
        if worked {
            self.done();
        }
    }

    /// Over how much of the surface it is usually worked.
    pub fn usual_area(self) -> Area {
        self.offer.with_value(|offer| offer.area)
    }

    /// Begins to go on with each frame.
    fn frame_by_frame(self) {
        self.last.set_value(now());
        self.frames.update_value(|frames| *frames += 1);
        let loop_of = self.frames.get_value();
        request_animation_frame(move || self.frame(loop_of));
    }

    fn frame(self, loop_of: u32) {
        // None once the screen was left.
        if self.frames.try_get_value() != Some(loop_of) {
            return;
        }
        let time = now();
        let lasts = (time - self.last.get_value()).clamp(0, LONGEST_FRAME);
        self.last.set_value(time);
        let stroke = self.stroke(time, lasts);
        if stroke.is_none() && !self.running.get_untracked() {
            if self.hand.with_value(Option::is_some) {
                request_animation_frame(move || self.frame(loop_of));
            }
            return;
        }
        let lasts = self.rest.get_value() + u32::try_from(lasts).unwrap_or(0);
        self.rest.set_value(lasts % STEP);
        let lasts = Millis(lasts / STEP * STEP);
        if lasts.0 > 0 {
            let action = match stroke {
                Some(stroke) => Action::Spatulate { stroke, lasts },
                None => Action::Wait(lasts),
            };
            let done = self.mix.try_update_value(|mix| mix.act(action));
            if let Some(Err(why)) = done {
                self.running.set(false);
                self.lift();
                self.say(why);
                return;
            }
            self.seen();
        }
        if time - self.kept.get_value() > KEPT_EVERY {
            self.keep();
        }
        request_animation_frame(move || self.frame(loop_of));
    }

    /// How the mass is worked in this frame.
    fn stroke(self, time: i64, lasts: i64) -> Option<Stroke> {
        if let Some(held) = self.held.get_value() {
            // A key has no place on the pad: the spatula goes round.
            let turn = float(time % 100_000) / 160.0;
            let far = if held.area == Area::Wide { 24.0 } else { 10.0 };
            let at = (
                MIDDLE.0 + far * turn.cos(),
                MIDDLE.1 + 0.8 * far * turn.sin(),
            );
            self.spatula.set(Some(at));
            self.worked.update(|way| *way += float(lasts) * 0.1);
            return Some(held);
        }
        self.hand.update_value(|hand| {
            if let Some(hand) = hand {
                hand.judge(float(time));
            }
        });
        self.hand
            .with_value(|hand| hand.and_then(|hand| hand.stroke))
    }
}

#[expect(
    clippy::cast_precision_loss,
    reason = "milliseconds since 1970 are far below 2^53"
)]
fn float(number: i64) -> f64 {
    number as f64
}

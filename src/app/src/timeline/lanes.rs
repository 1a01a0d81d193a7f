//! The lanes that both drawings share: blocks of steps in the lane of who acts.

use super::minutes::pixels;
use crate::parts::steps::actor;
use catalogue::procedures::Actor;
use clinic::timing::Slot;
use leptos::prelude::*;

/// The height of a lane in pixels.
pub const LANE: i64 = 40;
/// Between lanes.
pub const GAP: i64 = 6;

/// How a drawing is laid out.
#[derive(Clone, Copy)]
pub struct Lanes {
    /// The second at the left edge.
    pub from: i64,
    /// The second at the right edge.
    pub to: i64,
    /// Pixels a minute.
    pub a_minute: i64,
    /// Where the dentist's lane begins, in pixels from the top.
    pub top: i64,
}

impl Lanes {
    /// The place of a moment, in pixels.
    pub fn x(self, seconds: i64) -> i64 {
        pixels(seconds.clamp(self.from, self.to) - self.from, self.a_minute)
    }

    /// The width of the drawing.
    pub fn width(self) -> i64 {
        pixels(self.to - self.from, self.a_minute)
    }

    /// The top of the assistant's lane.
    pub fn assistant(self) -> i64 {
        self.top + LANE + GAP
    }

    /// The bottom of the assistant's lane.
    pub fn bottom(self) -> i64 {
        self.assistant() + LANE
    }

    /// A step as a block with its number. What both do spans both lanes.
    pub fn block(self, slot: &Slot, number: usize, critical: bool) -> impl IntoView + use<> {
        let (y, height) = match slot.who {
            Actor::Dentist => (self.top, LANE),
            Actor::Assistant => (self.assistant(), LANE),
            Actor::Team => (self.top, 2 * LANE + GAP),
        };
        let (x, end) = (self.x(slot.from.into()), self.x(slot.to.into()));
        let width = (end - x - 1).max(2);
        let class = match (slot.who, critical) {
            (Actor::Dentist, false) => "block block-dentist",
            (Actor::Dentist, true) => "block block-dentist block-critical",
            (_, false) => "block block-assistant",
            (_, true) => "block block-assistant block-critical",
        };
        let shown = end > x;
        let label = (width >= 18).then(|| {
            view! {
                <text class="block-number" x=x + width / 2 y=y + height / 2 + 5 text-anchor="middle">{number}</text>
            }
        });
        let mark = critical.then(|| {
            let middle = x + width / 2;
            let points = format!("{},{y} {},{y} {middle},{}", middle - 5, middle + 5, y + 8);
            view! { <polygon class="block-mark" points=points /> }
        });
        let title = format!("{number}. {}: {}", actor(slot.who), slot.does);
        shown.then(|| {
            view! {
                <g>
                    <title>{title}</title>
                    <rect class=class x=x y=y width=width height=height rx="4" />
                    {mark}
                    {label}
                </g>
            }
        })
    }
}

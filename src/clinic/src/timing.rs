//! When the assistant has to start: mixing, so that the dentist never waits
//! and nothing sets too early.
//!
//! The visit is a flow of steps, one after another, at the chair; mixing runs
//! beside it in the assistant's hands, and so does what the assistant does for
//! it just before in the same stage, such as dispensing. For a mix that takes `m` and can be worked
//! for `w` from its start, with the dentist ready at `r` and `p` to go until it is in its place:
//!
//! - the latest start is `r - m`: later, and the dentist waits;
//! - the earliest start is `r + p - w`: earlier, and it stiffens before it is placed.
//!
//! Durations are ranges. The window is computed with the middle of `m` and `p`
//! and with the shortest `w`, which is the safe side; where it is empty the
//! portion is too large for one mix, and that is said. Durations of steps are
//! custom of the trade: a flow drawn from them is an illustration.

use crate::{Clinic, patient::Patient, tray::PlacedStep};
use catalogue::{
    ids::{ItemId, ProcedureId, StepId},
    procedures::Actor,
    quantity::Span,
};

/// How far past either end of its window a start still passes, in seconds. No
/// pair works to the second; the figure is ours.
pub const GRACE: i64 = 20;

/// A step on the time line.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Slot {
    /// The step's place in the flow of [`Clinic::steps`].
    pub place: usize,
    /// The procedure it is written in.
    pub procedure: ProcedureId,
    /// The step.
    pub step: StepId,
    /// Its stage.
    pub stage: String,
    /// What is done.
    pub does: String,
    /// Who acts.
    pub who: Actor,
    /// When it begins, in seconds from the start of the visit, with middle durations.
    pub from: u32,
    /// When it ends.
    pub to: u32,
}

/// When one mix has to be started.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Window {
    /// The material.
    pub material: ItemId,
    /// The step that mixes it: its place in the flow of [`Clinic::steps`].
    pub place: usize,
    /// The earliest start, in seconds from the start of the visit.
    pub earliest: i64,
    /// The latest start.
    pub latest: i64,
    /// When the dentist is ready for it.
    pub ready: u32,
    /// How long mixing takes.
    pub mix: Span,
    /// How long it can be worked, from the start of the mix.
    pub work: Span,
    /// How long it takes until the last of it is in its place. Holding it still
    /// until it has set is not in it: a mix that stiffens then does what it should.
    pub placing: u32,
}

/// How a start fits its window.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Start {
    /// It stiffens this many seconds before it is placed.
    TooEarly(u32),
    /// The dentist neither waits nor loses the mix.
    InTime,
    /// The dentist waits this many seconds.
    TooLate(u32),
}

/// The two lanes of a visit.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Timeline {
    /// The flow at the chair.
    pub flow: Vec<Slot>,
    /// The mixes beside it.
    pub windows: Vec<Window>,
}

impl Window {
    /// Whether one mix can be made and placed at all.
    pub fn is_open(&self) -> bool {
        self.earliest <= self.latest
    }

    /// How a start at this second fits. Where the window is empty only the
    /// latest start keeps the dentist from waiting.
    pub fn judge(&self, second: i64) -> Start {
        let seconds = |s: i64| u32::try_from(s).unwrap_or(u32::MAX);
        if second > self.latest + GRACE {
            Start::TooLate(seconds(second - self.latest))
        } else if second < self.earliest.min(self.latest) - GRACE {
            Start::TooEarly(seconds(self.earliest.min(self.latest) - second))
        } else {
            Start::InTime
        }
    }
}

impl Clinic {
    /// The time line of a procedure for a patient.
    pub fn timeline(&self, procedure: &ProcedureId, patient: &Patient) -> Timeline {
        let steps = self.steps(procedure, patient);
        let mut line = Timeline::default();
        let mut now = 0;
        let mut mixes = Vec::new();
        for (place, placed) in steps.iter().enumerate() {
            if beside_the_flow(placed) {
                // Dispensing belongs to the mix and runs beside the flow with it.
                while let Some(slot) = line
                    .flow
                    .pop_if(|s| s.who == Actor::Assistant && s.stage == placed.stage)
                {
                    now = slot.from;
                }
                mixes.push((place, now));
                continue;
            }
            let slot = slot(place, placed, now);
            now = slot.to;
            line.flow.push(slot);
        }
        line.windows = mixes
            .into_iter()
            .filter_map(|(place, ready)| self.window(&steps, place, ready))
            .collect();
        line
    }

    fn window(&self, steps: &[PlacedStep], place: usize, ready: u32) -> Option<Window> {
        let id = steps[place].step.mixes.as_ref()?;
        let mixing = self.catalogue.material(id)?.mixing.as_ref()?;
        let placing = placing(steps, place);
        let (mix, work) = (mixing.mix_seconds, mixing.work_seconds);
        Some(Window {
            material: id.clone(),
            place,
            earliest: i64::from(ready) + i64::from(placing) - i64::from(work.from),
            latest: i64::from(ready) - i64::from(mix.middle()),
            ready,
            mix,
            work,
            placing,
        })
    }
}

fn slot(place: usize, placed: &PlacedStep, from: u32) -> Slot {
    Slot {
        place,
        procedure: placed.procedure.clone(),
        step: placed.step.id.clone(),
        stage: placed.stage.clone(),
        does: placed.step.does.clone(),
        who: placed.step.who,
        from,
        to: from + duration(placed),
    }
}

/// How long it takes from the end of the mix until the last step that places
/// it is done, with whatever happens at the chair between. A later mix of the
/// same material is placed by steps of its own.
fn placing(steps: &[PlacedStep], mixed: usize) -> u32 {
    let material = steps[mixed].step.mixes.as_ref();
    let after = &steps[mixed + 1..];
    let again = after
        .iter()
        .position(|s| s.step.mixes.as_ref() == material)
        .unwrap_or(after.len());
    let last = after[..again]
        .iter()
        .rposition(|s| s.step.places.as_ref() == material);
    last.map_or(0, |last| {
        let at_the_chair = after[..=last].iter().filter(|s| !beside_the_flow(s));
        at_the_chair.map(duration).sum()
    })
}

/// Whether the assistant does it while the dentist goes on: a mix.
fn beside_the_flow(placed: &PlacedStep) -> bool {
    placed.step.mixes.is_some() && placed.step.who != Actor::Dentist
}

/// The middle of a step's duration. Only a step that includes a set-up has none
/// of its own, and such a step is never in a flow.
fn duration(placed: &PlacedStep) -> u32 {
    placed.step.seconds.map_or(0, Span::middle)
}

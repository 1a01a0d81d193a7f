//! Assignments: what was taken up, how far it is, and whether it is handed in.

use std::collections::{BTreeMap, BTreeSet};

use crate::class::{AssignmentTaken, SkillChecked};
use crate::event::Event;
use crate::moment::Moment;
use crate::values::SittingId;
use crate::what::What;

/// A run at an assignment.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Assigned {
    /// When it was taken up.
    pub at: Moment,
    /// What was taken up.
    pub taken: AssignmentTaken,
    /// The tasks that were begun, by their places; the latest sitting of each counts.
    pub tasks: BTreeMap<u16, Begun>,
    /// When it was handed in, and the code; none where it was not.
    pub handed_in: Option<(Moment, String)>,
}

/// A task that was begun.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Begun {
    /// The sitting in which it is done.
    pub sitting: SittingId,
    /// Whether that sitting is at its end.
    pub finished: bool,
}

impl Assigned {
    /// How many tasks are done.
    pub fn done(&self) -> usize {
        self.tasks.values().filter(|task| task.finished).count()
    }

    /// Whether all tasks are done.
    pub fn complete(&self) -> bool {
        self.done() >= usize::from(self.taken.tasks)
    }
}

/// The latest run at each assignment, in the order in which they were taken up.
pub fn assignments(events: &[Event]) -> Vec<Assigned> {
    let mut all: Vec<Assigned> = Vec::new();
    for event in events {
        if let What::AssignmentTaken(taken) = &event.what {
            all.retain(|it| it.taken.assignment != taken.assignment);
            all.push(Assigned {
                at: event.at,
                taken: taken.clone(),
                tasks: BTreeMap::new(),
                handed_in: None,
            });
        }
    }
    if all.is_empty() {
        return all;
    }
    let finished = finished(events);
    for event in events {
        match &event.what {
            What::TaskBegun(task) => {
                if let Some(run) = all.iter_mut().find(|it| it.taken.run == task.run) {
                    let begun = Begun {
                        sitting: task.sitting,
                        finished: finished.contains(&task.sitting),
                    };
                    run.tasks.insert(task.place, begun);
                }
            }
            What::HandedIn(code) => {
                if let Some(run) = all.iter_mut().find(|it| it.taken.run == code.run) {
                    run.handed_in = Some((event.at, code.code.clone()));
                }
            }
            _ => {}
        }
    }
    all
}

/// The assignment that a sitting is a task of: its id and title.
pub fn assigned(events: &[Event], sitting: SittingId) -> Option<(String, String)> {
    let run = events.iter().find_map(|event| match &event.what {
        What::TaskBegun(task) if task.sitting == sitting => Some(task.run),
        _ => None,
    })?;
    events.iter().find_map(|event| match &event.what {
        What::AssignmentTaken(taken) if taken.run == run => {
            Some((taken.assignment.clone(), taken.title.clone()))
        }
        _ => None,
    })
}

/// The skills that were checked off, in the order of the record.
pub fn skills_checked(events: &[Event]) -> Vec<(Moment, SkillChecked)> {
    let checked = |event: &Event| match &event.what {
        What::SkillChecked(skill) => Some((event.at, skill.clone())),
        _ => None,
    };
    events.iter().filter_map(checked).collect()
}

/// The sittings that are at their end, of whatever kind.
fn finished(events: &[Event]) -> BTreeSet<SittingId> {
    let ended = |event: &Event| match &event.what {
        What::CaseFinished(it) => Some(it.sitting),
        What::FormFinished(it) => Some(it.form),
        What::MixHandedOver(it) => Some(it.sitting),
        What::SittingEnded(it) => Some(it.sitting),
        _ => None,
    };
    events.iter().filter_map(ended).collect()
}

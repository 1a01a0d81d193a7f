//! Tasks and days in words.

use crate::{browser::clock, parts::level::level, taught::catalogue};
use catalogue::ids::{CaseId, CompetencyId, FindingId, ProcedureId};
use class::{
    assignment::{Assignment, Day, Set},
    task::{Order, Task},
};
use record::Moment;

/// What tells an assignment from others, as it stands in places and the record.
pub fn id(assignment: &Assignment) -> String {
    format!("{:08x}", assignment.id())
}

/// A day in words.
pub fn due(day: Day) -> String {
    clock::day(Moment {
        utc_ms: i64::from(day.0) * 86_400_000,
        offset_min: 0,
    })
}

/// A task in words.
pub fn task(task: &Task) -> String {
    match task {
        Task::Case(order) => case(order),
        Task::Reading => "A tray to be read".into(),
        Task::Mix(material) => format!("A mix: {}", item(material)),
        Task::Question(family) => format!("A question: {family}"),
        Task::Form { questions, .. } => format!("A practice form of {questions} questions"),
    }
}

/// Tasks with how often each is set.
pub fn tasks(sets: &[Set]) -> Vec<String> {
    let words = |set: &Set| match set.times {
        1 => task(&set.task),
        times => format!("{} × {times}", task(&set.task)),
    };
    sets.iter().map(words).collect()
}

fn item(id: &str) -> String {
    let items = &catalogue().materials;
    let found = items.iter().find(|it| it.id.as_str() == id);
    found.map_or_else(|| id.to_owned(), |it| it.name.clone())
}

fn case(order: &Order) -> String {
    let catalogue = catalogue();
    let mut parts = Vec::new();
    if let Some(frame) = &order.frame {
        let frame = catalogue.case(&CaseId::from(frame.as_str()));
        parts.extend(frame.map(|it| it.title.clone()));
    }
    if let Some(booked) = &order.booked {
        let booked = catalogue.procedure(&ProcedureId::from(booked.as_str()));
        parts.extend(booked.map(|it| format!("booked for {}", it.short)));
    }
    if let Some(about) = &order.competency {
        let about = CompetencyId::from(about.as_str());
        let about = catalogue.competencies.iter().find(|it| it.id == about);
        parts.extend(about.map(|it| format!("mainly about {}", it.name)));
    }
    if let Some(with) = &order.with {
        let with = FindingId::from(with.as_str());
        let with = catalogue.findings.iter().find(|it| it.id == with);
        parts.extend(with.map(|it| format!("the patient has: {}", it.name)));
    }
    if let Some(how) = order.level {
        parts.push(level(how).to_lowercase());
    }
    if parts.is_empty() {
        "A case of any kind".into()
    } else {
        format!("Case: {}", parts.join(", "))
    }
}

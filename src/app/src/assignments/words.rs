//! Tasks and days in words.

use crate::{browser::clock, parts::level::level, taught::catalogue};
use catalogue::ids::{CaseId, FindingId, ProcedureId};
use class::{
    assignment::{Assignment, Day, Set},
    task::{Order, Task},
};
use clinic::{mixing::steps_of, numbers::exercises::Family as Exercises};
use record::Moment;
use study::families;

/// What a student is told before packs that an assignment needs and this device has not.
pub const FROM_INSTRUCTOR: &str = "It was set with a pack that your instructor has to give you:";

/// What tells an assignment from others, as it stands in places and the record.
pub fn id(assignment: &Assignment) -> String {
    id_of(assignment.id())
}

/// The same from the number that codes carry.
pub fn id_of(number: u32) -> String {
    format!("{number:08x}")
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
        Task::Mix { material, usage } => mix(material, usage.as_deref()),
        Task::Number(family) => {
            let name = Exercises::with_id(family).map_or(family.as_str(), |it| it.name());
            format!("Number: {name}")
        }
        Task::Question(family) => {
            let known = families::ALL.iter().find(|it| it.id == family);
            format!("Question: {}", known.map_or(family.as_str(), |it| it.name))
        }
        Task::Form {
            blueprint,
            questions,
        } => match competency(blueprint) {
            Some(name) => format!("Practice form of {questions} questions on {name}"),
            None => format!("Practice form of {questions} questions"),
        },
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

/// Tasks in a few words, by kind: `2 cases, 1 mix, a form of 20 questions`.
pub fn summary(sets: &[Set]) -> String {
    let count = |is: fn(&Task) -> bool| -> u32 {
        let own = sets.iter().filter(|set| is(&set.task));
        own.map(|set| u32::from(set.times)).sum()
    };
    let kinds: [(u32, &str, &str); 5] = [
        (count(|it| matches!(it, Task::Case(_))), "case", "cases"),
        (
            count(|it| matches!(it, Task::Reading)),
            "tray to be read",
            "trays to be read",
        ),
        (count(|it| matches!(it, Task::Mix { .. })), "mix", "mixes"),
        (
            count(|it| matches!(it, Task::Number(_))),
            "number",
            "numbers",
        ),
        (
            count(|it| matches!(it, Task::Question(_))),
            "question",
            "questions",
        ),
    ];
    let counted = kinds.into_iter().filter(|(count, ..)| *count > 0);
    let counted = counted.map(|(count, one, many)| match count {
        1 => format!("1 {one}"),
        _ => format!("{count} {many}"),
    });
    let forms = sets.iter().filter_map(|set| match &set.task {
        Task::Form { questions, .. } if set.times == 1 => {
            Some(format!("a form of {questions} questions"))
        }
        Task::Form { questions, .. } => {
            Some(format!("{} forms of {questions} questions", set.times))
        }
        _ => None,
    });
    counted.chain(forms).collect::<Vec<_>>().join(", ")
}

/// A time that is expected, in words.
pub fn expected(minutes: u16) -> String {
    match minutes {
        0 | 1 => "about a minute".into(),
        many if many < 90 => format!("about {many} min"),
        many => {
            let quarters = (many + 7) / 15;
            let (hours, rest) = (quarters / 4, quarters % 4 * 15);
            match rest {
                0 => format!("about {hours} h"),
                rest => format!("about {hours} h {rest} min"),
            }
        }
    }
}

/// The name of a competency.
fn competency(id: &str) -> Option<&'static str> {
    let mut all = catalogue().competencies.iter();
    all.find(|it| it.id.as_str() == id)
        .map(|it| it.name.as_str())
}

fn mix(material: &str, usage: Option<&str>) -> String {
    let offer = steps_of(catalogue(), &material.into(), usage);
    let Ok(offer) = offer else {
        return format!("Mix: {material}");
    };
    let mut uses = offer.uses.iter();
    let named = uses.find(|(id, _)| *id == offer.usage);
    let named = named.map_or_else(String::new, |(_, name)| format!(", for {name}"));
    format!("Mix: {}{named}", offer.name)
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
        parts.extend(competency(about).map(|name| format!("mainly about {name}")));
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

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn tasks_are_counted_by_kind() {
        let set = |task, times| Set { task, times };
        let form = |questions| Task::Form {
            blueprint: "all".into(),
            questions,
        };
        let mix = Task::Mix {
            material: "m".into(),
            usage: None,
        };
        let sets = [
            set(Task::Case(Order::default()), 2),
            set(mix, 1),
            set(Task::Question("a".into()), 3),
            set(Task::Question("b".into()), 1),
            set(form(20), 1),
            set(form(10), 2),
        ];
        assert_eq!(
            summary(&sets),
            "2 cases, 1 mix, 4 questions, a form of 20 questions, 2 forms of 10 questions"
        );
        assert_eq!(summary(&[]), "");
    }

    #[test]
    fn a_time_is_said_as_people_say_it() {
        for (minutes, says) in [
            (1, "about a minute"),
            (25, "about 25 min"),
            (90, "about 1 h 30 min"),
            (118, "about 2 h"),
        ] {
            assert_eq!(expected(minutes), says);
        }
    }
}

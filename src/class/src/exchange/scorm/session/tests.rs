//! What a school's system is told, name by name.

use super::*;
use crate::exchange::scorm::{Said, identifier};

fn session() -> Session {
    Session {
        status: Status::Passed,
        passed_before: false,
        right: 2,
        asked: 3,
        seconds: 3725,
        suspended: "1.2.3".into(),
        told: 4,
        interactions: vec![Interaction {
            id: "0.liner".into(),
            said: Said::Chosen(vec![0, 25, 26, 35]),
            right: true,
            at: 50_400,
            seconds: 12,
        }],
    }
}

#[test]
fn a_sitting_is_told_in_the_words_of_the_standard() {
    let values = session().values().unwrap();
    let value = |name: &str| {
        values
            .iter()
            .find(|(n, _)| n == name)
            .map(|(_, v)| v.as_str())
    };
    for (name, wanted) in [
        ("cmi.core.lesson_status", "passed"),
        ("cmi.core.score.raw", "66.66"),
        ("cmi.core.session_time", "0001:02:05.00"),
        ("cmi.suspend_data", "1.2.3"),
        ("cmi.core.exit", ""),
        ("cmi.interactions.4.id", "0.liner"),
        ("cmi.interactions.4.time", "14:00:00"),
        ("cmi.interactions.4.student_response", "a,z,0,9"),
        ("cmi.interactions.4.result", "correct"),
        ("cmi.interactions.4.latency", "0000:00:12.00"),
    ] {
        assert_eq!(value(name), Some(wanted), "{name}");
    }
}

#[test]
fn what_was_passed_stays_passed() {
    let told = |session: Session| -> Vec<String> {
        let values = session.values().unwrap().into_iter();
        values.map(|(name, _)| name).collect()
    };
    let mut again = session();
    again.passed_before = true;
    assert!(told(again.clone()).contains(&"cmi.core.score.raw".to_owned()));
    again.status = Status::Failed;
    let names = told(again);
    assert_eq!(
        names[..3],
        ["cmi.core.session_time", "cmi.suspend_data", "cmi.core.exit"]
    );
}

#[test]
fn what_was_typed_or_done_is_told_in_plain_letters() {
    let mut typed = session();
    typed.interactions[0].said = Said::Typed(format!("2½ mg{}", "x".repeat(300)));
    let values = typed.values().unwrap();
    let value = |part: &str| {
        let name = format!("cmi.interactions.4.{part}");
        values
            .iter()
            .find(|(n, _)| *n == name)
            .map(|(_, v)| v.clone())
    };
    assert_eq!(value("type").as_deref(), Some("fill-in"));
    let answer = value("student_response").unwrap();
    assert!(
        answer.starts_with("2? mgx") && answer.len() == 255,
        "{answer}"
    );
}

#[test]
fn any_id_becomes_one_that_is_taken() {
    assert_eq!(identifier("task-1.why/a b:ü"), "task-1.why_a_b__");
    let mut long = session();
    long.interactions[0].id = identifier(&"x".repeat(300));
    assert!(long.values().is_ok());
    long.interactions[0].id = "x".repeat(256);
    assert!(long.values().is_err());
}

#[test]
fn what_the_standard_has_no_room_for_is_refused() {
    let mut long = session();
    long.suspended = "x".repeat(4096);
    assert!(long.values().is_ok());
    long.suspended.push('x');
    assert_eq!(long.values(), Err(ScormError::Suspended(4097)));
    let mut id = session();
    id.interactions[0].id = "a b".into();
    assert_eq!(id.values(), Err(ScormError::Id("a b".into())));
    let mut place = session();
    place.interactions[0].said = Said::Chosen(vec![36]);
    assert_eq!(place.values(), Err(ScormError::Answer("0.liner".into())));
    let mut time = session();
    time.seconds = u64::MAX;
    assert_eq!(time.values().unwrap()[4].1, "9999:59:59.00");
}

//! What is typed, in any way, and wrongly.

use super::*;
use crate::assignment::tests::example;
use crate::bank::Version;
use proptest::prelude::*;

fn bank() -> Bank {
    Bank {
        version: Version(0xcbf4_3926),
        frames: vec!["deep-caries".into(), "other-visits".into()],
        materials: vec!["zinc-oxide-eugenol".into()],
        families: vec!["what-is-missing".into()],
        numbers: vec!["milligrams".into()],
        blueprints: vec!["all".into()],
    }
}

fn form() -> Assignment {
    Assignment {
        card: None,
        tasks: vec![Set {
            task: Task::Form {
                blueprint: "all".into(),
                questions: 60,
            },
            times: 1,
        }],
        ..example()
    }
}

/// So many tasks of all kinds.
fn several(tasks: usize) -> Assignment {
    let case = Order {
        frame: Some("other-visits".into()),
        ..Order::default()
    };
    let kinds = [
        Task::Case(case),
        Task::Reading,
        Task::Number("milligrams".into()),
        Task::Question("what-is-missing".into()),
    ];
    let sets = kinds.into_iter().cycle().zip(1..);
    let sets = sets.map(|(task, times)| Set { task, times });
    Assignment {
        tasks: sets.take(tasks).collect(),
        ..form()
    }
}

#[test]
fn each_further_task_is_a_group_more() {
    for tasks in 1..=MOST_TYPED_TASKS {
        let set = several(tasks);
        let code = set.typed(&bank()).unwrap();
        let groups: Vec<usize> = code.split('-').map(str::len).collect();
        assert_eq!(groups, vec![GROUP; 4 + tasks], "{code}");
        assert_eq!(Assignment::read_typed(&code, &bank()), Ok(set));
    }
}

#[test]
fn a_link_a_line_and_a_typed_code_are_told_apart() {
    let bank = bank();
    // Every check symbol comes up, among them those that also stand in links.
    let mut symbols = std::collections::BTreeSet::new();
    for seed in 0..2000 {
        for tasks in [1, 3, 4] {
            let set = Assignment {
                seed,
                ..several(tasks)
            };
            let code = set.typed(&bank).unwrap();
            symbols.extend(code.chars().last());
            for text in [
                &code,
                &format!(" {} ", code.to_lowercase()),
                &set.letters(),
                &format!("somewhere/#/a/{}", set.letters()),
            ] {
                let read = Assignment::read_any(text, &bank);
                assert_eq!(read.as_ref(), Ok(&set), "{text}");
            }
        }
    }
    assert_eq!(symbols.len(), 37);
    for text in ["", "good morning", "22Y9C", "somewhere/#/a/22Y9C"] {
        assert!(Assignment::read_any(text, &bank).is_err(), "{text}");
    }
}

#[test]
fn it_can_be_typed_in_any_way() {
    let set = form();
    let code = set.typed(&bank()).unwrap();
    assert_eq!(code.len(), 29, "{code}");
    for typed in [
        code.clone(),
        code.to_lowercase(),
        code.replace('-', ""),
        code.replace('-', " "),
        code.replace('0', "o").replace('1', "L"),
    ] {
        assert_eq!(
            Assignment::read_typed(&typed, &bank()),
            Ok(set.clone()),
            "{typed}"
        );
    }
}

#[test]
fn what_does_not_fit_has_no_short_code() {
    let card = Assignment {
        card: Some("x".into()),
        ..form()
    };
    let mark = Assignment {
        pass_mark: 72,
        ..form()
    };
    let tries = Assignment { tries: 9, ..form() };
    let usage = Assignment {
        tasks: vec![Set {
            task: Task::Mix {
                material: "zinc-oxide-eugenol".into(),
                usage: Some("base".into()),
            },
            times: 1,
        }],
        ..form()
    };
    let many = several(MOST_TYPED_TASKS + 1);
    for set in [example(), card, mark, tries, usage, many] {
        assert_eq!(set.typed(&bank()), None);
    }
}

#[test]
fn every_wrong_letter_and_every_swap_of_neighbours_is_caught() {
    for tasks in [1, MOST_TYPED_TASKS] {
        caught(&several(tasks).typed(&bank()).unwrap());
    }
}

fn caught(code: &str) {
    let code = code.replace('-', "").into_bytes();
    let mut tried = code.clone();
    for place in 0..code.len() {
        for other in b"0123456789ABCDEFGHJKMNPQRSTVWXYZ*~$=U" {
            if *other == code[place] {
                continue;
            }
            tried[place] = *other;
            let text = std::str::from_utf8(&tried).unwrap();
            let read = Assignment::read_typed(text, &bank());
            assert!(matches!(read, Err(Refusal::Damaged(_))), "{text}: {read:?}");
        }
        tried[place] = code[place];
        if place > 0 && code[place] != code[place - 1] {
            tried.swap(place, place - 1);
            let text = std::str::from_utf8(&tried).unwrap();
            assert!(Assignment::read_typed(text, &bank()).is_err(), "{text}");
            tried.swap(place, place - 1);
        }
    }
}

#[test]
fn a_code_for_other_lessons_is_refused_by_name() {
    let code = form().typed(&bank()).unwrap();
    let other = Bank {
        version: Version(5),
        ..bank()
    };
    assert_eq!(
        Assignment::read_typed(&code, &other),
        Err(Refusal::OtherBank)
    );
}

proptest! {
    #[test]
    fn anything_can_be_typed(text in ".{0,40}", code in "[0-9A-Za-z*~$=-]{20,30}") {
        let _ = Assignment::read_typed(&text, &bank());
        let _ = Assignment::read_typed(&code, &bank());
    }

    #[test]
    fn whatever_fits_comes_back(
        seed: u32, title: u8, due in 1_u16.., pass in 5_u8..=20, tries in 0_u8..4,
        hints: bool, alike: bool,
        kinds in prop::collection::vec((1_u8..=100, 0..5), 1..=MOST_TYPED_TASKS),
    ) {
        let task = |kind| match kind {
            0 => Task::Reading,
            1 => Task::Mix { material: "zinc-oxide-eugenol".into(), usage: None },
            3 => Task::Number("milligrams".into()),
            2 => Task::Question("what-is-missing".into()),
            _ => Task::Case(Order { frame: Some("other-visits".into()), ..Order::default() }),
        };
        let set = Assignment {
            seed, title, due: Some(Day(due)), pass_mark: pass * 5, tries, hints, alike,
            tasks: kinds.into_iter().map(|(times, kind)| Set { task: task(kind), times }).collect(),
            ..form()
        };
        let code = set.typed(&bank()).unwrap();
        prop_assert_eq!(Assignment::read_typed(&code, &bank()), Ok(set.clone()));
        prop_assert_eq!(Assignment::read(&set.letters(), set.bank), Ok(set));
    }

    /// A code of any bytes whose sum and symbol are right, so that nothing
    /// stands in the way of what reads its insides.
    #[test]
    fn any_bytes_summed_anew_are_read_or_refused(
        version in 0_u8..5, kind in 0_u8..16, ours: bool, further in 0..4_usize,
        rest in prop::collection::vec(any::<u8>(), 21),
    ) {
        let bank = bank();
        let rest = &rest[..12 + 3 * further];
        let mut writer = Writer::default();
        writer.byte(version << 4 | kind);
        if ours {
            writer.two(bank.version.short()).raw(&rest[2..]);
        } else {
            writer.raw(rest);
        }
        let sum = check::crc16(&writer.0);
        writer.two(sum);
        let letters = base32::encode(&writer.0);
        let symbol = base32::symbol(&letters).unwrap();
        let text = grouped(&format!("{letters}{symbol}"));
        if let Ok(read) = Assignment::read_typed(&text, &bank) {
            prop_assert!(ours && (1..=VERSION).contains(&version));
            prop_assert_eq!(Assignment::read(&read.letters(), bank.version), Ok(read));
        }
    }
}

//! Practice forms keep every hard rule.

use super::*;

fn check_hard_rules(bank: &Bank, form: &Form, request: &Request, what: &str) {
    let places: BTreeSet<usize> = form.places.iter().copied().collect();
    assert_eq!(
        (places.len(), form.places.len()),
        (request.size, request.size),
        "{what}"
    );
    let mut counts = vec![0; bank.blueprint().0.len()];
    let mut enemies = BTreeSet::new();
    let mut seconds = 0;
    for &place in &form.places {
        counts[bank.competency(place)] += 1;
        seconds += bank.items()[place].seconds;
        for group in &bank.items()[place].enemies {
            assert!(enemies.insert(group), "{what}: two of {group}");
        }
    }
    assert_eq!(
        counts,
        quotas(&bank.blueprint().weights(), request.size),
        "{what}"
    );
    assert_eq!(seconds, form.seconds, "{what}");
    assert!(
        request.seconds.is_none_or(|limit| seconds <= limit),
        "{what}"
    );
}

#[test]
fn forms_obey_every_hard_rule() {
    let bank = bank(160, 9);
    for seed in 0..SEEDS {
        let mut chance = Chance::new(seed);
        let size = 10 + chance.below(13);
        let mode = if seed % 2 == 0 {
            Mode::Shared
        } else {
            Mode::Personal {
                showings: (0..160)
                    .map(|_| u32::try_from(chance.below(4)).unwrap())
                    .collect(),
                recent: (0..25).map(|_| chance.below(160)).collect(),
            }
        };
        let request = Request {
            size,
            seconds: Some(u32::try_from(size * 30).unwrap()),
            cut: 0.0,
            seed,
            mode,
        };
        let what = format!("seed {seed}");
        let form = assemble(&bank, &request).expect(&what);
        check_hard_rules(&bank, &form, &request, &what);
        if let Mode::Personal { recent, .. } = &request.mode
            && form.remarks.is_empty()
        {
            assert!(
                form.places.iter().all(|place| !recent.contains(place)),
                "{what}"
            );
        }
        if seed < 50 {
            assert_eq!(form, assemble(&bank, &request).unwrap(), "{what}");
        }
    }
}

fn shared(seed: u64) -> Request {
    Request {
        size: 50,
        seconds: None,
        cut: 0.0,
        seed,
        mode: Mode::Shared,
    }
}

#[test]
fn shared_forms_are_parallel_and_differ() {
    let bank = bank(400, 2);
    let forms: Vec<Form> = (0..40)
        .map(|seed| assemble(&bank, &shared(seed)).unwrap())
        .collect();
    for (at, first) in forms.iter().enumerate() {
        assert!(first.alike, "{:?}", first.remarks);
        for second in &forms[at + 1..] {
            let found = compare(first, second);
            assert!(found.holds(), "{found:?}");
            assert_ne!(first.places, second.places);
        }
    }
}

#[test]
fn a_shared_form_is_the_same_for_ever() {
    // Pinned: a change here breaks every code that has been given out.
    let bank = bank(400, 2);
    let code = SharedForm {
        bank: 3,
        blueprint: 1,
        size: 50,
        seed: 77,
    };
    let form = code.build(&bank, 3, 1).unwrap();
    assert_eq!(form.places[..20], PINNED);
    assert!(matches!(
        code.build(&bank, 4, 1),
        Err(Stale::Bank { made: 3, here: 4 })
    ));
    assert_eq!(code.build(&bank, 3, 2), Err(Stale::Blueprint));
}

const PINNED: [usize; 20] = [
    88, 179, 132, 184, 337, 323, 394, 98, 329, 99, 245, 277, 375, 363, 128, 362, 33, 281, 304, 216,
];

#[test]
fn what_cannot_be_is_told_in_words() {
    let bank = bank(60, 1);
    let none = Request {
        size: 0,
        ..shared(1)
    };
    assert_eq!(assemble(&bank, &none), Err(Unfit::Empty));
    let many = Request {
        size: 200,
        ..shared(1)
    };
    let words = assemble(&bank, &many).unwrap_err().to_string();
    assert!(
        words.starts_with("The form needs") && words.contains("shorter"),
        "{words}"
    );
    let quick = Request {
        size: 20,
        seconds: Some(30),
        ..shared(1)
    };
    let words = assemble(&bank, &quick).unwrap_err().to_string();
    assert!(words.starts_with("The quickest form found"), "{words}");
}

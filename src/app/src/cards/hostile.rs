//! Cards made to do harm: whatever the text says, it is read or refused in
//! sentences.

use super::text::{read, write};
use catalogue::{
    Catalogue,
    preference::{Card, Wish},
    quantity::Span,
};
use proptest::{collection::vec, prelude::*, sample::Index};

fn card() -> Card {
    Card {
        id: "own-1".into(),
        name: "A card \u{1f9b7}".into(),
        about: "For \"the\" test.".into(),
        wishes: vec![
            Wish::Dam { always: true },
            Wish::Recall {
                plan: "stepwise".into(),
                days: Span { from: 63, to: 77 },
            },
        ],
    }
}

/// Read, or refused in words that end.
fn check(text: &str) -> Result<(), TestCaseError> {
    match read(text, &Catalogue::default()) {
        Ok(card) => prop_assert_eq!(read(&write(&card), &Catalogue::default()), Ok(card)),
        Err(faults) => {
            prop_assert!(!faults.is_empty() && faults.iter().all(|it| it.ends_with('.')));
        }
    }
    Ok(())
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(500))]

    #[test]
    fn any_text_can_be_read(text in any::<String>(), json in "[0-9a-z\"{}\\[\\],:. -]{0,80}") {
        check(&text)?;
        check(&format!(r#"{{"trayward-card":1,"card":{json}}}"#))?;
    }

    #[test]
    fn a_changed_card_is_read_or_refused(changes in vec((any::<Index>(), 0..6_usize, "[0-9a-z\"{}\\[\\],:-]{0,8}"), 0..4)) {
        let mut letters: Vec<char> = write(&card()).chars().collect();
        for (at, count, put) in changes {
            let from = at.index(letters.len() + 1);
            let to = (from + count).min(letters.len());
            letters.splice(from..to, put.chars());
        }
        check(&letters.into_iter().collect::<String>())?;
    }
}

#[test]
fn a_deep_nest_is_refused() {
    let nest = format!("{}{}", "[".repeat(20_000), "]".repeat(20_000));
    let text = format!(r#"{{"trayward-card":1,"card":{{"wishes":{nest}}}}}"#);
    assert!(read(&text, &Catalogue::default()).is_err());
}

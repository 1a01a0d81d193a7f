//! The draft of an answer that was not given yet, and which decision the
//! student is looking at. It is kept beside the record, one for a sitting, so
//! that a half-laid tray survives a reload, an update and another tab.

use crate::find::words;
use record::SittingId;

/// What every stored draft begins with: what it is, and the version of its form.
const HEAD: &str = "trayward-draft 1";

/// What the content of a box among the options begins with. No id has a colon.
const BOX: &str = "box:";

/// The decision a student is at, and what of it is done.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Draft {
    /// The id of the decision that is looked at; empty where none was yet.
    pub decision: String,
    /// The seconds spent on it in earlier visits.
    pub seconds: u32,
    /// The options taken so far, in order.
    pub taken: Vec<String>,
}

impl Draft {
    /// A fresh draft of a decision.
    pub fn of(decision: &str) -> Self {
        Self {
            decision: decision.into(),
            ..Self::default()
        }
    }

    /// What a box holds, as one id: letters without spaces.
    pub fn of_typed(typed: &str) -> String {
        format!("{BOX}{}", words::encoded(typed))
    }

    /// What the box of a number holds; none where nothing was typed.
    pub fn typed(&self) -> Option<String> {
        let all = self.taken.iter();
        let mut boxes = all.filter_map(|id| id.strip_prefix(BOX));
        boxes.next().map(words::decoded)
    }

    /// Where the draft of a sitting is kept. No number follows the prefix, so
    /// the record leaves it alone.
    pub fn key(sitting: SittingId) -> String {
        format!("trayward/draft/{sitting}")
    }

    /// The stored form: a line each for the head, the decision, the seconds and
    /// the options. Ids hold neither spaces nor line breaks.
    pub fn write(&self) -> String {
        let taken = self.taken.join(" ");
        format!("{HEAD}\n{}\n{}\n{taken}", self.decision, self.seconds)
    }

    /// Reads the stored form; none where it is damaged or of another version,
    /// which costs no more than the draft.
    pub fn read(text: &str) -> Option<Self> {
        let mut lines = text.split('\n');
        let (head, decision, seconds, taken) =
            (lines.next()?, lines.next()?, lines.next()?, lines.next()?);
        if head != HEAD || lines.next().is_some() {
            return None;
        }
        Some(Self {
            decision: decision.into(),
            seconds: seconds.parse().ok()?,
            taken: taken.split_whitespace().map(str::to_owned).collect(),
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    proptest! {
        #[test]
        fn anything_can_be_read(text in any::<String>(), lines in prop::collection::vec("[a-z0-9 -]{0,20}", 0..6)) {
            let _ = Draft::read(&text);
            let _ = Draft::read(&format!("{HEAD}\n{}", lines.join("\n")));
        }
    }

    #[test]
    fn a_draft_comes_back_as_it_was_kept() {
        for draft in [
            Draft::default(),
            Draft::of("tray"),
            Draft {
                decision: "tray".into(),
                seconds: u32::MAX,
                taken: vec!["explorer".into(), "set-rubber-dam-1".into()],
            },
            Draft {
                decision: "cartridges".into(),
                seconds: 9,
                taken: vec![Draft::of_typed("7 1/2 cartridges, größer")],
            },
        ] {
            assert_eq!(Draft::read(&draft.write()), Some(draft));
        }
    }

    #[test]
    fn what_was_typed_comes_back_as_it_was_typed() {
        for typed in ["", "8", " 7,5 mg / mL ", "1:100 000"] {
            let draft = Draft {
                taken: vec![Draft::of_typed(typed)],
                ..Draft::of("cartridges")
            };
            let back = Draft::read(&draft.write()).and_then(|draft| draft.typed());
            assert_eq!(back.as_deref(), Some(typed));
        }
    }

    #[test]
    fn a_damaged_draft_is_no_draft() {
        for text in [
            "",
            "trayward-draft 1",
            "trayward-draft 2\ntray\n1\nexplorer",
            "trayward-draft 1\ntray\n-1\nexplorer",
            "trayward-draft 1\ntray\n1\nexplorer\nmirror",
        ] {
            assert_eq!(Draft::read(text), None, "{text}");
        }
    }
}

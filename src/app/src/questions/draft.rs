//! An answer that was not given yet. It is kept beside the record, so that a
//! half-typed answer, a hint that was seen and the time spent survive a reload.

use catalogue::quantity::Milli;
use record::SittingId;
use study::question::{Answer, Form};

/// What of an answer is there.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Draft {
    /// The keys taken, in order.
    pub keys: Vec<String>,
    /// What is typed.
    pub typed: String,
    /// Left with right.
    pub pairs: Vec<(String, String)>,
    /// Whether the hint was shown.
    pub hint: bool,
    /// Whether it is marked as unsure.
    pub unsure: bool,
}

impl Draft {
    /// The draft that an answer gives back, to be changed.
    pub fn of(answer: Option<Answer>) -> Self {
        let mut draft = Self::default();
        match answer {
            Some(Answer::One(key)) => draft.keys = vec![key],
            Some(Answer::Many(keys) | Answer::Order(keys)) => draft.keys = keys,
            Some(Answer::Pairs(pairs)) => draft.pairs = pairs,
            Some(Answer::Number(number)) => draft.typed = number.to_string(),
            None => {}
        }
        draft
    }

    /// The pieces of a question to be ordered, as they are arranged now. They
    /// are all there from the start.
    pub fn order(&self, form: &Form) -> Vec<String> {
        let Form::Order { pieces, .. } = form else {
            return self.keys.clone();
        };
        let whole = pieces.len() == self.keys.len()
            && pieces.iter().all(|piece| self.keys.contains(&piece.key));
        if whole {
            self.keys.clone()
        } else {
            pieces.iter().map(|piece| piece.key.clone()).collect()
        }
    }

    /// The answer that this is; none as long as something is lacking.
    pub fn answer(&self, form: &Form) -> Option<Answer> {
        Some(match form {
            Form::One(_) | Form::Name(_) | Form::Slip(_) => Answer::One(self.keys.first()?.clone()),
            Form::All(_) | Form::Place(_) if self.keys.is_empty() => return None,
            Form::All(_) | Form::Place(_) => Answer::Many(self.keys.clone()),
            Form::Order { .. } => Answer::Order(self.order(form)),
            Form::Match { left, .. } if self.pairs.len() < left.len() => return None,
            Form::Match { .. } => Answer::Pairs(self.pairs.clone()),
            Form::Number { .. } => Answer::Number(number(&self.typed)?),
        })
    }

    /// Takes a key, or leaves it where it was taken already.
    pub fn turn(&mut self, key: &str) {
        match self.keys.iter().position(|each| each == key) {
            Some(at) => {
                self.keys.remove(at);
            }
            None => self.keys.push(key.to_owned()),
        }
    }

    /// Puts left with right; an empty right takes the pair apart.
    pub fn pair(&mut self, left: &str, right: &str) {
        self.pairs.retain(|(each, _)| each != left);
        if !right.is_empty() {
            self.pairs.push((left.to_owned(), right.to_owned()));
        }
    }
}

/// A number as people type it: with a comma or a point, with blanks around it.
pub fn number(typed: &str) -> Option<Milli> {
    let plain = typed.trim().replace(',', ".");
    let plain = plain
        .strip_prefix('.')
        .map_or(plain.clone(), |rest| format!("0.{rest}"));
    Milli::parse(plain.trim_end_matches('.')).ok()
}

/// A draft as it is kept, with which question it is of and the seconds spent.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Kept {
    /// Which of the questions, counted from 0.
    pub at: usize,
    /// The seconds spent on it in earlier visits.
    pub seconds: u32,
    /// The draft.
    pub draft: Draft,
}

impl Kept {
    /// Where the draft of a sitting is kept. No number follows the prefix, so
    /// the record leaves it alone.
    pub fn key(sitting: SittingId) -> String {
        format!("trayward/draft/{sitting}")
    }

    /// The stored form.
    pub fn write(&self) -> String {
        let draft = &self.draft;
        serde_json::json!([
            HEAD,
            self.at,
            self.seconds,
            draft.keys,
            draft.typed,
            draft.pairs,
            draft.hint,
            draft.unsure
        ])
        .to_string()
    }

    /// Reads the stored form; none where it is damaged or of another version,
    /// which costs no more than the draft.
    pub fn read(text: &str) -> Option<Self> {
        type Stored = (
            String,
            usize,
            u32,
            Vec<String>,
            String,
            Vec<(String, String)>,
            bool,
            bool,
        );
        let (head, at, seconds, keys, typed, pairs, hint, unsure) =
            serde_json::from_str::<Stored>(text).ok()?;
        (head == HEAD).then_some(Self {
            at,
            seconds,
            draft: Draft {
                keys,
                typed,
                pairs,
                hint,
                unsure,
            },
        })
    }
}

/// What every stored draft begins with: what it is, and the version of its form.
const HEAD: &str = "trayward-answer 1";

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;
    use study::question::Piece;

    proptest! {
        #[test]
        fn anything_can_be_read(text in any::<String>(), rest in "[0-9a-z\"\\[\\],. -]{0,40}") {
            let _ = Kept::read(&text);
            let _ = Kept::read(&format!("[\"{HEAD}\",{rest}]"));
        }
    }

    #[test]
    fn a_kept_draft_comes_back_and_a_strange_one_does_not() {
        let kept = Kept {
            at: 3,
            seconds: 12,
            draft: Draft {
                keys: vec!["a \"b\"".into()],
                typed: "1,5".into(),
                pairs: vec![("l".into(), "r".into())],
                hint: true,
                unsure: true,
            },
        };
        assert_eq!(Kept::read(&kept.write()), Some(kept));
        for strange in [
            "",
            "[]",
            "trayward-draft 1\n\n0\n",
            "[\"trayward-answer 9\",0,0,[],\"\",[],false,false]",
        ] {
            assert_eq!(Kept::read(strange), None, "{strange}");
        }
    }

    #[test]
    fn numbers_are_read_as_they_are_typed() {
        for (typed, wanted) in [
            ("1.5", Some(1500)),
            (" 1,5 ", Some(1500)),
            (".5", Some(500)),
            ("2.", Some(2000)),
            ("-3", Some(-3000)),
            ("", None),
            ("two", None),
            ("1.2345", None),
        ] {
            assert_eq!(number(typed).map(|milli| milli.0), wanted, "{typed}");
        }
    }

    #[test]
    fn pieces_are_all_there_from_the_start() {
        let piece = |key: &str| Piece {
            key: key.into(),
            text: key.into(),
            item: None,
        };
        let form = Form::Order {
            pieces: vec![piece("a"), piece("b")],
            target: clinic::sequence::Target {
                stages: Vec::new(),
                must_before: Vec::new(),
            },
        };
        let mut draft = Draft::default();
        assert_eq!(draft.order(&form), ["a", "b"]);
        draft.keys = vec!["b".into(), "a".into()];
        assert_eq!(
            draft.answer(&form),
            Some(Answer::Order(vec!["b".into(), "a".into()]))
        );
        draft.keys = vec!["b".into()];
        assert_eq!(draft.order(&form), ["a", "b"]);
    }
}

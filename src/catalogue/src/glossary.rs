//! The words of the trade: what they mean, and how they are said.

use crate::ids::{ItemId, LessonId, ProcedureId, SourceId, TermId};
use serde::{Deserialize, Serialize};
use std::{fmt, ops::Range};

/// A word of the trade.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Term {
    /// Its id.
    pub id: TermId,
    /// The word, as it stands in a sentence: `gingival`.
    pub term: String,
    /// How it is said, in plain syllables with the stressed one in capitals:
    /// `JIN-jih-vul`. Empty for everyday words that need no hint.
    #[serde(default)]
    pub says: String,
    /// Other forms and words for the same: a plural that is not formed with
    /// `s`, an abbreviation, an older name.
    #[serde(default)]
    pub also: Vec<String>,
    /// What it means, in a sentence or two.
    pub meaning: String,
    /// Where it comes up: `item:explorer`, `procedure:rubber-dam`,
    /// `lesson:reprocessing` or another `term:pulp`.
    #[serde(default)]
    pub see: Vec<See>,
    /// Where the meaning is from.
    pub sources: Vec<SourceId>,
}

/// Something a term points to.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(try_from = "String", into = "String")]
pub enum See {
    /// An instrument or material.
    Item(ItemId),
    /// A procedure or set-up.
    Procedure(ProcedureId),
    /// A lesson.
    Lesson(LessonId),
    /// Another term.
    Term(TermId),
}

impl TryFrom<String> for See {
    type Error = String;

    fn try_from(text: String) -> Result<Self, String> {
        match text.split_once(':') {
            Some(("item", id)) => Ok(Self::Item(id.into())),
            Some(("procedure", id)) => Ok(Self::Procedure(id.into())),
            Some(("lesson", id)) => Ok(Self::Lesson(id.into())),
            Some(("term", id)) => Ok(Self::Term(id.into())),
            _ => Err([
                "'",
                &text,
                "' leads nowhere; write item:, procedure:, lesson: or term: before an id",
            ]
            .concat()),
        }
    }
}

impl From<See> for String {
    fn from(see: See) -> Self {
        see.to_string()
    }
}

impl fmt::Display for See {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let (kind, id) = match self {
            Self::Item(id) => ("item", id.as_str()),
            Self::Procedure(id) => ("procedure", id.as_str()),
            Self::Lesson(id) => ("lesson", id.as_str()),
            Self::Term(id) => ("term", id.as_str()),
        };
        write!(f, "{kind}:{id}")
    }
}

impl Term {
    /// The word and its other forms.
    pub fn forms(&self) -> impl Iterator<Item = &str> + Clone {
        std::iter::once(self.term.as_str()).chain(self.also.iter().map(String::as_str))
    }

    /// The first place in a text where the word stands whole, in capitals or
    /// not, alone or with a plural `s`. A form in capitals, such as `MOD`, is
    /// found in capitals only.
    pub fn in_text(&self, text: &str) -> Option<Range<usize>> {
        self.forms()
            .filter_map(|form| whole(text, form))
            .min_by_key(|range| range.start)
    }
}

/// The first place where a form stands as a whole word.
fn whole(text: &str, form: &str) -> Option<Range<usize>> {
    let (bytes, form) = (text.as_bytes(), form.as_bytes());
    let exact = form.iter().all(|b| !b.is_ascii_lowercase());
    let first = *form.first()?;
    let joins = |at: Option<&u8>| at.is_some_and(|b| b.is_ascii_alphanumeric() || *b >= 0x80);
    let mut from = 0;
    while from + form.len() <= bytes.len() {
        let here = &bytes[from..from + form.len()];
        let fits = here[0].eq_ignore_ascii_case(&first)
            && if exact {
                here == form
            } else {
                here.eq_ignore_ascii_case(form)
            };
        if fits && (from == 0 || !joins(bytes.get(from - 1))) {
            let end = from + form.len();
            if !joins(bytes.get(end)) {
                return Some(from..end);
            }
            if bytes[end] == b's' && !joins(bytes.get(end + 1)) {
                return Some(from..end + 1);
            }
        }
        from += 1;
    }
    None
}

#[cfg(test)]
mod tests {
    use super::*;

    fn term(word: &str, also: &[&str]) -> Term {
        Term {
            id: "t".into(),
            term: word.into(),
            says: String::new(),
            also: also.iter().map(|each| (*each).into()).collect(),
            meaning: String::new(),
            see: Vec::new(),
            sources: Vec::new(),
        }
    }

    #[test]
    fn a_word_is_found_whole() {
        for (word, also, text, found) in [
            ("pulp", &[][..], "The pulp is alive.", Some("pulp")),
            ("pulp", &[], "Pulps differ.", Some("Pulps")),
            ("pulp", &[], "A pulpotomy, and the pulp", Some("pulp")),
            ("pulp", &[], "the pulpal wall", None),
            ("apex", &["apices"], "all apices", Some("apices")),
            (
                "vertical bitewing",
                &[],
                "a Vertical bitewing film",
                Some("Vertical bitewing"),
            ),
            ("class II cavity", &["MOD"], "an MOD cavity", Some("MOD")),
            ("class II cavity", &["MOD"], "a mod", None),
            ("tip", &[], "das tipß", None),
        ] {
            let range = term(word, also).in_text(text);
            assert_eq!(range.map(|range| &text[range]), found, "{word} in {text}");
        }
    }

    #[test]
    fn what_a_term_points_to_comes_back_from_its_text() {
        for text in [
            "item:explorer",
            "procedure:rubber-dam",
            "lesson:x",
            "term:pulp",
        ] {
            assert_eq!(See::try_from(text.to_string()).unwrap().to_string(), text);
        }
        assert!(See::try_from("explorer".to_string()).is_err());
    }
}

//! Inputs of a tool and what was entered.

use crate::numbers::entry::{Field, Refusal};

/// What one input takes.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Ask {
    /// Something typed.
    Typed {
        /// The unit shown beside the box; may be empty.
        unit: &'static str,
        /// What is taken, in words; may be empty.
        range: String,
        /// An entry that is taken.
        example: String,
    },
    /// One of these: id and words.
    Choice(Vec<(String, String)>),
}

/// One input of a tool.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Input {
    /// Its id among the inputs of the tool.
    pub id: &'static str,
    /// What is asked.
    pub label: &'static str,
    /// Whether it may stay empty.
    pub optional: bool,
    /// What it takes.
    pub ask: Ask,
}

impl Input {
    pub(super) fn field(id: &'static str, label: &'static str, field: &Field) -> Self {
        let ask = Ask::Typed {
            unit: field.unit.sign(),
            range: field.range(),
            example: field.example.into(),
        };
        Self {
            id,
            label,
            optional: false,
            ask,
        }
    }

    pub(super) fn text(id: &'static str, label: &'static str, example: &str) -> Self {
        let ask = Ask::Typed {
            unit: "",
            range: String::new(),
            example: example.into(),
        };
        Self {
            id,
            label,
            optional: false,
            ask,
        }
    }

    pub(super) fn choice(
        id: &'static str,
        label: &'static str,
        from: impl Iterator<Item = (String, String)>,
    ) -> Self {
        Self {
            id,
            label,
            optional: false,
            ask: Ask::Choice(from.collect()),
        }
    }

    pub(super) fn yes_or_no(id: &'static str, label: &'static str) -> Self {
        let both = [("yes", "yes"), ("no", "no")];
        Self::choice(
            id,
            label,
            both.map(|(a, b)| (a.into(), b.into())).into_iter(),
        )
    }

    pub(super) fn optional(self) -> Self {
        Self {
            optional: true,
            ..self
        }
    }
}

/// What was entered, by the id of the input.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Entries(pub Vec<(String, String)>);

impl Entries {
    /// Entries from pairs of id and text.
    pub fn of(pairs: &[(&str, &str)]) -> Self {
        Self(
            pairs
                .iter()
                .map(|(id, text)| ((*id).into(), (*text).into()))
                .collect(),
        )
    }

    /// What stands in an input; empty where nothing does.
    pub fn get(&self, id: &str) -> &str {
        self.0
            .iter()
            .find(|(each, _)| each == id)
            .map_or("", |(_, text)| text.trim())
    }
}

/// What is wrong with an input.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Fault {
    /// The input; empty where it is about several together.
    pub input: &'static str,
    /// Why, in a sentence.
    pub why: Refusal,
}

/// Reads inputs one after another and keeps what is wrong with each.
pub(super) struct Form<'e> {
    entries: &'e Entries,
    pub faults: Vec<Fault>,
}

impl<'e> Form<'e> {
    pub fn new(entries: &'e Entries) -> Self {
        Self {
            entries,
            faults: Vec::new(),
        }
    }

    /// What an input holds, read.
    pub fn read<T>(
        &mut self,
        input: &'static str,
        read: impl FnOnce(&str) -> Result<T, Refusal>,
    ) -> Option<T> {
        match read(self.entries.get(input)) {
            Ok(value) => Some(value),
            Err(why) => {
                self.faults.push(Fault { input, why });
                None
            }
        }
    }

    /// The same, for an input that may stay empty.
    pub fn maybe<T>(
        &mut self,
        input: &'static str,
        read: impl FnOnce(&str) -> Result<T, Refusal>,
    ) -> Option<T> {
        if self.entries.get(input).is_empty() {
            return None;
        }
        self.read(input, read)
    }

    /// What was chosen.
    pub fn chosen<T>(
        &mut self,
        input: &'static str,
        find: impl FnOnce(&str) -> Option<T>,
    ) -> Option<T> {
        self.read(input, |text| {
            find(text).ok_or_else(|| Refusal("Choose one of these.".into()))
        })
    }

    /// `yes` or `no`.
    pub fn flag(&mut self, input: &'static str) -> Option<bool> {
        self.chosen(input, |text| match text {
            "yes" => Some(true),
            "no" => Some(false),
            _ => None,
        })
    }

    /// What is wrong, for a result that could not be had from good inputs.
    pub fn failed(mut self, why: Option<Refusal>) -> Vec<Fault> {
        if let Some(why) = why {
            self.faults.push(Fault { input: "", why });
        }
        self.faults
    }
}

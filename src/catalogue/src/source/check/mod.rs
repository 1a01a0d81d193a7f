//! Cross references and sense, on the typed catalogue.
//!
//! Each submodule checks one part; all share [`Checker`], which knows the
//! known ids and reports with the nearest one.

mod catalogue_parts;
mod conditions;
mod glossary;
mod kinetics;
mod known;
mod lessons;
mod numbers;
mod procedures;
mod reasoning;

use super::{locate::Path, nearest::nearest, read::Reading};
use crate::ids::SourceId;
use known::Known;
use std::collections::BTreeSet;

/// Checks everything and leaves the faults in `reading`.
pub(super) fn check(reading: &mut Reading) {
    let catalogue = std::mem::take(&mut reading.catalogue);
    let mut checker = Checker {
        known: Known::of(&catalogue),
        reading,
    };
    checker.parts(&catalogue);
    checker.kinetics(&catalogue);
    checker.reasoning(&catalogue);
    checker.procedures(&catalogue);
    checker.lessons(&catalogue);
    checker.numbers(&catalogue);
    checker.glossary(&catalogue);
    reading.catalogue = catalogue;
}

struct Checker<'r> {
    known: Known,
    reading: &'r mut Reading,
}

/// The place that a check stands at: an entry of a list, and a path below it.
#[derive(Clone)]
struct At {
    list: &'static str,
    index: usize,
    path: Path,
}

impl At {
    fn new(list: &'static str, index: usize) -> Self {
        Self {
            list,
            index,
            path: Path::default(),
        }
    }

    fn field(&self, name: &str) -> Self {
        Self {
            path: self.path.field(name),
            ..self.clone()
        }
    }

    fn entry(&self, index: usize) -> Self {
        Self {
            path: self.path.entry(index),
            ..self.clone()
        }
    }
}

impl Checker<'_> {
    fn report(&mut self, at: &At, message: String) {
        self.reading.report(at.list, at.index, &at.path, message);
    }

    /// Reports `id` unless it is among `known`; names the nearest known one.
    fn wants(&mut self, at: &At, what: &str, id: &str, known: fn(&Known) -> &BTreeSet<String>) {
        let known = known(&self.known);
        if known.contains(id) {
            return;
        }
        let message = match nearest(id, known.iter().map(String::as_str)) {
            Some(near) => format!("there is no {what} '{id}'; '{near}' is the nearest one"),
            None => format!("there is no {what} '{id}'; add it, or name one that is there"),
        };
        self.report(at, message);
    }

    /// Every fact names at least one source that is there.
    fn sources(&mut self, at: &At, sources: &[SourceId]) {
        let at = at.field("sources");
        if sources.is_empty() {
            self.report(
                &at,
                "no source is named; name one, or 'common-practice' for custom".into(),
            );
        }
        for (i, source) in sources.iter().enumerate() {
            self.wants(&at.entry(i), "source", source.as_str(), |k| &k.sources);
        }
    }

    /// A text that students read is not empty.
    fn text(&mut self, at: &At, field: &str, text: &str) {
        if text.trim().is_empty() {
            self.report(
                &at.field(field),
                format!("'{field}' is empty; say it in a sentence"),
            );
        }
    }
}

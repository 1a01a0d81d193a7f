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
use crate::{ids::SourceId, quantity::Span};
use known::Known;
use std::collections::BTreeSet;

/// Checks everything and leaves the faults in `reading`.
pub(super) fn check(reading: &mut Reading<'_>) {
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

/// The longest that something lasts, in seconds.
const LONGEST: u32 = 4 * 60 * 60;

/// The farthest that a return visit lies ahead, in days.
const MOST_DAYS: u32 = 3650;

struct Checker<'r, 'f> {
    known: Known,
    reading: &'r mut Reading<'f>,
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

impl Checker<'_, '_> {
    fn report(&mut self, at: &At, message: String) {
        self.reading.report(at.list, at.index, &at.path, message);
    }

    /// Reports `id` unless it is among `known`; names the nearest known one.
    fn wants(&mut self, at: &At, what: &str, id: &str, known: fn(&Known) -> &BTreeSet<String>) {
        let known = known(&self.known);
        if known.contains(id) || self.reading.is_full() {
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

    /// No part of a visit, and no mix, lasts longer than anybody works at it.
    fn lasts(&mut self, at: &At, seconds: Option<Span>) {
        if seconds.is_some_and(|span| span.to > LONGEST) {
            self.report(
                at,
                format!("{LONGEST} seconds, which are four hours, are the most"),
            );
        }
    }

    /// A return visit is within ten years.
    fn within_years(&mut self, at: &At, days: Span) {
        if days.to > MOST_DAYS {
            self.report(at, format!("{MOST_DAYS} days, ten years, are the most"));
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

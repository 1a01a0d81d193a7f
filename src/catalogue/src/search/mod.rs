//! Finding anything in the catalogue by a few words, with slips of the finger.
//!
//! [`Index::of`] reads every text once and keeps, for each distinct word, where
//! it stands and how much it says there. A search compares each word sought
//! with the distinct words only, so its time grows with the vocabulary and not
//! with the texts. A word counts where it stands as it is, begins a word,
//! stands within one, or is a slip or two away from one.

mod found;
mod near;
mod texts;

pub use found::{Found, Kind};

use crate::Catalogue;
use near::{Fit, fit};
use std::collections::HashMap;

/// How many results a search gives at most.
pub const MOST: usize = 60;

/// One thing that can be found, and how long its name is.
struct Entry<'c> {
    found: Found<'c>,
    words_in_name: u16,
}

/// Where a word stands: in which entry, and how much it says of it.
#[derive(Clone, Copy)]
struct Stand {
    entry: usize,
    weight: u16,
}

/// All words of a catalogue.
pub struct Index<'c> {
    entries: Vec<Entry<'c>>,
    words: Vec<(Box<str>, Vec<Stand>)>,
}

impl<'c> Index<'c> {
    /// Reads every text of the catalogue.
    pub fn of(catalogue: &'c Catalogue) -> Self {
        let mut index = Self {
            entries: Vec::new(),
            words: Vec::new(),
        };
        let mut known = HashMap::new();
        texts::each(catalogue, &mut |found, texts| {
            let entry = index.entries.len();
            let mut words_in_name = 0;
            for (number, (weight, text)) in texts.iter().enumerate() {
                let words = index.read(&mut known, entry, *weight, text);
                if number == 0 {
                    words_in_name = words;
                }
            }
            index.entries.push(Entry {
                found,
                words_in_name,
            });
        });
        index
    }

    /// Notes every word of a text, and gives their number.
    fn read(
        &mut self,
        known: &mut HashMap<Box<str>, usize>,
        entry: usize,
        weight: u16,
        text: &str,
    ) -> u16 {
        let mut count = 0;
        each_word(text, |word| {
            count += 1;
            let at = known.get(word).copied().unwrap_or_else(|| {
                self.words.push((word.into(), Vec::new()));
                known.insert(word.into(), self.words.len() - 1);
                self.words.len() - 1
            });
            let stands = &mut self.words[at].1;
            match stands.last_mut() {
                Some(last) if last.entry == entry => last.weight = last.weight.max(weight),
                _ => stands.push(Stand { entry, weight }),
            }
        });
        count
    }

    /// What is found for the words sought, the best first, at most [`MOST`]. Every
    /// word has to be found; where nothing has them all, what has most of them.
    pub fn find(&self, sought: &str) -> Vec<Found<'c>> {
        let mut words: Vec<String> = Vec::new();
        each_word(sought, |word| words.push(word.into()));
        let mut scores = vec![Score::default(); self.entries.len()];
        for word in &words {
            let best = self.standing(word);
            for (score, best) in scores.iter_mut().zip(best) {
                score.add(best);
            }
        }
        let most = scores.iter().map(|score| score.words).max().unwrap_or(0);
        let mut top: Vec<(u32, usize)> = Vec::new();
        for (at, score) in scores.iter().enumerate() {
            if score.words == most && most > 0 {
                insert(&mut top, (self.worth(at, *score, words.len()), at));
            }
        }
        let found = top.into_iter().map(|(_, at)| self.entries[at].found);
        found.collect()
    }

    /// For each entry how well one word is found in it.
    fn standing(&self, sought: &str) -> Vec<u32> {
        let mut best = vec![0_u32; self.entries.len()];
        let mut take = |stands: &[Stand], fit: u32| {
            for stand in stands {
                let worth = fit * u32::from(stand.weight);
                best[stand.entry] = best[stand.entry].max(worth);
            }
        };
        let known = self.words.iter().any(|(word, _)| **word == *sought);
        for (word, stands) in &self.words {
            match fit(sought, word) {
                // Where the word is known as it is, nobody meant another.
                Fit::Near(_) if known => {}
                Fit::None => {}
                fit => take(stands, fit.worth()),
            }
        }
        best
    }

    /// What an entry is worth: how well each word fits, what kind of thing it
    /// is, and how much of its name was asked for.
    fn worth(&self, at: usize, score: Score, words: usize) -> u32 {
        let entry = &self.entries[at];
        let name = usize::from(entry.words_in_name).max(words).max(1);
        let asked = u32::try_from(words * 100 / name).unwrap_or(0);
        score.worth / 100 * (200 + asked) * entry.found.kind().weight()
    }
}

/// What was found of an entry so far.
#[derive(Clone, Copy, Default)]
struct Score {
    words: u16,
    worth: u32,
}

impl Score {
    fn add(&mut self, worth: u32) {
        if worth > 0 {
            self.words += 1;
            self.worth += worth;
        }
    }
}

/// Puts a result in its place among the best; of equals the earlier stays first.
fn insert(top: &mut Vec<(u32, usize)>, new: (u32, usize)) {
    if top.len() == MOST && top.last().is_some_and(|last| last.0 >= new.0) {
        return;
    }
    let at = top.partition_point(|each| each.0 >= new.0);
    top.insert(at, new);
    top.truncate(MOST);
}

/// Gives every word of a text in the form in which words are compared: small
/// letters, and one spelling for `anaesthetic` and `anesthetic`.
fn each_word(text: &str, mut take: impl FnMut(&str)) {
    let mut word = String::new();
    for piece in text.split(|c: char| !c.is_alphanumeric()) {
        word.clear();
        for letter in piece.chars().flat_map(char::to_lowercase) {
            if letter == 'e' && word.ends_with(['a', 'o']) {
                word.pop();
            }
            word.push(letter);
        }
        if !word.is_empty() {
            take(&word);
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::{
        glossary::Term,
        items::{Instrument, Reprocessing},
    };

    fn instrument(id: &str, name: &str, family: &str, also: &[&str], look: &str) -> Instrument {
        Instrument {
            id: id.into(),
            name: name.into(),
            family: family.into(),
            purpose: String::new(),
            look: look.into(),
            place: crate::items::Place::Tray,
            reprocessing: Reprocessing::Critical,
            lookalikes: Vec::new(),
            contains: Vec::new(),
            also: also.iter().map(|each| (*each).into()).collect(),
            sources: Vec::new(),
        }
    }

    fn catalogue() -> Catalogue {
        Catalogue {
            instruments: vec![
                instrument(
                    "spoon-small",
                    "Spoon excavator, small",
                    "excavators",
                    &[],
                    "A small cup.",
                ),
                instrument(
                    "spoon-large",
                    "Spoon excavator, large",
                    "excavators",
                    &[],
                    "A wide cup.",
                ),
                instrument(
                    "hemostat",
                    "Haemostat, curved",
                    "scalpels and sutures",
                    &["mosquito"],
                    "",
                ),
                instrument(
                    "sponge",
                    "Gauze sponge",
                    "suction and drying",
                    &[],
                    "No spoon.",
                ),
                instrument("bur-330", "Pear bur 330", "burs", &[], ""),
            ],
            glossary: vec![Term {
                id: "excavate".into(),
                term: "excavate".into(),
                says: String::new(),
                also: Vec::new(),
                meaning: "To remove softened dentine with a spoon.".into(),
                see: Vec::new(),
                sources: Vec::new(),
            }],
            ..Catalogue::default()
        }
    }

    fn ids(sought: &str) -> Vec<String> {
        let catalogue = catalogue();
        let index = Index::of(&catalogue);
        let name = |found: &Found| match found {
            Found::Item(item) => item.id().to_string(),
            Found::Term(term) => term.id.to_string(),
            other => other.title(),
        };
        index.find(sought).iter().map(name).collect()
    }

    #[test]
    fn what_is_meant_comes_first() {
        for (sought, first) in [
            ("spoon excavator small", "spoon-small"),
            ("SPOON, large", "spoon-large"),
            ("large spoon", "spoon-large"),
            // Slips of the finger.
            ("spon excavater small", "spoon-small"),
            ("excvator", "spoon-small"),
            ("hemostat", "hemostat"),
            ("haemastat", "hemostat"),
            ("mosqito", "hemostat"),
            // Begun, not finished.
            ("gau", "sponge"),
            ("excava", "excavate"),
            ("330", "bur-330"),
        ] {
            assert_eq!(
                ids(sought).first().map(String::as_str),
                Some(first),
                "{sought}"
            );
        }
    }

    #[test]
    fn a_number_is_never_taken_for_another() {
        assert_eq!(ids("331"), [""; 0]);
        assert_eq!(
            ids("pear 331"),
            ["bur-330"],
            "the rest of the words are found"
        );
    }

    #[test]
    fn every_word_has_to_be_found_if_anything_has_them_all() {
        assert_eq!(ids("spoon small"), ["spoon-small"]);
        assert_eq!(
            ids("spoon zzzzz").first().map(String::as_str),
            Some("spoon-small")
        );
        assert_eq!(ids(""), [""; 0]);
        assert_eq!(ids(" ,;"), [""; 0]);
        assert_eq!(ids("zzzzz"), [""; 0]);
    }

    #[test]
    fn a_known_word_is_not_taken_for_a_near_one() {
        // "sponge" is one edit from "spoon" begun; it is itself a word here.
        assert_eq!(ids("sponge"), ["sponge"]);
    }

    #[test]
    fn letters_of_two_spellings_are_one() {
        let mut words = Vec::new();
        each_word("Anaesthetic, oedema; 2:30", |word| {
            words.push(word.to_string());
        });
        assert_eq!(words, ["anesthetic", "edema", "2", "30"]);
    }
}

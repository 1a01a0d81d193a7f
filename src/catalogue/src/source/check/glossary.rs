//! The glossary: in alphabetical order, said once, leading somewhere.

use super::{At, Checker};
use crate::{Catalogue, glossary::See};
use std::collections::HashMap;

impl Checker<'_, '_> {
    pub(super) fn glossary(&mut self, catalogue: &Catalogue) {
        let mut forms: HashMap<String, &str> = HashMap::new();
        let mut before = String::new();
        for (i, term) in catalogue.glossary.iter().enumerate() {
            let at = At::new("term", i);
            self.text(&at, "term", &term.term);
            self.text(&at, "meaning", &term.meaning);
            self.sources(&at, &term.sources);
            let word = term.term.to_lowercase();
            if word < before {
                let message = format!(
                    "'{word}' stands after '{before}'; the glossary is in the order of the alphabet"
                );
                self.report(&at.field("term"), message);
            }
            before.clone_from(&word);
            for form in term.forms() {
                if let Some(other) = forms.insert(form.to_lowercase(), &term.term) {
                    let message =
                        format!("'{form}' is already a form of '{other}'; a word has one entry");
                    self.report(&at, message);
                }
            }
            for (k, see) in term.see.iter().enumerate() {
                self.sees(&at.field("see").entry(k), see);
            }
        }
    }

    fn sees(&mut self, at: &At, see: &See) {
        match see {
            See::Item(id) => self.wants(at, "item", id.as_str(), |k| &k.items),
            See::Procedure(id) => self.wants(at, "procedure", id.as_str(), |k| &k.procedures),
            See::Lesson(id) => self.wants(at, "lesson", id.as_str(), |k| &k.lessons),
            See::Term(id) => self.wants(at, "term", id.as_str(), |k| &k.terms),
        }
    }
}

//! The kinds of things that have an id, and the ids of each.

use crate::Catalogue;

impl Catalogue {
    /// The ids of every kind, in the order of the catalogue. A kind is called
    /// what its table in `content/` is called.
    pub fn kinds(&self) -> [(&'static str, Vec<&str>); 14] {
        macro_rules! ids {
            ($list:ident) => {
                self.$list.iter().map(|each| each.id.as_str()).collect()
            };
        }
        [
            ("source", ids!(sources)),
            ("competency", ids!(competencies)),
            ("finding", ids!(findings)),
            ("instrument", ids!(instruments)),
            ("material", ids!(materials)),
            ("procedure", ids!(procedures)),
            ("plan", ids!(plans)),
            ("check", ids!(checks)),
            ("rule", ids!(rules)),
            ("card", ids!(cards)),
            ("stop", ids!(stops)),
            ("case", ids!(cases)),
            ("lesson", ids!(lessons)),
            ("term", ids!(glossary)),
        ]
    }
}

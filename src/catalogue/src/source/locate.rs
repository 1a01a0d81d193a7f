//! From a path in the data to a place in the file.

use toml::{
    Spanned,
    de::{DeTable, DeValue},
};

/// One step of a path into a TOML document.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(super) enum Key {
    /// A field of a table.
    Field(String),
    /// An entry of an array.
    Entry(usize),
}

/// A path such as `step[3].uses.cement-spatula`.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub(super) struct Path(pub Vec<Key>);

impl Path {
    pub fn field(&self, name: &str) -> Self {
        let mut keys = self.0.clone();
        keys.push(Key::Field(name.into()));
        Self(keys)
    }

    pub fn entry(&self, index: usize) -> Self {
        let mut keys = self.0.clone();
        keys.push(Key::Entry(index));
        Self(keys)
    }
}

/// A parsed document with the place of everything in it.
pub(super) type Document<'f> = Spanned<DeTable<'f>>;

/// Parses a document; none where it is no TOML.
pub(super) fn document(text: &str) -> Option<Document<'_>> {
    DeTable::parse(text).ok()
}

/// The byte offset of the deepest part of `path` that the document has.
pub(super) fn offset(document: &Document<'_>, path: &Path) -> usize {
    let mut at = document.span().start;
    let mut value: Option<&Spanned<DeValue<'_>>> = None;
    let mut table = Some(document.get_ref());
    for key in &path.0 {
        let next = match key {
            Key::Field(name) => {
                let Some((found, inner)) = table.and_then(|t| {
                    t.iter()
                        .find(|(k, _)| k.get_ref().as_ref() == name.as_str())
                }) else {
                    break;
                };
                at = found.span().start;
                inner
            }
            Key::Entry(index) => {
                let Some(inner) = value
                    .and_then(|v| v.get_ref().as_array())
                    .and_then(|a| a.get(*index))
                else {
                    break;
                };
                at = inner.span().start;
                inner
            }
        };
        value = Some(next);
        table = next.get_ref().as_table();
    }
    at
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_path_leads_to_its_value() {
        let text = "id = 'x'\n[[step]]\nid = 'a'\n[[step]]\nuses = { probe = 'why' }\n";
        let path = Path::default()
            .field("step")
            .entry(1)
            .field("uses")
            .field("probe");
        let document = document(text).unwrap();
        assert_eq!(offset(&document, &path), text.find("probe").unwrap());
        assert_eq!(
            offset(&document, &path.field("nothing")),
            text.find("probe").unwrap()
        );
    }
}

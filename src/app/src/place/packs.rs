//! The places where packs are written, and where one is offered by a link.

/// A place of packs.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum WritePlace {
    /// The packs of this device.
    Packs,
    /// One of them, by its id.
    Pack(String),
    /// Where a file is added to it.
    Add(String),
    /// A file of it by its path, on one of its sides.
    File(String, FileSide, String),
    /// The lines of a file beside the built-in ones.
    Lines(String, String),
    /// A pack that lies beside the page, by the name of its file.
    Offered(String),
}

/// In which way a file is edited.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum FileSide {
    /// As a form.
    Form,
    /// As a text.
    Text,
}

impl FileSide {
    /// Both, in the order of the tabs.
    pub const ALL: [Self; 2] = [Self::Form, Self::Text];

    fn word(self) -> &'static str {
        match self {
            Self::Form => "form",
            Self::Text => "text",
        }
    }

    /// What its tab says.
    pub fn label(self) -> &'static str {
        match self {
            Self::Form => "Form",
            Self::Text => "Text",
        }
    }
}

impl WritePlace {
    /// The place of the parts of a fragment; none where it is no place of packs.
    pub fn read(parts: &[&str]) -> Option<Self> {
        Some(match parts {
            ["class", "write"] => Self::Packs,
            ["class", "write", id] => Self::Pack((*id).into()),
            ["class", "write", id, "add"] => Self::Add((*id).into()),
            ["class", "write", id, "lines", path @ ..] if !path.is_empty() => {
                Self::Lines((*id).into(), path.join("/"))
            }
            ["class", "write", id, word, path @ ..] if !path.is_empty() => {
                let side = FileSide::ALL
                    .into_iter()
                    .find(|side| side.word() == *word)?;
                Self::File((*id).into(), side, path.join("/"))
            }
            ["pack", name] => Self::Offered((*name).into()),
            _ => return None,
        })
    }

    /// The fragment, with its `#`.
    pub fn fragment(&self) -> String {
        match self {
            Self::Packs => "#/class/write".into(),
            Self::Pack(id) => format!("#/class/write/{id}"),
            Self::Add(id) => format!("#/class/write/{id}/add"),
            Self::File(id, side, path) => format!("#/class/write/{id}/{}/{path}", side.word()),
            Self::Lines(id, path) => format!("#/class/write/{id}/lines/{path}"),
            Self::Offered(name) => format!("#/pack/{name}"),
        }
    }
}

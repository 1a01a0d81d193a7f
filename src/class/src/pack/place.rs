//! Where in a pack a file may stand. The places are those of content/, as far
//! as a pack may add to it or stand in for it. The findings, the figures and the
//! models of mixes are not a pack's to change: what is worked out for every
//! patient and every mix rests on them.

use super::limits::{is_slug, shown};
use catalogue::source::lists::{self, List};

/// What a file of a pack holds.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Kind {
    /// The steps of a procedure.
    Procedure,
    /// The lesson of a procedure, or one on its own.
    Lesson,
    /// A list of instruments.
    Instruments,
    /// A list of materials.
    Materials,
    /// A list of drawings.
    Drawings,
    /// A list of case frames.
    Cases,
    /// A list of rules.
    Rules,
    /// A list of plans.
    Plans,
    /// A list of preference cards.
    Cards,
    /// A list of sources.
    Sources,
}

impl Kind {
    /// All kinds, in the order in which they are offered.
    pub const ALL: [Self; 10] = [
        Self::Procedure,
        Self::Lesson,
        Self::Instruments,
        Self::Materials,
        Self::Drawings,
        Self::Cases,
        Self::Rules,
        Self::Plans,
        Self::Cards,
        Self::Sources,
    ];

    /// The kind of the file at a path.
    ///
    /// # Errors
    /// A sentence that says why no file of a pack may stand there.
    pub fn of(path: &str) -> Result<Self, String> {
        let parts: Vec<&str> = path.split('/').take(4).collect();
        let found = match parts.as_slice() {
            ["procedures", id, "procedure.toml"] if is_slug(id) => Some(Self::Procedure),
            ["procedures", id, "lesson.md"] if is_slug(id) => Some(Self::Lesson),
            ["lessons", name] if stem(name, ".md") => Some(Self::Lesson),
            [folder, name] if stem(name, ".toml") => Self::ALL
                .into_iter()
                .find(|kind| kind.folder() == *folder && kind.is_list()),
            // The built-in sources are one file, which a pack may stand in for.
            ["sources.toml"] => Some(Self::Sources),
            _ => None,
        };
        found.ok_or_else(|| {
            format!(
                "“{}” is no place for a file of a pack. A pack holds procedures/NAME/procedure.toml and lesson.md, lessons/NAME.md, and NAME.toml in instruments, materials, drawings, cases, rules, plans, preference-cards or sources; names are lower-case words joined by hyphens.",
                shown(path)
            )
        })
    }

    /// The folder of content/ that such files stand in.
    pub fn folder(self) -> &'static str {
        match self {
            Self::Procedure => "procedures",
            Self::Lesson => "lessons",
            _ => self.list().map_or("", |list| list.folder),
        }
    }

    /// What the tables of such a file are called; none where it is no list.
    pub fn table(self) -> Option<&'static str> {
        self.list().map(|list| list.table)
    }

    fn list(self) -> Option<List> {
        Some(match self {
            Self::Procedure | Self::Lesson => return None,
            Self::Instruments => lists::INSTRUMENTS,
            Self::Materials => lists::MATERIALS,
            Self::Drawings => lists::DRAWINGS,
            Self::Cases => lists::CASES,
            Self::Rules => lists::RULES,
            Self::Plans => lists::PLANS,
            Self::Cards => lists::PREFERENCE_CARDS,
            Self::Sources => lists::SOURCES,
        })
    }

    /// Whether such a file is a list of tables.
    pub fn is_list(self) -> bool {
        self.table().is_some()
    }

    /// What one such thing is called on screen.
    pub fn label(self) -> &'static str {
        match self {
            Self::Procedure => "procedure",
            Self::Lesson => "lesson",
            Self::Cards => "preference card",
            _ => self.table().unwrap_or_default(),
        }
    }
}

fn stem(name: &str, extension: &str) -> bool {
    name.strip_suffix(extension).is_some_and(is_slug)
}

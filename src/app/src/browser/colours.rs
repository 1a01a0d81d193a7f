//! The colour scheme that the reader prefers.

/// The attribute that the style sheet looks at.
const ATTRIBUTE: &str = "data-theme";

/// A choice of colour scheme.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Theme {
    /// As the device says.
    System,
    /// Always light.
    Light,
    /// Always dark.
    Dark,
}

impl Theme {
    /// All choices.
    pub const ALL: [Self; 3] = [Self::System, Self::Light, Self::Dark];

    /// The name of the setting in the record.
    pub const SETTING: &str = "theme";

    /// Its value in the record.
    pub fn value(self) -> &'static str {
        match self {
            Self::System => "system",
            Self::Light => "light",
            Self::Dark => "dark",
        }
    }

    /// What its button says.
    pub fn label(self) -> &'static str {
        match self {
            Self::System => "As the device",
            Self::Light => "Light",
            Self::Dark => "Dark",
        }
    }

    /// Reads a value of the record; a strange one counts as none.
    pub fn from_value(value: Option<&str>) -> Self {
        Self::ALL
            .into_iter()
            .find(|theme| Some(theme.value()) == value)
            .unwrap_or(Self::System)
    }

    /// Shows the page in it.
    pub fn apply(self) {
        let Some(root) = web_sys::window()
            .and_then(|window| window.document())
            .and_then(|document| document.document_element())
        else {
            return;
        };
        // An attribute of the root element can always be set.
        let _ = match self {
            Self::System => root.remove_attribute(ATTRIBUTE),
            other => root.set_attribute(ATTRIBUTE, other.value()),
        };
    }
}

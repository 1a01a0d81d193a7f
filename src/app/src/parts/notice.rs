//! A remark set apart, told by shape and word as well as by colour.

use super::icon::{Icon, icon};
use leptos::prelude::*;

/// How much a notice matters.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Tone {
    /// Good to know.
    Plain,
    /// Deserves attention.
    Attention,
    /// Somebody could be hurt.
    Unsafe,
}

impl Tone {
    fn class(self) -> &'static str {
        match self {
            Self::Plain => "notice",
            Self::Attention => "notice notice-attention",
            Self::Unsafe => "notice notice-unsafe",
        }
    }

    fn icon(self) -> Icon {
        match self {
            Self::Plain | Self::Attention => Icon::Note,
            Self::Unsafe => Icon::Unsafe,
        }
    }
}

/// What went wrong, as long as something did.
#[component]
pub fn Fault(
    /// The sentence.
    #[prop(into)]
    says: Signal<Option<String>>,
    /// What it is called in a journey.
    test: &'static str,
) -> impl IntoView {
    move || {
        says.get().map(|says| {
            view! { <Notice tone=Tone::Attention><p data-test=test>{says}</p></Notice> }
        })
    }
}

/// A notice.
#[component]
pub fn Notice(
    /// How much it matters.
    tone: Tone,
    /// What it says.
    children: Children,
) -> impl IntoView {
    view! {
        <div class=tone.class()>
            {icon(tone.icon())} <div class="notice-body">{children()}</div>
        </div>
    }
}

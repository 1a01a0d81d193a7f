//! What is said aloud by a screen reader without moving focus.

use leptos::prelude::*;

/// Says things to those who do not see them appear.
#[derive(Clone, Copy)]
pub struct Announcer(RwSignal<String>);

impl Announcer {
    /// Says a sentence when the screen reader has finished what it is saying.
    pub fn say(self, sentence: impl Into<String>) {
        let sentence = sentence.into();
        // The same words twice would not be noticed as a change.
        let again = self.0.with_untracked(|last| *last == sentence);
        self.0
            .set(if again { sentence + "\u{a0}" } else { sentence });
    }
}

/// Makes announcements possible in all views below.
pub fn provide() -> Announcer {
    let announcer = Announcer(RwSignal::new(String::new()));
    provide_context(announcer);
    announcer
}

/// The announcer of this page.
pub fn announcer() -> Announcer {
    expect_context()
}

/// Where announcements are read from; stands once in the frame.
#[component]
pub fn LiveRegion(announcer: Announcer) -> impl IntoView {
    view! {
        <p class="unseen" aria-live="polite" data-test="announcement">
            {announcer.0}
        </p>
    }
}

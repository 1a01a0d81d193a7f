//! An assignment as a file for other systems: a question bank, a school's system.

use super::for_bank::questions;
use crate::{
    browser::{build, files},
    desk::grading,
    packs,
    parts::{announce::announcer, fold::Fold},
    questions::awaited,
};
use class::{
    assignment::Assignment,
    exchange::{qti, scorm, zip::File},
};
use leptos::prelude::*;

/// The packages.
#[component]
pub fn OtherSystems(
    /// What was set.
    assignment: StoredValue<Assignment, LocalStorage>,
    /// What is said of what was done.
    said: RwSignal<Option<String>>,
) -> impl IntoView {
    let announcer = announcer();
    // A package takes its time; the screen may have been left when it is made.
    let say = move |sentence: String| {
        announcer.say(sentence.clone());
        said.try_set(Some(sentence));
    };
    assignment.with_value(grading::prepare);
    // What is written afterwards has to know what is taught, as this view does.
    let here = Owner::current().unwrap_or_default();
    let to_bank = move |_| {
        let (here, set) = (here.clone(), assignment.get_value());
        leptos::task::spawn_local(async move {
            if set.needs_questions() {
                awaited().await;
            }
            // Where the screen was left, what is taught is out of its reach.
            if said.try_get_untracked().is_none() {
                return;
            }
            let packed = here.with(|| for_bank(&set));
            say(saved("questions-qti.zip", packed));
        });
    };
    let opens = format!("index.html{}", packs::set_prefix());
    let to_school = move |_| {
        let set = assignment.get_value();
        let start = format!("{opens}{}", set.letters());
        say("The files of the page are being fetched.".into());
        leptos::task::spawn_local(async move {
            let packed = for_school(&set, &start).await;
            say(saved("assignment-scorm.zip", packed));
        });
    };
    view! {
        <Fold title="For other systems" test="other-systems">
            <Package
                says="The questions of one seat as a QTI 2.2 package, for question banks that read it. Choices, orders and numbers fit that form; mixes, drawings and what is matched do not."
                label="QTI package"
                test="qti"
                make=to_bank
            />
            <Package
                says="The assignment with this page inside as a SCORM 1.2 package: a school's system opens it and is told how far a student is, the score and the answers. The student types a seat there as well."
                label="SCORM package"
                test="scorm"
                make=to_school
            />
        </Fold>
    }
}

/// What a package is, and the button that makes it.
#[component]
fn Package(
    /// What it is.
    says: &'static str,
    /// What the button says.
    label: &'static str,
    /// What the button is called in a journey.
    test: &'static str,
    /// Makes it.
    make: impl FnMut(web_sys::MouseEvent) + 'static,
) -> impl IntoView {
    view! {
        <p>{says}</p>
        <div class="actions">
            <button type="button" class="button button-quiet" data-test=test on:click=make>
                {label}
            </button>
        </div>
    }
}

fn for_bank(assignment: &Assignment) -> Result<Vec<u8>, String> {
    let all = questions(assignment)?;
    if all.is_empty() {
        return Err("Nothing of this has a form in that package.".to_owned());
    }
    qti::package(&assignment.name(), &all).map_err(|error| error.to_string())
}

async fn for_school(assignment: &Assignment, start: &str) -> Result<Vec<u8>, String> {
    // What it was set with goes along, for the page to fetch.
    let files = build::files().await?.into_iter();
    let files: Vec<File> = files
        .chain(packs::used::beside())
        .map(|(path, bytes)| File { path, bytes })
        .collect();
    scorm::package(assignment, &files, start).map_err(|error| error.to_string())
}

/// Saves a package, and says what came of it.
fn saved(name: &str, packed: Result<Vec<u8>, String>) -> String {
    let done = packed.and_then(|bytes| files::download_bytes(name, "application/zip", &bytes));
    done.map_or_else(|why| why, |()| "The package is made.".into())
}

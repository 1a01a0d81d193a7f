//! A file as a form: its fields, as the document has them. What is typed goes
//! into the text at the place of the field; remarks and layout stay.
//!
//! - `words`: fields in words, and what can be chosen for them
//! - `table`, `list`, `field`: the parts of a document

mod field;
mod list;
mod table;
mod words;

use super::super::writing::Writing;
use crate::parts::{announce::announcer, notice::Fault};
use catalogue::source::edit::{Step, Tree};
use class::pack::PackFile;
use leptos::prelude::*;

/// The form, as its parts know it. Cheap to copy.
#[derive(Clone, Copy)]
struct Form {
    writing: Writing,
    path: StoredValue<String>,
    /// Counts changes after which the form has other parts than before.
    shape: RwSignal<u32>,
    fault: RwSignal<Option<String>>,
}

impl Form {
    fn text(self) -> String {
        self.path.with_value(|path| {
            self.writing.pack.with_untracked(|pack| {
                pack.file(path)
                    .map(|file| file.text.clone())
                    .unwrap_or_default()
            })
        })
    }

    /// Changes the text. With `parts` the form is drawn afresh after it.
    fn change(self, parts: bool, act: impl FnOnce(&str) -> Option<String>) {
        let Some(text) = act(&self.text()) else {
            let sentence = "This cannot be done in the form; do it on the side of the text.";
            return self.fault.set(Some(sentence.to_owned()));
        };
        let path = self.path.get_value();
        let done = self.writing.change(|pack| {
            let replaces = pack.file(&path).is_some_and(|file| file.replaces);
            pack.put(&path, PackFile { text, replaces })
        });
        self.fault.set(done.err());
        if parts {
            self.shape.update(|shape| *shape += 1);
        }
    }
}

/// The form.
#[component]
pub fn FormView(
    /// The pack.
    writing: Writing,
    /// The path of the file.
    path: String,
) -> impl IntoView {
    let form = Form {
        writing,
        path: StoredValue::new(path),
        shape: RwSignal::new(0),
        fault: RwSignal::new(None),
    };
    let announcer = announcer();
    Effect::new(move |_| {
        if let Some(sentence) = form.fault.get() {
            announcer.say(sentence);
        }
    });
    let parts = move || {
        form.shape.track();
        match Tree::read(&form.text()) {
            Some(tree) => table::table(form, &tree.root, &[], &[]),
            None => view! {
                <p data-test="no-form">
                    "As it stands the text cannot be shown as a form. Mend it on the side of the text; the checks say where."
                </p>
            }
            .into_any(),
        }
    };
    view! {
        <div class="pk-form" data-test="pack-form">
            <words::Lists checks=writing.checks />
            <Fault says=form.fault test="form-fault" />
            {parts}
        </div>
    }
}

/// A way with one more step.
fn on(path: &[Step], step: Step) -> Vec<Step> {
    let mut way = path.to_vec();
    way.push(step);
    way
}

/// A way as the hook of a test and the id of a field: `step-3-uses-probe`.
fn hook(path: &[Step]) -> String {
    let steps = path.iter().map(|step| match step {
        Step::Field(name) => name.clone(),
        Step::Entry(at) => at.to_string(),
    });
    steps.collect::<Vec<_>>().join("-")
}

//! All questions, made ready in the background in short slices, so that the
//! page answers every touch meanwhile. They stay until the page is closed.

use super::studied;
use crate::{
    browser::breath::{self, Sliced},
    log::{OpenLog, log},
    taught::{catalogue, standard},
};
use clinic::Clinic;
use leptos::{prelude::*, task::spawn_local};
use std::cell::{Cell, OnceCell};
use study::{
    item::{Bank as Items, Blueprint},
    numeric::hash,
    question::{Bank, Question, QuestionId, measured},
};

/// All questions, ready. A copy of this can go into any handler; the questions
/// themselves stay where they are.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Questions(());

/// What is made ready.
struct All {
    written: Bank,
    items: Items,
    version: u16,
}

thread_local! {
    static ALL: OnceCell<&'static All> = const { OnceCell::new() };
    static BEGUN: Cell<bool> = const { Cell::new(false) };
    static HERE: ArcRwSignal<bool> = ArcRwSignal::new(false);
}

#[expect(
    clippy::unused_self,
    reason = "who has it has the proof that the questions are here"
)]
impl Questions {
    /// The questions as measurement sees them.
    pub fn items(self) -> &'static Items {
        &all().items
    }

    /// The questions by family, as they are written.
    pub fn bank(self) -> &'static Bank {
        &all().written
    }

    /// Which questions these are: two pages with the same number have the same
    /// ones, and build the same form from a code.
    pub fn version(self) -> u16 {
        all().version
    }

    /// Writes a question; nothing where its fact is no longer taught.
    pub fn write(self, id: &str, wording: u64) -> Option<Question> {
        all().written.write(&QuestionId(id.to_owned()), wording)
    }
}

/// The questions, for one who has the proof that they are ready.
fn all() -> &'static All {
    ALL.with(|all| *all.get().expect("the proof is made after the questions"))
}

impl All {
    fn of(written: Bank, blueprint: Blueprint, items: Vec<study::item::Item>) -> Self {
        // What could not be measured is left out, and told at build time.
        let (items, _) = Items::new(blueprint, items);
        Self {
            version: version(&items),
            written,
            items,
        }
    }
}

/// A number that changes with any question and any difficulty.
fn version(items: &Items) -> u16 {
    let mixed = items.items().iter().fold(0_u64, |mixed, item| {
        mixed.rotate_left(5) ^ hash(&item.id) ^ item.difficulty.mean.to_bits()
    });
    u16::try_from((mixed ^ (mixed >> 32)) % 65_521).unwrap_or(0)
}

/// Begins to make the questions ready, if that was not done yet.
pub fn prepare() {
    if !BEGUN.replace(true) {
        let (clinic, blueprint) = (
            standard().for_ever(),
            Blueprint::of(&catalogue().competencies),
        );
        spawn_local(make_ready(clinic, blueprint, log()));
    }
}

async fn make_ready(clinic: &'static Clinic, blueprint: Blueprint, log: OpenLog) {
    breath::take().await;
    let mut work = Sliced::begun();
    let written = Bank::in_slices(clinic, &mut async || work.rest().await).await;
    let mut items = Vec::with_capacity(written.ids().len());
    for id in written.ids() {
        items.extend(written.write(id, 0).map(|question| measured(&question)));
        work.rest().await;
    }
    breath::take().await;
    let questions = Box::leak(Box::new(All::of(written, blueprint, items)));
    ALL.with(|all| {
        // Nobody else makes them.
        let _ = all.set(questions);
    });
    // Whoever asks for them asks for the record over them in the same breath.
    studied::fold(log, Questions(()), &mut work).await;
    HERE.with(|here| here.set(true));
}

/// The questions, once they are ready; a view that asks is drawn afresh then.
pub fn questions() -> Option<Questions> {
    prepare();
    HERE.with(Clone::clone).get();
    at_hand()
}

/// The questions, if they are ready now.
pub fn at_hand() -> Option<Questions> {
    ALL.with(|all| all.get().map(|_| Questions(())))
}

/// Waits until the questions are ready, which a view has begun with [`prepare`]:
/// what waits is in no view, and knows nothing of what is taught.
pub async fn awaited() -> Questions {
    loop {
        match at_hand() {
            Some(questions) => return questions,
            None => breath::take().await,
        }
    }
}

/// Stands where something will be that needs all questions.
#[component]
pub fn Ready<V: IntoView + 'static>(
    /// What is shown then.
    show: impl Fn(Questions) -> V + Send + 'static,
) -> impl IntoView {
    move || match questions() {
        Some(questions) => show(questions).into_any(),
        None => view! {
            <p class="lead" aria-busy="true" data-test="questions-awaited">
                "Getting the questions ready…"
            </p>
        }
        .into_any(),
    }
}

/// Stands where something will be that needs all questions, or else is there at once.
#[component]
pub fn ReadyFor<V: IntoView + 'static>(
    /// Whether all questions are needed.
    needs: bool,
    /// What is shown then.
    show: impl Fn() -> V + Send + 'static,
) -> impl IntoView {
    if needs {
        view! { <Ready show=move |_| show() /> }.into_any()
    } else {
        show().into_any()
    }
}

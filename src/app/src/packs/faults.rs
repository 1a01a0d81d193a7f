//! What the checks say: that nothing is wrong, or every fault with its place.

use super::{checks::Outcome, writing::Writing};
use crate::{
    parts::notice::{Notice, Tone},
    place::{ClassPlace, FileSide, Place, WritePlace},
};
use catalogue::source::Fault;
use leptos::prelude::*;

/// How many faults are listed; the others come when these are mended.
const LISTED: usize = 40;

/// What the checks say of a pack, with a button to run them again.
#[component]
pub fn Checked(
    /// The pack.
    writing: Writing,
    /// The path of the file that is open; its faults stand first, and a tap on
    /// one leads to its place there.
    #[prop(optional, into)]
    open: Option<String>,
    /// Told line and column of a fault in the open file.
    #[prop(optional, into)]
    jump: Option<Callback<(usize, usize)>>,
) -> impl IntoView {
    let says = move || {
        if let Some(Err(why)) = writing.sources.get() {
            return view! {
                <Notice tone=Tone::Attention>
                    <p data-test="no-sources">"The checks cannot run: " {why}</p>
                </Notice>
            }
            .into_any();
        }
        match writing.checks.outcome() {
            Outcome::Awaited => quiet("The built-in sources are on their way…"),
            Outcome::Running => quiet("Checking…"),
            Outcome::Passed(_) => quiet("The checks find nothing wrong."),
            Outcome::Faulty(faults) => {
                let id = writing.pack.with(|pack| pack.id().to_owned());
                view! { <Faults id faults open=open.clone() jump /> }.into_any()
            }
        }
    };
    view! {
        <section class="pk-checks" aria-live="polite" data-test="checks">
            <div class="pk-checks-head">
                <h2 class="stage-label">"Checks"</h2>
                <button
                    type="button"
                    class="button button-quiet"
                    data-test="check-now"
                    on:click=move |_| writing.check()
                >
                    "Check now"
                </button>
            </div>
            {says}
        </section>
    }
}

fn quiet(says: &'static str) -> AnyView {
    view! { <p data-test="checked">{says}</p> }.into_any()
}

#[component]
fn Faults(
    id: String,
    faults: Vec<Fault>,
    open: Option<String>,
    jump: Option<Callback<(usize, usize)>>,
) -> impl IntoView {
    let here = |fault: &Fault| {
        let path = fault.file.strip_prefix("content/");
        path.is_some() && path == open.as_deref()
    };
    let count = faults.len();
    let (mut first, others): (Vec<Fault>, Vec<Fault>) = faults.into_iter().partition(here);
    let own = first.len();
    first.extend(others);
    let title = match count {
        1 => "One fault".to_owned(),
        many => format!("{many} faults"),
    };
    let more = (count > LISTED).then(|| {
        view! { <p>"These are the first " {LISTED} "; the others come when these are mended."</p> }
    });
    let lines = first
        .into_iter()
        .take(LISTED)
        .enumerate()
        .map(move |(at, fault)| {
            let says = fault.to_string();
            let jump = jump.filter(|_| at < own);
            match jump {
                Some(jump) => {
                    let to = (fault.line, fault.column);
                    view! {
                        <li>
                            <button
                                type="button"
                                class="pk-fault"
                                data-test="fault"
                                on:click=move |_| jump.run(to)
                            >
                                {says}
                            </button>
                        </li>
                    }
                    .into_any()
                }
                None => view! { <li>{elsewhere(&id, &fault, says)}</li> }.into_any(),
            }
        });
    view! {
        <Notice tone=Tone::Attention>
            <p data-test="checked"><strong>{title}</strong></p>
            <ul class="pk-faults">{lines.collect_view()}</ul>
            {more}
        </Notice>
    }
}

/// A fault that leads to the file it is in, where that is one of the pack.
fn elsewhere(id: &str, fault: &Fault, says: String) -> AnyView {
    let path = fault.file.strip_prefix("content/").unwrap_or_default();
    if class::pack::place::Kind::of(path).is_err() {
        return view! { <span data-test="fault">{says}</span> }.into_any();
    }
    let at = format!("{path}:{}:{}", fault.line, fault.column);
    let place = WritePlace::File(id.to_owned(), FileSide::Text, at);
    view! {
        <a class="pk-fault" href=Place::Class(ClassPlace::Write(place)).fragment() data-test="fault">
            {says}
        </a>
    }
    .into_any()
}

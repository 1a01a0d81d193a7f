//! What the screens of one assignment share: the ways between them, and what
//! stands where it cannot be read.

use super::kept;
use crate::{
    browser::address::Address,
    packs::PackNeeded,
    parts::{
        notice::{Notice, Tone},
        page::Page,
    },
    place::{ClassPlace, Place},
    shell::NotHere,
};
use class::assignment::Assignment;
use leptos::prelude::*;

/// A row of tabs: what went out, hand-ins, report.
#[component]
pub fn Ways(
    /// The id of the assignment.
    id: String,
    /// Where the instructor is.
    here: ClassPlace,
) -> impl IntoView {
    let all = [
        ("To hand out", ClassPlace::Issued(id.clone()), "way-issued"),
        ("Hand-ins", ClassPlace::Collect(id.clone()), "way-collect"),
        ("Report", ClassPlace::Report(id), "way-report"),
    ];
    let tab = |(label, place, hook): (&'static str, ClassPlace, &'static str)| {
        let current = (place == here).then_some("page");
        view! {
            <li>
                <a href=Place::Class(place).fragment() aria-current=current data-test=hook>
                    {label}
                </a>
            </li>
        }
    };
    view! {
        <nav class="tabs" aria-label="This assignment">
            <ul>{all.map(tab).collect_view()}</ul>
        </nav>
    }
}

/// A screen of one assignment: what shows it stands below the way to the others.
/// Where it cannot be read, or what it asks cannot be had, that is said with what
/// can still be done with it.
pub fn of_set(
    id: String,
    here: ClassPlace,
    show: impl FnOnce(Assignment) -> Result<AnyView, String>,
) -> AnyView {
    let Some(set) = kept::set(&id) else {
        return view! { <NotHere what="assignment" /> }.into_any();
    };
    let needs_packs = set.needs_packs();
    let shown = set.assignment.map_err(|fault| fault.to_string());
    let shown = shown.and_then(|assignment| Ok((assignment.name(), show(assignment)?)));
    let up = Place::Class(ClassPlace::Desk).fragment();
    match shown {
        Ok((title, body)) => view! {
            <Page title over="Class" up>
                <Ways id here />
                {body}
            </Page>
        }
        .into_any(),
        Err(says) => view! {
            <Page title="An assignment" over="Class" up>
                <Notice tone=Tone::Attention>
                    <p data-test="set-fault">{says}</p>
                </Notice>
                {needs_packs
                    .map(|code| {
                        view! { <PackNeeded code missing="It was set with a pack that is not in use on this device:" /> }
                    })}
                <TakeAway id />
            </Page>
        }
        .into_any(),
    }
}

/// Taking an assignment away, in two steps.
#[component]
pub fn TakeAway(
    /// Its id.
    id: String,
) -> impl IntoView {
    let address: Address = expect_context();
    let sure = RwSignal::new(false);
    let fault = RwSignal::new(None::<String>);
    let away = move |_| match kept::take_away(&id) {
        Ok(()) => address.go(Place::Class(ClassPlace::Desk)),
        Err(why) => fault.set(Some(why.to_string())),
    };
    let away = StoredValue::new(away);
    view! {
        <section class="dk-noprint">
            <div class="actions">
                <button
                    type="button"
                    class="button button-quiet"
                    aria-expanded=move || sure.get().to_string()
                    data-test="take-away"
                    on:click=move |_| sure.update(|sure| *sure = !*sure)
                >
                    "Take it off this device"
                </button>
            </div>
            {move || {
                sure.get()
                    .then(|| {
                        view! {
                            <Notice tone=Tone::Attention>
                                <p>"The hand-ins that were read go with it, and cannot be brought back from here."</p>
                                <div class="actions">
                                    <button
                                        type="button"
                                        class="button"
                                        data-test="take-away-sure"
                                        on:click=move |event| away.with_value(|away| away(event))
                                    >
                                        "Take it away with its hand-ins"
                                    </button>
                                </div>
                            </Notice>
                        }
                    })
            }}
            {move || fault.get().map(|why| view! { <Notice tone=Tone::Attention><p>{why}</p></Notice> })}
        </section>
    }
}

//! One procedure: its lesson, its tray, its steps.

use super::{lesson::LessonBody, set_up::SetUp, steps::Steps};
use crate::{
    packs::FromPack,
    parts::page::Page,
    place::{Place, Supposed, View},
    shell::NotHere,
    taught::catalogue,
    timeline::TimeLine,
};
use catalogue::{ids::ProcedureId, procedures::Procedure};
use leptos::prelude::*;

/// The screen of a procedure.
#[component]
pub fn ProcedureScreen(
    /// The procedure.
    id: ProcedureId,
    /// Which side of it.
    view: View,
    /// The patient the reader supposes.
    supposed: Signal<Supposed>,
) -> impl IntoView {
    let Some(procedure) = catalogue().procedure(&id) else {
        return view! { <NotHere what="procedure" /> }.into_any();
    };
    let body = match view {
        View::Lesson => view! { <LessonBody id=procedure.id.as_str().into() /> }.into_any(),
        View::SetUp => view! { <SetUp procedure supposed /> }.into_any(),
        View::Steps => view! { <Steps procedure supposed /> }.into_any(),
        View::Time => view! { <TimeLine procedure supposed /> }.into_any(),
    };
    view! {
        <Page title=procedure.name.as_str() over="Procedures" up=Place::Procedures.fragment()>
            <FromPack kind="procedure" id=procedure.id.as_str() />
            <Tabs procedure view supposed />
            {body}
        </Page>
    }
    .into_any()
}

/// The three sides of a procedure. The supposed patient goes along.
#[component]
fn Tabs(procedure: &'static Procedure, view: View, supposed: Signal<Supposed>) -> impl IntoView {
    let tab = move |side: View| {
        let to = move || Place::Procedure(procedure.id.clone(), side, supposed.get()).fragment();
        view! {
            <li>
                <a
                    href=to
                    aria-current=(side == view).then_some("page")
                    data-test=format!("tab-{}", side.label().to_lowercase())
                >
                    {side.label()}
                </a>
            </li>
        }
    };
    view! {
        <nav class="tabs" aria-label=procedure.short.as_str()>
            <ul>{View::ALL.map(tab).collect_view()}</ul>
        </nav>
    }
}

//! Practice forms: assembled to the blueprint, worked through at one go or with
//! pauses that are marked as such, with a result by competency.
//!
//! - `code`: a shared form as a code to be typed or followed
//! - `start`: which form, and its beginning
//! - `run`: a form under way, from the record
//! - `time`: how much of it is left
//! - `whole`: all its questions at a glance, and handing it in
//! - `one`: one of its questions
//! - `result`: what it came to

mod code;
mod one;
mod result;
mod run;
mod start;
mod time;
mod whole;

use crate::{
    place::FormSide,
    questions::{Questions, Ready, prepare},
    shell::NotHere,
};
use leptos::prelude::*;
use record::SittingId;
use run::{Run, Scene};

pub use start::FormsScreen;

/// The screen of one form.
#[component]
pub fn FormScreen(
    /// Which form.
    id: SittingId,
    /// Which side of it.
    side: FormSide,
) -> impl IntoView {
    prepare();
    view! { <Ready show=move |questions| view! { <Form id side questions /> } /> }
}

#[component]
fn Form(id: SittingId, side: FormSide, questions: Questions) -> impl IntoView {
    let run = Run::open(id, questions);
    let scene = run.scene(side);
    move || match scene.get() {
        Scene::Unknown => view! { <NotHere what="form" /> }.into_any(),
        Scene::Paused => view! { <whole::Paused run /> }.into_any(),
        Scene::Whole => view! { <whole::Whole run /> }.into_any(),
        Scene::Ask(at) => view! { <one::Asking run at /> }.into_any(),
        Scene::Result => view! { <result::Result run /> }.into_any(),
        Scene::Look(at) => view! { <one::Looking run at /> }.into_any(),
    }
}

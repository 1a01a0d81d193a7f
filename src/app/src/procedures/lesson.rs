//! Reading a lesson to its end.

use super::lesson_place;
use crate::{
    glossary::WordsOfLesson,
    log::log,
    packs::FromPack,
    parts::{
        announce::announcer,
        icon::{Icon, icon},
        lesson::LessonText,
        page::Page,
    },
    place::Place,
    shell::NotHere,
    taught::catalogue,
};
use catalogue::{ids::LessonId, lesson::Lesson, reading_order::in_reading_order};
use leptos::prelude::*;
use record::{LessonRead, What, folds};

/// The screen of a lesson that belongs to no procedure.
#[component]
pub fn LessonScreen(
    /// The lesson.
    id: LessonId,
) -> impl IntoView {
    match catalogue().lesson(&id) {
        Some(lesson) => view! {
            <Page title=lesson.title.as_str() over="Procedures" up=Place::Procedures.fragment()>
                <FromPack kind="lesson" id=lesson.id.as_str() />
                <LessonBody id />
            </Page>
        }
        .into_any(),
        None => view! { <NotHere what="lesson" /> }.into_any(),
    }
}

/// A lesson with what stands before and after its text.
#[component]
pub fn LessonBody(
    /// The lesson.
    id: LessonId,
) -> impl IntoView {
    let Some(lesson) = catalogue().lesson(&id) else {
        return view! {
            <p>"There is no lesson on this yet. Its set-up and its steps are there."</p>
        }
        .into_any();
    };
    view! {
        <p class="reading-time">{icon(Icon::Time)} {lesson.minutes()} " min to read"</p>
        <LessonText lesson />
        <WordsOfLesson lesson />
        <LessonEnd lesson />
    }
    .into_any()
}

/// The end of a lesson: it is marked as read, and the next one offered.
#[component]
fn LessonEnd(lesson: &'static Lesson) -> impl IntoView {
    let (log, announcer) = (log(), announcer());
    let id = lesson.id.as_str();
    let read = log.memo(move |events| folds::lessons_read(events).contains_key(id));
    let mark = move |_| {
        log.append(What::LessonRead(LessonRead { lesson: id.into() }));
        announcer.say("Marked as read.");
    };
    let next = in_reading_order(catalogue())
        .into_iter()
        .skip_while(move |each| each.id != lesson.id)
        .nth(1);
    let onwards = next.map(|next| {
        view! {
            <a class="button button-quiet" href=lesson_place(catalogue(), &next.id).fragment() data-test="next-lesson">
                "Next: " {next.title.as_str()} {icon(Icon::Onwards)}
            </a>
        }
    });
    view! {
        <footer class="lesson-end">
            <button
                type="button"
                class="button"
                data-test="lesson-read"
                aria-pressed=move || if read.get() { "true" } else { "false" }
                on:click=mark
            >
                {icon(Icon::Right)}
                {move || if read.get() { "Read" } else { "I have read this" }}
            </button>
            {onwards}
        </footer>
    }
}

//! Today: what is under way, and what comes next.

mod assigned;
mod next;
mod study;

use crate::{
    book::Book,
    log::log,
    parts::level::level,
    parts::{
        icon::{Icon, icon},
        page::Page,
    },
    place::{ClassPlace, Place},
};
use leptos::prelude::*;
use next::{Met, Open};

/// The screen.
#[component]
pub fn TodayScreen() -> impl IntoView {
    let met = log().memo(Met::of);
    let fresh = Memo::new(move |_| met.with(Met::nothing));
    view! {
        <Page title="Today">
            {move || fresh.get().then(welcome)}
            <div class="cards">
                <assigned::Assignments />
                <study::Study />
                <UnderWay met />
                <NextLesson met />
                <NextCase met />
            </div>
            <AllDone met />
            <p class="today-further">
                <a href=Place::Class(ClassPlace::Assignments).fragment() data-test="to-assignments">
                    "Assignments, and opening one by its code"
                </a>
            </p>
        </Page>
    }
}

/// Said as long as nothing was done.
fn welcome() -> impl IntoView {
    view! {
        <p class="lead" data-test="welcome">
            "Lay the tray, say why, mix, foresee, and show that you can. Ten minutes at a time, with or without a signal."
        </p>
    }
}

/// A card that leads somewhere.
fn card(
    label: &'static str,
    name: &'static str,
    note: String,
    go: &'static str,
    to: &Place,
    test: &'static str,
) -> AnyView {
    let class = if test == "resume-case" {
        "card card-due"
    } else {
        "card"
    };
    view! {
        <a class=class href=to.fragment() data-test=test>
            <span class="stage-label">{label}</span>
            <span class="card-name">{name}</span>
            <span class="card-note">{note}</span>
            <span class="card-go">{go} {icon(Icon::Onwards)}</span>
        </a>
    }
    .into_any()
}

/// Cases that wait to be gone on with, the latest first.
#[component]
fn UnderWay(met: Memo<Met>) -> impl IntoView {
    let book: Book = expect_context();
    let open = Memo::new(move |_| met.with(|met| met.open.clone()));
    let one = move |it: Open| {
        let Open {
            case,
            seed,
            with,
            answers,
        } = it;
        let mut cases = book.outline().cases.iter();
        let frame = cases.find(|it| it.id.as_str() == case)?;
        let place = Place::of_sitting(&case, seed, with.as_deref());
        let done = match answers {
            0 => "Just begun".to_string(),
            1 => "1 decision made".into(),
            many => format!("{many} decisions made"),
        };
        Some(card(
            "Under way",
            &frame.title,
            done,
            "Go on",
            &place,
            "resume-case",
        ))
    };
    move || open.get().into_iter().filter_map(one).collect_view()
}

/// The next lesson that was not read.
#[component]
fn NextLesson(met: Memo<Met>) -> impl IntoView {
    let book: Book = expect_context();
    let next = Memo::new(move |_| met.with(|met| next::lesson(book.outline(), met)));
    move || {
        let lesson = next.get()?;
        let minutes = format!("{} min", lesson.minutes);
        let place = Place::of_lesson(&lesson.id, lesson.of_procedure);
        Some(card(
            "Next to read",
            &lesson.title,
            minutes,
            "Read",
            &place,
            "next-lesson",
        ))
    }
}

/// The next case that was never begun.
#[component]
fn NextCase(met: Memo<Met>) -> impl IntoView {
    let book: Book = expect_context();
    let next = Memo::new(move |_| met.with(|met| next::case(book.outline(), met)));
    move || {
        let frame = next.get()?;
        let place = Place::Case(frame.id.clone(), 1, None);
        let note = level(frame.level).to_string();
        Some(card(
            "Next patient",
            &frame.title,
            note,
            "Begin",
            &place,
            "next-case",
        ))
    }
}

/// Said when nothing is left that was never met.
#[component]
fn AllDone(met: Memo<Met>) -> impl IntoView {
    let book: Book = expect_context();
    let done = Memo::new(move |_| {
        met.with(|met| {
            met.open.is_empty()
                && next::lesson(book.outline(), met).is_none()
                && next::case(book.outline(), met).is_none()
        })
    });
    move || {
        done.get().then(|| {
            view! {
                <p class="lead" data-test="all-done">
                    "Nothing is due. Every lesson is read and every case was met; "
                    <a href=Place::Cases.fragment()>"each case"</a>
                    " can be taken again with another patient."
                </p>
            }
        })
    }
}

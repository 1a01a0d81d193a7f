//! What goes out of an assignment: link, symbol, sheet, typed code, calendar,
//! files for other systems.

use super::{
    grading, kept,
    way::{Unreadable, Ways},
};
use crate::{
    assignments::{self, Outward, Symbol, bank, clinic_with, take_up},
    browser::{address::Address, build, clock, files, handing, printer},
    log::log,
    packs,
    parts::{
        announce::announcer,
        fold::Fold,
        notice::{Notice, Tone},
        page::Page,
    },
    place::{ClassPlace, Place},
    questions::{Questions, at_hand, awaited},
    shell::NotHere,
};
use class::{
    assignment::{Assignment, MOST_TYPED_TASKS, Seat},
    cases,
    exchange::{calendar::calendar, qti, scorm, zip::File},
    forms, numbers, qr, questions as asked,
    task::Task,
};
use leptos::prelude::*;

/// The screen.
#[component]
pub fn IssuedScreen(
    /// The id of the assignment.
    id: String,
) -> impl IntoView {
    let Some(set) = kept::set(&id) else {
        return view! { <NotHere what="assignment" /> }.into_any();
    };
    let here = ClassPlace::Issued(id.clone());
    let up = Place::Class(ClassPlace::Desk).fragment();
    match set.assignment {
        Ok(assignment) => view! {
            <Page title=assignment.name() over="Class" up>
                <Ways id=id.clone() here />
                <div class="dk-issued">
                    <section class="dk-noprint">
                        <h2>"For the class"</h2>
                        <Outward
                            prefix=packs::set_prefix()
                            letters=assignment.letters()
                            bytes=assignment.bytes()
                            title=assignment.name()
                            file=format!("assignment-{}.txt", assignment.title)
                        />
                        <Typed assignment=assignment.clone() />
                        <Further assignment=assignment.clone() id=id.clone() />
                    </section>
                    <Sheet assignment />
                </div>
                <TakeAway id />
            </Page>
        }
        .into_any(),
        Err(fault) => view! {
            <Unreadable says={fault.to_string()}><TakeAway id /></Unreadable>
        }
        .into_any(),
    }
}

/// The code that can be typed, where the assignment fits one.
#[component]
fn Typed(assignment: Assignment) -> impl IntoView {
    match assignment.typed(&bank()) {
        Some(code) => view! {
            <p>
                "Or typed under Today, Assignments: " <strong class="dk-code" data-test="typed">{code}</strong>
            </p>
        }
        .into_any(),
        None => view! {
            <p class="hint">
                "It says too much for a code that is short enough to type: that has room for "{MOST_TYPED_TASKS}" kinds of task without conditions, with a pass mark in steps of five and at most three tries."
            </p>
        }
        .into_any(),
    }
}

/// The other ways: as a student, paper, calendar, other systems.
#[component]
fn Further(assignment: Assignment, id: String) -> impl IntoView {
    let (log, announcer) = (log(), announcer());
    let address: Address = expect_context();
    let said = RwSignal::new(None::<String>);
    let say = move |sentence: String| {
        announcer.say(sentence.clone());
        said.set(Some(sentence));
    };
    let assignment = StoredValue::new_local(assignment);
    let preview = move |_| {
        assignment.with_value(|set| take_up(log, set, Seat(0), 1));
        address.go(Place::Class(ClassPlace::Assignment(id.clone())));
    };
    let due = assignment.with_value(|set| set.due.is_some());
    let to_calendar = move |_| {
        let made = u64::try_from(clock::now().utc_ms / 1000).unwrap_or(0);
        let text = assignment.with_value(|set| {
            let link = set.link(&format!("{}{}", handing::base(), packs::set_prefix()));
            calendar(set, &link, made)
        });
        let kept = text.map(|text| {
            files::download_bytes(
                "assignment.ics",
                "text/calendar;charset=utf-8",
                text.as_bytes(),
            )
        });
        if let Some(Err(why)) = kept {
            say(why);
        }
    };
    assignment.with_value(grading::prepare);
    // What is written afterwards has to know what is taught, as this view does.
    let here = Owner::current().unwrap_or_default();
    let to_bank = move |_| {
        let here = here.clone();
        leptos::task::spawn_local(async move {
            if assignment.try_with_value(Assignment::needs_questions) == Some(true) {
                awaited().await;
            }
            let packed = assignment.try_with_value(|set| {
                let all = here.with(|| questions(set))?;
                if all.is_empty() {
                    return Err("Nothing of this has a form in that package.".to_owned());
                }
                qti::package(&set.name(), &all).map_err(|error| error.to_string())
            });
            // None where the screen was left.
            let Some(packed) = packed else { return };
            let done = packed.and_then(|bytes| {
                files::download_bytes("questions-qti.zip", "application/zip", &bytes)
            });
            say(done.map_or_else(|why| why, |()| "The package is made.".into()));
        });
    };
    let opens = StoredValue::new(format!("index.html{}", packs::set_prefix()));
    let to_school = move |_| {
        say("The files of the page are being fetched.".into());
        leptos::task::spawn_local(async move {
            let packed = build::files().await.and_then(|files| {
                // What it was set with goes along, for the page to fetch.
                let files: Vec<File> = files
                    .into_iter()
                    .chain(packs::used::beside())
                    .map(|(path, bytes)| File { path, bytes })
                    .collect();
                assignment.with_value(|set| {
                    let start = format!("{}{}", opens.get_value(), set.letters());
                    scorm::package(set, &files, &start).map_err(|error| error.to_string())
                })
            });
            let done = packed.and_then(|bytes| {
                files::download_bytes("assignment-scorm.zip", "application/zip", &bytes)
            });
            say(done.map_or_else(|why| why, |()| "The package is made.".into()));
        });
    };
    view! {
        <div class="actions">
            <button type="button" class="button button-quiet" data-test="preview" on:click=preview>
                "Look at it as a student"
            </button>
            <button type="button" class="button button-quiet" data-test="print-sheet" on:click=move |_| printer::print()>
                "Print the sheet"
            </button>
            {due
                .then(|| {
                    view! {
                        <button type="button" class="button button-quiet" data-test="calendar" on:click=to_calendar>
                            "Calendar file"
                        </button>
                    }
                })}
        </div>
        <Fold title="For other systems" test="other-systems">
            <p>
                "The questions of one seat as a QTI 2.2 package, for question banks that read it. Choices, orders and numbers fit that form; mixes, drawings and what is matched do not."
            </p>
            <div class="actions">
                <button type="button" class="button button-quiet" data-test="qti" on:click=to_bank>
                    "QTI package"
                </button>
            </div>
            <p>
                "The assignment with this page inside as a SCORM 1.2 package: a school's system opens it and is told how far a student is, the score and the answers. The student types a seat there as well."
            </p>
            <div class="actions">
                <button type="button" class="button button-quiet" data-test="scorm" on:click=to_school>
                    "SCORM package"
                </button>
            </div>
        </Fold>
        {move || said.get().map(|says| view! { <p class="hint" data-test="issued-said">{says}</p> })}
    }
}

/// The questions that seat 0 draws, as far as they have a form there.
fn questions(assignment: &Assignment) -> Result<Vec<qti::Question>, String> {
    let clinic = clinic_with(assignment.card.as_deref())?;
    let mut all = Vec::new();
    for slot in assignment.slots() {
        let draw = assignment.draw(Seat(0), &slot);
        let task = format!("task-{}", slot.place + 1);
        let title = assignments::task(&slot.task);
        let decisions = match &*slot.task {
            Task::Case(order) => cases::case(&clinic, order, draw.seed).map(|case| case.decisions),
            Task::Reading => clinic.tray_reading(draw.seed).map(|it| it.decisions.into()),
            Task::Number(family) => {
                let drawn = numbers::drawn(&clinic, family, draw);
                all.extend(drawn.and_then(|it| qti::Question::of_exercise(&task, &it)));
                None
            }
            Task::Question(family) => {
                let written = at_hand().map(Questions::bank);
                let drawn = written.and_then(|all| asked::drawn(all, family, draw));
                all.extend(drawn.and_then(|it| qti::Question::of_question(&task, &title, &it)));
                None
            }
            Task::Form {
                blueprint,
                questions,
            } => {
                all.extend(of_form(blueprint, *questions, draw.seed, &task, &title));
                None
            }
            Task::Mix { .. } => None,
        };
        for decision in decisions.unwrap_or_default() {
            let id = format!("{task}-{}", decision.id);
            all.extend(qti::Question::of(&id, &decision));
        }
    }
    Ok(all)
}

/// The questions of a form.
fn of_form(
    blueprint: &str,
    questions: u16,
    seed: u64,
    task: &str,
    title: &str,
) -> Vec<qti::Question> {
    let Some(all) = at_hand() else {
        return Vec::new();
    };
    let bank = forms::bank(all.items(), blueprint).unwrap_or_default();
    let ids = forms::drawn(&bank, questions, seed).unwrap_or_default();
    let code = forms::code(seed);
    let one = |id: &String| {
        let question = forms::write(all.bank(), &code, id)?;
        qti::Question::of_question(&format!("{task}-{id}"), title, &question)
    };
    ids.iter().filter_map(one).collect()
}

/// The sheet that is printed and pinned up.
#[component]
fn Sheet(assignment: Assignment) -> impl IntoView {
    let prefix = format!("{}{}", handing::base(), packs::set_prefix());
    let letters = assignment.letters();
    let fits = qr::Symbol::of(&prefix, &letters).is_some();
    let due = assignment
        .due
        .map(|day| view! { <p class="dk-sheet-due">"Hand in by " <strong>{assignments::due(day)}</strong></p> });
    let tasks: Vec<_> = assignments::tasks(&assignment.tasks)
        .into_iter()
        .map(|says| view! { <li>{says}</li> })
        .collect();
    let typed = assignment.typed(&bank()).map(|code| {
        view! { <p>"Or type this under Today, Assignments: " <strong class="dk-code">{code}</strong></p> }
    });
    view! {
        <section class="dk-sheet" data-test="sheet" aria-label="The sheet">
            <h2>{assignment.name()}</h2>
            {due}
            <ul>{tasks}</ul>
            <p>"To pass: " {assignment.pass_mark} " per cent right."</p>
            {fits.then(|| view! { <Symbol prefix letters label="The assignment as a symbol for a camera" /> })}
            {typed}
            <ol>
                <li>"Point the camera of your phone at the symbol, or open the link that you were sent."</li>
                <li>"Type the number of your seat. No name is asked for."</li>
                <li>"Do the tasks, in any order, with or without a signal."</li>
                <li>"Hand in: send the link, show the symbol, or send the file."</li>
            </ol>
        </section>
    }
}

/// Taking an assignment away, in two steps.
#[component]
fn TakeAway(id: String) -> impl IntoView {
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

//! Numbers to be worked: what is asked, the answer as it is typed, what it is
//! worth with the common slip named, and the worked solution.

use super::home::NUMBERS;
use crate::{
    browser::{clock, focus, scroll, storage::BrowserStore},
    log::log,
    parts::{
        announce::announcer,
        assigned::BackToAssignment,
        icon::icon,
        page::Page,
        typed::Typed,
        verdict::{class, shape},
        worked::Worked,
    },
    place::Place,
    questions::{Draft, Kept},
    shell::NotHere,
    taught::standard,
};
use clinic::numbers::{
    exercises::{Answer, Exercise, Family, Grade, exercise, grade},
    unit::Unit,
    working::DOSE_FRAME,
};
use leptos::prelude::*;
use record::{Given, PerCent, QuestionAnswered, SittingEnded, SittingId, Store, Verdict, What};
use std::sync::Arc;

/// The screen of one exercise.
#[component]
pub fn ExerciseScreen(
    /// Its family.
    family: String,
    /// The seed it is drawn by.
    seed: u64,
) -> impl IntoView {
    let clinic = standard();
    let drawn = Family::with_id(&family).and_then(|family| exercise(&clinic, family, seed));
    let Some(drawn) = drawn else {
        return view! { <NotHere what="exercise" /> }.into_any();
    };
    let title = drawn.family.name();
    view! {
        <Page title over="Bench" up=Place::Bench.fragment()>
            <Work sitting=Sitting::open(drawn, seed) />
        </Page>
    }
    .into_any()
}

/// An exercise that an assignment asks for: it is answered once.
#[component]
pub fn NumberTask(
    /// What the seat has to work out.
    drawn: Exercise,
    /// The run of work that it is done in.
    sitting: SittingId,
) -> impl IntoView {
    view! { <Work sitting=Sitting::open_task(drawn, sitting) /> }
}

/// What is asked, and the answer or the verdict on it.
#[component]
fn Work(sitting: Sitting) -> impl IntoView {
    let drawn = sitting.exercise();
    let below = move || match sitting.grade.get() {
        None => view! { <Ask sitting /> }.into_any(),
        Some(grade) => view! { <Graded sitting grade /> }.into_any(),
    };
    // What is worked carries it itself.
    let framed = drawn.working.frame.is_some();
    let frame = move || {
        (framed && sitting.grade.with(Option::is_none))
            .then(|| view! { <p class="num-frame" data-test="dose-frame">{DOSE_FRAME}</p> })
    };
    view! {
        <p class="question" id="stem" data-test="stem">{drawn.stem.clone()}</p>
        {below}
        {frame}
    }
}

/// An exercise under way. Cheap to copy.
#[derive(Clone, Copy)]
struct Sitting {
    exercise: StoredValue<Arc<Exercise>>,
    seed: u64,
    /// The run of work that it is a task's; none at the bench.
    task: Option<SittingId>,
    typed: RwSignal<String>,
    grade: RwSignal<Option<Grade>>,
    since: StoredValue<i64>,
}

impl Sitting {
    /// Takes up what was answered, where the record has an answer to it.
    fn open(drawn: Exercise, seed: u64) -> Self {
        let id = question(&drawn);
        let given = answer_of(|it| it.question == id && it.wording == seed);
        Self::of(drawn, seed, None, given, String::new())
    }

    /// Takes up what was answered to a task, or what was typed so far.
    fn open_task(drawn: Exercise, sitting: SittingId) -> Self {
        let given = answer_of(|it| it.sitting == sitting);
        let kept = BrowserStore.get(&Kept::key(sitting)).ok().flatten();
        let typed = kept.and_then(|text| Kept::read(&text));
        let typed = typed.map_or_else(String::new, |kept| kept.draft.typed);
        let index = drawn.index;
        let it = Self::of(drawn, index, Some(sitting), given, typed);
        Effect::new(move |_| {
            let kept = Kept {
                draft: Draft {
                    typed: it.typed.get(),
                    ..Draft::default()
                },
                ..Kept::default()
            };
            // Where the storage is full or forbidden the page has said so already.
            let _ = BrowserStore.put(&Kept::key(sitting), &kept.write());
        });
        it
    }

    fn of(
        drawn: Exercise,
        seed: u64,
        task: Option<SittingId>,
        given: Option<String>,
        typed: String,
    ) -> Self {
        let graded = given.as_ref().and_then(|typed| grade(&drawn, typed).ok());
        Self {
            exercise: StoredValue::new(Arc::new(drawn)),
            seed,
            task,
            typed: RwSignal::new(given.unwrap_or(typed)),
            grade: RwSignal::new(graded),
            since: StoredValue::new(clock::now().utc_ms),
        }
    }

    fn exercise(self) -> Arc<Exercise> {
        self.exercise.get_value()
    }

    /// Gives what is typed. What is not understood is no answer, and can be
    /// mended: a sentence says why.
    fn give(self) -> Result<(), String> {
        let seconds = (clock::now().utc_ms - self.since.get_value()) / 1000;
        let seconds = u32::try_from(seconds).unwrap_or(0);
        let log = log();
        let sitting = self.task.unwrap_or_else(|| log.new_sitting());
        let typed = self.typed.get_untracked();
        let (graded, answered) = worked_out(&self.exercise(), self.seed, typed, sitting, seconds)?;
        log.append(What::QuestionAnswered(answered));
        if let Some(sitting) = self.task {
            log.append(What::SittingEnded(SittingEnded { sitting }));
        }
        self.grade.set(Some(graded));
        Ok(())
    }

    fn again(self) {
        self.typed.set(String::new());
        self.since.set_value(clock::now().utc_ms);
        self.grade.set(None);
        focus::first("#answer");
    }
}

/// The latest answer in the record that fits, as it was typed.
fn answer_of(fits: impl Fn(&QuestionAnswered) -> bool) -> Option<String> {
    log().look(|events| {
        let mut latest = events.iter().rev();
        latest.find_map(|event| match &event.what {
            What::QuestionAnswered(it) if fits(it) => match &it.answer {
                Given::One(typed) => Some(typed.clone()),
                _ => None,
            },
            _ => None,
        })
    })
}

/// The id of an exercise in the record.
fn question(drawn: &Exercise) -> String {
    format!("{NUMBERS}.{}.{}", drawn.family.id(), drawn.index)
}

/// What was typed in answer to an exercise, graded, and as the record keeps it.
///
/// # Errors
/// A sentence, if it is not understood. That is no answer.
pub fn worked_out(
    drawn: &Exercise,
    wording: u64,
    typed: String,
    sitting: SittingId,
    seconds: u32,
) -> Result<(Grade, QuestionAnswered), String> {
    let graded = grade(drawn, &typed).map_err(|why| why.to_string())?;
    let (verdict, marks) = judged(&graded);
    let answered = QuestionAnswered {
        sitting,
        question: question(drawn),
        wording,
        competency: drawn.competency.to_string(),
        answer: Given::One(typed),
        verdict,
        per_cent: PerCent::of(marks),
        hint: false,
        unsure: false,
        seconds,
    };
    Ok((graded, answered))
}

fn judged(grade: &Grade) -> (Verdict, u8) {
    if grade.right {
        (Verdict::Right, 100)
    } else {
        (Verdict::Wrong, 0)
    }
}

#[component]
fn Ask(sitting: Sitting) -> impl IntoView {
    let drawn = sitting.exercise();
    let why = RwSignal::new(String::new());
    let aloud = announcer();
    let typed = sitting.typed;
    let submit = move |event: leptos::ev::SubmitEvent| {
        event.prevent_default();
        if let Err(sentence) = sitting.give() {
            aloud.say(sentence.clone());
            why.set(sentence);
            focus::first("#answer");
        }
    };
    let field = match &drawn.answer {
        Answer::Choice { options, .. } => {
            let option = |label: &String| {
                let (own, taken) = (label.clone(), label.clone());
                view! {
                    <label class="option">
                        <input
                            type="radio"
                            name="answer"
                            data-test="choice"
                            prop:checked=move || typed.with(|typed| *typed == own)
                            on:change=move |_| typed.set(taken.clone())
                        />
                        <span class="option-words">{label.clone()}</span>
                    </label>
                }
            };
            view! {
                <fieldset class="options" aria-labelledby="stem" id="answer" tabindex="-1">
                    {options.iter().map(option).collect_view()}
                </fieldset>
            }
            .into_any()
        }
        answer => {
            let unit = answer.unit().map(Unit::sign);
            view! { <Typed typed unit change=move |text| typed.set(text) /> }.into_any()
        }
    };
    view! {
        <form class="num-form" novalidate on:submit=submit>
            {field}
            <p class="num-why" id="why-answer" data-test="why-answer">{why}</p>
            <button type="submit" class="button" data-test="answer">"Answer"</button>
        </form>
    }
}

#[component]
fn Graded(sitting: Sitting, grade: Grade) -> impl IntoView {
    let drawn = sitting.exercise();
    let (verdict, _) = judged(&grade);
    let word = if grade.right { "Right" } else { "Not this" };
    announcer().say(grade.sentence.clone());
    scroll::to_top();
    focus::first("#verdict");
    let own = sitting.task.is_none();
    let next = Place::Exercise(drawn.family.id().into(), sitting.seed.wrapping_add(1));
    view! {
        <div class=format!("judged {}", class(verdict))>
            <h2 id="verdict" class="judged-word" tabindex="-1" data-test="verdict">
                {icon(shape(verdict))} {word}
            </h2>
            <p class="judged-sum" data-test="graded">{grade.sentence.clone()}</p>
        </div>
        <BackToAssignment sitting=sitting.task />
        {own.then(|| view! {
            <div class="actions">
                <a class="button" href=next.fragment() data-test="next">"Next one"</a>
                <button type="button" class="button button-quiet" data-test="again" on:click=move |_| sitting.again()>
                    "Answer it again"
                </button>
                <a class="button button-quiet" href=Place::Bench.fragment()>"Bench"</a>
            </div>
        })}
        <section class="group">
            <h2 class="stage-label">"Worked"</h2>
            <Worked working=drawn.working.clone() />
        </section>
    }
}

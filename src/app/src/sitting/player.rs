//! A sitting on screen: a question, its explanation, the next.

use super::{
    ended::Ended,
    play::{Play, Scene},
    queue::Showing,
};
use crate::{
    browser::{focus, scroll},
    parts::{announce::announcer, answer::AnswerButton, page::Page},
    place::Place,
    questions::{
        Clue, Questions, SetAside, answer,
        ask::{Ask, Asked, stem},
        hint, ruled_out, told,
    },
    shell::NotHere,
    taught::catalogue,
};
use leptos::prelude::*;
use record::SittingId;
use study::question::VANISHED;

/// A sitting, at the scene where the record has it.
#[component]
pub fn Player(
    /// Which sitting.
    id: SittingId,
    /// All questions.
    questions: Questions,
) -> impl IntoView {
    let play = Play::open(id, questions);
    let scene = play.scene();
    Effect::new(move |before: Option<Scene>| {
        let now = scene.get();
        if before.is_some_and(|before| before != now) {
            scroll::to_top();
            focus::first(match now {
                Scene::Explain(_) => "#verdict",
                _ => "#main h1",
            });
        }
        now
    });
    move || match scene.get() {
        Scene::Ask(showing) => view! { <Asking play showing /> }.into_any(),
        Scene::Explain(_) => view! { <Explained play /> }.into_any(),
        Scene::Ended => view! { <Ended play /> }.into_any(),
        Scene::Unknown => view! { <NotHere what="sitting" /> }.into_any(),
    }
}

/// What frames every question of a sitting.
#[component]
fn Frame(play: Play, children: Children) -> impl IntoView {
    document().set_title("A sitting · Trayward");
    let count = move || {
        let (done, all) = play.progress();
        format!("{done} of {all} answered")
    };
    let bar = move || {
        let (done, all) = play.progress();
        (done, all.max(1))
    };
    view! {
        <article class="page case">
            <header class="case-head">
                <a class="page-up" href=Place::Today.fragment() data-test="up">"Today"</a>
                <p class="case-title" data-test="progress">{count}</p>
                <progress
                    class="q-progress"
                    aria-label="Questions answered"
                    value=move || bar().0
                    max=move || bar().1
                ></progress>
            </header>
            {children()}
        </article>
    }
}

/// A question that waits for its answer.
#[component]
fn Asking(play: Play, showing: Showing) -> impl IntoView {
    let Some(question) = play.write(&showing) else {
        return view! {
            <Frame play>
                <p class="lead">{VANISHED}</p>
                <Leave play />
            </Frame>
        }
        .into_any();
    };
    let asked = Asked::new(question.clone(), play.draft);
    let label = if showing.again {
        "Once more"
    } else {
        let mut all = catalogue().competencies.iter();
        all.find(|each| each.id == question.competency)
            .map_or("Question", |each| each.name.as_str())
    };
    let clue = StoredValue::new(hint(&question));
    let out = ruled_out(play.draft, clue);
    let (heading, given) = (question.clone(), question.clone());
    let ready = Signal::derive(move || asked.is_ready());
    view! {
        <Frame play>
            {stem(&heading, label.to_owned())}
            <Ask asked out />
            <Clue draft=play.draft clue />
            <label class="q-unsure">
                <input
                    type="checkbox"
                    data-test="unsure"
                    prop:checked=move || play.draft.with(|draft| draft.unsure)
                    on:change=move |event| {
                        let unsure = event_target_checked(&event);
                        play.draft.update(|draft| draft.unsure = unsure);
                    }
                />
                <span>"I am not sure"</span>
            </label>
            <AnswerButton ready give=move || play.give(&showing, &given) />
            <Leave play />
        </Frame>
    }
    .into_any()
}

/// The ways out: a pause that loses nothing, and the end.
#[component]
fn Leave(play: Play) -> impl IntoView {
    view! {
        <div class="actions q-leave">
            <a
                class="button button-quiet"
                href=Place::Today.fragment()
                data-test="pause"
                on:click=move |_| play.keep()
            >
                "Pause"
            </a>
            <button
                type="button"
                class="button button-quiet"
                data-test="end"
                on:click=move |_| play.end()
            >
                "End here"
            </button>
        </div>
        <p class="q-note">"A pause loses nothing: go on from Today, even after closing the page."</p>
    }
}

/// The last answer, explained.
#[component]
fn Explained(play: Play) -> impl IntoView {
    let last = play.study().and_then(|study| study.answers.last().cloned());
    let Some(last) = last else {
        return ().into_any();
    };
    let question = play.questions().write(&last.question, last.wording);
    let answer = answer(&last.answer);
    let told = match (&question, &answer) {
        (Some(question), Some(answer)) => {
            let verdict = question.grade(answer);
            announcer().say(verdict.says.clone());
            view! {
                <p class="question question-past">{question.stem.clone()}</p>
                {told::judged(&verdict)}
                {told::explained(question, Some(answer))}
            }
            .into_any()
        }
        _ => view! {
            <p class="lead" id="verdict" tabindex="-1" data-test="verdict">{VANISHED}</p>
        }
        .into_any(),
    };
    view! {
        <Frame play>
            <h1 class="unseen" tabindex="-1">"The answer explained"</h1>
            {told}
            <div class="case-go">
                <button
                    type="button"
                    class="button"
                    data-test="go-on"
                    on:click=move |_| play.go_on()
                >
                    "Go on"
                </button>
            </div>
            <SetAside question=last.question />
        </Frame>
    }
    .into_any()
}

/// A page in the frame of a sitting that is no question.
#[component]
pub fn Plain(
    /// The heading.
    title: &'static str,
    /// What follows.
    children: Children,
) -> impl IntoView {
    view! {
        <Page title over="Today" up=Place::Today.fragment()>
            {children()}
        </Page>
    }
}

//! Every kind of task, played back on another computer from what a school's
//! system kept: what is handed in there is what was handed in before.

use anyhow::{Context, Result, ensure};
use class::{
    assignment::{Assignment, Seat, Set, Slot},
    exchange::scorm::Kept,
    forms,
    handin::HandIn,
    mixes, numbers, questions,
    task::{Answer, Made, Response, Task},
};
use clinic::{
    mixing::{Action, Millis, Mix, Share, Stroke, Units, Vigour},
    numbers::exercises::Answer as Wanted,
};
use serde_json::json;
use study::question::Question;
use trayward_tests::browser::{Host, Look, Page, hook};
use trayward_tests::class::{alike, cases_of};

use super::{
    FRAME, SEAT,
    runtime::{held, launch, no_breach, system_of},
};
use crate::assignments::{Taught, with_questions};

fn response(answer: Answer, hinted: bool) -> Response {
    Response {
        answer,
        seconds: 31,
        hinted,
    }
}

/// A mix as a hand would make it: measured, brought together, worked, handed over.
fn mixed(taught: &Taught, drawn: &mixes::Drawn) -> Result<Answer> {
    let offer = &drawn.offer;
    let catalogue = taught.clinic.catalogue();
    let mut mix = Mix::new(catalogue, &offer.material, Some(&offer.usage), drawn.room)
        .map_err(anyhow::Error::msg)?;
    let stroke = Stroke {
        vigour: Vigour::FIRM,
        area: offer.area,
    };
    for action in [
        Action::DispensePowder(Units::of(1.0)),
        Action::DispenseLiquid(Units::of(1.0)),
        Action::BringIn(Share::of(1.0)),
        Action::Spatulate {
            stroke,
            lasts: Millis(7_340),
        },
        Action::HandOver {
            ready: drawn.wanted.ready,
            placing: drawn.wanted.placing,
        },
    ] {
        mix.act(action).map_err(anyhow::Error::msg)?;
    }
    Ok(Answer::Mixed(Made::of(mix.replay())))
}

/// What the system kept of a task that is done as well as can be.
fn kept(taught: &Taught, set: &Assignment, slot: &Slot) -> Result<Vec<Response>> {
    let draw = set.draw(Seat(SEAT), slot);
    let best = |question: &Question| questions::answer(question, &question.best());
    Ok(match &*slot.task {
        Task::Mix { material, usage } => {
            let drawn = mixes::drawn(&taught.clinic, material, usage.as_deref(), draw.seed);
            vec![response(mixed(taught, &drawn.context("no mix")?)?, true)]
        }
        Task::Number(family) => {
            let drawn = numbers::drawn(&taught.clinic, family, draw).context("no number")?;
            let Wanted::Number { value, .. } = &drawn.answer else {
                anyhow::bail!("it is no number")
            };
            vec![response(numbers::answer(&drawn, &value.text(3)), false)]
        }
        Task::Question(family) => {
            let drawn = questions::drawn(&taught.written, family, draw).context("no question")?;
            vec![response(best(&drawn), true)]
        }
        Task::Form {
            blueprint,
            questions,
        } => {
            let all = taught.form(blueprint, *questions, draw.seed)?;
            let all = all.iter().map(|it| response(best(it), false));
            all.collect()
        }
        Task::Case(_) | Task::Reading => Vec::new(),
    })
}

/// What is handed in of an assignment that is done as well as can be.
fn done(taught: &Taught, set: &Assignment) -> Result<HandIn> {
    let slots = set.slots();
    let done = slots.iter().map(|slot| kept(taught, set, slot));
    Ok(HandIn {
        bank: set.bank,
        assignment: set.id(),
        seat: Seat(SEAT),
        attempt: 1,
        finished: 29_000_000,
        responses: done.collect::<Result<_>>()?,
    })
}

/// Opens the package in a system that kept something of it before.
async fn gone_on_with(set: &Assignment, kept: &Kept) -> Result<(Host, Page)> {
    let cmi = json!({ "cmi": {
        "core": { "lesson_status": "incomplete", "entry": "resume" },
        "suspend_data": kept.letters(),
    }});
    let host = system_of(cmi, set).await?;
    let page = launch(&host, Look::DESK.without_storage()).await?;
    with_questions(&page, &hook("task-0")).await?;
    Ok((host, page))
}

/// What the system is told of the run that it kept: no answer a second time.
async fn told_again(page: &Page) -> Result<(String, Kept)> {
    page.until(
        "the system to be told",
        "parent.calls.some((it) => it.name === 'LMSCommit')",
    )
    .await?;
    let held = held(page).await?;
    let told = held["interactions"]
        .as_object()
        .map_or(0, serde_json::Map::len);
    ensure!(told == 0, "{told} are told again");
    let status = held["core"]["lesson_status"].as_str();
    let letters = held["suspend_data"].as_str().context("nothing is kept")?;
    Ok((status.unwrap_or_default().to_owned(), Kept::read(letters)?))
}

#[tokio::test]
#[ignore = "needs a built site and a browser"]
async fn every_kind_is_gone_on_with_elsewhere_as_it_was() -> Result<()> {
    let taught = Taught::new()?;
    let once = |task| Set { task, times: 1 };
    let set = Assignment {
        hints: true,
        alike: false,
        ..alike(
            9,
            77,
            vec![
                once(Task::Mix {
                    material: "calcium-hydroxide-liner".into(),
                    usage: None,
                }),
                once(Task::Number("cartridges".into())),
                once(Task::Question("missing".into())),
                once(Task::Form {
                    blueprint: forms::WHOLE.into(),
                    questions: 10,
                }),
                cases_of(FRAME, 1),
            ],
        )?
    };
    let before = Kept::new(done(&taught, &set)?, []);
    let (_host, page) = gone_on_with(&set, &before).await?;
    page.read(
        &hook("assignment-state"),
        &format!("Seat {SEAT}. 4 of 5 done."),
    )
    .await?;
    // The last task is begun here.
    let (status, after) = told_again(&page).await?;
    assert_eq!(status, "incomplete");
    assert_eq!(after.hand_in.responses[..4], before.hand_in.responses[..4]);
    no_breach(&page).await?;
    page.quit().await
}

#[tokio::test]
#[ignore = "needs a built site and a browser"]
async fn a_form_that_was_handed_in_with_a_question_left_open_stays_handed_in() -> Result<()> {
    let taught = Taught::new()?;
    let task = Task::Form {
        blueprint: forms::WHOLE.into(),
        questions: 10,
    };
    let set = alike(9, 78, vec![Set { task, times: 1 }])?;
    let mut open = done(&taught, &set)?;
    open.responses[0][3] = Response::default();
    let before = Kept::new(open.clone(), [0]);
    let (_host, page) = gone_on_with(&set, &before).await?;
    page.read(
        &hook("assignment-state"),
        &format!("Seat {SEAT}. 1 of 1 done."),
    )
    .await?;
    let (status, after) = told_again(&page).await?;
    assert_eq!(status, "passed");
    assert_eq!(after.hand_in.responses, open.responses);
    assert_eq!(after.closed, before.closed);
    no_breach(&page).await?;
    page.quit().await
}

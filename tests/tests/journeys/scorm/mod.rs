//! An assignment as a package for a school's system (SCORM 1.2), made by the
//! page and played inside an independent run-time: scorm-again, which `cargo
//! site` fetches in the version that it names. Where that is more lenient than
//! the standard, the limits are held here (ADL, SCORM 1.2 Run-Time Environment,
//! value from memory).

mod kinds;
mod packs;
mod runtime;

use anyhow::{Context, Result, ensure};
use class::{
    assignment::{Assignment, Seat},
    cases::CaseGrader,
    handin::HandIn,
    task::{Answer, Grader, TaskId},
};
use clinic::{
    case::{Case, Decision, Form},
    standing::Standing,
};
use serde_json::json;
use trayward_tests::browser::{Look, Page, Profile, hook};
use trayward_tests::class::bank;

use runtime::{calls, check_calls, held, launch, leave, no_breach, package, shape, system};

use crate::{
    class::drawn,
    visit::{By, answer, clinic, go_on},
};

/// The case that is set.
const FRAME: &str = "stitches-out";

/// The seat that is played.
const SEAT: u16 = 7;

async fn take_up(page: &Page) -> Result<()> {
    page.see(&hook("seat")).await?;
    page.fill(&hook("seat"), &SEAT.to_string()).await?;
    By::Tap.take(page, &hook("take-up")).await?;
    By::Tap.take(page, &hook("task-0")).await
}

/// Answers a decision as badly as can be done by choosing.
async fn fail(page: &Page, decision: &Decision) -> Result<()> {
    page.see(&hook(&format!("decision-{}", decision.id)))
        .await?;
    let best = decision.best_answer();
    let poor = decision.choices.iter().find(|it| !best.contains(&it.id));
    let poor = poor.map_or_else(|| best[0].clone(), |it| it.id.clone());
    match &decision.form {
        Form::One | Form::All => By::Tap.choose(page, &poor).await?,
        Form::Tray { .. } => By::Tap.take(page, &hook(&format!("lay-{poor}"))).await?,
        Form::Number(_) => page.fill(&hook("typed"), "999").await?,
        Form::Order(_) => {}
    }
    By::Tap.take(page, &hook("answer")).await?;
    page.see(&hook("verdict")).await
}

/// What the run-time has to hold after so many answers, worked out from what
/// it keeps for another sitting.
async fn check_after(page: &Page, set: &Assignment, case: &Case, answers: usize) -> Result<HandIn> {
    page.until(
        "the answer to be told",
        &format!("Object.keys(JSON.parse(JSON.stringify(parent.API.cmi)).interactions).length === {answers}"),
    )
    .await?;
    let held = held(page).await?;
    let suspended = held["suspend_data"].as_str().context("nothing is kept")?;
    ensure!(suspended.len() <= 4096, "{} letters", suspended.len());
    let hand_in = HandIn::read(suspended)?;
    ensure!(hand_in.seat == Seat(SEAT) && hand_in.assignment == set.id());
    let (right, graded) = graded(set, case, &hand_in)?;
    let asked = case.decisions.len();
    // Floor, so that nothing below the mark reads as the mark.
    let hundredths = right * 10_000 / asked;
    let raw = format!("{}.{:02}", hundredths / 100, hundredths % 100);
    assert_eq!(held["core"]["score"]["raw"], raw);
    assert_eq!(held["core"]["score"]["min"], "0");
    assert_eq!(held["core"]["score"]["max"], "100");
    assert_eq!(graded.iter().filter(|it| it.is_some()).count(), answers);
    for (number, decision) in case.decisions[..answers].iter().enumerate() {
        let told = &held["interactions"][number.to_string()];
        let id = told["id"].as_str().unwrap_or_default();
        assert_eq!(id, format!("task-1.{}", decision.id));
        let fits = |c: char| c.is_ascii_alphanumeric() || "-_.".contains(c);
        assert!(id.chars().all(fits) && id.len() <= 255, "{id}");
        let kind = match decision.form {
            Form::Order(_) => "sequencing",
            Form::Number(_) => "fill-in",
            _ => "choice",
        };
        assert_eq!(told["type"], kind, "{id}");
        let result = if graded[number] == Some(true) {
            "correct"
        } else {
            "wrong"
        };
        assert_eq!(told["result"], result, "{id}");
        let response = told["student_response"].as_str().unwrap_or_default();
        let letter = |it: &str| it.len() == 1 && it.chars().all(|c| c.is_ascii_alphanumeric());
        assert!(
            response.split(',').all(letter) || response.is_empty(),
            "{id}: {response}"
        );
        assert_eq!(shape(told["time"].as_str().unwrap_or_default()), "00:00:00");
    }
    let calls = calls(page).await?;
    check_calls(&calls)?;
    // Nothing is left unsaved after an answer.
    assert_eq!(calls.last().map(|it| it.name.as_str()), Some("LMSCommit"));
    Ok(hand_in)
}

/// How many are right, and for each decision whether it is; none where it is open.
fn graded(set: &Assignment, case: &Case, hand_in: &HandIn) -> Result<(usize, Vec<Option<bool>>)> {
    let grader = CaseGrader::new(clinic()?.with_card(None));
    let slots = set.slots();
    let slot = slots.first().context("nothing is set")?;
    let mut all = Vec::new();
    for (part, response) in (0..).zip(&hand_in.responses[0]) {
        let task = TaskId {
            task: slot.task.clone(),
            part,
        };
        let graded = grader
            .grade(&task, set.draw(hand_in.seat, slot), response)
            .context("it cannot be graded")?;
        let fits = matches!(graded.standing, Standing::Right | Standing::Acceptable);
        all.push((response.answer != Answer::Blank).then_some(fits));
    }
    ensure!(all.len() == case.decisions.len());
    Ok((all.iter().filter(|it| **it == Some(true)).count(), all))
}

async fn assignment() -> Result<(Assignment, Case)> {
    let set = Assignment::read(&package().await?.link, bank()?)?;
    let case = drawn(&clinic()?, &set, SEAT)?;
    Ok((set, case))
}

#[tokio::test]
#[ignore = "needs a built site and a browser"]
async fn a_package_is_played_to_passed() -> Result<()> {
    let (set, case) = assignment().await?;
    let host = system(json!({})).await?;
    let page = launch(&host, Look::DESK).await?;
    take_up(&page).await?;
    for (at, decision) in case.decisions.iter().enumerate() {
        answer(&page, decision, By::Tap).await?;
        check_after(&page, &set, &case, at + 1).await?;
        if at + 1 < case.decisions.len() {
            assert_eq!(held(&page).await?["core"]["lesson_status"], "incomplete");
            assert_eq!(held(&page).await?["core"]["exit"], "suspend");
        }
        go_on(&page, By::Tap).await?;
    }
    page.see(&hook("debrief")).await?;
    page.until(
        "the end of the case to be told",
        "parent.API.cmi.core.lesson_status === 'passed'",
    )
    .await?;
    check_after(&page, &set, &case, case.decisions.len()).await?;
    assert_eq!(held(&page).await?["core"]["exit"], "");
    // The host has no worker for the package, and none is needed.
    let workers = "return (await navigator.serviceWorker.getRegistrations()).length;";
    assert_eq!(page.run(workers).await?, 0);
    leave(&page).await?;
    assert_eq!(held(&page).await?["core"]["lesson_status"], "passed");
    no_breach(&page).await?;
    page.quit().await
}

#[tokio::test]
#[ignore = "needs a built site and a browser"]
async fn a_package_that_is_broken_off_is_gone_on_with_elsewhere_to_failed() -> Result<()> {
    let (set, case) = assignment().await?;
    let half = case.decisions.len() / 2;
    ensure!(half > 0, "the case is too short to be broken off");
    let host = system(json!({})).await?;
    let page = launch(&host, Look::DESK.without_storage()).await?;
    take_up(&page).await?;
    for (at, decision) in case.decisions[..half].iter().enumerate() {
        fail(&page, decision).await?;
        check_after(&page, &set, &case, at + 1).await?;
        go_on(&page, By::Tap).await?;
    }
    leave(&page).await?;
    let kept = held(&page).await?;
    assert_eq!(kept["core"]["lesson_status"], "incomplete");
    no_breach(&page).await?;
    page.quit().await?;

    // Another computer, which the system tells what it kept.
    let host = system(json!({ "cmi": {
        "core": { "lesson_status": "incomplete", "entry": "resume" },
        "suspend_data": kept["suspend_data"],
    }}))
    .await?;
    let page = launch(&host, Look::DESK.without_storage()).await?;
    page.read(&hook("assignment-state"), &format!("Seat {SEAT}"))
        .await?;
    By::Tap.take(&page, &hook("task-0")).await?;
    let before = HandIn::read(kept["suspend_data"].as_str().context("nothing is kept")?)?;
    for decision in &case.decisions[half..] {
        fail(&page, decision).await?;
        go_on(&page, By::Tap).await?;
    }
    page.see(&hook("debrief")).await?;
    page.until(
        "the end of the case to be told",
        "parent.API.cmi.core.lesson_status === 'failed'",
    )
    .await?;
    let held = held(&page).await?;
    let after = HandIn::read(held["suspend_data"].as_str().context("nothing is kept")?)?;
    assert_eq!(after.responses[0][..half], before.responses[0][..half]);
    let (right, graded) = graded(&set, &case, &after)?;
    ensure!(right < set.cut(case.decisions.len()) && graded.iter().all(Option::is_some));
    // Only what is new is told a second time.
    let told = held["interactions"].as_object().context("none is told")?;
    assert_eq!(told.len(), case.decisions.len() - half);
    assert_eq!(
        told["0"]["id"],
        format!("task-1.{}", case.decisions[half].id)
    );
    leave(&page).await?;
    no_breach(&page).await?;
    page.quit().await
}

#[tokio::test]
#[ignore = "needs a built site and a browser"]
async fn a_package_without_a_system_is_the_plain_page() -> Result<()> {
    let (_, case) = assignment().await?;
    let host = system(json!({})).await?;
    let page = Page::open(&Profile::new()?, Look::PHONE).await?;
    page.go(&host.url("package/launch.html")).await?;
    page.ready().await?;
    take_up(&page).await?;
    answer(&page, &case.decisions[0], By::Tap).await?;
    no_breach(&page).await?;
    page.quit().await
}

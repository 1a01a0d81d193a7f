//! A class: an assignment is set on one device, taken up and handed in on
//! another, and thirty hand-ins are read and reported.

use anyhow::{Context, Result, ensure};
use class::{
    assignment::{Assignment, Seat},
    cases::{self, CaseGrader},
    handin::{HandIn, Inbox, Outcome},
    report::{Report, Tries},
    task::Task,
};
use clinic::{Clinic, case::Case};
use serde_json::json;
use trayward_tests::browser::{Look, Page, Site, hook};
use trayward_tests::class::{asked, bank, hand_in as made};

use crate::visit::{By, clinic, play_from};

/// How many seats hand in.
const SEATS: u16 = 30;

/// The seat that is played in the page.
const PLAYED: u16 = 7;

/// Takes an option of a list.
pub async fn choose(page: &Page, list: &str, value: &str) -> Result<()> {
    page.see(&hook(list)).await?;
    let (list, value) = (json!(hook(list)), json!(value));
    page.run(&format!(
        "const list = document.querySelector({list}); list.value = {value};
         list.dispatchEvent(new Event('change', {{ bubbles: true }}));"
    ))
    .await?;
    Ok(())
}

/// The link that is shown.
pub async fn link(page: &Page) -> Result<String> {
    page.see(&hook("link")).await?;
    page.value(&format!(
        "document.querySelector({}).value",
        json!(hook("link"))
    ))
    .await
}

/// Sets one case for all seats alike, and gives its link.
pub async fn set(page: &Page, frame: &str) -> Result<String> {
    choose(page, "assign-frame", frame).await?;
    By::Tap.take(page, &hook("put-in")).await?;
    page.see(&hook("take-out-0")).await?;
    By::Tap
        .take(page, &format!("label:has({})", hook("assign-drawn-alike")))
        .await?;
    By::Tap.take(page, &hook("set-it")).await?;
    page.see(&hook("way-collect")).await?;
    link(page).await
}

/// What a seat draws of the first task.
pub fn drawn(clinic: &Clinic, set: &Assignment, seat: u16) -> Result<Case> {
    let slots = set.slots();
    let slot = slots.first().context("nothing is set")?;
    let Task::Case(order) = &*slot.task else {
        anyhow::bail!("it is no case")
    };
    cases::case(clinic, order, set.seed(Seat(seat), 0)).context("no such case")
}

/// What a seat hands in whose answers are best in some decisions and poor in
/// others, by a rule of its own: better seats fail fewer.
fn hand_in(clinic: &Clinic, set: &Assignment, seat: u16) -> Result<HandIn> {
    let asked = asked(clinic, set, Seat(seat))?;
    let known = usize::from(seat);
    let slips = |_, at: usize| (at * 7 + known * 3) % 30 >= known + 4;
    Ok(made(set, &asked, Seat(seat), slips))
}

/// Two letters of a code swapped, at a place that makes a difference.
fn damaged(link: &str) -> String {
    let mut letters: Vec<char> = link.chars().collect();
    let last = letters.len() - 1;
    let at = (0..last).rev().find(|&at| letters[at] != letters[at + 1]);
    letters.swap(at.unwrap_or(0), at.unwrap_or(0) + 1);
    letters.into_iter().collect()
}

/// Takes an assignment up at a seat, plays its case, and gives the link of the hand-in.
pub async fn play(page: &Page, case: &Case, seat: u16) -> Result<String> {
    page.see(&hook("seat")).await?;
    page.fill(&hook("seat"), &seat.to_string()).await?;
    By::Tap.take(page, &hook("take-up")).await?;
    By::Tap.take(page, &hook("task-0")).await?;
    play_from(page, case, 0, By::Tap).await?;
    By::Tap.take(page, &hook("back-to-assignment")).await?;
    page.read(&hook("assignment-state"), "1 of 1 done").await?;
    By::Tap.take(page, &hook("hand-in")).await?;
    page.see(&hook("handed-in")).await?;
    page.see(&hook("symbol")).await?;
    link(page).await
}

#[tokio::test]
#[ignore = "needs a built site and a browser"]
async fn a_class_of_thirty_is_set_taken_collected_and_reported() -> Result<()> {
    let site = Site::serve().await?;
    let desk = Page::at(&site, "#/class/assign", Look::DESK).await?;
    let link = set(&desk, "stitches-out").await?;
    let clinic = clinic()?;
    let set = Assignment::read(&link, bank()?)?;
    desk.assert_accessible("what goes out of an assignment")
        .await?;

    // One student, on a phone of their own.
    let phone = Page::at(&site, "", Look::PHONE).await?;
    phone.go(&link).await?;
    phone.ready().await?;
    let case = drawn(&clinic, &set, PLAYED)?;
    let played = play(&phone, &case, PLAYED).await?;
    phone
        .assert_accessible("an assignment that is handed in")
        .await?;
    ensure!(!phone.is_too_wide().await?, "the assignment is too wide");
    phone.shot("handed-in").await?;
    phone.quit().await?;
    let from_page = HandIn::read(&played)?;
    assert_eq!(from_page.seat, Seat(PLAYED));

    // The others, as their devices would hand in.
    let mut lines = vec![played.clone()];
    for seat in (1..=SEATS).filter(|seat| *seat != PLAYED) {
        lines.push(hand_in(&clinic, &set, seat)?.letters());
    }
    let foreign = HandIn {
        assignment: set.id() ^ 1,
        ..hand_in(&clinic, &set, 3)?
    };
    let mut all = lines.clone();
    all.extend([lines[4].clone(), lines[9].clone()]);
    all.extend(lines[..5].iter().map(|line| damaged(line)));
    all.push(foreign.letters());

    desk.go(&site.url(&format!("#/class/collect/{:08x}", set.id())))
        .await?;
    desk.see(&hook("hand-in-lines")).await?;
    desk.paste(&hook("hand-in-lines"), &all.join("\n")).await?;
    By::Tap.take(&desk, &hook("read-lines")).await?;
    desk.read(
        &hook("tally"),
        "Read 38: 30 accepted, 5 damaged, 2 duplicate, 1 foreign.",
    )
    .await?;
    desk.read(&hook("kept"), "30 hand-ins are kept, one a seat.")
        .await?;
    desk.read(&hook("self-reported"), "self-reported").await?;
    desk.assert_accessible("hand-ins that were read").await?;
    desk.shot("collected").await?;

    // After a reload the report comes from what was kept.
    desk.go(&site.url(&format!("#/class/report/{:08x}", set.id())))
        .await?;
    desk.reload().await?;
    desk.ready().await?;
    desk.see(&hook("report")).await?;
    desk.assert_accessible("a class report").await?;
    desk.shot("report").await?;
    let report = natively(&clinic, &set, &all);
    for seat in &report.seats {
        let cells = desk
            .texts(&format!("{} td", hook(&format!("seat-{}", seat.seat.0))))
            .await?;
        assert_eq!(
            cells[1],
            format!("{} of {}", seat.all.right, seat.all.asked),
            "seat {}",
            seat.seat.0
        );
        assert_eq!(
            cells[4],
            seat.all.harmful.to_string(),
            "seat {}",
            seat.seat.0
        );
    }
    assert_eq!(desk.count(&hook("item")).await?, report.items.len());
    let trust = desk.text(&hook("trust")).await?;
    match &report.reliability {
        Ok(it) => assert!(trust.contains(&format!("{:.2}", it.alpha)), "{trust}"),
        Err(words) => assert!(trust.contains(&words.to_string()), "{trust}"),
    }
    assert!(desk.complaints().await?.is_empty());
    desk.quit().await
}

/// The report of lines, worked out beside the page. How many are right is
/// counted a second time, decision by decision.
fn natively(clinic: &Clinic, set: &Assignment, lines: &[String]) -> Report {
    let grader = CaseGrader::new(clinic.with_card(None));
    let mut inbox = Inbox::new(set, &grader);
    let accepted = lines
        .iter()
        .filter(|line| matches!(inbox.read(line), Outcome::Accepted(_)))
        .count();
    assert_eq!(accepted, usize::from(SEATS));
    Report::of(set, inbox.table(), Tries::First, &[])
}

#[tokio::test]
#[ignore = "needs a built site and a browser"]
async fn an_assignment_stands_on_today_and_is_done_without_a_connection() -> Result<()> {
    let mut site = Site::serve().await?;
    let desk = Page::at(&site, "#/class/assign", Look::TABLET).await?;
    let link = set(&desk, "stitches-out").await?;
    desk.quit().await?;
    let set = Assignment::read(&link, bank()?)?;
    let phone = Page::at(&site, "", Look::PHONE).await?;
    phone.kept_offline().await?;
    site.end();
    phone.go(&link).await?;
    phone.ready().await?;
    phone.see(&hook("seat")).await?;
    phone.fill(&hook("seat"), "12").await?;
    By::Tap.take(&phone, &hook("take-up")).await?;
    phone.see(&hook("task-0")).await?;
    phone.go(&site.url("#/today")).await?;
    phone.reload().await?;
    phone.ready().await?;
    phone.read(&hook("assigned"), "0 of 1 done").await?;
    By::Tap.take(&phone, &hook("assigned")).await?;
    By::Tap.take(&phone, &hook("task-0")).await?;
    let case = drawn(&clinic()?, &set, 12)?;
    play_from(&phone, &case, 0, By::Tap).await?;
    phone.quit().await
}

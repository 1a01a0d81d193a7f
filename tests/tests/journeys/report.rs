//! A report of classes of which numbers would say nothing: the page shows the
//! words that the reasoning has for it.

use anyhow::{Result, ensure};
use class::{
    assignment::{Assignment, Seat},
    cases::CaseGrader,
    handin::{HandIn, Inbox},
    report::{Missing, Report, Tries},
    task::Answer,
};
use clinic::case::Decision;
use trayward_tests::browser::{Look, Page, Profile, Site, hook};
use trayward_tests::class::{alike, asked, cases_of, clinic, hand_in, keep};

use crate::visit::By;

/// A class: what is the matter with it, its seats, and which decisions a seat fails.
type Class = (Missing, u16, fn(u16, usize) -> bool);

const CLASSES: [Class; 6] = [
    (Missing::NoSeats, 0, |_, _| false),
    (Missing::TooFewSeats(1), 1, |_, at| at == 0),
    (Missing::TooFewSeats(2), 2, |seat, at| {
        at % 2 == usize::from(seat % 2)
    }),
    (Missing::AllRight, 5, |_, _| false),
    // Nothing is answered: half an answer can be half right.
    (Missing::AllWrong, 5, |_, _| true),
    // Who knows the one half does not know the other, and one knows less:
    // alpha is below 0.
    (Missing::NotTogether, 8, |seat, at| {
        at % 2 == usize::from(seat % 2) || (seat == 8 && at == 0)
    }),
];

/// An assignment of its own for each class, the same for every seat.
fn set(seed: u32) -> Result<Assignment> {
    alike(2, seed, vec![cases_of("stitches-out", 1)])
}

/// The same with everything left open.
fn open(mut hand_in: HandIn) -> HandIn {
    for response in hand_in.responses.iter_mut().flatten() {
        response.answer = Answer::Blank;
    }
    hand_in
}

#[tokio::test]
#[ignore = "needs a built site and a browser"]
async fn where_a_number_would_say_nothing_words_stand() -> Result<()> {
    let (site, clinic) = (Site::serve().await?, clinic()?);
    let page = Page::open(&Profile::new()?, Look::DESK).await?;
    page.go(&site.url("#/class")).await?;
    page.ready().await?;
    for (seed, (missing, seats, slips)) in (1..).zip(CLASSES) {
        let set = set(seed)?;
        keep(&page, &set).await?;
        let asked: Vec<Vec<Decision>> = asked(&clinic, &set, Seat(1))?;
        let lines: Vec<String> = (1..=seats)
            .map(|seat| hand_in(&set, &asked, Seat(seat), |_, at| slips(seat, at)))
            .map(|it| {
                if missing == Missing::AllWrong {
                    open(it)
                } else {
                    it
                }
            })
            .map(|it| HandIn::letters(&it))
            .collect();
        let grader = CaseGrader::new(clinic.with_card(None));
        let mut inbox = Inbox::new(&set, &grader);
        for line in &lines {
            inbox.read(line);
        }
        let report = Report::of(&set, inbox.table(), Tries::First, &[]);
        assert_eq!(report.reliability, Err(missing), "class {seed}");
        if seats > 0 {
            page.go(&site.url(&format!("#/class/collect/{:08x}", set.id())))
                .await?;
            page.see(&hook("hand-in-lines")).await?;
            page.paste(&hook("hand-in-lines"), &lines.join("\n"))
                .await?;
            By::Tap.take(&page, &hook("read-lines")).await?;
            page.read(&hook("tally"), &format!("{seats} accepted"))
                .await?;
        }
        page.go(&site.url(&format!("#/class/report/{:08x}", set.id())))
            .await?;
        page.see(&hook("report")).await?;
        page.read(&hook("trust"), &missing.to_string()).await?;
        let shown = page.text(&hook("report")).await?;
        for nonsense in ["NaN", "∞", "null", "None"] {
            ensure!(!shown.contains(nonsense), "{missing:?}: {shown}");
        }
        page.assert_accessible(&format!("the report of {seats} seats"))
            .await?;
        page.shot(&format!("report-{missing:?}").replace(['(', ')'], "-"))
            .await?;
    }
    page.quit().await
}

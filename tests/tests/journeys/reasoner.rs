//! What the reasoner shows: patients of several kinds to the end, a preference
//! card that set-up, case and grade follow, a tray to be read, the time line.

use anyhow::{Context, Result, ensure};
use trayward_tests::browser::{Look, Page, Site, hook};

use crate::visit::{By, address, case, clinic, drawn, play_from, start};

#[tokio::test]
#[ignore = "needs a built site and a browser"]
async fn patients_of_three_kinds_are_played_to_the_end() -> Result<()> {
    let site = Site::serve().await?;
    let page = Page::at(&site, "", Look::PHONE).await?;
    for (frame, seed) in [("small-molar", 11), ("aching-socket", 5), ("crown-day", 8)] {
        let case = case(frame, seed)?;
        page.go(&site.url(&address(&case))).await?;
        start(&page, By::Tap).await?;
        play_from(&page, &case, 0, By::Tap).await?;
    }
    ensure!(page.complaints().await?.is_empty());
    page.quit().await
}

const SET_UP: &str = "#/procedures/deep-caries-temporary/set-up";

#[tokio::test]
#[ignore = "needs a built site and a browser"]
async fn a_preference_card_is_used_and_changed_and_everything_follows() -> Result<()> {
    let site = Site::serve().await?;
    let (spoon, probe) = (
        hook("item-spoon-excavator-large"),
        hook("item-periodontal-probe"),
    );
    let page = Page::at(&site, SET_UP, Look::PHONE).await?;
    page.see(&spoon).await?;
    page.go(&site.url("#/cards/spatula-hand-over")).await?;
    page.see(&hook("difference")).await?;
    page.tap(&hook("use-card")).await?;
    page.go(&site.url(SET_UP)).await?;
    page.see(&hook("with-card")).await?;
    page.see(&probe).await?;
    page.see_no(&spoon).await?;

    // A case is graded with the card that applies when it begins.
    let standard = clinic()?;
    let card = standard
        .catalogue()
        .cards
        .iter()
        .find(|card| card.id.as_str() == "spatula-hand-over")
        .context("no such card")?
        .clone();
    let case = drawn(
        &standard.with_card(Some(card)),
        "signs-that-do-not-settle",
        2,
    )?;
    page.go(&site.url(&address(&case))).await?;
    start(&page, By::Tap).await?;
    page.see(&hook("card-note")).await?;
    play_from(&page, &case, 0, By::Tap).await?;

    // A copy can be changed: without the wish, the large spoon is back.
    page.go(&site.url("#/cards/spatula-hand-over")).await?;
    page.tap(&hook("copy-card")).await?;
    page.tap(&hook("take-off-1")).await?;
    page.see_no(&hook("wish-2")).await?;
    page.tap(&hook("use-card")).await?;
    page.go(&site.url(SET_UP)).await?;
    page.see(&hook("with-card")).await?;
    page.see(&spoon).await?;
    page.see(&probe).await?;
    page.quit().await
}

#[tokio::test]
#[ignore = "needs a built site and a browser"]
async fn a_tray_is_read() -> Result<()> {
    let site = Site::serve().await?;
    let exercise = clinic()?.tray_reading(4).context("no tray to read")?;
    let page = Page::at(&site, "#/reading/4", Look::PHONE).await?;
    for decision in &exercise.decisions {
        page.see(&hook(&format!("ask-{}", decision.id))).await?;
        for id in decision.best_answer() {
            let choice = hook(&format!("choice-{id}"));
            page.tap(&format!("label:has({choice})")).await?;
        }
        page.tap(&hook("answer")).await?;
    }
    page.see(&hook("reading-sum")).await?;
    for decision in &exercise.decisions {
        page.read(&hook(&format!("seen-{}", decision.id)), "Right")
            .await?;
    }
    page.tap(&hook("another")).await?;
    page.see("[data-test^=ask-]").await?;
    page.quit().await
}

#[tokio::test]
#[ignore = "needs a built site and a browser"]
async fn the_time_line_shows_when_to_start_a_mix() -> Result<()> {
    let site = Site::serve().await?;
    let page = Page::at(
        &site,
        "#/procedures/deep-caries-temporary/time",
        Look::PHONE,
    )
    .await?;
    page.see(&hook("overview")).await?;
    page.read(&hook("mix-says"), "start").await?;
    ensure!(page.count(&hook("time-table")).await? == 1);
    ensure!(!page.is_too_wide().await?);
    page.quit().await
}

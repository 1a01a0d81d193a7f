//! Numbers at the bench: doses worked, exercises answered.

use anyhow::{Context, Result, ensure};
use clinic::numbers::exercises::{Answer, Family, exercise};
use trayward_tests::browser::{Look, Page, Site, hook};

use crate::visit::{By, clinic};

#[tokio::test]
#[ignore = "needs a built site and a browser"]
async fn a_dose_is_worked_and_bad_entries_say_why() -> Result<()> {
    let site = Site::serve().await?;
    let page = Page::at(&site, "#/bench/numbers/cartridges", Look::PHONE).await?;
    page.see(&hook("dose-frame")).await?;
    page.fill(&hook("box-weight"), "70").await?;
    page.fill(&hook("box-volume"), "-1.7 mL").await?;
    By::Tap.take(&page, &hook("work-it-out")).await?;
    page.see(&hook("why-weight")).await?;
    let why = page.text(&hook("why-weight")).await?;
    ensure!(why.contains("unit"), "{why}");
    let why = page.text(&hook("why-volume")).await?;
    ensure!(why.contains("below zero"), "{why}");
    ensure!(
        page.count(&hook("worked")).await? == 0,
        "a guess was worked out"
    );
    page.fill(&hook("box-weight"), "70 kg").await?;
    page.fill(&hook("box-volume"), "1,7 mL").await?;
    By::Tap.take(&page, &hook("work-it-out")).await?;
    page.see(&hook("result")).await?;
    let result = page.text(&hook("result")).await?;
    ensure!(result.contains("cartridge"), "{result}");
    page.reload().await?;
    page.ready().await?;
    page.read(&hook("result"), &result).await?;
    ensure!(!page.is_too_wide().await?);
    page.quit().await
}

#[tokio::test]
#[ignore = "needs a built site and a browser"]
async fn an_exercise_is_answered_and_kept() -> Result<()> {
    let site = Site::serve().await?;
    let clinic = clinic()?;
    let drawn = exercise(&clinic, Family::Milligrams, 1).context("no exercise")?;
    let Answer::Number { value, unit, .. } = &drawn.answer else {
        anyhow::bail!("milligrams are a number");
    };
    let page = Page::at(&site, "#/bench/exercise/milligrams/1", Look::PHONE).await?;
    page.read(&hook("stem"), &drawn.stem).await?;
    page.fill(&hook("typed"), "many").await?;
    By::Tap.take(&page, &hook("answer")).await?;
    page.see(&hook("why-answer")).await?;
    ensure!(page.count(&hook("verdict")).await? == 0, "it was judged");
    page.fill(
        &hook("typed"),
        &format!("{} {}", value.text(4), unit.sign()),
    )
    .await?;
    By::Tap.take(&page, &hook("answer")).await?;
    page.read(&hook("verdict"), "Right").await?;
    page.see(&hook("working")).await?;
    page.reload().await?;
    page.ready().await?;
    page.read(&hook("verdict"), "Right").await?;
    By::Tap.take(&page, &hook("next")).await?;
    page.see(&hook("typed")).await?;
    page.quit().await
}

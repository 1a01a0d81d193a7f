//! Number steps of a case: typed, refused in words, kept over a reload, worked
//! out at the bench and brought back.

use anyhow::{Context, Result};
use clinic::case::{Case, Form};
use trayward_tests::browser::{Look, Page, Site, hook};

use crate::visit::{By, address, answer, case, go_on, play_from, start, typed};

/// The place of the dose among the decisions of a case.
fn dose(case: &Case) -> Result<usize> {
    let mut all = case.decisions.iter();
    all.position(|it| it.id == "cartridges")
        .context("no dose is asked for")
}

/// Plays a case up to its dose.
async fn at_the_dose(page: &Page, case: &Case, by: By) -> Result<usize> {
    let at = dose(case)?;
    start(page, by).await?;
    for decision in &case.decisions[..at] {
        answer(page, decision, by).await?;
        go_on(page, by).await?;
    }
    page.see(&hook("decision-cartridges")).await?;
    Ok(at)
}

#[tokio::test]
#[ignore = "needs a built site and a browser"]
async fn a_dose_is_refused_kept_worked_out_at_the_bench_and_answered() -> Result<()> {
    let site = Site::serve().await?;
    let case = case("crown-day", 3)?;
    let page = Page::at(&site, &address(&case), Look::PHONE).await?;
    let at = at_the_dose(&page, &case, By::Tap).await?;
    let Form::Number(sum) = &case.decisions[at].form else {
        anyhow::bail!("the dose is no number")
    };
    page.see(&hook("dose-frame")).await?;
    page.fill(&hook("typed"), "many").await?;
    page.tap(&hook("answer")).await?;
    page.until(
        "it says what is wrong",
        &format!(
            "document.querySelector('{}').textContent !== ''",
            hook("why-answer")
        ),
    )
    .await?;
    page.fill(&hook("typed"), &typed(sum)).await?;
    page.reload().await?;
    page.ready().await?;
    page.see(&hook("typed")).await?;
    let kept: String = page
        .value(&format!(
            "document.querySelector('{}').value",
            hook("typed")
        ))
        .await?;
    assert_eq!(kept, typed(sum), "what was typed is kept");
    page.assert_accessible("a number step").await?;
    assert!(!page.is_too_wide().await?);
    page.shot("number-step").await?;
    By::Tap.take(&page, &hook("open-tool")).await?;
    page.see(&hook("worked")).await?;
    page.read(&hook("result"), &sum.problem.working.result)
        .await?;
    By::Tap.take(&page, &hook("to-case")).await?;
    page.see(&hook("decision-cartridges")).await?;
    page.tap(&hook("answer")).await?;
    page.read(&hook("verdict"), "Right").await?;
    page.see(&hook("working")).await?;
    assert!(page.complaints().await?.is_empty());
    page.quit().await
}

#[tokio::test]
#[ignore = "needs a built site and a browser"]
async fn too_much_is_unsafe_and_the_debrief_begins_with_it() -> Result<()> {
    let site = Site::serve().await?;
    let case = case("front-tooth-chip", 2)?;
    let page = Page::at(&site, &address(&case), Look::PHONE).await?;
    let at = at_the_dose(&page, &case, By::Keys).await?;
    let Form::Number(sum) = &case.decisions[at].form else {
        anyhow::bail!("the dose is no number")
    };
    let more = sum.problem.right() / 1000 + 1;
    page.fill(&hook("typed"), &more.to_string()).await?;
    By::Keys.take(&page, &hook("answer")).await?;
    page.read(&hook("verdict"), "Unsafe").await?;
    go_on(&page, By::Keys).await?;
    play_from(&page, &case, at + 1, By::Keys).await?;
    page.see("#decided-cartridges details[open]").await?;
    page.quit().await
}

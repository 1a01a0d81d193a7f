//! Codes that are typed or pasted: read as they were read out, or refused in words.

use anyhow::{Context, Result};
use class::{
    assignment::{Assignment, Set},
    bank::{Bank, Version},
    task::Task,
};
use trayward_tests::browser::{Look, Page, Site, hook};
use trayward_tests::class::{alike, bank, cases_of};

use crate::visit::{By, clinic};

#[tokio::test]
#[ignore = "needs a built site and a browser"]
async fn a_code_that_is_none_is_refused_in_words() -> Result<()> {
    let site = Site::serve().await?;
    let page = Page::at(&site, "#/assignments", Look::PHONE).await?;
    page.see(&hook("typed-code")).await?;
    page.fill(&hook("typed-code"), "22Y9C-0A5NO").await?;
    By::Tap.take(&page, &hook("open-code")).await?;
    page.read(&hook("code-refused"), "code").await?;
    page.go(&site.url("#/a/NOSUCHCODE")).await?;
    page.see(&hook("refused")).await?;
    page.quit().await
}

#[tokio::test]
#[ignore = "needs a built site and a browser"]
async fn a_code_of_several_tasks_is_typed_as_it_was_read_out() -> Result<()> {
    let site = Site::serve().await?;
    let taught = clinic()?;
    let bank = Bank::new(bank()?, taught.catalogue());
    let twice = |task| Set { task, times: 2 };
    let sets = || {
        let number = Task::Number("cartridges".into());
        vec![
            cases_of("stitches-out", 1),
            twice(number),
            twice(Task::Reading),
        ]
    };
    // This check symbol also stands in addresses.
    let code = (0..1000).find_map(|seed| {
        let code = alike(3, seed, sets()).ok()?.typed(&bank)?;
        code.ends_with('=').then_some(code)
    });
    let code = code.context("no such code")?;
    let page = Page::at(&site, "#/assignments", Look::PHONE).await?;
    page.see(&hook("typed-code")).await?;
    let said = code.to_lowercase().replace('-', " ");
    page.fill(&hook("typed-code"), &said).await?;
    By::Tap.take(&page, &hook("open-code")).await?;
    page.see(&hook("asks")).await?;
    assert_eq!(page.count(&format!("{} li", hook("asks"))).await?, 3);
    page.quit().await
}

#[tokio::test]
#[ignore = "needs a built site and a browser"]
async fn a_pasted_link_keeps_which_packs_it_needs() -> Result<()> {
    let site = Site::serve().await?;
    let other = Assignment {
        bank: Version(1),
        ..alike(3, 5, vec![cases_of("stitches-out", 1)])?
    };
    let link = site.url(&format!("#/a/our-practice.3/{}", other.letters()));
    let page = Page::at(&site, "#/assignments", Look::PHONE).await?;
    page.see(&hook("typed-code")).await?;
    page.fill(&hook("typed-code"), &link).await?;
    By::Tap.take(&page, &hook("open-code")).await?;
    page.see(&hook("refused")).await?;
    page.read("main", "our-practice").await?;
    page.quit().await
}

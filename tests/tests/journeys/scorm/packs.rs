//! A package that was made with a pack in use: it brings the pack along.

use anyhow::{Result, ensure};
use serde_json::json;
use trayward_tests::browser::{Look, Page, Site, hook};

use super::{
    runtime::{calls, check_calls, launch, made_by, no_breach, serve},
    take_up,
};
use crate::{
    packs::{PACK, small},
    visit::By,
};

#[tokio::test]
#[ignore = "needs a built site and a browser"]
async fn a_package_brings_the_pack_that_it_was_set_with() -> Result<()> {
    let site = Site::serve().await?;
    let desk = Page::at(&site, "#/class/assign", Look::DESK).await?;
    let (key, text) = (format!("trayward/packs/used/{PACK}"), small()?.write());
    desk.run(&format!(
        "localStorage.setItem({}, {});",
        json!(key),
        json!(text)
    ))
    .await?;
    desk.reload().await?;
    desk.ready().await?;
    let package = made_by(&desk).await?;
    desk.quit().await?;

    let host = serve(&package, &json!({}), |_| ())?;
    let page = launch(&host, Look::DESK).await?;
    page.read(&hook("pack-needed"), "is not on this device")
        .await?;
    By::Tap.take(&page, &hook(&format!("fetch-{PACK}"))).await?;
    page.read(&hook("pack-came"), "“Our practice”, version 1")
        .await?;
    By::Tap.take(&page, &hook("keep-pack")).await?;
    page.read(&hook("needs"), "is on this device").await?;
    By::Tap.take(&page, &hook("use-needed")).await?;
    take_up(&page).await?;
    page.see(&hook("answer")).await?;
    // The page opened three times on the way; the system was begun once.
    let calls = calls(&page).await?;
    ensure!(!calls.is_empty());
    check_calls(&calls)?;
    no_breach(&page).await?;
    page.quit().await
}

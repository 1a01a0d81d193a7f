//! A new build on the host while the page is in use.

use anyhow::Result;
use trayward_tests::browser::{Look, Page, Piece, Profile, Site};

/// Counts what the loader says to the page, from the first moment on.
const LISTEN: &str =
    "addEventListener('trayward:update-ready', () => { globalThis.offered = true; });";

async fn in_use(site: &Site, profile: &Profile) -> Result<Page> {
    let page = Page::open(profile, Look::PHONE).await?;
    page.before_each_load(LISTEN).await?;
    page.go(&site.url("")).await?;
    page.ready().await?;
    page.kept_offline().await?;
    Ok(page)
}

async fn shows(page: &Page, style: &str) -> Result<()> {
    page.until(
        style,
        &format!("document.querySelector('link[href=\"{style}\"]')"),
    )
    .await
}

#[tokio::test]
#[ignore = "needs a built site and a browser"]
async fn a_new_build_waits_until_it_is_wanted() -> Result<()> {
    let site = Site::serve().await?;
    let page = in_use(&site, &Profile::new()?).await?;
    let old = site.name(Piece::Style)?;
    site.publish_new_build()?;
    let new = site.name(Piece::Style)?;

    // The old build goes on, whole, although the host has lost a part of it.
    page.reload().await?;
    page.ready().await?;
    shows(&page, &old).await?;
    page.until("the offer", "globalThis.offered").await?;
    page.run("localStorage.setItem('kept', 'yes');").await?;

    page.run("dispatchEvent(new CustomEvent('trayward:use-update'));")
        .await?;
    shows(&page, &new).await?;
    page.ready().await?;
    assert_eq!(
        page.value::<String>("localStorage.getItem('kept')").await?,
        "yes"
    );
    let caches = page.run("return (await caches.keys()).length;").await?;
    assert_eq!(caches, 1, "the old build is still kept");
    page.quit().await
}

#[tokio::test]
#[ignore = "needs a built site and a browser"]
async fn a_new_build_takes_over_when_the_page_is_opened_afresh() -> Result<()> {
    let mut site = Site::serve().await?;
    let profile = Profile::new()?;
    let page = in_use(&site, &profile).await?;
    site.publish_new_build()?;
    page.reload().await?;
    page.until("the offer", "globalThis.offered").await?;
    page.quit().await?;

    site.end();
    let page = Page::open(&profile, Look::PHONE).await?;
    page.go(&site.url("")).await?;
    page.ready().await?;
    shows(&page, &site.name(Piece::Style)?).await?;
    page.quit().await
}

#[tokio::test]
#[ignore = "needs a built site and a browser"]
async fn a_half_published_build_is_never_kept() -> Result<()> {
    let mut site = Site::serve().await?;
    let page = in_use(&site, &Profile::new()?).await?;
    let old = site.name(Piece::Style)?;
    site.publish_new_build()?;
    site.lose(Piece::Style)?;
    page.reload().await?;
    page.ready().await?;
    // The reload has asked for the new worker; ask once more and see it fail.
    page.run(
        "const registration = await navigator.serviceWorker.ready;
         await registration.update().catch(() => {});
         while (registration.installing) await new Promise((next) => setTimeout(next, 50));",
    )
    .await?;
    let waits = page
        .run("return Boolean((await navigator.serviceWorker.ready).waiting);")
        .await?;
    assert_eq!(waits, false, "a build that lacks a file waits to be used");
    let caches = page.run("return (await caches.keys()).length;").await?;
    assert_eq!(
        caches, 1,
        "a build that lacks a file has left something behind"
    );
    site.end();
    page.reload().await?;
    page.ready().await?;
    shows(&page, &old).await?;
    page.quit().await
}

//! What is on screen before the program has come, and if it never comes.

use anyhow::Result;
use serde_json::json;
use trayward_tests::browser::{Look, Page, Piece, Profile, Site};

const FAULT: &str = "#fault[role=alert]";

async fn without_scripts(site: &Site, look: Look) -> Result<Page> {
    let page = Page::open(&Profile::new()?, look).await?;
    page.devtools(
        "Emulation.setScriptExecutionDisabled",
        json!({ "value": true }),
    )
    .await?;
    page.go(&site.url("")).await?;
    Ok(page)
}

#[tokio::test]
#[ignore = "needs a built site and a browser"]
async fn the_shell_paints_without_any_script() -> Result<()> {
    let site = Site::serve().await?;
    let page = without_scripts(&site, Look::PHONE).await?;
    page.see("#shell h1").await?;
    page.read("#shell", "Getting ready").await?;
    page.read("noscript", "needs JavaScript").await?;
    page.read("#shell .bar-nav", "Procedures").await?;
    assert!(!page.is_too_wide().await?);
    page.shot("shell").await?;
    page.quit().await
}

#[tokio::test]
#[ignore = "needs a built site and a browser"]
async fn the_shell_is_accessible_in_both_colour_schemes() -> Result<()> {
    let site = Site::serve().await?;
    site.lose(Piece::Loader)?;
    for look in [Look::PHONE, Look::PHONE.dark(), Look::NARROW] {
        let page = Page::open(&Profile::new()?, look).await?;
        page.go(&site.url("")).await?;
        page.read("#shell", "Getting ready").await?;
        page.assert_accessible(&format!("the shell in {look:?}"))
            .await?;
        assert!(!page.is_too_wide().await?);
        page.quit().await?;
    }
    Ok(())
}

#[tokio::test]
#[ignore = "needs a built site and a browser"]
async fn a_loader_that_never_comes_is_told_by_the_clock_alone() -> Result<()> {
    let site = Site::serve().await?;
    site.lose(Piece::Loader)?;
    let page = Page::open(&Profile::new()?, Look::PHONE).await?;
    page.go(&site.url("")).await?;
    page.see("#shell h1").await?;
    page.see_no("#shell .slow").await?;
    // The clock is put forward rather than waited for.
    page.run("document.getAnimations().forEach((animation) => animation.finish());")
        .await?;
    page.see("#shell .slow").await?;
    page.read("#shell .slow", "Check the connection").await?;
    page.quit().await
}

#[tokio::test]
#[ignore = "needs a built site and a browser"]
async fn a_lost_program_is_told_with_what_to_try() -> Result<()> {
    let site = Site::serve().await?;
    site.lose(Piece::Wasm)?;
    let page = told(&site, "The program is not where it should be").await?;
    page.shot("lost-program").await?;
    page.assert_accessible("the message of a lost program")
        .await?;
    page.quit().await
}

#[tokio::test]
#[ignore = "needs a built site and a browser"]
async fn a_program_cut_short_is_told_with_what_to_try() -> Result<()> {
    let site = Site::serve().await?;
    site.cut_short(Piece::Wasm)?;
    told(&site, "arrived damaged").await?.quit().await
}

#[tokio::test]
#[ignore = "needs a built site and a browser"]
async fn a_lost_catalogue_is_told_with_what_to_try() -> Result<()> {
    let site = Site::serve().await?;
    site.lose(Piece::Catalogue)?;
    let page = without_catalogue(&site, "is not where it should be").await?;
    page.shot("lost-catalogue").await?;
    page.assert_accessible("the message of a lost catalogue")
        .await?;
    // Today needs no catalogue, and goes on.
    page.tap("[data-test=bar-today]").await?;
    page.see("[data-test=next-lesson]").await?;
    page.quit().await
}

#[tokio::test]
#[ignore = "needs a built site and a browser"]
async fn a_catalogue_cut_short_is_told_with_what_to_try() -> Result<()> {
    let site = Site::serve().await?;
    site.cut_short(Piece::Catalogue)?;
    without_catalogue(&site, "atalogue").await?.quit().await
}

#[tokio::test]
#[ignore = "needs a built site and a browser"]
async fn a_lost_outline_is_told_with_what_to_try() -> Result<()> {
    let site = Site::serve().await?;
    site.lose(Piece::Outline)?;
    told(&site, "The list of what there is").await?.quit().await
}

#[tokio::test]
#[ignore = "needs a built site and a browser"]
async fn a_part_that_does_not_come_is_told_and_fetched_again_when_asked() -> Result<()> {
    let site = Site::serve().await?;
    let page = Page::open(&Profile::new()?, Look::PHONE).await?;
    page.before_each_load(
        "const real = fetch; globalThis.away = true;
         globalThis.fetch = (what, ...how) => globalThis.away && String(what).includes('split-')
           ? Promise.reject(new TypeError('away')) : real(what, ...how);",
    )
    .await?;
    page.go(&site.url("#/procedures")).await?;
    page.ready().await?;
    page.read("[data-test=not-fetched]", "could not be fetched")
        .await?;
    page.run("globalThis.away = false;").await?;
    page.tap("[data-test=try-again]").await?;
    page.read("#main h1", "Procedures").await?;
    page.quit().await
}

#[tokio::test]
#[ignore = "needs a built site and a browser"]
async fn a_browser_without_webassembly_is_told_to_be_updated() -> Result<()> {
    let site = Site::serve().await?;
    let page = Page::open(&Profile::new()?, Look::PHONE).await?;
    page.before_each_load("delete globalThis.WebAssembly;")
        .await?;
    page.go(&site.url("")).await?;
    page.read(FAULT, "too old").await?;
    page.read(FAULT, "Update this browser").await?;
    page.quit().await
}

#[tokio::test]
#[ignore = "needs a built site and a browser"]
async fn reloading_by_the_button_mends_what_the_host_has_mended() -> Result<()> {
    let mut site = Site::serve().await?;
    let page = Page::open(&Profile::new()?, Look::PHONE).await?;
    // The page's own files come from the browser's cache; the rest do not.
    page.before_each_load(
        "const real = fetch; let away = !sessionStorage.met; sessionStorage.met = 'yes';
         globalThis.fetch = (...what) => away ? Promise.reject(new TypeError('away')) : real(...what);",
    )
    .await?;
    page.go(&site.url("")).await?;
    page.read(FAULT, "Check the connection").await?;
    page.tap("#fault button").await?;
    page.ready().await?;
    page.see_no(FAULT).await?;
    site.end();
    page.quit().await
}

#[tokio::test]
#[ignore = "needs a built site and a browser"]
async fn a_healthy_page_draws_no_complaint_below_any_path() -> Result<()> {
    for under in ["/", "/school/trayward/"] {
        let site = Site::serve_under(under).await?;
        let page = Page::open(&Profile::new()?, Look::PHONE).await?;
        page.go(&site.url("")).await?;
        page.ready().await?;
        page.kept_offline().await?;
        assert_eq!(page.count("#shell").await?, 0, "the shell is still there");
        assert_eq!(page.text(FAULT).await?, "");
        let complaints = page.complaints().await?;
        assert!(complaints.is_empty(), "below {under}: {complaints:#?}");
        page.quit().await?;
    }
    Ok(())
}

#[tokio::test]
#[ignore = "needs a built site and a browser"]
async fn a_first_visit_fetches_each_file_once() -> Result<()> {
    let site = Site::serve().await?;
    let page = Page::open(&Profile::new()?, Look::PHONE).await?;
    page.go(&site.url("")).await?;
    page.ready().await?;
    let fetched: Vec<String> = page
        .value(
            "performance.getEntriesByType('resource').filter((entry) => entry.transferSize > 0)
               .map((entry) => new URL(entry.name).pathname.slice(1))",
        )
        .await?;
    for piece in [Piece::Wasm, Piece::Outline, Piece::Loader, Piece::Style] {
        let name = site.name(piece)?;
        let times = fetched.iter().filter(|other| **other == name).count();
        assert_eq!(times, 1, "{name} was fetched {times} times: {fetched:?}");
    }
    page.quit().await
}

/// The page of a site whose catalogue is lost or damaged: Today is there, and
/// another place says why it is not.
async fn without_catalogue(site: &Site, why: &str) -> Result<Page> {
    let page = Page::open(&Profile::new()?, Look::PHONE).await?;
    page.go(&site.url("")).await?;
    page.ready().await?;
    page.see("[data-test=next-lesson]").await?;
    page.tap("[data-test=bar-procedures]").await?;
    page.read("[data-test=not-fetched]", why).await?;
    page.see("[data-test=try-again]").await?;
    Ok(page)
}

async fn told(site: &Site, what: &str) -> Result<Page> {
    let page = Page::open(&Profile::new()?, Look::PHONE).await?;
    page.go(&site.url("")).await?;
    page.read(FAULT, what).await?;
    page.read(FAULT, "Reload the page").await?;
    page.see("#shell h1").await?;
    page.see_no("#shell .loading").await?;
    Ok(page)
}

//! Whole cases: by touch, by keyboard, interrupted, offline, and with a storage
//! that fails.

use anyhow::Result;
use trayward_tests::browser::{Engine, Look, Page, Profile, Site, hook};

use crate::visit::{By, address, answer, case, go_on, play_from, start};

#[tokio::test]
#[ignore = "needs a built site and a browser"]
async fn a_deep_cavity_is_played_by_touch_from_chart_to_recall() -> Result<()> {
    let site = Site::serve().await?;
    let case = case("signs-that-do-not-settle", 3)?;
    let page = Page::at(&site, &address(&case), Look::PHONE).await?;
    start(&page, By::Tap).await?;
    play_from(&page, &case, 0, By::Tap).await?;
    page.shot("debrief").await?;
    assert!(!page.is_too_wide().await?);
    page.tap(&hook("bar-record")).await?;
    page.see(&hook("finished-case")).await?;
    assert!(page.complaints().await?.is_empty());
    page.quit().await
}

#[tokio::test]
#[ignore = "needs a built site and a browser"]
async fn a_visit_is_played_by_keyboard_alone() -> Result<()> {
    let site = Site::serve().await?;
    let case = case("stitches-out", 1)?;
    let page = Page::at(&site, &address(&case), Look::PHONE).await?;
    start(&page, By::Keys).await?;
    play_from(&page, &case, 0, By::Keys).await?;
    page.quit().await
}

#[tokio::test]
#[ignore = "needs a built site and a browser"]
async fn a_reload_in_mid_case_goes_on_where_it_was() -> Result<()> {
    let site = Site::serve().await?;
    let case = case("stitches-out", 2)?;
    let page = Page::at(&site, &address(&case), Look::PHONE).await?;
    start(&page, By::Tap).await?;
    answer(&page, &case.decisions[0], By::Tap).await?;
    page.reload().await?;
    page.ready().await?;
    page.see(&hook("verdict")).await?;
    go_on(&page, By::Tap).await?;
    page.reload().await?;
    page.ready().await?;
    play_from(&page, &case, 1, By::Tap).await?;
    page.quit().await
}

#[tokio::test]
#[ignore = "needs a built site and a browser"]
async fn a_case_is_played_with_the_server_ended() -> Result<()> {
    let mut site = Site::serve().await?;
    let case = case("stitches-out", 3)?;
    let page = Page::at(&site, "", Look::PHONE).await?;
    page.kept_offline().await?;
    site.end();
    page.go(&site.url(&address(&case))).await?;
    page.ready().await?;
    start(&page, By::Tap).await?;
    play_from(&page, &case, 0, By::Tap).await?;
    page.quit().await
}

#[tokio::test]
#[ignore = "needs a built site and a browser"]
async fn a_new_build_in_mid_case_loses_nothing() -> Result<()> {
    let site = Site::serve().await?;
    let case = case("stitches-out", 4)?;
    let page = Page::at(&site, &address(&case), Look::PHONE).await?;
    page.kept_offline().await?;
    start(&page, By::Tap).await?;
    answer(&page, &case.decisions[0], By::Tap).await?;
    go_on(&page, By::Tap).await?;
    site.publish_new_build()?;
    page.reload().await?;
    page.ready().await?;
    page.see(&hook("update-ready")).await?;
    page.tap(&hook("use-update")).await?;
    page.see_no(&hook("update-ready")).await?;
    page.ready().await?;
    play_from(&page, &case, 1, By::Tap).await?;
    page.quit().await
}

#[tokio::test]
#[ignore = "needs a built site and a browser"]
async fn two_tabs_keep_what_both_did() -> Result<()> {
    let site = Site::serve().await?;
    let (one, other) = (case("stitches-out", 5)?, case("stitches-out", 6)?);
    let page = Page::at(&site, &address(&one), Look::PHONE).await?;
    let first = page.tab().await?;
    start(&page, By::Tap).await?;
    answer(&page, &one.decisions[0], By::Tap).await?;
    page.open_tab(&site.url(&address(&other))).await?;
    page.ready().await?;
    start(&page, By::Tap).await?;
    play_from(&page, &other, 0, By::Tap).await?;
    page.put_in_front(&first).await?;
    go_on(&page, By::Tap).await?;
    play_from(&page, &one, 1, By::Tap).await?;
    page.tap(&hook("bar-record")).await?;
    page.see(&hook("finished-cases")).await?;
    assert_eq!(page.count(&hook("finished-case")).await?, 2);
    page.quit().await
}

#[tokio::test]
#[ignore = "needs a built site and a browser"]
async fn a_full_storage_is_said_and_the_case_goes_on() -> Result<()> {
    let site = Site::serve().await?;
    let case = case("stitches-out", 7)?;
    let page = Page::at(&site, &address(&case), Look::PHONE).await?;
    page.fill_storage().await?;
    start(&page, By::Tap).await?;
    page.see(&hook("unsaved")).await?;
    page.see(&hook("export")).await?;
    play_from(&page, &case, 0, By::Tap).await?;
    page.quit().await
}

#[tokio::test]
#[ignore = "needs a built site and a browser"]
async fn a_forbidden_storage_is_said_and_the_case_goes_on() -> Result<()> {
    let site = Site::serve().await?;
    let case = case("stitches-out", 8)?;
    let page = Page::open(&Profile::new()?, Look::PHONE).await?;
    page.before_each_load(
        "Object.defineProperty(window, 'localStorage', { get() { throw new DOMException('no', 'SecurityError'); } });",
    )
    .await?;
    page.go(&site.url(&address(&case))).await?;
    page.ready().await?;
    page.see(&hook("unsaved")).await?;
    start(&page, By::Tap).await?;
    play_from(&page, &case, 0, By::Tap).await?;
    page.quit().await
}

#[tokio::test]
#[ignore = "needs a built site and a browser"]
async fn a_damaged_part_of_the_record_is_set_aside_and_the_rest_kept() -> Result<()> {
    let site = Site::serve().await?;
    let case = case("stitches-out", 9)?;
    let page = Page::at(&site, &address(&case), Look::PHONE).await?;
    start(&page, By::Tap).await?;
    play_from(&page, &case, 0, By::Tap).await?;
    page.run("localStorage.setItem('trayward/1/00000000000000aa/0', 'torn');")
        .await?;
    page.go(&site.url("#/record")).await?;
    page.reload().await?;
    page.ready().await?;
    page.see(&hook("set-aside")).await?;
    page.see(&hook("finished-case")).await?;
    page.quit().await
}

async fn plays_in(engine: Engine) -> Result<()> {
    let site = Site::serve().await?;
    let case = case("stitches-out", 10)?;
    let page = Page::open_in(engine, &Profile::new()?, Look::PHONE).await?;
    page.go(&site.url(&address(&case))).await?;
    page.ready().await?;
    start(&page, By::Tap).await?;
    play_from(&page, &case, 0, By::Tap).await?;
    page.quit().await
}

#[tokio::test]
#[ignore = "needs a built site and a browser"]
async fn firefox_plays_a_visit() -> Result<()> {
    plays_in(Engine::Firefox).await
}

#[tokio::test]
#[ignore = "needs a built site and a browser"]
async fn webkit_plays_a_visit() -> Result<()> {
    plays_in(Engine::WebKit).await
}

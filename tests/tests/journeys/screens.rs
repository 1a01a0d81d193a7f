//! Every screen: accessible, and no wider than the reader's own screen.

use anyhow::{Result, ensure};
use trayward_tests::browser::{Look, Page, Profile, Site, hook};

/// Every kind of screen, by its address.
const SCREENS: &[&str] = &[
    "#/today",
    "#/procedures",
    "#/procedures/deep-caries-temporary",
    "#/procedures/deep-caries-temporary/set-up",
    "#/procedures/deep-caries-temporary/steps",
    "#/procedures/deep-caries-temporary/time",
    "#/procedures/deep-caries-temporary/card",
    "#/find/spoon",
    "#/plates",
    "#/glossary",
    "#/items",
    "#/items/spoon-excavator-small",
    "#/items/reinforced-zoe",
    "#/lessons/pulp-protection",
    "#/cases",
    "#/cases/order",
    "#/cases/deeper-than-the-film/1",
    "#/cards",
    "#/reading",
    "#/reading/1",
    "#/sitting/5",
    "#/plan",
    "#/form",
    "#/questions",
    "#/questions/why",
    "#/progress",
    "#/bench",
    "#/bench/mix/reinforced-zoe",
    "#/bench/mix/alginate",
    "#/bench/numbers",
    "#/bench/numbers/cartridges",
    "#/bench/numbers/tooth?system=FDI&tooth=16&to=Universal",
    "#/bench/numbers/black?formula=13-95-8-14",
    "#/bench/exercise/cartridges/1",
    "#/assignments",
    "#/class",
    "#/class/assign",
    "#/class/roster",
    "#/procedures/amalgam-restoration/check-off",
    "#/record",
    "#/about",
    "#/nowhere",
];

/// Opens every screen afresh and hands it over once it is drawn.
async fn looked_over(look: Look, accessible: bool) -> Result<()> {
    let site = Site::serve().await?;
    let page = Page::open(&Profile::new()?, look).await?;
    for screen in SCREENS {
        // From outside each time, so that no heading of the last one is met.
        page.go("about:blank").await?;
        page.go(&site.url(screen)).await?;
        page.ready().await?;
        page.see("main h1").await?;
        page.see_no(&hook("not-fetched")).await?;
        if accessible {
            page.assert_accessible(&format!("{screen} in {look:?}"))
                .await?;
        }
        ensure!(
            !page.is_too_wide().await?,
            "{screen} is too wide in {look:?}"
        );
    }
    page.quit().await
}

#[tokio::test]
#[ignore = "needs a built site and a browser"]
async fn every_screen_is_accessible_in_light() -> Result<()> {
    looked_over(Look::PHONE, true).await
}

#[tokio::test]
#[ignore = "needs a built site and a browser"]
async fn every_screen_is_accessible_in_dark_on_a_narrow_phone() -> Result<()> {
    looked_over(Look::NARROW.dark(), true).await
}

#[tokio::test]
#[ignore = "needs a built site and a browser"]
async fn every_screen_fits_at_twice_the_size_without_motion() -> Result<()> {
    looked_over(Look::ZOOMED.still(), false).await
}

#[tokio::test]
#[ignore = "needs a built site and a browser"]
async fn an_unknown_address_shows_where_one_can_go() -> Result<()> {
    let site = Site::serve().await?;
    let page = Page::open(&Profile::new()?, Look::PHONE).await?;
    for lost in ["#/nowhere", "#/items/no-such-thing", "#/cases/none/1"] {
        page.go("about:blank").await?;
        page.go(&site.url(lost)).await?;
        page.ready().await?;
        page.see(&hook("not-here")).await?;
        page.tap("main .rows a[href='#/procedures']").await?;
        page.read("main h1", "Procedures").await?;
    }
    page.quit().await
}

#[tokio::test]
#[ignore = "needs a built site and a browser"]
async fn nothing_moves_where_stillness_is_wished() -> Result<()> {
    let site = Site::serve().await?;
    let page = Page::open(&Profile::new()?, Look::PHONE.still()).await?;
    page.go(&site.url("#/procedures/deep-caries-temporary/set-up"))
        .await?;
    page.ready().await?;
    page.see("main h1").await?;
    let longest: f64 = page
        .value(
            "Math.max(0, ...[...document.querySelectorAll('*')].flatMap((each) => {
               const style = getComputedStyle(each);
               return [style.animationDuration, style.transitionDuration]
                 .flatMap((times) => times.split(',').map(parseFloat));
             }))",
        )
        .await?;
    ensure!(longest < 0.011, "something moves for {longest} s");
    page.quit().await
}

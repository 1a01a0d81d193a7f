//! Every screen: accessible, and no wider than the phone.

use anyhow::Result;
use trayward_tests::browser::{Look, Page, Profile, Site};

const SCREENS: [&str; 14] = [
    "#/today",
    "#/procedures",
    "#/procedures/deep-caries-temporary",
    "#/procedures/deep-caries-temporary/set-up",
    "#/procedures/deep-caries-temporary/steps",
    "#/items/spoon-excavator-small",
    "#/items/reinforced-zoe",
    "#/lessons/pulp-protection",
    "#/cases",
    "#/cases/deeper-than-the-film/1",
    "#/bench",
    "#/record",
    "#/about",
    "#/nowhere",
];

async fn looked_over(look: Look) -> Result<()> {
    let site = Site::serve().await?;
    let page = Page::open(&Profile::new()?, look).await?;
    page.go(&site.url("")).await?;
    page.ready().await?;
    for screen in SCREENS {
        page.go(&site.url(screen)).await?;
        page.ready().await?;
        page.see("main h1").await?;
        page.assert_accessible(&format!("{screen} in {look:?}"))
            .await?;
        assert!(
            !page.is_too_wide().await?,
            "{screen} is too wide in {look:?}"
        );
    }
    page.quit().await
}

#[tokio::test]
#[ignore = "needs a built site and a browser"]
async fn every_screen_is_accessible_in_light() -> Result<()> {
    looked_over(Look::PHONE).await
}

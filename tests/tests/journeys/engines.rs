//! The main path in the other browser engines.

use anyhow::Result;
use trayward_tests::browser::{Engine, Look, Page, Profile, Site};

async fn opens_and_stays(engine: Engine) -> Result<()> {
    let site = Site::serve().await?;
    let page = Page::open_in(engine, &Profile::new()?, Look::PHONE).await?;
    page.go(&site.url("")).await?;
    page.ready().await?;
    assert_eq!(page.text("#fault").await?, "");
    page.reload().await?;
    page.ready().await?;
    page.shot(&format!("{engine:?}")).await?;
    page.quit().await
}

#[tokio::test]
#[ignore = "needs a built site and a browser"]
async fn firefox_opens_the_page() -> Result<()> {
    opens_and_stays(Engine::Firefox).await
}

#[tokio::test]
#[ignore = "needs a built site and a browser"]
async fn webkit_opens_the_page() -> Result<()> {
    opens_and_stays(Engine::WebKit).await
}

//! The page without a connection.

use anyhow::Result;
use trayward_tests::browser::{Look, Page, Profile, Site};

#[tokio::test]
#[ignore = "needs a built site and a browser"]
async fn a_second_visit_needs_no_server_even_after_the_browser_was_closed() -> Result<()> {
    let mut site = Site::serve().await?;
    let profile = Profile::new()?;
    let page = Page::open(&profile, Look::PHONE).await?;
    page.go(&site.url("")).await?;
    page.ready().await?;
    page.kept_offline().await?;
    page.quit().await?;

    site.end();
    let page = Page::open(&profile, Look::PHONE).await?;
    page.go(&site.url("")).await?;
    page.ready().await?;
    assert_eq!(page.text("#fault").await?, "");
    page.shot("offline").await?;
    // By its other name as well, and once more.
    page.go(&site.url("index.html")).await?;
    page.ready().await?;
    page.quit().await
}

#[tokio::test]
#[ignore = "needs a built site and a browser"]
async fn below_a_path_it_needs_no_server_either() -> Result<()> {
    let mut site = Site::serve_under("/school/trayward/").await?;
    let page = Page::open(&Profile::new()?, Look::PHONE).await?;
    page.go(&site.url("")).await?;
    page.ready().await?;
    page.kept_offline().await?;
    site.end();
    page.reload().await?;
    page.ready().await?;
    page.quit().await
}

#[tokio::test]
#[ignore = "needs a built site and a browser"]
async fn a_lost_connection_changes_nothing() -> Result<()> {
    let site = Site::serve().await?;
    let page = Page::open(&Profile::new()?, Look::PHONE).await?;
    page.go(&site.url("")).await?;
    page.ready().await?;
    page.kept_offline().await?;
    page.disconnect(true).await?;
    page.reload().await?;
    page.ready().await?;
    page.quit().await
}

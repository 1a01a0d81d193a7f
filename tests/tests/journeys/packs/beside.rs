//! A pack that lies beside the page on the same host.

use anyhow::{Context, Result, ensure};
use catalogue::source::Files;
use class::{
    bank::Version,
    pack::{self, Pack, place::Kind},
};
use std::path::Path;
use trayward_tests::browser::{Look, Page, Site, hook};

use super::{PACK, at, checked};
use crate::visit::By;

/// A pack of one lesson and one preference card, copied from what is built in.
pub fn small() -> Result<Pack> {
    let content = Path::new(env!("CARGO_MANIFEST_DIR")).join("../content");
    let files = Files::read_folder(&content).map_err(|_| anyhow::anyhow!("no content"))?;
    let mut pack = Pack::new(PACK, "Our practice", Version(0)).map_err(anyhow::Error::msg)?;
    for (kind, of, id) in [
        (Kind::Lesson, "pulp-protection", "our-lesson"),
        (Kind::Cards, "dam-always", "our-card"),
    ] {
        let copied = pack::copy::copied(&files, kind, of, id).context("nothing to copy")?;
        for (path, text) in copied {
            let file = pack::PackFile {
                text,
                replaces: false,
            };
            pack.put(&path, file).map_err(anyhow::Error::msg)?;
        }
    }
    Ok(pack)
}

#[tokio::test]
#[ignore = "needs a built site and a browser"]
async fn a_pack_beside_the_page_opens_by_its_link() -> Result<()> {
    // Below a path, as a school would lay it.
    let site = Site::serve_under("/school/").await?;
    site.lay(&format!("packs/{PACK}.json"), small()?.write().as_bytes())?;
    let page = Page::at(&site, &format!("#/pack/{PACK}"), Look::PHONE).await?;
    page.read(&hook("pack-came"), "“Our practice”, version 1 holds")
        .await?;
    page.assert_accessible("a pack from this site").await?;
    By::Tap.take(&page, &hook("keep-pack")).await?;
    By::Tap.take(&page, &hook("to-pack")).await?;
    checked(&page, "The checks find nothing wrong.").await?;
    By::Tap.take(&page, &hook("use-pack")).await?;
    page.read(&hook("pack-in-use"), "In use, version 1").await?;
    page.reload().await?;
    page.ready().await?;
    for thing in ["#/lessons/our-lesson", "#/cards/our-card"] {
        at(&page, thing).await?;
        page.read(&hook("from-pack"), "From the pack “Our practice”")
            .await?;
    }
    ensure!(page.complaints().await?.is_empty());
    // What is not there, and what names nothing.
    for (link, words) in [
        ("#/pack/no-such-pack", "There is no packs/no-such-pack.json"),
        ("#/pack/No%20Such", "names no pack"),
    ] {
        at(&page, link).await?;
        page.read(&hook("pack-refused"), words).await?;
    }
    page.quit().await
}

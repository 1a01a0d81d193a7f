//! The record as a file: into a browser, and what happens to files that are
//! not what they should be.

use anyhow::Result;
use record::{LessonRead, Log, MemoryStore, Moment, What, Writer};
use std::{fs, path::Path};
use trayward_tests::browser::{Look, Page, Profile, Site, hook};

/// An exported record of two lessons.
fn exported() -> String {
    let mut log = Log::open(MemoryStore::default(), Writer(7));
    for (at, lesson) in [(1, "basic-set"), (2, "rubber-dam")] {
        let what = What::LessonRead(LessonRead {
            lesson: lesson.to_owned(),
        });
        let at = Moment {
            utc_ms: 1_764_000_000_000 + at,
            offset_min: 0,
        };
        log.append(at, what);
    }
    log.export()
}

async fn record_of(site: &Site) -> Result<Page> {
    let page = Page::open(&Profile::new()?, Look::PHONE).await?;
    page.go(&site.url("#/record")).await?;
    page.ready().await?;
    page.read(&hook("storage-state"), "0 entries").await?;
    Ok(page)
}

async fn import(page: &Page, folder: &Path, text: &str) -> Result<()> {
    let file = folder.join("record.txt");
    fs::write(&file, text)?;
    page.give_file(&hook("import"), &file).await
}

#[tokio::test]
#[ignore = "needs a built site and a browser"]
async fn a_record_of_another_device_is_taken_in_once() -> Result<()> {
    let (site, folder) = (Site::serve().await?, tempfile::tempdir()?);
    let page = record_of(&site).await?;
    import(&page, folder.path(), &exported()).await?;
    page.read(&hook("import-outcome"), "Added: 2 entries")
        .await?;
    page.read(&hook("storage-state"), "2 entries").await?;
    page.reload().await?;
    page.ready().await?;
    page.read(&hook("storage-state"), "2 entries").await?;
    import(&page, folder.path(), &exported()).await?;
    page.read(&hook("import-outcome"), "Nothing new").await?;
    page.quit().await
}

#[tokio::test]
#[ignore = "needs a built site and a browser"]
async fn a_file_that_is_not_whole_is_told_and_changes_nothing() -> Result<()> {
    let (site, folder) = (Site::serve().await?, tempfile::tempdir()?);
    let page = record_of(&site).await?;
    let whole = exported();
    let newer = whole.replacen("export 1", "export 9", 1);
    let tampered = whole.replace("rubber-dam", "rubber-dim");
    let cases = [
        ("", "empty"),
        ("shopping: eggs\n", "not an exported Trayward record"),
        (&whole[..whole.len() - 9], "end of this file is missing"),
        (tampered.as_str(), "damaged or was changed"),
        (newer.as_str(), "newer Trayward"),
    ];
    for (text, says) in cases {
        import(&page, folder.path(), text).await?;
        page.read(&hook("import-outcome"), says).await?;
        page.read(&hook("import-outcome"), "Nothing was imported")
            .await?;
    }
    page.read(&hook("storage-state"), "0 entries").await?;
    page.assert_accessible("the message of a damaged file")
        .await?;
    page.quit().await
}

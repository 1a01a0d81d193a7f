//! The ways by which hand-ins reach the instructor: files that are dropped,
//! links, the camera, and the sheet by which a device shares.

use anyhow::{Context, Result, ensure};
use class::{
    assignment::{Assignment, Seat},
    handin::HandIn,
    qr::{self, Symbol},
};
use serde_json::{Value, json};
use std::{io::Write, path::Path};
use trayward_tests::browser::{Look, Page, Profile, Site, hook};
use trayward_tests::class::{alike, asked, bank, cases_of, clinic, hand_in, keep};

use crate::{
    class::{link, set},
    visit::By,
};

/// A short case, and how often it is set where much is to be handed in.
const FRAME: &str = "stitches-out";
const OFTEN: u8 = 8;

/// The short case, so often.
fn often(times: u8) -> Result<Assignment> {
    alike(3, 11, vec![cases_of(FRAME, times)])
}

fn hand_ins(set: &Assignment, seats: u16) -> Result<Vec<HandIn>> {
    let asked = asked(&clinic()?, set, Seat(1))?;
    let slips = |seat: u16| {
        move |task: usize, at: usize| (task + at * 3 + usize::from(seat)).is_multiple_of(4)
    };
    Ok((1..=seats)
        .map(|seat| hand_in(set, &asked, Seat(seat), slips(seat)))
        .collect())
}

/// The screen where hand-ins to an assignment are read, on a device that has it.
async fn collecting(page: &Page, site: &Site, set: &Assignment) -> Result<()> {
    page.go(&site.url("#/class")).await?;
    page.ready().await?;
    keep(page, set).await?;
    page.go(&site.url(&format!("#/class/collect/{:08x}", set.id())))
        .await?;
    page.read(&hook("kept"), "No hand-in is kept yet.").await
}

/// Drops files of these names and texts where files are dropped.
async fn drop_files(page: &Page, files: &[(String, String)]) -> Result<()> {
    let script = format!(
        "const carried = new DataTransfer();
         for (const [name, text] of {}) carried.items.add(new File([text], name));
         const goal = document.querySelector({}) ;
         for (const kind of ['dragover', 'drop'])
           goal.dispatchEvent(new DragEvent(kind, {{ dataTransfer: carried, bubbles: true, cancelable: true }}));",
        json!(files),
        json!(hook("drop")),
    );
    page.run(&script).await.map(drop)
}

#[tokio::test]
#[ignore = "needs a built site and a browser"]
async fn files_that_are_dropped_are_read_all_at_once() -> Result<()> {
    let site = Site::serve().await?;
    let set = often(1)?;
    let page = Page::open(&Profile::new()?, Look::DESK).await?;
    collecting(&page, &site, &set).await?;
    let all = hand_ins(&set, 40)?;
    let mut files: Vec<(String, String)> = all
        .iter()
        .map(|it| {
            (
                format!("seat-{}.txt", it.seat.0),
                format!("{}\r\n", it.letters()),
            )
        })
        .collect();
    // One file of several lines, and one that is nothing of the kind.
    let lines: Vec<String> = all[..3].iter().map(HandIn::letters).collect();
    files.push(("again.txt".into(), lines.join("\n")));
    files.push(("letter.txt".into(), "Dear class, see you on Monday".into()));
    drop_files(&page, &files).await?;
    page.read(
        &hook("tally"),
        "Read 44: 40 accepted, 3 duplicate, 1 foreign.",
    )
    .await?;
    page.read(&hook("kept"), "40 hand-ins are kept, one a seat.")
        .await?;
    drop_files(&page, &[("empty.txt".into(), String::new())]).await?;
    page.assert_accessible("hand-ins that were dropped").await?;
    ensure!(page.complaints().await?.is_empty());
    page.quit().await
}

#[tokio::test]
#[ignore = "needs a built site and a browser"]
async fn reading_is_shown_and_can_be_stopped() -> Result<()> {
    let site = Site::serve().await?;
    let set = often(1)?;
    let page = Page::open(&Profile::new()?, Look::DESK).await?;
    collecting(&page, &site, &set).await?;
    let lines: Vec<String> = hand_ins(&set, 4000)?.iter().map(HandIn::letters).collect();
    // Slow enough that a hand is in time.
    page.devtools("Emulation.setCPUThrottlingRate", json!({ "rate": 20 }))
        .await?;
    // Stopped by the page's own button, as soon as that is there.
    let stop = format!(
        "globalThis.shown = []; globalThis.over = false;
         new MutationObserver(() => {{
           const at = document.querySelector('{} progress');
           if (at) globalThis.shown.push(at.value);
           if (at && at.value > 0) document.querySelector({})?.click();
         }}).observe(document.body, {{ subtree: true, childList: true, attributes: true, characterData: true }});",
        hook("progress"),
        json!(hook("stop")),
    );
    page.run(&stop).await?;
    drop_files(&page, &[("all.txt".into(), lines.join("\n"))]).await?;
    page.read(&hook("collect-fault"), "Stopped. Nothing was changed.")
        .await?;
    page.see_no(&hook("progress")).await?;
    page.read(&hook("kept"), "No hand-in is kept yet.").await?;
    let shown: Vec<f64> = page.value("globalThis.shown").await?;
    ensure!(
        shown.iter().any(|at| *at > 0.0 && *at < 4000.0),
        "{shown:?}"
    );
    page.quit().await
}

#[tokio::test]
#[ignore = "needs a built site and a browser"]
async fn a_link_brings_a_hand_in() -> Result<()> {
    let site = Site::serve().await?;
    let set = often(1)?;
    let page = Page::open(&Profile::new()?, Look::PHONE).await?;
    collecting(&page, &site, &set).await?;
    let sent = &hand_ins(&set, 1)?[0];
    page.go(&sent.link(&site.url("#/hand-in/"))).await?;
    page.see(&hook("hand-in-said")).await?;
    page.shot("hand-in-by-link").await?;
    By::Tap.take(&page, &hook("to-collect")).await?;
    page.read(&hook("kept"), "1 hand-in is kept.").await?;
    let mut other = sent.clone();
    other.assignment ^= 1;
    page.go(&other.link(&site.url("#/hand-in/"))).await?;
    page.read(&hook("hand-in-said"), "not set on this device")
        .await?;
    page.quit().await
}

/// A film of symbols, one after the other, as a camera would see them.
fn film(path: &Path, symbols: &[Symbol]) -> Result<()> {
    const WIDTH: usize = 640;
    const HEIGHT: usize = 480;
    const DOTS: usize = 6;
    /// Pictures a symbol, at ten a second.
    const STILL: usize = 8;
    let mut film = std::io::BufWriter::new(std::fs::File::create(path)?);
    writeln!(film, "YUV4MPEG2 W{WIDTH} H{HEIGHT} F10:1 Ip A1:1 C420jpeg")?;
    for symbol in symbols {
        let side = usize::try_from(symbol.side())? * DOTS;
        ensure!(side <= HEIGHT, "the symbol is too large for the film");
        let (left, top) = ((WIDTH - side) / 2, (HEIGHT - side) / 2);
        let mut light = vec![235_u8; WIDTH * HEIGHT];
        for y in 0..side {
            for x in 0..side {
                let module = |at: usize| u32::try_from(at / DOTS);
                if symbol.dark(module(x)?, module(y)?) {
                    light[(top + y) * WIDTH + left + x] = 20;
                }
            }
        }
        for _ in 0..STILL {
            film.write_all(b"FRAME\n")?;
            film.write_all(&light)?;
            film.write_all(&vec![128; WIDTH * HEIGHT / 2])?;
        }
    }
    Ok(film.flush()?)
}

#[tokio::test]
#[ignore = "needs a built site and a browser"]
async fn a_camera_reads_a_hand_in_of_several_symbols() -> Result<()> {
    let site = Site::serve().await?;
    let set = often(OFTEN)?;
    let sent = &hand_ins(&set, 1)?[0];
    let prefix = site.url("#/hand-in/");
    let parts = qr::split(&prefix, &sent.bytes()).context("it is too long for symbols")?;
    ensure!(parts.len() > 1, "it fits one symbol");
    let symbols: Vec<Symbol> = parts
        .iter()
        .filter_map(|letters| Symbol::of(&prefix, letters))
        .collect();
    let folder = tempfile::tempdir()?;
    let path = folder.path().join("film.y4m");
    film(&path, &symbols)?;
    let page = Page::open(&Profile::new()?.seeing(&path), Look::TABLET).await?;
    collecting(&page, &site, &set).await?;
    By::Tap.take(&page, &hook("camera-on")).await?;
    page.read(&hook("kept"), "1 hand-in is kept.").await?;
    page.read(
        &hook("symbols-seen"),
        &format!("{} symbols were seen.", parts.len()),
    )
    .await?;
    page.shot("camera").await?;
    page.assert_accessible("the camera").await?;
    By::Tap.take(&page, &hook("camera-off")).await?;
    page.see_no("video").await?;
    ensure!(page.complaints().await?.is_empty());
    page.quit().await
}

#[tokio::test]
#[ignore = "needs a built site and a browser"]
async fn the_share_sheet_gets_the_link() -> Result<()> {
    let site = Site::serve().await?;
    let page = Page::open(&Profile::new()?, Look::PHONE).await?;
    page.before_each_load(
        "Object.defineProperty(navigator, 'share', {
           value: async (what) => { globalThis.shared = what; } });",
    )
    .await?;
    page.go(&site.url("#/class/assign")).await?;
    page.ready().await?;
    set(&page, FRAME).await?;
    let link = link(&page).await?;
    By::Tap.take(&page, &hook("share")).await?;
    page.until("the sheet to be opened", "globalThis.shared")
        .await?;
    let shared: Value = page.value("globalThis.shared").await?;
    assert_eq!(shared["url"], link);
    assert_eq!(shared["title"], "Assignment 1");
    ensure!(Assignment::read(&link, bank()?).is_ok());
    page.quit().await
}

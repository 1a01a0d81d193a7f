//! Measures how long the page takes on a slow phone, and prints each time
//! beside its budget. `cargo site bench` runs this.

use anyhow::{Context, Result};
use serde_json::json;
use trayward_tests::browser::{Look, Page, Profile, Site};
use trayward_tests::class::{alike, cases_of};

/// How often each visit is measured; the median is shown.
const VISITS: usize = 5;

/// 1.6 Mbit/s, in bytes a second.
const DOWN: u32 = 200_000;

/// Round trip in milliseconds.
const ROUND_TRIP: u32 = 150;

/// How many times slower than this computer.
const SLOWER: u32 = 4;

/// Where a link leads that somebody was sent: an area and the catalogue have to
/// come first.
const LINK: &str = "#/procedures/deep-caries-temporary/set-up";

/// Notes when the page says that it can be used and the screen is there.
const NOTE_READY: &str = "new MutationObserver((_, observer) => {
    const awaited = document.querySelector('main [aria-busy]');
    if (document.body?.hasAttribute('data-ready') && !awaited) {
        globalThis.readyAfter = performance.now();
        observer.disconnect();
    }
}).observe(document, { subtree: true, childList: true, attributes: true });";

/// Milliseconds from the start of a visit.
struct Visit {
    paint: f64,
    ready: f64,
}

#[tokio::main]
async fn main() -> Result<()> {
    let (mut first, mut offline, mut linked) = (Vec::new(), Vec::new(), Vec::new());
    let mut assigned = Vec::new();
    let set = alike(3, 11, vec![cases_of("signs-that-do-not-settle", 1)])?;
    let assignment = set.link("#/a/");
    for _ in 0..VISITS {
        let mut site = Site::serve().await?;
        let profile = Profile::new()?;
        first.push(visit(&site, "", &profile, true).await?);
        linked.push(visit(&site, LINK, &Profile::new()?, true).await?);
        assigned.push(visit(&site, &assignment, &Profile::new()?, true).await?);
        site.end();
        offline.push(visit(&site, "", &profile, false).await?);
    }
    println!("On a phone {SLOWER}x slower, 1.6 Mbit/s, {ROUND_TRIP} ms; median of {VISITS}:");
    row(
        "first visit: first paint",
        median(&first, |visit| visit.paint),
        1000.0,
    );
    row(
        "first visit: can be used",
        median(&first, |visit| visit.ready),
        2500.0,
    );
    row(
        "first visit, by a link to a set-up: can be used",
        median(&linked, |visit| visit.ready),
        2500.0,
    );
    row(
        "first visit, by a link to an assignment: can be used",
        median(&assigned, |visit| visit.ready),
        2500.0,
    );
    row(
        "second visit, no server: first paint",
        median(&offline, |visit| visit.paint),
        1000.0,
    );
    row(
        "second visit, no server: can be used",
        median(&offline, |visit| visit.ready),
        1000.0,
    );
    Ok(())
}

async fn visit(site: &Site, fragment: &str, profile: &Profile, online: bool) -> Result<Visit> {
    let page = Page::open(profile, Look::PHONE).await?;
    page.before_each_load(NOTE_READY).await?;
    page.devtools("Emulation.setCPUThrottlingRate", json!({ "rate": SLOWER }))
        .await?;
    if online {
        page.devtools("Network.enable", json!({})).await?;
        let line = json!({
            "offline": false, "latency": ROUND_TRIP,
            "downloadThroughput": DOWN, "uploadThroughput": DOWN / 2,
        });
        page.devtools("Network.emulateNetworkConditions", line)
            .await?;
    }
    page.go(&site.url(fragment)).await?;
    page.ready().await?;
    page.until(
        "the first paint",
        "performance.getEntriesByName('first-contentful-paint')[0]",
    )
    .await?;
    page.until("the first screen", "globalThis.readyAfter")
        .await?;
    let visit = Visit {
        paint: page
            .value("performance.getEntriesByName('first-contentful-paint')[0].startTime")
            .await?,
        ready: page
            .value("globalThis.readyAfter")
            .await
            .context("The page was never ready.")?,
    };
    page.kept_offline().await?;
    page.quit().await?;
    Ok(visit)
}

fn median(visits: &[Visit], pick: fn(&Visit) -> f64) -> f64 {
    let mut times: Vec<f64> = visits.iter().map(pick).collect();
    times.sort_by(f64::total_cmp);
    times[times.len() / 2]
}

fn row(what: &str, measured: f64, budget: f64) {
    let verdict = if measured <= budget { "within" } else { "OVER" };
    println!("{what:<53} {measured:>6.0} ms {verdict:>6} {budget}");
}

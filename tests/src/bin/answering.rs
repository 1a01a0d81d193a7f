//! Measures how soon the page answers on a slow phone, with the full catalogue
//! and a record of 10,000 events, and prints each time beside its budget.
//! `cargo site bench` runs this.

use anyhow::{Context, Result};
use record::{
    CaseAnswered, CaseFinished, CaseStarted, Log, MemoryStore, Moment, PerCent, SittingId, Verdict,
    What, Writer,
};
use serde_json::json;
use std::fs;
use trayward_tests::browser::{Look, Page, Profile, Site, hook};

/// How many times slower than this computer.
const SLOWER: u32 = 4;

/// How often each screen is opened; the median is shown.
const TIMES: usize = 5;

/// Events in the record.
const EVENTS: u32 = 10_000;

/// Milliseconds from asking for a screen to its next paint.
const BUDGET: f64 = 100.0;

/// Each screen that is opened, and what it is called here.
const SCREENS: [(&str, &str); 9] = [
    ("Today", "#/today"),
    ("the procedures", "#/procedures"),
    ("a set-up", "#/procedures/deep-caries-temporary/set-up"),
    ("a time line", "#/procedures/deep-caries-temporary/time"),
    ("an instrument", "#/items/spoon-excavator-small"),
    ("a search", "#/find/spon"),
    (
        "a case, drawn from its seed",
        "#/cases/deeper-than-the-film/7",
    ),
    ("the bench", "#/bench"),
    ("the record", "#/record"),
];

#[tokio::main]
async fn main() -> Result<()> {
    let (site, folder) = (Site::serve().await?, tempfile::tempdir()?);
    let page = Page::open(&Profile::new()?, Look::PHONE).await?;
    page.go(&site.url("#/record")).await?;
    page.ready().await?;
    let file = folder.path().join("record.txt");
    fs::write(&file, long_record())?;
    page.give_file(&hook("import"), &file).await?;
    page.read(&hook("import-outcome"), "Added").await?;
    // Every area is fetched before anything is measured.
    for (_, address) in SCREENS {
        open(&page, address).await?;
    }
    page.devtools("Emulation.setCPUThrottlingRate", json!({ "rate": SLOWER }))
        .await?;
    println!("\nOn a phone {SLOWER}x slower, {EVENTS} events; median of {TIMES}:");
    for (name, address) in SCREENS {
        let mut times = Vec::new();
        for _ in 0..TIMES {
            open(&page, "#/about").await?;
            times.push(open(&page, address).await?);
        }
        times.sort_by(f64::total_cmp);
        let took = times[TIMES / 2];
        let verdict = if took <= BUDGET { "within" } else { "OVER" };
        println!(
            "{:<44} {took:>6.0} ms {verdict:>6} {BUDGET}",
            format!("open {name}")
        );
    }
    page.quit().await
}

/// Asks for a screen, and gives the milliseconds until it has been painted.
async fn open(page: &Page, address: &str) -> Result<f64> {
    let ask = format!(
        "globalThis.took = undefined;
         const painted = (from) => requestAnimationFrame(() => {{
           const after = new MessageChannel();
           after.port1.onmessage = () => {{
             if (document.querySelector('main [aria-busy]')) painted(from);
             else globalThis.took = performance.now() - from;
           }};
           after.port2.postMessage(0);
         }});
         const from = performance.now();
         addEventListener('hashchange', () => painted(from), {{ once: true }});
         location.hash = {};",
        json!(address)
    );
    if page.fragment().await? == address {
        return Ok(0.0);
    }
    page.run(&ask).await?;
    page.until("the screen to be painted", "globalThis.took !== undefined")
        .await?;
    page.value("globalThis.took")
        .await
        .context("The time was not taken.")
}

/// Cases of ten events each: a start, eight answers, an end.
fn long_record() -> String {
    let mut log = Log::open(MemoryStore::new(), Writer(1));
    for index in 0..EVENTS {
        let at = Moment {
            utc_ms: 1_764_055_845_000 + i64::from(index) * 30_000,
            offset_min: 60,
        };
        log.append(at, what(index));
    }
    log.export()
}

fn what(index: u32) -> What {
    let sitting = SittingId(u64::from(index / 10));
    match index % 10 {
        0 => What::CaseStarted(CaseStarted {
            sitting,
            case: "deeper-than-the-film".into(),
            seed: u64::from(index) + 100,
            with: None,
            card: None,
        }),
        9 => What::CaseFinished(CaseFinished {
            sitting,
            per_cent: PerCent::of(80),
        }),
        decision => What::CaseAnswered(CaseAnswered {
            sitting,
            decision: format!("decision-{decision}"),
            answer: vec!["reinforced-zoe".into(), "cotton-pellets".into()],
            verdict: Verdict::Right,
            per_cent: PerCent::of(90),
            competency: "instruments".into(),
            seconds: 21,
        }),
    }
}

//! Measures how smoothly a mass is drawn while it is worked on a slow phone, and
//! prints it beside the budget. `cargo site bench` runs this.

use anyhow::Result;
use serde_json::json;
use trayward_tests::{
    browser::{Look, Page, Site, hook},
    hand::{Motion, work},
};

/// How many times slower than this computer.
const SLOWER: u32 = 4;

/// Seconds of spatulating.
const SECONDS: u32 = 5;

/// Milliseconds from frame to frame: sixty in a second.
const BUDGET: f64 = 1000.0 / 60.0;

/// What a frame may come late by before it is one that was missed.
const JITTER: f64 = 1.0;

#[tokio::main]
async fn main() -> Result<()> {
    let site = Site::serve().await?;
    let page = Page::at(&site, "#/bench/mix/calcium-hydroxide-liner", Look::PHONE).await?;
    page.tap(&format!("label:has({})", hook("way-calm")))
        .await?;
    for what in ["open-bench", "do-powder-1", "do-liquid-1", "do-bring-in-1"] {
        page.see(&hook(what)).await?;
        page.tap(&hook(what)).await?;
    }
    page.see(&hook("pad")).await?;
    page.devtools("Emulation.setCPUThrottlingRate", json!({ "rate": SLOWER }))
        .await?;
    println!("\nSpatulating on a phone {SLOWER}x slower, {SECONDS} s:");
    // The same hand beside the pad tells what this computer manages without it.
    tell("beside the pad", &work(&page, "main h1", SECONDS).await?);
    tell("on the pad", &work(&page, &hook("pad"), SECONDS).await?);
    page.quit().await
}

fn tell(place: &str, motion: &Motion) {
    let (half, most) = (motion.within(50), motion.within(95));
    let verdict = if most <= BUDGET + JITTER {
        "within"
    } else {
        "OVER"
    };
    println!(
        "{:<44} {half:>5.1} and {most:.1} ms {verdict:>6} {BUDGET:.1}",
        format!("{place}: half the frames, 95 of 100")
    );
    println!(
        "{:<44} {:>6.3}",
        format!("{place}: shift of the layout"),
        motion.shifts
    );
}

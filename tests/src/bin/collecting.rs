//! Measures how soon the page has read and reported a very large class, and
//! what memory that takes, at the speed of a desk. `cargo site bench` runs this.

use anyhow::{Context, Result};
use class::assignment::{Assignment, Seat, Set};
use class::task::Task;
use clinic::Clinic;
use clinic::case::Seed;
use serde_json::json;
use trayward_tests::browser::{Look, Page, Profile, Site, hook};
use trayward_tests::class::{alike, asked, cases_of, clinic, hand_in, keep};

/// How many hand in.
const HAND_INS: u16 = 10_000;

/// How many responses each of them holds.
const RESPONSES: usize = 60;

/// How often it is measured; the median is shown.
const TIMES: usize = 3;

/// Milliseconds, reading and reporting together.
const BUDGET: f64 = 2000.0;

/// Megabytes of the program and of what JavaScript holds.
const MEMORY: f64 = 300.0;

/// Keeps hold of the program's memory when the page starts it.
const NOTE_MEMORY: &str = "for (const name of ['instantiate', 'instantiateStreaming']) {
    const real = WebAssembly[name];
    WebAssembly[name] = async (...given) => {
        const made = await real.apply(WebAssembly, given);
        const memory = (made.instance ?? made).exports?.memory;
        if (memory) globalThis.programMemory = memory;
        return made;
    };
}";

/// Notes when files are given, and when an element is painted after it.
const NOTE_TIMES: &str = "globalThis.painted = (css) => new Promise((done) => {
    const look = () => document.querySelector(css)
        ? requestAnimationFrame(() => {
            const after = new MessageChannel();
            after.port1.onmessage = () => done(performance.now());
            after.port2.postMessage(0);
          })
        : requestAnimationFrame(look);
    look();
});
document.addEventListener('change', () => {
    const from = performance.now();
    globalThis.took = undefined;
    painted('[data-test=tally]').then((at) => { globalThis.took = at - from; });
}, true);";

#[tokio::main]
async fn main() -> Result<()> {
    let clinic = clinic()?;
    let set = assignment(&clinic)?;
    let folder = tempfile::tempdir()?;
    let file = folder.path().join("hand-ins.txt");
    std::fs::write(&file, class(&clinic, &set)?)?;
    let site = Site::serve().await?;
    let (mut read, mut reported, mut memory) = (Vec::new(), Vec::new(), 0.0_f64);
    for _ in 0..TIMES {
        let page = Page::open(&Profile::new()?, Look::DESK).await?;
        page.before_each_load(NOTE_MEMORY).await?;
        page.before_each_load(NOTE_TIMES).await?;
        page.go(&site.url("#/class")).await?;
        page.ready().await?;
        keep(&page, &set).await?;
        page.go(&site.url(&format!("#/class/collect/{:08x}", set.id())))
            .await?;
        page.see(&hook("kept")).await?;
        page.give_file(&hook("hand-in-files"), &file).await?;
        page.until("the hand-ins to be read", "globalThis.took !== undefined")
            .await?;
        page.read(&hook("tally"), &format!("{HAND_INS} accepted"))
            .await?;
        read.push(page.value("globalThis.took").await?);
        let report = json!(format!("#/class/report/{:08x}", set.id()));
        let open = format!(
            "const from = performance.now(); location.hash = {report};
             return await painted('[data-test=report-lead]') - from;"
        );
        let took = page.run(&open).await?;
        reported.push(took.as_f64().context("The time was not taken.")?);
        page.read(&hook("report-lead"), &format!("{HAND_INS} seats"))
            .await?;
        memory = memory.max(held(&page).await?);
        page.quit().await?;
    }
    let (read, reported) = (median(read), median(reported));
    println!("\n{HAND_INS} hand-ins of {RESPONSES} responses; median of {TIMES}:");
    println!("{:<44} {read:>6.0} ms", "read from a file, graded and kept");
    println!(
        "{:<44} {reported:>6.0} ms",
        "the report opened from what is kept"
    );
    row("both", read + reported, "ms", BUDGET);
    row(
        "memory of the program and of JavaScript",
        memory,
        "MB",
        MEMORY,
    );
    Ok(())
}

/// An assignment that asks every seat the same, as many things as are measured:
/// cases as they come, and trays to be read for the rest.
fn assignment(clinic: &Clinic) -> Result<Assignment> {
    let mut set = alike(1, 7, Vec::new())?;
    let count = |set: &Assignment| -> Result<usize> {
        let asked = asked(clinic, set, Seat(1))?;
        Ok(asked.iter().map(Vec::len).sum())
    };
    let reading = Set {
        task: Task::Reading,
        times: 1,
    };
    // A tray to be read asks three things: they make up what cases leave over.
    for frame in &clinic.catalogue().cases {
        set.tasks.push(cases_of(frame.id.as_str(), 1));
        if count(&set)? > RESPONSES {
            set.tasks.pop();
        }
    }
    while !(RESPONSES - count(&set)?).is_multiple_of(3) {
        set.tasks.pop().context("no cases come to that many")?;
    }
    while count(&set)? < RESPONSES {
        set.tasks.push(reading.clone());
    }
    anyhow::ensure!(count(&set)? == RESPONSES, "{} responses", count(&set)?);
    Ok(set)
}

/// A class of which each seat fails by chance, some more than others.
fn class(clinic: &Clinic, set: &Assignment) -> Result<String> {
    let asked = asked(clinic, set, Seat(1))?;
    let mut text = String::new();
    for seat in 1..=HAND_INS {
        let slips = |task: usize, at: usize| {
            let mixed = u64::from(seat) << 32 | (task as u64) << 16 | at as u64;
            Seed::new(mixed).bits() % 100 < u64::from(seat % 90)
        };
        text.push_str(&hand_in(set, &asked, Seat(seat), slips).letters());
        text.push('\n');
    }
    Ok(text)
}

/// What the page holds, in megabytes.
async fn held(page: &Page) -> Result<f64> {
    let program: f64 = page
        .value("globalThis.programMemory.buffer.byteLength")
        .await?;
    let heap = page.devtools("Runtime.getHeapUsage", json!({})).await?;
    let part = |name: &str| heap[name].as_f64().unwrap_or(0.0);
    Ok((program + part("usedSize") + part("embedderHeapUsedSize")) / 1e6)
}

fn median(mut times: Vec<f64>) -> f64 {
    times.sort_by(f64::total_cmp);
    times[times.len() / 2]
}

fn row(what: &str, measured: f64, unit: &str, budget: f64) {
    let verdict = if measured <= budget { "within" } else { "OVER" };
    println!("{what:<44} {measured:>6.0} {unit} {verdict:>6} {budget}");
}

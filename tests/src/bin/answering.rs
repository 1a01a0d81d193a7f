//! Measures how soon the page answers on a slow phone, with the full catalogue
//! and a record of 10,000 events, and prints each time beside its budget: to open
//! each screen, and to type each letter of a search. `cargo site bench` runs this.

use anyhow::{Context, Result};
use record::{
    CaseAnswered, CaseFinished, CaseStarted, Given, Log, MemoryStore, Moment, PerCent,
    QuestionAnswered, SittingBegun, SittingEnded, SittingId, Verdict, What, Writer,
};
use serde_json::json;
use std::{
    fs,
    time::{SystemTime, UNIX_EPOCH},
};
use study::question::Bank;
use trayward_tests::{
    browser::{Look, Page, Profile, Site, hook},
    class::clinic,
};

/// How many times slower than this computer.
const SLOWER: u32 = 4;

/// How often each screen is opened; the median is shown.
const TIMES: usize = 5;

/// Events in the record.
const EVENTS: u32 = 10_000;

/// Milliseconds between two events: all of them lie in the last three months.
const APART: i64 = 90 * 86_400_000 / EVENTS as i64;

/// Milliseconds from asking for a screen to its next paint. What lies below
/// the first screenful may be drawn after it, in slices.
const BUDGET: f64 = 100.0;

/// What is typed into the search over everything, letter by letter.
const TYPED: &str = "spoon exc";

/// Each screen that is opened, and what it is called here.
const SCREENS: [(&str, &str); 22] = [
    ("Today", "#/today"),
    ("the procedures", "#/procedures"),
    ("a lesson", "#/procedures/deep-caries-temporary"),
    ("the steps", "#/procedures/deep-caries-temporary/steps"),
    ("a set-up", "#/procedures/deep-caries-temporary/set-up"),
    ("a time line", "#/procedures/deep-caries-temporary/time"),
    ("the instruments", "#/items"),
    ("an instrument", "#/items/spoon-excavator-small"),
    ("the plates", "#/plates"),
    ("a search", "#/find/spon"),
    ("the words of the trade", "#/glossary"),
    ("the cases", "#/cases"),
    (
        "a case, drawn from its seed",
        "#/cases/deeper-than-the-film/7",
    ),
    ("a sitting", "#/sitting/5"),
    ("practice forms", "#/form"),
    ("the plan", "#/plan"),
    ("progress", "#/progress"),
    ("a family of questions", "#/questions/why"),
    ("the bench", "#/bench"),
    ("the class", "#/class"),
    ("the record", "#/record"),
    ("what the page is", "#/about"),
];

#[tokio::main]
async fn main() -> Result<()> {
    let (site, folder) = (Site::serve().await?, tempfile::tempdir()?);
    let page = Page::open(&Profile::new()?, Look::PHONE).await?;
    page.go(&site.url("#/record")).await?;
    page.ready().await?;
    let file = folder.path().join("record.txt");
    fs::write(&file, long_record()?)?;
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
            open(&page, "#/no-such-place").await?;
            times.push(open(&page, address).await?);
        }
        tell(&format!("open {name}"), times);
    }
    let letters: Vec<char> = TYPED.chars().collect();
    let mut times = vec![Vec::new(); letters.len()];
    for _ in 0..TIMES {
        open(&page, "#/no-such-place").await?;
        open(&page, "#/find").await?;
        page.tap(&hook("find")).await?;
        for (letter, times) in letters.iter().zip(&mut times) {
            times.push(letter_typed(&page, *letter).await?);
        }
    }
    for (at, times) in times.into_iter().enumerate() {
        let words: String = letters[..=at].iter().collect();
        tell(&format!("type the last letter of '{words}'"), times);
    }
    page.quit().await
}

/// Prints the median beside the budget.
fn tell(what: &str, mut times: Vec<f64>) {
    times.sort_by(f64::total_cmp);
    let took = times[times.len() / 2];
    let verdict = if took <= BUDGET { "within" } else { "OVER" };
    println!("{what:<44} {took:>6.0} ms {verdict:>6} {BUDGET}");
}

/// Types a letter where the keyboard is, and gives the milliseconds from the
/// key to the paint of what it changed.
async fn letter_typed(page: &Page, letter: char) -> Result<f64> {
    let watch = "globalThis.took = undefined;
         addEventListener('input', (event) => requestAnimationFrame(() => {
           const after = new MessageChannel();
           after.port1.onmessage = () => globalThis.took = performance.now() - event.timeStamp;
           after.port2.postMessage(0);
         }), { once: true, capture: true });";
    page.run(watch).await?;
    page.type_text(&letter.to_string()).await?;
    page.until("the letter to be painted", "globalThis.took !== undefined")
        .await?;
    page.value("globalThis.took")
        .await
        .context("The time was not taken.")
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

/// Three sittings for every case: answers to the questions of today's bank,
/// over a quarter of a year, and cases of ten events each.
fn long_record() -> Result<String> {
    let bank = Bank::new(&clinic()?);
    let mut log = Log::open(MemoryStore::new(), Writer(1));
    let begun = now() - i64::from(EVENTS) * APART;
    for index in 0..EVENTS {
        let at = Moment {
            utc_ms: begun + i64::from(index) * APART,
            offset_min: 60,
        };
        let sitting = SittingId(u64::from(index / 10));
        let what = match (index / 10 % 4, index % 10) {
            (0, place) => case(sitting, index, place),
            (_, 0) => What::SittingBegun(SittingBegun {
                sitting,
                minutes: 5,
                questions: Vec::new(),
            }),
            (_, 9) => What::SittingEnded(SittingEnded { sitting }),
            _ => answer(sitting, index, &bank),
        };
        log.append(at, what);
    }
    Ok(log.export())
}

fn now() -> i64 {
    let since = SystemTime::now().duration_since(UNIX_EPOCH);
    since.map_or(0, |since| {
        i64::try_from(since.as_millis()).unwrap_or(i64::MAX)
    })
}

fn answer(sitting: SittingId, index: u32, bank: &Bank) -> What {
    // A stride without a common factor goes over all families.
    let at = usize::try_from(index).unwrap_or(0) * 397 % bank.ids().len();
    let right = !index.is_multiple_of(5);
    What::QuestionAnswered(QuestionAnswered {
        sitting,
        question: bank.ids()[at].0.clone(),
        wording: u64::from(index),
        competency: "instruments".into(),
        answer: Given::One("a".into()),
        verdict: if right {
            Verdict::Right
        } else {
            Verdict::Wrong
        },
        per_cent: PerCent::of(if right { 100 } else { 0 }),
        hint: false,
        unsure: index.is_multiple_of(7),
        seconds: 14,
    })
}

fn case(sitting: SittingId, index: u32, place: u32) -> What {
    match place {
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

//! How long a record of 10,000 events takes to open, grow, fold and pass on.
//!
//! `cargo bench -p record` prints the median of several runs.

use std::hint::black_box;
use std::time::{Duration, Instant};

use record::{
    CaseAnswered, CaseFinished, CaseStarted, Log, MemoryStore, Moment, PerCent, SittingId, Store,
    Verdict, What, Writer, folds,
};

const EVENTS: u32 = 10_000;
const RUNS: usize = 21;

fn main() {
    let store = MemoryStore::new();
    fill(&store, 1, EVENTS);
    let stored: usize = store
        .keys()
        .unwrap_or_default()
        .iter()
        .filter_map(|key| store.get(key).ok()?)
        .map(|text| text.chars().count())
        .sum();
    println!("{EVENTS} events, {stored} letters stored");

    show("open", || {
        black_box(Log::open(store.clone(), Writer(2)).events().len());
    });
    let mut log = Log::open(store.clone(), Writer(2));
    show("refresh, nothing new", || {
        black_box(log.refresh());
    });
    show("fold: cases under way", || {
        black_box(folds::under_way(log.events()));
    });
    show("fold: by competency", || {
        black_box(folds::by_competency(log.events()));
    });
    let file = log.export();
    show("export", || {
        black_box(log.export());
    });
    show("import into an empty record", || {
        let mut empty = Log::open(MemoryStore::new(), Writer(3));
        black_box(empty.import(file.as_bytes()).is_ok());
    });
    show("append 64 to the full record", || {
        fill_log(&mut log, 64);
    });
}

fn fill(store: &MemoryStore, writer: u64, count: u32) {
    fill_log(&mut Log::open(store.clone(), Writer(writer)), count);
}

fn fill_log(log: &mut Log<MemoryStore>, count: u32) {
    for index in 0..count {
        let at = Moment {
            utc_ms: 1_764_055_845_000 + i64::from(index) * 30_000,
            offset_min: 60,
        };
        log.append(at, what(index));
    }
}

/// Cases of ten events each: a start, eight answers, an end.
fn what(index: u32) -> What {
    let sitting = SittingId(u64::from(index / 10));
    match index % 10 {
        0 => What::CaseStarted(CaseStarted {
            sitting,
            case: "deep-caries-temporary".into(),
            seed: u64::from(index) * 0x9e37_79b9,
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
            answer: vec![
                "reinforced-zinc-oxide-eugenol".into(),
                "cotton-pellet".into(),
            ],
            verdict: Verdict::Right,
            per_cent: PerCent::of(90),
            competency: format!("competency-{decision}"),
            seconds: 21,
        }),
    }
}

fn show(name: &str, mut run: impl FnMut()) {
    let mut times: Vec<Duration> = (0..RUNS)
        .map(|_| {
            let start = Instant::now();
            run();
            start.elapsed()
        })
        .collect();
    times.sort();
    println!("{name}: {:.2?}", times[RUNS / 2]);
}

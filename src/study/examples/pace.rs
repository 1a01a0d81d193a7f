//! How long it takes to list every question and to write them, and which listed
//! questions are not written.
//!
//! `cargo run --release -p study --example pace`

use clinic::Clinic;
use std::{collections::BTreeMap, path::Path, rc::Rc, time::Instant};
use study::question::Bank;

fn main() -> Result<(), String> {
    let content = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../content");
    let catalogue = catalogue::source::read(&content).map_err(|faults| {
        let lines: Vec<String> = faults.iter().map(ToString::to_string).collect();
        lines.join("\n")
    })?;
    let clinic = Clinic::new(Rc::new(catalogue));
    let start = Instant::now();
    let bank = Bank::new(&clinic);
    println!(
        "{} questions listed in {:?}",
        bank.ids().len(),
        start.elapsed()
    );
    let mut slowest: BTreeMap<&str, (u32, u128)> = BTreeMap::new();
    let mut all = 0;
    for seed in 0..3 {
        for id in bank.ids() {
            let start = Instant::now();
            if bank.write(id, seed).is_none() {
                println!("not written: {id} with seed {seed}");
            }
            let took = start.elapsed().as_nanos();
            all += took;
            let of = slowest.entry(id.family()).or_default();
            *of = (of.0 + 1, of.1 + took);
        }
    }
    let written = bank.ids().len() as u128 * 3;
    println!("1,000 questions written in {} ms", all / written / 1000);
    for (family, (count, took)) in slowest {
        println!("{family}: {} µs each", took / u128::from(count) / 1000);
    }
    Ok(())
}

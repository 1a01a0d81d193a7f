//! How fast questions are listed and written, and what the schedule of reviews
//! is worth: simulated students at equal minutes.

use clinic::Clinic;
use std::{collections::BTreeMap, hint::black_box, path::Path, rc::Rc, time::Instant};
use study::{
    question::Bank,
    simulation::{Setting, compare},
};

/// Milliseconds that a phone four times slower may take for a thousand
/// questions, brought back to this computer.
const BUDGET: f64 = 200.0 / 4.0;

fn main() {
    let content = Path::new(env!("CARGO_MANIFEST_DIR")).join("../content");
    let Ok(read) = catalogue::source::read(&content) else {
        println!("The content has faults: run `cargo site check`.");
        return;
    };
    let clinic = Clinic::new(Rc::new(read));
    let begun = Instant::now();
    let bank = Bank::new(&clinic);
    let listed = begun.elapsed().as_secs_f64() * 1000.0;
    let step = (bank.ids().len() / 1000).max(1);
    let begun = Instant::now();
    for id in bank.ids().iter().step_by(step).take(1000) {
        black_box(bank.write(id, 1));
    }
    let written = begun.elapsed().as_secs_f64() * 1000.0;
    let mut families: BTreeMap<&str, usize> = BTreeMap::new();
    for id in bank.ids() {
        *families.entry(id.family()).or_default() += 1;
    }
    let (count, of) = (bank.ids().len(), families.len());
    println!("{:<44} {count:>9} in {of} families", "questions");
    println!("{:<44} {listed:>9.1} ms", "questions: list all");
    let verdict = if written <= BUDGET { "within" } else { "OVER" };
    println!(
        "{:<44} {written:>9.1} {verdict:>6} {BUDGET} ms",
        "questions: write 1,000"
    );
    println!("{}", compare(Setting::default()));
}

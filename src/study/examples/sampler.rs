//! Prints questions as a teacher would read them.
//!
//! `cargo run -p study --example sampler -- [family | all | ids] [how many] [seed]`
//!
//! `ids` lists the id of every question instead.

use catalogue::{ids::SourceId, quantity::Milli};
use clinic::{Clinic, case::Seed, standing::Standing};
use std::{env, path::Path, rc::Rc};
use study::question::{Bank, Form, Question, Shown};

fn main() -> Result<(), String> {
    let content = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../content");
    let catalogue = catalogue::source::read(&content).map_err(|faults| {
        let lines: Vec<String> = faults.iter().map(ToString::to_string).collect();
        lines.join("\n")
    })?;
    let clinic = Clinic::new(Rc::new(catalogue));
    let bank = Bank::new(&clinic);
    let arguments: Vec<String> = env::args().skip(1).collect();
    let wanted = arguments.first().map_or("all", String::as_str);
    if wanted == "ids" {
        bank.ids().iter().for_each(|id| println!("{id}"));
        return Ok(());
    }
    let count: usize = arguments.get(1).and_then(|n| n.parse().ok()).unwrap_or(5);
    let mut seed = Seed::new(arguments.get(2).and_then(|n| n.parse().ok()).unwrap_or(1));
    for family in bank
        .families()
        .iter()
        .filter(|f| wanted == "all" || f.id == wanted)
    {
        let ids: Vec<_> = bank
            .ids()
            .iter()
            .filter(|id| id.family() == family.id)
            .collect();
        println!(
            "\n==== {}: {} ({} questions)",
            family.id,
            family.name,
            ids.len()
        );
        for _ in 0..count.min(ids.len()) {
            let Some(id) = seed.pick(&ids) else { continue };
            match bank.write(id, seed.bits()) {
                Some(question) => print(&clinic, &question),
                None => println!("\n{id}: nothing is written"),
            }
        }
    }
    Ok(())
}

fn print(clinic: &Clinic, question: &Question) {
    let names = clinic.catalogue();
    println!(
        "\n[{}] {} {:?} {} s, {}",
        question.id, question.difficulty, question.level, question.seconds, question.competency
    );
    println!("{}", question.stem);
    match &question.shown {
        Shown::Nothing => {}
        Shown::Items(items) => {
            let items: Vec<&str> = items.iter().map(|i| names.item_name(i)).collect();
            println!("  ({})", items.join("; "));
        }
        Shown::Drawing(item) => println!("  (drawing of {item})"),
        Shown::Lines(lines) => lines.iter().for_each(|l| println!("  | {l}")),
    }
    for choice in question.form.choices() {
        let mark = match choice.standing {
            Standing::Right | Standing::Acceptable => '+',
            Standing::Wrong => '-',
            Standing::Unsafe => '!',
        };
        println!("  {mark} {}   <{}>", choice.text, choice.because);
    }
    match &question.form {
        Form::Order { pieces, target } => {
            for key in target.stages.iter().flatten() {
                let piece = pieces.iter().find(|p| p.key == *key);
                println!("  > {}", piece.map_or("?", |p| p.text.as_str()));
            }
        }
        Form::Match { pairs, right, .. } => {
            for (left, key) in pairs {
                let name = right.iter().find(|p| p.key == *key);
                println!(
                    "  drawing of {left} = {}",
                    name.map_or("?", |p| p.text.as_str())
                );
            }
        }
        Form::Number { unit, from, to } => println!("  = {} {unit}", range(*from, *to)),
        _ => {}
    }
    for reason in &question.reasons {
        let sources: Vec<&str> = reason.sources.iter().map(SourceId::as_str).collect();
        println!("  because {} [{}]", reason.because, sources.join(", "));
    }
}

fn range(from: Milli, to: Milli) -> String {
    if from == to {
        from.to_string()
    } else {
        format!("{from} to {to}")
    }
}

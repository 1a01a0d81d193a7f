//! Assignments and hand-ins made beside the page, as other devices make them.

use std::path::Path;
use std::rc::Rc;

use anyhow::{Context, Result};
use class::assignment::{Assignment, Seat, Set};
use class::bank::Version;
use class::cases;
use class::handin::HandIn;
use class::task::{Order, Response, Task};
use clinic::Clinic;
use clinic::case::{Decision, Form};
use serde_json::json;

use crate::browser::{Page, setting};

/// The reasoning over the catalogue as it is taught.
///
/// # Errors
/// When the content has faults.
pub fn clinic() -> Result<Clinic> {
    let content = Path::new(env!("CARGO_MANIFEST_DIR")).join("../content");
    let catalogue = catalogue::source::read(&content)
        .map_err(|faults| anyhow::anyhow!("content has {} faults", faults.len()))?;
    Ok(Clinic::new(Rc::new(catalogue)))
}

/// The bank of the built site: what the page unpacks.
///
/// # Errors
/// When the built site has no catalogue.
pub fn bank() -> Result<Version> {
    for entry in std::fs::read_dir(setting("TRAYWARD_DIST")?)? {
        let path = entry?.path();
        let name = path.file_name().unwrap_or_default().to_string_lossy();
        if name.starts_with("catalogue-") && path.extension().is_some_and(|it| it == "bin") {
            return Ok(Version::of(&std::fs::read(path)?));
        }
    }
    anyhow::bail!("the built site has no catalogue")
}

/// An assignment from the bank of the built site that is the same for every seat.
///
/// # Errors
/// When the built site has no catalogue.
pub fn alike(title: u8, seed: u32, tasks: Vec<Set>) -> Result<Assignment> {
    Ok(Assignment {
        bank: bank()?,
        title,
        seed,
        due: None,
        pass_mark: 75,
        tries: 0,
        hints: false,
        alike: true,
        card: None,
        tasks,
    })
}

/// A case of a frame, so many times.
pub fn cases_of(frame: &str, times: u8) -> Set {
    let order = Order {
        frame: Some(frame.into()),
        ..Order::default()
    };
    Set {
        task: Task::Case(order),
        times,
    }
}

/// What each task of an assignment asks a seat.
///
/// # Errors
/// When a task is none that has decisions.
pub fn asked(clinic: &Clinic, set: &Assignment, seat: Seat) -> Result<Vec<Vec<Decision>>> {
    let decisions = set.slots().into_iter().map(|slot| {
        let seed = set.seed(seat, slot.place);
        Some(match &*slot.task {
            Task::Case(order) => cases::case(clinic, order, seed)?.decisions,
            Task::Reading => clinic.tray_reading(seed)?.decisions.into(),
            _ => return None,
        })
    });
    decisions
        .collect::<Option<_>>()
        .context("a task cannot be drawn")
}

/// What a seat hands in that fails the decisions that `slips` names, by the
/// place of the task and the place within it.
pub fn hand_in(
    set: &Assignment,
    asked: &[Vec<Decision>],
    seat: Seat,
    slips: impl Fn(usize, usize) -> bool,
) -> HandIn {
    let respond = |task: usize, at: usize, decision: &Decision| {
        let best = decision.best_answer();
        let taken = match (slips(task, at), &decision.form) {
            (true, Form::One) => {
                let ids = decision.choices.iter().map(|choice| choice.id.clone());
                ids.into_iter()
                    .find(|id| !best.contains(id))
                    .into_iter()
                    .collect()
            }
            (true, _) => best.iter().take(best.len() / 2).cloned().collect(),
            _ => best,
        };
        Response {
            answer: cases::answer(decision, &taken),
            seconds: u32::try_from(20 + at).unwrap_or(20),
            hinted: false,
        }
    };
    let responses = asked.iter().enumerate().map(|(task, decisions)| {
        let answers = decisions.iter().enumerate();
        answers.map(|(at, it)| respond(task, at, it)).collect()
    });
    HandIn {
        bank: set.bank,
        assignment: set.id(),
        seat,
        attempt: 1,
        finished: 29_000_000 + u32::from(seat.0),
        responses: responses.collect(),
    }
}

/// Puts an assignment onto the instructor's device of a page that is open, in
/// the stored form that the page itself uses.
///
/// # Errors
/// When the page may not store anything.
pub async fn keep(page: &Page, set: &Assignment) -> Result<()> {
    let head = format!("trayward-class 1\n1764055845000\n{}\n", set.letters());
    let text = format!("{head}end 2 {:08x}\n", class::checksum(head.as_bytes()));
    let key = format!("trayward/class/set/{:08x}", set.id());
    let script = format!("localStorage.setItem({}, {});", json!(key), json!(text));
    page.run(&script).await.map(drop)
}

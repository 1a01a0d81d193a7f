//! A visit played as a student would: the answers come from the same reasoning
//! that grades them, so a journey follows whatever the catalogue says.

use anyhow::{Context, Result};
use clinic::{
    Clinic,
    case::{Case, Decision, Form, Sum},
};
use trayward_tests::browser::{Page, hook};

pub use trayward_tests::class::clinic;

/// A case of the catalogue as it is taught.
pub fn case(frame: &str, seed: u64) -> Result<Case> {
    drawn(&clinic()?, frame, seed)
}

/// A case as some reasoning draws it.
pub fn drawn(clinic: &Clinic, frame: &str, seed: u64) -> Result<Case> {
    let frame = clinic
        .catalogue()
        .case(&frame.into())
        .context("no such frame")?
        .clone();
    clinic.case(&frame, seed).context("no possible patient")
}

/// The address of a case.
pub fn address(case: &Case) -> String {
    format!("#/cases/{}/{}", case.frame, case.seed)
}

/// How a student moves about the page.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum By {
    /// With a finger, or a mouse where there is no touch.
    Tap,
    /// With the keyboard alone.
    Keys,
}

impl By {
    /// Presses or follows what a selector finds.
    pub async fn take(self, page: &Page, css: &str) -> Result<()> {
        page.see(css).await?;
        match self {
            Self::Tap => {
                // Bars that stay in place may lie over what is at the rim.
                page.run(&format!(
                    "document.querySelector({}).scrollIntoView({{ block: 'center' }});",
                    serde_json::json!(css)
                ))
                .await?;
                page.tap(css).await
            }
            Self::Keys => page.enter(css).await,
        }
    }

    /// Ticks or takes a choice in a row of its own.
    pub async fn choose(self, page: &Page, id: &str) -> Result<()> {
        let input = hook(&format!("choice-{id}"));
        match self {
            Self::Tap => Box::pin(self.take(page, &format!("label:has({input})"))).await,
            // A space ticks a box and takes an option, wherever Tab comes in.
            Self::Keys => {
                page.run(&format!("document.querySelector('{input}').focus();"))
                    .await?;
                page.type_text(" ").await
            }
        }
    }
}

/// Starts a case that is open on the screen.
pub async fn start(page: &Page, by: By) -> Result<()> {
    by.take(page, &hook("case-start")).await
}

/// Answers one decision as well as can be, and sees the verdict.
pub async fn answer(page: &Page, decision: &Decision, by: By) -> Result<()> {
    page.see(&hook(&format!("decision-{}", decision.id)))
        .await?;
    match &decision.form {
        Form::One | Form::All => {
            for id in decision.best_answer() {
                by.choose(page, &id).await?;
            }
        }
        Form::Tray { .. } => {
            for id in decision.best_answer() {
                by.take(page, &hook(&format!("lay-{id}"))).await?;
            }
        }
        Form::Number(sum) => page.fill(&hook("typed"), &typed(sum)).await?,
        // The order in which the moves are shown is an answer too.
        Form::Order(_) => {}
    }
    by.take(page, &hook("answer")).await?;
    page.see(&hook("verdict")).await?;
    if !matches!(decision.form, Form::Order(_)) {
        page.read(&hook("verdict"), "Right").await?;
    }
    Ok(())
}

/// Goes on after a verdict.
pub async fn go_on(page: &Page, by: By) -> Result<()> {
    by.take(page, &hook("go-on")).await
}

/// Plays the decisions from this place on to the end.
pub async fn play_from(page: &Page, case: &Case, from: usize, by: By) -> Result<()> {
    for decision in &case.decisions[from..] {
        answer(page, decision, by).await?;
        go_on(page, by).await?;
    }
    page.see(&hook("debrief")).await
}

/// The right answer to a number step, as a student would type it.
pub fn typed(sum: &Sum) -> String {
    let words = sum.problem.answer.words().replace("whole ", "");
    let number = words.split(" (").next().unwrap_or_default();
    number.split(" to ").next().unwrap_or_default().to_owned()
}

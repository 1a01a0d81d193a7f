//! Each kind of task, done in the page as a student would, and natively beside it.

use anyhow::{Context, Result, ensure};
use class::mixes;
use clinic::{
    Clinic,
    case::Decision,
    mixing::{Action, Mix, Share, Stroke, Units, Vigour},
    numbers::exercises::{Answer as Wanted, Exercise},
};
use study::question::{Answer as Given, Question};
use trayward_tests::browser::{Page, hook};

use super::{take_kind, with_questions};
use crate::visit::By;

/// Answers the questions about a tray as well as can be.
pub async fn read_tray(page: &Page, by: By, decisions: &[Decision]) -> Result<()> {
    for decision in decisions {
        page.see(&hook(&format!("ask-{}", decision.id))).await?;
        let taken = decision.best_answer();
        for id in taken {
            let input = hook(&format!("choice-{id}"));
            if page.count(&format!("label:has({input})")).await? > 0 {
                by.choose(page, &id).await?;
            } else {
                by.take(page, &input).await?;
            }
        }
        by.take(page, &hook("answer")).await?;
    }
    page.see(&hook("reading-sum")).await
}

/// A mix made in words, here and natively, with a reload in the middle.
pub async fn mix(page: &Page, by: By, clinic: &Clinic, drawn: &mixes::Drawn) -> Result<()> {
    page.see(&hook("room-set")).await?;
    page.assert_accessible("a mix that is asked for").await?;
    // The hint is looked at: it is told in the hand-in.
    by.take(page, &hook("hint")).await?;
    page.see(&hook("hint-shown")).await?;
    take_kind(page, by, &hook("way-words")).await?;
    by.take(page, &hook("open-bench")).await?;
    page.see(&hook("bench-moves")).await?;
    let offer = &drawn.offer;
    let catalogue = clinic.catalogue();
    let mut twin = Mix::new(catalogue, &offer.material, Some(&offer.usage), drawn.room)
        .map_err(anyhow::Error::msg)?;
    let area = offer.area;
    let work = format!("do-work-{area:?}-60").to_lowercase();
    let steps = ["do-powder-1", "do-liquid-1", "do-bring-in-1"];
    let steps = steps
        .into_iter()
        .chain([work.as_str(), "do-test", "do-give-it"]);
    for (at, step) in steps.enumerate() {
        let moves = twin.options(drawn.wanted.ready, drawn.wanted.placing);
        let fits = |action: &Action| match (step, action) {
            ("do-powder-1", Action::DispensePowder(units))
            | ("do-liquid-1", Action::DispenseLiquid(units)) => *units == Units::of(1.0),
            ("do-bring-in-1", Action::BringIn(share)) => *share == Share::of(1.0),
            ("do-test", Action::Test) | ("do-give-it", Action::HandOver { .. }) => true,
            (step, Action::Spatulate { stroke, .. }) => {
                let wanted = Stroke {
                    vigour: Vigour::FIRM,
                    area,
                };
                step == work && *stroke == wanted
            }
            _ => false,
        };
        let action = moves.into_iter().map(|it| it.action).find(fits);
        let action = action.with_context(|| format!("{step} is not on offer"))?;
        by.take(page, &hook(step)).await?;
        twin.act(action).map_err(anyhow::Error::msg)?;
        if at == 2 {
            page.read(&hook("mix-seen"), &twin.look().sentence).await?;
            page.reload().await?;
            page.ready().await?;
            page.read(&hook("mix-seen"), &twin.look().sentence).await?;
        }
    }
    let verdict = twin.verdict().context("no verdict")?;
    page.read(&hook("mix-cause"), &verdict.cause).await?;
    ensure!(page.count(&hook("mix-again")).await? == 0, "made only once");
    // What was handed over stays handed over.
    page.reload().await?;
    page.ready().await?;
    page.read(&hook("mix-marks"), &format!("{} of 100", verdict.marks))
        .await?;
    page.assert_accessible("a mix that was judged").await
}

/// Types the answer to an exercise; half of it survives a reload.
pub async fn number(page: &Page, by: By, drawn: &Exercise) -> Result<()> {
    page.read(&hook("stem"), &drawn.stem).await?;
    let Wanted::Number { value, .. } = &drawn.answer else {
        anyhow::bail!("it is no number")
    };
    page.fill(&hook("typed"), &value.text(3)).await?;
    page.reload().await?;
    page.ready().await?;
    page.see(&hook("typed")).await?;
    let typed: String = page
        .value(&format!(
            "document.querySelector('{}').value",
            hook("typed")
        ))
        .await?;
    ensure!(typed == value.text(3), "{typed} is left of what was typed");
    by.take(page, &hook("answer")).await?;
    page.read(&hook("graded"), "Right").await?;
    page.assert_accessible("a number that was worked out").await
}

/// Answers a question as well as can be, or wrongly.
async fn answer(page: &Page, by: By, question: &Question, well: bool) -> Result<()> {
    let best = match question.best() {
        Given::One(key) => vec![key],
        Given::Many(keys) => keys,
        _ => Vec::new(),
    };
    let choices = question.form.choices();
    let other = choices.iter().find(|it| !best.contains(&it.key));
    let taken = match (well, other) {
        (false, Some(other)) => vec![other.key.clone()],
        _ => best,
    };
    for key in taken {
        let input = hook(&format!("choice-{key}"));
        if page.count(&format!("label:has({input})")).await? > 0 {
            by.choose(page, &key).await?;
        } else {
            by.take(page, &input).await?;
        }
    }
    Ok(())
}

/// Answers a question, and sees it explained.
pub async fn question(page: &Page, by: By, drawn: &Question) -> Result<()> {
    with_questions(page, &hook("question")).await?;
    page.read(&hook("stem"), &drawn.stem).await?;
    page.assert_accessible("a question that is asked").await?;
    answer(page, by, drawn, true).await?;
    by.take(page, &hook("answer")).await?;
    page.read(&hook("verdict"), "Right").await?;
    page.see(&hook("why")).await?;
    page.assert_accessible("a question that was answered").await
}

/// Answers every other question of a form well, and hands it in.
pub async fn form(page: &Page, by: By, questions: &[Question]) -> Result<()> {
    for (at, drawn) in questions.iter().enumerate() {
        with_questions(page, &hook("question")).await?;
        page.read(&hook("stem"), &drawn.stem).await?;
        answer(page, by, drawn, at % 2 == 0).await?;
        if at == 3 {
            // A form is gone on with where it was left.
            page.reload().await?;
            page.ready().await?;
            with_questions(page, &hook("question")).await?;
            page.read(&hook("stem"), &drawn.stem).await?;
        }
        by.take(page, &hook("next")).await?;
    }
    page.see(&hook("cells")).await?;
    by.take(page, &hook("hand-in")).await?;
    // Once more, where something was left blank.
    if page.count(&hook("result")).await? == 0 && page.count(&hook("blank-left")).await? > 0 {
        by.take(page, &hook("hand-in")).await?;
    }
    page.see(&hook("result")).await?;
    page.assert_accessible("a form that was handed in").await
}

//! Study: a sitting by touch and by keyboard, a practice form with its pause
//! and a reload, and a set examination day. What is right comes from the same
//! questions natively, by the id that stands in the page.

use anyhow::{Context, Result, ensure};
use study::question::{Answer, Bank, Question, QuestionId};
use thirtyfour::Key;
use trayward_tests::browser::{Look, Page, Site, hook};

use crate::visit::{By, clinic};

/// All questions as they are taught.
fn bank() -> Result<Bank> {
    Ok(Bank::new(&clinic()?))
}

/// The question on screen. Keys are the same in every wording.
async fn on_screen(page: &Page, bank: &Bank) -> Result<Question> {
    page.see(&hook("question")).await?;
    let id: String = page
        .value("document.querySelector('[data-question]').dataset.question")
        .await?;
    bank.write(&QuestionId(id.clone()), 0)
        .with_context(|| format!("no question {id}"))
}

/// Takes a choice, whether it is a row to tick or a thing to lay.
async fn choose(by: By, page: &Page, key: &str) -> Result<()> {
    let input = hook(&format!("choice-{key}"));
    if page.count(&format!("label:has({input})")).await? > 0 {
        by.choose(page, key).await
    } else {
        by.take(page, &input).await
    }
}

/// Marks the question as unsure.
async fn choose_unsure(by: By, page: &Page) -> Result<()> {
    let mark = hook("unsure");
    match by {
        By::Tap => by.take(page, &format!("label:has({mark})")).await,
        By::Keys => {
            page.tab_to(&mark).await?;
            page.type_text(" ").await
        }
    }
}

/// Answers the question on screen as well as can be.
async fn answer(by: By, page: &Page, question: &Question) -> Result<()> {
    match question.best() {
        Answer::One(key) => choose(by, page, &key).await,
        Answer::Many(keys) => {
            for key in keys {
                choose(by, page, &key).await?;
            }
            Ok(())
        }
        // The order in which the pieces are shown is an answer too.
        Answer::Order(_) => Ok(()),
        Answer::Pairs(pairs) => {
            for (left, right) in pairs {
                let list = hook(&format!("pair-{left}"));
                if page.count(&list).await? > 0 {
                    page.run(&format!(
                        "const list = document.querySelector('{list}'); list.value = {}; \
                         list.dispatchEvent(new Event('change', {{ bubbles: true }}));",
                        serde_json::json!(right)
                    ))
                    .await?;
                }
            }
            Ok(())
        }
        Answer::Number(number) => page.fill(&hook("typed"), &number.to_string()).await,
    }
}

/// Waits for a screen that needs all questions; a slow machine needs longer
/// than one wait to make them ready.
async fn with_questions(page: &Page, css: &str) -> Result<()> {
    for _ in 0..3 {
        if page.see(css).await.is_ok() {
            return Ok(());
        }
    }
    page.see(css).await
}

async fn a_sitting(by: By) -> Result<()> {
    let (site, bank) = (Site::serve().await?, bank()?);
    let page = Page::at(&site, "#/today", Look::PHONE).await?;
    by.take(&page, &hook("sit-5")).await?;
    with_questions(&page, &hook("composed")).await?;
    by.take(&page, &hook("begin")).await?;
    let first = on_screen(&page, &bank).await?;
    page.assert_accessible("a question of a sitting").await?;
    // Half an answer survives a reload, and so does the question.
    choose_unsure(by, &page).await?;
    page.reload().await?;
    page.ready().await?;
    let again = on_screen(&page, &bank).await?;
    ensure!(first.id == again.id, "another question after the reload");
    let unsure: bool = page
        .value(&format!(
            "document.querySelector('{}').checked",
            hook("unsure")
        ))
        .await?;
    ensure!(unsure, "the mark was lost in the reload");
    for at in 0..3 {
        let question = on_screen(&page, &bank).await?;
        answer(by, &page, &question).await?;
        by.take(&page, &hook("answer")).await?;
        page.see(&hook("verdict")).await?;
        if !matches!(question.best(), Answer::Order(_) | Answer::Pairs(_)) {
            page.read(&hook("verdict"), "Right").await?;
        }
        page.see(&hook("why")).await?;
        if at == 0 {
            page.assert_accessible("an explained question").await?;
        }
        by.take(&page, &hook("go-on")).await?;
    }
    page.read(&hook("progress"), "3 of").await?;
    by.take(&page, &hook("pause")).await?;
    by.take(&page, &hook("resume-sitting")).await?;
    page.read(&hook("progress"), "3 of").await?;
    by.take(&page, &hook("end")).await?;
    page.see(&hook("summary")).await?;
    page.assert_accessible("the end of a sitting").await?;
    page.quit().await
}

#[tokio::test]
#[ignore = "needs a built site and a browser"]
async fn a_sitting_of_five_minutes_is_played_by_touch() -> Result<()> {
    a_sitting(By::Tap).await
}

#[tokio::test]
#[ignore = "needs a built site and a browser"]
async fn a_sitting_of_five_minutes_is_played_by_keyboard() -> Result<()> {
    a_sitting(By::Keys).await
}

#[tokio::test]
#[ignore = "needs a built site and a browser"]
async fn a_form_is_flagged_paused_reloaded_and_handed_in() -> Result<()> {
    let (site, bank) = (Site::serve().await?, bank()?);
    let page = Page::at(&site, "#/form", Look::PHONE).await?;
    let by = By::Tap;
    with_questions(&page, &hook("begin-form")).await?;
    by.take(&page, &hook("begin-form")).await?;
    let first = on_screen(&page, &bank).await?;
    answer(by, &page, &first).await?;
    by.take(&page, &format!("label:has({})", hook("flag")))
        .await?;
    by.take(&page, &hook("next")).await?;
    page.read(&hook("stem"), "2 of 20").await?;
    by.take(&page, &hook("to-whole")).await?;
    page.read(&hook("form-state"), "1 of 20 answered, 1 flagged")
        .await?;
    page.assert_accessible("a form as a whole").await?;
    by.take(&page, &hook("pause-form")).await?;
    page.see(&hook("paused")).await?;
    page.reload().await?;
    page.ready().await?;
    by.take(&page, &hook("resume-form")).await?;
    page.read(&hook("form-state"), "1 of 20 answered, 1 flagged")
        .await?;
    // Back to what was flagged: the answer is still there.
    by.take(&page, &hook("cell-1")).await?;
    ensure!(on_screen(&page, &bank).await?.id == first.id);
    by.take(&page, &hook("to-whole")).await?;
    // With the keyboard to the end; blanks are told before it is handed in.
    page.enter(&hook("hand-in")).await?;
    page.read(&hook("blank-left"), "19 left blank").await?;
    page.enter(&hook("hand-in")).await?;
    page.read(&hook("result"), "of 20 right").await?;
    page.read(&hook("result"), "Paused 1 time").await?;
    page.see(&hook("by-competency")).await?;
    page.assert_accessible("the result of a form").await?;
    page.quit().await
}

#[tokio::test]
#[ignore = "needs a built site and a browser"]
async fn a_shared_form_is_the_same_for_all_who_have_its_code() -> Result<()> {
    let (site, bank) = (Site::serve().await?, bank()?);
    let page = Page::at(&site, "#/form", Look::PHONE).await?;
    with_questions(&page, &hook("make-code")).await?;
    page.tap(&hook("make-code")).await?;
    let code = page.text(&format!("{} a", hook("made-code"))).await?;
    let mut firsts = Vec::new();
    for _ in 0..2 {
        // A browser of its own each time.
        let other = Page::at(&site, &format!("#/form/code/{code}"), Look::PHONE).await?;
        with_questions(&other, &hook("begin-code")).await?;
        other.tap(&hook("begin-code")).await?;
        firsts.push((
            on_screen(&other, &bank).await?.id,
            other.text(&hook("stem")).await?,
        ));
        other.quit().await?;
    }
    ensure!(firsts[0] == firsts[1], "not the same form: {firsts:?}");
    page.fill(&hook("code"), "0000-nonsense").await?;
    page.tap(&hook("begin-code")).await?;
    page.see(&hook("refused")).await?;
    page.quit().await
}

#[tokio::test]
#[ignore = "needs a built site and a browser"]
async fn an_examination_day_is_set_and_one_in_the_past_is_told() -> Result<()> {
    let site = Site::serve().await?;
    let page = Page::at(&site, "#/plan", Look::PHONE).await?;
    let set = |day: &'static str| {
        format!(
            "const field = document.querySelector('{}'); field.value = '{day}'; \
             field.dispatchEvent(new Event('change', {{ bubbles: true }}));",
            hook("day")
        )
    };
    page.run(&set("2199-01-01")).await?;
    page.read(&hook("day-words"), "1 January 2199").await?;
    page.run(&set("2020-01-01")).await?;
    page.read(&hook("day-words"), "has passed").await?;
    page.fill(&hook("minutes"), "4").await?;
    page.press(Key::Tab).await?;
    page.read(&hook("wrong"), "from 5 to 180").await?;
    page.reload().await?;
    page.ready().await?;
    page.read(&hook("day-words"), "has passed").await?;
    page.assert_accessible("the plan").await?;
    page.quit().await
}

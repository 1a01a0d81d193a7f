//! Looking things up: the search, the words of the trade, the plates, and what
//! of it is printed.

use anyhow::{Context, Result, ensure};
use base64::{Engine as _, engine::general_purpose::STANDARD};
use serde_json::json;
use trayward_tests::browser::{Look, Page, Site, hook};

/// Points in a millimetre: a point is a seventy-second of an inch of 25.4 mm
/// (ISO 32000, default user space; value from memory).
const POINTS: f64 = 72.0 / 25.4;

/// Prints the page, each sheet as large as its style sheet says, and gives the
/// sheets' widths and heights in millimetres.
async fn printed(page: &Page) -> Result<Vec<(f64, f64)>> {
    let wish = json!({ "preferCSSPageSize": true, "printBackground": true });
    let printed = page.devtools("Page.printToPDF", wish).await?;
    let pdf = printed["data"].as_str().context("No file was printed.")?;
    let pdf = STANDARD.decode(pdf)?;
    let text = String::from_utf8_lossy(&pdf);
    let boxes = text.split("/MediaBox").skip(1).map(|rest| {
        let inner = rest.split(['[', ']']).nth(1).context("no box")?;
        let sides: Vec<f64> = inner
            .split_whitespace()
            .map(str::parse)
            .collect::<Result<_, _>>()?;
        ensure!(sides.len() == 4, "a page has the box {inner}");
        Ok((sides[2] / POINTS, sides[3] / POINTS))
    });
    boxes.collect()
}

/// Fails unless every sheet is as large as the paper, to a millimetre.
fn assert_paper(sheets: &[(f64, f64)], width: f64, height: f64) {
    assert!(!sheets.is_empty(), "nothing was printed");
    for (wide, high) in sheets {
        let near = (wide - width).abs() < 1.0 && (high - height).abs() < 1.0;
        assert!(near, "a sheet of {wide:.1} x {high:.1} mm");
    }
}

#[tokio::test]
#[ignore = "needs a built site and a browser"]
async fn a_search_with_slips_leads_to_the_thing() -> Result<()> {
    let site = Site::serve().await?;
    let page = Page::at(&site, "#/bench", Look::PHONE).await?;
    page.tap(&hook("go-find")).await?;
    page.fill(&hook("find"), "spon excavater small").await?;
    page.read(&hook("found"), "Small spoon excavator").await?;
    assert_eq!(page.fragment().await?, "#/find/spon+excavater+small");
    page.assert_accessible("what was found").await?;
    assert!(!page.is_too_wide().await?);
    page.tap("[data-test=found] a").await?;
    page.read("h1", "Small spoon excavator").await?;
    // Back leads to what was found, with the words still there.
    page.back().await?;
    page.read(&hook("found"), "Small spoon excavator").await?;
    let words: String = page.value("document.querySelector('#find').value").await?;
    assert_eq!(words, "spon excavater small");
    page.quit().await
}

#[tokio::test]
#[ignore = "needs a built site and a browser"]
async fn a_list_that_holds_nothing_hands_its_words_on() -> Result<()> {
    let site = Site::serve().await?;
    let page = Page::at(&site, "#/procedures", Look::PHONE).await?;
    page.fill(&hook("procedure-search"), "gutta").await?;
    page.tap(&hook("find-everywhere")).await?;
    page.read(&hook("found"), "utta").await?;
    page.quit().await
}

#[tokio::test]
#[ignore = "needs a built site and a browser"]
async fn a_reason_unfolds_where_it_was_found() -> Result<()> {
    let site = Site::serve().await?;
    let page = Page::at(&site, "#/find/bonding+fails+wet+forgive", Look::PHONE).await?;
    page.read(&hook("found"), "reason").await?;
    page.tap("[data-test=found] summary").await?;
    page.read("[data-test=found] details[open]", "Holds for")
        .await?;
    page.quit().await
}

#[tokio::test]
#[ignore = "needs a built site and a browser"]
async fn a_word_says_how_it_is_said_and_where_it_comes_up() -> Result<()> {
    let site = Site::serve().await?;
    let page = Page::at(&site, "#/glossary", Look::PHONE).await?;
    page.tap(&hook("letter-P")).await?;
    page.tap(&hook("word-pulpotomy")).await?;
    page.read("main", "pul-POT-uh-mee").await?;
    page.read(&hook("meaning"), "pulp of the crown").await?;
    page.assert_accessible("a word").await?;
    page.tap("main a[href*=\"pulpotomy-and-crown\"]").await?;
    page.tap(&hook("lesson-words")).await?;
    page.read(&hook("lesson-words"), "pul-POT-uh-mee").await?;
    page.quit().await
}

#[tokio::test]
#[ignore = "needs a built site and a browser"]
async fn names_on_plates_are_hidden_until_asked_for() -> Result<()> {
    let site = Site::serve().await?;
    let page = Page::at(&site, "#/plates", Look::PHONE).await?;
    page.tap(&hook("family-extraction-forceps")).await?;
    page.read(&hook("plates"), "orceps").await?;
    page.tap(&format!("label:has({})", hook("names-hidden")))
        .await?;
    page.see(&hook("show-name")).await?;
    let text = page.text(&hook("plates")).await?;
    assert!(!text.contains("orceps"), "a name is still there: {text}");
    assert_eq!(
        page.count("[data-test=plates] .d-label:not(:last-child)")
            .await?,
        0
    );
    page.assert_accessible("plates without names").await?;
    page.tap(&hook("show-name")).await?;
    page.read(&hook("plates"), "orceps").await?;
    page.quit().await
}

#[tokio::test]
#[ignore = "needs a built site and a browser"]
async fn every_way_to_look_things_up_is_accessible_and_narrow_enough() -> Result<()> {
    let site = Site::serve().await?;
    for look in [Look::PHONE, Look::PHONE.dark(), Look::NARROW, Look::DESK] {
        let page = Page::at(&site, "#/find", look).await?;
        for screen in [
            "#/find",
            "#/find/anesthetc",
            "#/glossary",
            "#/plates",
            "#/plates/burs",
            "#/plates/burs/life-size",
            "#/items/explorer",
            "#/items/copal-varnish",
            "#/procedures/amalgam-restoration/card?paper=a6",
        ] {
            page.go(&site.url(screen)).await?;
            page.see("main h1").await?;
            page.assert_accessible(&format!("{screen} in {look:?}"))
                .await?;
            assert!(!page.is_too_wide().await?, "{screen} in {look:?}");
        }
        page.quit().await?;
    }
    Ok(())
}

/// Paper: ISO 216 for A4 and A6, 8.5 by 11 inches for Letter (values from memory).
#[tokio::test]
#[ignore = "needs a built site and a browser"]
async fn a_tray_card_is_printed_on_the_paper_of_choice() -> Result<()> {
    let site = Site::serve().await?;
    let at = "#/procedures/amalgam-restoration/set-up?allergy-latex=yes";
    let page = Page::at(&site, at, Look::PHONE.dark()).await?;
    page.tap(&hook("tray-card")).await?;
    page.read(&hook("tray-card"), "llergic to latex").await?;
    for (paper, width, height) in [
        ("a4", 210.0, 297.0),
        ("letter", 215.9, 279.4),
        ("a6", 105.0, 148.0),
    ] {
        page.tap(&format!("label:has({})", hook(&format!("paper-{paper}"))))
            .await?;
        page.see(&format!(".tray-card.paper-{paper}")).await?;
        assert_paper(&printed(&page).await?, width, height);
    }
    // Black on white, whatever the colours of the screen.
    page.devtools(
        "Emulation.setEmulatedMedia",
        json!({ "media": "print",
        "features": [{ "name": "prefers-color-scheme", "value": "dark" }] }),
    )
    .await?;
    let colours: (String, String) = page
        .value(
            "[getComputedStyle(document.querySelector('.tray-card')).color,
              getComputedStyle(document.documentElement).backgroundColor]",
        )
        .await?;
    assert_eq!(
        colours,
        ("rgb(0, 0, 0)".into(), "rgb(255, 255, 255)".into())
    );
    page.quit().await
}

#[tokio::test]
#[ignore = "needs a built site and a browser"]
async fn life_size_drawings_are_as_long_as_the_things_are() -> Result<()> {
    let site = Site::serve().await?;
    let page = Page::at(&site, "#/items/explorer/life-size", Look::DESK).await?;
    // A CSS millimetre is 96 / 25.4 px (CSS Values and Units, 6.2; value from memory).
    let bar: f64 = page
        .value("document.querySelector('[data-test=check-bar] path').getBBox().width * 96 / 25.4 *
                document.querySelector('[data-test=check-bar]').getBoundingClientRect().width / (52 * 96 / 25.4)")
        .await?;
    assert!(
        (bar * 25.4 / 96.0 - 50.0).abs() < 0.1,
        "the bar is {bar} px long"
    );
    let scale: f64 = page
        .value(
            "(() => { const drawn = document.querySelector('.life-size-one svg');
               return drawn.getBoundingClientRect().width / drawn.viewBox.baseVal.width; })()",
        )
        .await?;
    assert!(
        (scale * 25.4 / 96.0 - 1.0).abs() < 0.002,
        "{scale} px for a millimetre"
    );
    assert!(!printed(&page).await?.is_empty());
    page.quit().await
}

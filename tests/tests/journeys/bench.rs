//! The bench: mixes made by hand and in words. What a mix should come to is asked
//! of the same model natively.

use anyhow::{Context, Result, ensure};
use catalogue::{Catalogue, kinetics::Consistency};
use clinic::mixing::{Action, Mix, Room, Share, Units, steps_of};
use serde_json::json;
use thirtyfour::Key;
use trayward_tests::{
    browser::{Look, Page, Site, hook},
    hand::work,
};

use crate::visit::{By, clinic};

/// The same mix on screen and natively.
struct Twin<'p> {
    page: &'p Page,
    by: By,
    mix: Mix,
}

impl<'p> Twin<'p> {
    async fn begin(page: &'p Page, by: By, catalogue: &Catalogue, material: &str) -> Result<Self> {
        let mix = Mix::new(catalogue, &material.into(), None, Room::usual())
            .map_err(anyhow::Error::msg)?;
        by.take(page, &hook("open-bench")).await?;
        page.see(&hook("bench-moves")).await?;
        Ok(Self { page, by, mix })
    }

    /// Does the first move on offer that fits, here and there.
    async fn does(&mut self, what: &str, fits: impl Fn(&Action) -> bool) -> Result<()> {
        let clinic = clinic()?;
        let recipe = self.mix.recipe();
        let offer = steps_of(
            clinic.catalogue(),
            &recipe.kinetics.material,
            Some(&recipe.target.id),
        )
        .map_err(anyhow::Error::msg)?;
        let wanted = clinic.wanted(&offer);
        let moves = self.mix.options(wanted.ready, wanted.placing);
        let action = moves.into_iter().map(|it| it.action).find(|it| fits(it));
        let action = action.with_context(|| format!("{what} is not on offer"))?;
        self.by
            .take(self.page, &hook(&format!("do-{what}")))
            .await?;
        self.mix.act(action).map_err(anyhow::Error::msg)?;
        let seen = self.mix.look().sentence;
        if !matches!(action, Action::HandOver { .. }) {
            self.page.read(&hook("mix-seen"), &seen).await?;
        }
        Ok(())
    }

    async fn puts_out(&mut self) -> Result<()> {
        self.does(
            "powder-1",
            |it| matches!(it, Action::DispensePowder(u) if *u == Units::of(1.0)),
        )
        .await?;
        self.does(
            "liquid-1",
            |it| matches!(it, Action::DispenseLiquid(u) if *u == Units::of(1.0)),
        )
        .await
    }

    async fn brings_in(&mut self, share: f64) -> Result<()> {
        self.does(&format!("bring-in-{share}"), |it| {
            *it == Action::BringIn(Share::of(share))
        })
        .await
    }

    async fn works(&mut self, times: u32) -> Result<()> {
        let area = self.mix.recipe().kinetics.area;
        let what = format!("work-{area:?}-60").to_lowercase();
        for _ in 0..times {
            self.does(&what, |it| {
                matches!(it, Action::Spatulate { stroke, .. } if u8::from(stroke.vigour) == 60 && stroke.area == area)
            })
            .await?;
        }
        Ok(())
    }

    async fn waits(&mut self, times: u32) -> Result<()> {
        for _ in 0..times {
            self.does("wait-10", |it| matches!(it, Action::Wait(_)))
                .await?;
        }
        Ok(())
    }

    async fn tests(&mut self) -> Result<Consistency> {
        self.does("test", |it| *it == Action::Test).await?;
        self.page
            .read(&hook("mix-said"), &self.mix.seen().sentence)
            .await?;
        self.mix.consistency().context("there is no mass")
    }

    /// Hands it over; both come to the same verdict.
    async fn hands_over(&mut self) -> Result<()> {
        self.does("give-it", |it| matches!(it, Action::HandOver { .. }))
            .await?;
        let verdict = self.mix.verdict().context("no verdict")?.clone();
        self.page.read(&hook("mix-cause"), &verdict.cause).await?;
        self.page
            .read(&hook("mix-marks"), &format!("{} of 100", verdict.marks))
            .await
    }
}

async fn choose_way(page: &Page, by: By, way: &str) -> Result<()> {
    let input = hook(&format!("way-{way}"));
    match by {
        By::Tap => page.tap(&format!("label:has({input})")).await,
        By::Keys => {
            // One of the radio buttons takes focus; arrows go on from it.
            page.tab_to("[data-test^='way-']").await?;
            for _ in 0..3 {
                if page
                    .value(&format!("document.querySelector({}).checked", json!(input)))
                    .await?
                {
                    return Ok(());
                }
                page.press(Key::Down).await?;
            }
            anyhow::bail!("{way} cannot be chosen by keyboard")
        }
    }
}

#[tokio::test]
#[ignore = "needs a built site and a browser"]
async fn a_mix_too_sticky_is_rescued_in_words_by_keyboard() -> Result<()> {
    let site = Site::serve().await?;
    let page = Page::at(&site, "#/bench/mix/reinforced-zoe/temporary", Look::DESK).await?;
    choose_way(&page, By::Keys, "words").await?;
    let clinic = clinic()?;
    let mut twin = Twin::begin(&page, By::Keys, clinic.catalogue(), "reinforced-zoe").await?;
    twin.puts_out().await?;
    twin.brings_in(0.5).await?;
    twin.works(5).await?;
    twin.brings_in(0.25).await?;
    twin.works(4).await?;
    let thin = twin.tests().await?;
    ensure!(
        thin < Consistency::Putty,
        "it is {thin:?} with a quarter left out"
    );
    // A reload in the middle goes on with the same mix.
    page.reload().await?;
    page.ready().await?;
    page.read(&hook("mix-seen"), &twin.mix.look().sentence)
        .await?;
    twin.brings_in(0.25).await?;
    twin.works(5).await?;
    ensure!(
        twin.tests().await? >= Consistency::Putty,
        "it is still sticky"
    );
    twin.hands_over().await?;
    ensure!(
        twin.mix.verdict().is_some_and(|it| it.marks >= 60),
        "{:?}",
        twin.mix.verdict()
    );
    page.reload().await?;
    page.ready().await?;
    page.see(&hook("mix-verdict")).await?;
    page.go(&site.url("#/bench")).await?;
    page.see(&hook("lately")).await?;
    page.quit().await
}

#[tokio::test]
#[ignore = "needs a built site and a browser"]
async fn a_mix_too_old_is_discarded_and_made_anew_by_touch() -> Result<()> {
    let site = Site::serve().await?;
    let page = Page::at(&site, "#/bench/mix/calcium-hydroxide-liner", Look::PHONE).await?;
    choose_way(&page, By::Tap, "words").await?;
    let clinic = clinic()?;
    let mut twin = Twin::begin(
        &page,
        By::Tap,
        clinic.catalogue(),
        "calcium-hydroxide-liner",
    )
    .await?;
    twin.puts_out().await?;
    twin.brings_in(1.0).await?;
    twin.works(2).await?;
    twin.waits(14).await?;
    let old = twin.tests().await?;
    ensure!(
        old > Consistency::Sticky,
        "it is {old:?} after two minutes and a half"
    );
    twin.does("discard", |it| *it == Action::Discard).await?;
    twin.puts_out().await?;
    twin.brings_in(1.0).await?;
    twin.works(2).await?;
    twin.tests().await?;
    twin.hands_over().await?;
    page.quit().await
}

/// Makes a liner ready to be worked on the pad, without a clock.
async fn liner_on_the_pad(page: &Page) -> Result<()> {
    choose_way(page, By::Tap, "calm").await?;
    for what in ["open-bench", "do-powder-1", "do-liquid-1", "do-bring-in-1"] {
        By::Tap.take(page, &hook(what)).await?;
    }
    Ok(())
}

#[tokio::test]
#[ignore = "needs a built site and a browser"]
async fn a_mix_is_made_right_by_hand() -> Result<()> {
    let site = Site::serve().await?;
    let page = Page::at(&site, "#/bench/mix/calcium-hydroxide-liner", Look::PHONE).await?;
    liner_on_the_pad(&page).await?;
    work(&page, &hook("pad"), 11).await?;
    By::Tap.take(&page, &hook("do-test")).await?;
    By::Tap.take(&page, &hook("do-give-it")).await?;
    page.read(&hook("mix-verdict"), "Right").await?;
    page.shot("mix-made-right").await?;
    ensure!(page.complaints().await?.is_empty());
    page.quit().await
}

#[tokio::test]
#[ignore = "needs a built site and a browser"]
async fn the_mass_is_drawn_frame_by_frame_on_a_slow_phone_and_nothing_shifts() -> Result<()> {
    let site = Site::serve().await?;
    let page = Page::at(&site, "#/bench/mix/calcium-hydroxide-liner", Look::PHONE).await?;
    liner_on_the_pad(&page).await?;
    page.devtools("Emulation.setCPUThrottlingRate", json!({ "rate": 4 }))
        .await?;
    let motion = work(&page, &hook("pad"), 5).await?;
    page.devtools("Emulation.setCPUThrottlingRate", json!({ "rate": 1 }))
        .await?;
    ensure!(motion.frames.len() > 20, "the mass was hardly drawn");
    ensure!(
        motion.shifts == 0.0,
        "the layout shifted by {}",
        motion.shifts
    );
    page.quit().await
}

#[tokio::test]
#[ignore = "needs a built site and a browser"]
async fn a_mix_is_worked_with_a_held_key_and_paused() -> Result<()> {
    let site = Site::serve().await?;
    let page = Page::at(&site, "#/bench/mix/calcium-hydroxide-liner", Look::DESK).await?;
    for what in ["open-bench", "do-powder-1", "do-liquid-1", "do-bring-in-1"] {
        page.enter(&hook(what)).await?;
    }
    page.tab_to(&hook("hold")).await?;
    let before = page.text(&hook("mix-seen")).await?;
    let key = |kind: &str| {
        format!(
            "document.activeElement.dispatchEvent(new KeyboardEvent('{kind}', {{ key: ' ', bubbles: true, cancelable: true }}))"
        )
    };
    page.run(&key("keydown")).await?;
    let changed = format!(
        "document.querySelector({}).innerText !== {}",
        json!(hook("mix-seen")),
        json!(before)
    );
    page.until("the mass changes", &changed).await?;
    page.run(&key("keyup")).await?;
    page.enter(&hook("pause")).await?;
    page.read(&hook("pause"), "Go on").await?;
    let paused = page.text(&hook("mix-age")).await?;
    page.reload().await?;
    page.ready().await?;
    page.read(&hook("mix-age"), &paused).await?;
    page.read(&hook("pause"), "Go on").await?;
    page.enter(&hook("do-discard")).await?;
    page.read(&hook("mix-seen"), "The surface is clean.")
        .await?;
    page.quit().await
}

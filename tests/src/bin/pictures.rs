//! Takes the pictures of README.md from the built page. `cargo site pictures`
//! runs this; each picture is named after what it shows. The class in them is
//! made up: seats of an invented class, who fail what the seat before did not.

use anyhow::Result;
use class::assignment::Seat;
use trayward_tests::browser::{Look, Page, Profile, Site, hook};
use trayward_tests::class::{alike, asked, cases_of, clinic, hand_in, keep};

/// What is shown: the name of the picture, and the address.
const STUDENT: [(&str, &str); 4] = [
    ("today", "#/today"),
    ("set-up", "#/procedures/deep-caries-temporary/set-up"),
    ("case", "#/cases/deeper-than-the-film/1"),
    ("bench", "#/bench"),
];

/// What an instructor sees at a desk.
const INSTRUCTOR: [(&str, &str); 1] = [("assign", "#/class/assign")];

/// How many seats the class has.
const SEATS: u16 = 24;

#[tokio::main]
async fn main() -> Result<()> {
    let phone = Look {
        ratio: 1.0,
        ..Look::PHONE
    };
    take(phone, &STUDENT).await?;
    take(Look::DESK, &INSTRUCTOR).await?;
    report().await
}

async fn take(look: Look, pictures: &[(&str, &str)]) -> Result<()> {
    let site = Site::serve().await?;
    let page = Page::open(&Profile::new()?, look).await?;
    for (name, address) in pictures {
        page.go("about:blank").await?;
        page.go(&site.url(address)).await?;
        page.ready().await?;
        page.see("main h1").await?;
        page.shot(name).await?;
        println!("{name}.png shows {address}");
    }
    page.quit().await
}

/// The report on a class that has handed in.
async fn report() -> Result<()> {
    let (site, clinic) = (Site::serve().await?, clinic()?);
    let set = alike(3, 11, vec![cases_of("signs-that-do-not-settle", 1)])?;
    let asked = asked(&clinic, &set, Seat(1))?;
    let lines = (1..=SEATS).map(|seat| {
        let known = usize::from(seat) + 10;
        let slips = |_, at: usize| (at * 11 + usize::from(seat) * 5) % 37 >= known;
        hand_in(&set, &asked, Seat(seat), slips).letters()
    });
    let lines: Vec<String> = lines.collect();
    let page = Page::at(&site, "#/class", Look::DESK).await?;
    keep(&page, &set).await?;
    page.go(&site.url(&format!("#/class/collect/{:08x}", set.id())))
        .await?;
    page.reload().await?;
    page.see(&hook("hand-in-lines")).await?;
    page.paste(&hook("hand-in-lines"), &lines.join("\n"))
        .await?;
    page.tap(&hook("read-lines")).await?;
    page.see(&hook("tally")).await?;
    let report = format!("#/class/report/{:08x}", set.id());
    page.go(&site.url(&report)).await?;
    page.see(&hook("report")).await?;
    page.shot("report").await?;
    println!("report.png shows the report on {SEATS} seats");
    page.quit().await
}

//! Takes the pictures of README.md from the built page. `cargo site pictures`
//! runs this; each picture is named after what it shows.

use anyhow::Result;
use trayward_tests::browser::{Look, Page, Profile, Site};

/// What is shown: the name of the picture, and the address.
const STUDENT: [(&str, &str); 4] = [
    ("today", "#/today"),
    ("set-up", "#/procedures/deep-caries-temporary/set-up"),
    ("case", "#/cases/deeper-than-the-film/1"),
    ("bench", "#/bench"),
];

/// What an instructor sees at a desk.
const INSTRUCTOR: [(&str, &str); 1] = [("assign", "#/class/assign")];

#[tokio::main]
async fn main() -> Result<()> {
    let phone = Look {
        ratio: 1.0,
        ..Look::PHONE
    };
    take(phone, &STUDENT).await?;
    take(Look::DESK, &INSTRUCTOR).await
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

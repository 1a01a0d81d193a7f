//! The school's system: a page that carries the independent run-time and the
//! package in a frame, and what the run-time was told.

use anyhow::{Context, Result, ensure};
use class::assignment::Assignment;
use serde::Deserialize;
use serde_json::Value;
use std::{
    collections::BTreeMap,
    io::Read,
    sync::{Arc, LazyLock},
};
use tokio::sync::Mutex;
use trayward_tests::browser::{Host, Look, Page, Profile, Site, hook, setting};

use super::FRAME;
use crate::{class::set, visit::By};

/// The page of a school's system: it notes every call with what was answered.
const SYSTEM: &str = r#"<!doctype html>
<html lang="en"><meta charset="utf-8"><title>A school's system</title>
<style>html, body { margin: 0; height: 100% } iframe { border: 0; width: 100vw; height: 100vh; display: block }</style>
<script src="scorm-again.js"></script>
<script>
  var calls = [];
  var API = new Scorm12API({ autocommit: false, logLevel: 5 });
  API.loadFromJSON(BEFORE, '');
  for (const name of ['LMSInitialize', 'LMSGetValue', 'LMSSetValue', 'LMSCommit', 'LMSFinish']) {
    const real = API[name];
    API[name] = (...given) => {
      const answer = real.apply(API, given);
      calls.push({ name, given, answer: String(answer) });
      return answer;
    };
  }
</script>
<iframe title="The package" src="package/launch.html"></iframe>
</html>"#;

/// A package, unpacked, and the assignment in it.
pub struct Package {
    files: BTreeMap<String, Vec<u8>>,
    /// The link of the assignment.
    pub link: String,
}

/// It is made once, through the page.
static PACKAGE: LazyLock<Mutex<Option<Arc<Package>>>> = LazyLock::new(|| Mutex::new(None));

/// The package.
pub async fn package() -> Result<Arc<Package>> {
    let mut made = PACKAGE.lock().await;
    if let Some(package) = &*made {
        return Ok(package.clone());
    }
    let site = Site::serve().await?;
    let page = Page::at(&site, "#/class/assign", Look::DESK).await?;
    let package = Arc::new(made_by(&page).await?);
    page.quit().await?;
    *made = Some(package.clone());
    Ok(package)
}

/// Sets a case on the page where that is done, and has the package made.
pub async fn made_by(page: &Page) -> Result<Package> {
    let folder = tempfile::tempdir()?;
    page.download_into(folder.path()).await?;
    let link = set(page, FRAME).await?;
    By::Tap
        .take(page, &format!("{} summary", hook("other-systems")))
        .await?;
    By::Tap.take(page, &hook("scorm")).await?;
    let zipped = page
        .downloaded(folder.path(), "assignment-scorm.zip")
        .await?;
    page.read(&hook("issued-said"), "The package is made.")
        .await?;
    let mut archive = zip::ZipArchive::new(std::io::Cursor::new(zipped))?;
    let mut files = BTreeMap::new();
    for place in 0..archive.len() {
        let mut file = archive.by_index(place)?;
        let mut bytes = Vec::new();
        file.read_to_end(&mut bytes)?;
        files.insert(file.name()?.into_owned(), bytes);
    }
    Ok(Package { files, link })
}

/// A system that opens the package, with what it kept before.
pub async fn system(before: Value) -> Result<Host> {
    serve(&*package().await?, &before, |_| ())
}

/// One that opens another assignment in the same package.
pub async fn system_of(before: Value, set: &Assignment) -> Result<Host> {
    let package = package().await?;
    let letters = package.link.rsplit('/').next().map(str::to_owned);
    let letters = letters.context("the link has no letters")?;
    serve(&package, &before, |files| {
        if let Some(launch) = files.get_mut("package/launch.html") {
            let text = String::from_utf8_lossy(launch);
            *launch = text.replace(&letters, &set.letters()).into_bytes();
        }
    })
}

/// A system that opens a package, after a change in its files.
pub fn serve(
    package: &Package,
    before: &Value,
    change: impl FnOnce(&mut BTreeMap<String, Vec<u8>>),
) -> Result<Host> {
    let runtime = std::fs::read(setting("TRAYWARD_SCORM_AGAIN")?)?;
    let page = SYSTEM.replace("BEFORE", &before.to_string());
    let within = package.files.iter();
    let mut files: BTreeMap<String, Vec<u8>> = within
        .map(|(path, bytes)| (format!("package/{path}"), bytes.clone()))
        .collect();
    change(&mut files);
    files.insert("index.html".into(), page.into_bytes());
    files.insert("scorm-again.js".into(), runtime);
    Host::serve(files)
}

/// A call of the run-time.
#[derive(Debug, Deserialize)]
pub struct Call {
    /// What was called.
    pub name: String,
    given: Vec<String>,
    answer: String,
}

/// All calls so far.
pub async fn calls(page: &Page) -> Result<Vec<Call>> {
    page.value("(window.calls ?? parent.calls)").await
}

/// What the run-time holds.
pub async fn held(page: &Page) -> Result<Value> {
    page.value("JSON.parse(JSON.stringify((window.API ?? parent.API).cmi))")
        .await
}

/// Opens the system's page and goes into the package.
pub async fn launch(host: &Host, look: Look) -> Result<Page> {
    let page = Page::open(&Profile::new()?, look).await?;
    page.go(&host.url("index.html")).await?;
    page.go_into("iframe").await?;
    page.ready().await?;
    page.see("main h1").await?;
    Ok(page)
}

/// Digits as noughts.
pub fn shape(text: &str) -> String {
    text.replace(|c: char| c.is_ascii_digit(), "0")
}

/// The rules for calls: begun once and first, every value taken, spans of time
/// in the form of the standard, every number of an interaction in turn.
pub fn check_calls(calls: &[Call]) -> Result<()> {
    let begun = calls.iter().filter(|it| it.name == "LMSInitialize").count();
    ensure!(begun == 1 && calls[0].name == "LMSInitialize");
    let mut next = 0;
    for call in calls.iter().filter(|it| it.name == "LMSSetValue") {
        let (name, value) = (call.given[0].as_str(), call.given[1].as_str());
        ensure!(call.answer == "true", "{call:?} is not taken");
        let spans = name.ends_with("session_time") || name.ends_with("latency");
        ensure!(!spans || shape(value) == "0000:00:00.00", "{call:?}");
        let number = name.strip_prefix("cmi.interactions.");
        if let Some((number, part)) = number.and_then(|it| it.split_once('.')) {
            let number: usize = number.parse()?;
            next += usize::from(part == "id");
            ensure!(next == number + 1, "{call:?} is out of turn");
        }
    }
    Ok(())
}

/// The page leaves the package, as a system does that closes it.
pub async fn leave(page: &Page) -> Result<()> {
    page.go_out().await?;
    page.run("document.querySelector('iframe').src = 'about:blank';")
        .await?;
    page.until("the end to be told", "calls.at(-1).name === 'LMSFinish'")
        .await?;
    let calls = calls(page).await?;
    let told: Vec<&str> = calls
        .iter()
        .rev()
        .take(3)
        .map(|it| it.name.as_str())
        .collect();
    // The time that was spent goes out as the last word.
    assert_eq!(told, ["LMSFinish", "LMSCommit", "LMSSetValue"]);
    assert_eq!(
        calls[calls.len() - 3].given[0],
        "cmi.core.session_time",
        "{calls:?}"
    );
    ensure!(calls.last().is_some_and(|it| it.answer == "true"));
    check_calls(&calls)
}

/// What would break in a frame: the policy of the page, files that are not there.
pub async fn no_breach(page: &Page) -> Result<()> {
    let complaints = page.complaints().await?;
    let breach = complaints.iter().find(|it| {
        ["Content Security Policy", "Refused", "integrity"]
            .iter()
            .any(|word| it.contains(word))
    });
    ensure!(breach.is_none(), "{complaints:?}");
    Ok(())
}

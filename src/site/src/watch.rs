//! Builds the page again whenever a file changes, and has the browser reload.
//!
//! Only this server knows of the reloading: the files it serves are those of a
//! build for writing, and the script that asks for news is added on the way out.

use std::collections::BTreeMap;
use std::fs;
use std::path::{Path, PathBuf};
use std::sync::Arc;
use std::sync::atomic::{AtomicUsize, Ordering};
use std::thread;
use std::time::{Duration, SystemTime};

use anyhow::Result;

use crate::build::{self, Mode};
use crate::options::Options;
use crate::repo::Repo;
use crate::serve::{Asked, Reply, Site, dev_folder};

const SCRIPT: &str = include_str!("watch/reload.js");
const PAUSE: Duration = Duration::from_millis(300);

/// What a page is made of; the tool itself is not among it.
const WATCHED: [&str; 11] = [
    "index.html",
    "style",
    "content",
    "src/app",
    "src/catalogue",
    "src/clinic",
    "src/drawing",
    "src/study",
    "src/class",
    "src/record",
    "Cargo.toml",
];

/// Serves the page and keeps it up to date until the program is ended.
///
/// # Errors
/// When the port cannot be had. A page that does not build is told and waited for.
pub fn serve(repo: &Repo, options: &Options) -> Result<()> {
    let folder = dev_folder(repo, options);
    let site = Site::open(options)?;
    let mut seen = changes(repo);
    rebuild(repo, &folder);
    site.announce();

    let build = Arc::new(AtomicUsize::new(1));
    let counter = Arc::clone(&build);
    let repo = repo.clone();
    let served = folder.clone();
    thread::spawn(move || {
        loop {
            thread::sleep(PAUSE);
            let now = changes(&repo);
            if now != seen {
                seen = now;
                println!("Something changed; building again …");
                if rebuild(&repo, &folder) {
                    counter.fetch_add(1, Ordering::Relaxed);
                }
            }
        }
    });
    let under = site.under.clone();
    site.answer(move |asked| reply(&served, &under, build.load(Ordering::Relaxed), asked));
    Ok(())
}

fn rebuild(repo: &Repo, folder: &Path) -> bool {
    match build::into_folder(repo, Mode::Dev, folder) {
        Ok(built) => {
            built.report();
            true
        }
        Err(error) => {
            for cause in error.chain() {
                eprintln!("{cause}");
            }
            eprintln!("The page stays as it was until this is mended.");
            false
        }
    }
}

fn reply(folder: &Path, under: &str, build: usize, asked: &Asked) -> Reply {
    match asked.path.strip_prefix(under) {
        Some("reload.js") => Reply {
            status: 200,
            headers: vec![
                ("Content-Type", "text/javascript; charset=utf-8".into()),
                ("Cache-Control", "no-store".into()),
            ],
            body: SCRIPT.as_bytes().to_vec(),
        },
        Some("build-number") => Reply::sentence(200, &build.to_string()),
        _ => {
            let mut reply = Reply::from_folder(folder, under, asked);
            if reply.status == 200 && reply.body.starts_with(b"<!doctype html>") {
                reply
                    .body
                    .extend(b"<script type=\"module\" src=\"reload.js\"></script>\n");
            }
            reply
        }
    }
}

/// When each watched file was last changed.
fn changes(repo: &Repo) -> BTreeMap<PathBuf, SystemTime> {
    let mut found = BTreeMap::new();
    for path in WATCHED {
        visit(&repo.path(path), &mut found);
    }
    found
}

fn visit(path: &Path, found: &mut BTreeMap<PathBuf, SystemTime>) {
    if let Ok(entries) = fs::read_dir(path) {
        for entry in entries.flatten() {
            visit(&entry.path(), found);
        }
    } else if let Ok(changed) = path.metadata().and_then(|metadata| metadata.modified()) {
        found.insert(path.to_path_buf(), changed);
    }
}

#[cfg(test)]
mod tests {
    use std::fs;

    use super::{Asked, reply};

    #[test]
    fn only_the_page_asks_for_news() {
        let folder = tempfile::tempdir().unwrap();
        fs::write(folder.path().join("index.html"), "<!doctype html><p>Hello").unwrap();
        fs::write(folder.path().join("sw.js"), "1").unwrap();
        let get = |path: &str| {
            let asked = Asked {
                path: path.into(),
                ..Asked::default()
            };
            String::from_utf8(reply(folder.path(), "/", 7, &asked).body).unwrap()
        };
        assert!(get("/").contains("reload.js"));
        assert_eq!(get("/sw.js"), "1");
        assert_eq!(get("/build-number"), "7");
        assert!(
            !fs::read_to_string(folder.path().join("index.html"))
                .unwrap()
                .contains("reload.js")
        );
    }
}

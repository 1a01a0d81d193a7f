//! What the page weighs on the wire.

use std::fs;
use std::path::Path;

use anyhow::{Context, Result};

use crate::build::compress::Coding;

/// All that a first visit fetches until the page can be used, brotli.
const FIRST_VISIT_BUDGET: u64 = 300_000;

/// All that the shell needs to paint, brotli.
const SHELL_BUDGET: u64 = 15_000;

/// The bytes of one file, as it is and as hosts may send it.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Size {
    name: String,
    raw: u64,
    brotli: u64,
    gzip: u64,
}

impl Size {
    /// Whether the first paint waits for it.
    fn paints(&self) -> bool {
        self.name == "index.html" || self.name.starts_with("style-")
    }

    /// Whether the page cannot be used before it is there.
    fn is_needed(&self) -> bool {
        let later = [
            "sw.js",
            "icon-",
            "manifest-",
            "catalogue-",
            "sources-",
            "split-",
            "chunk-",
            "shelf-",
        ];
        !later.iter().any(|start| self.name.starts_with(start))
    }
}

/// Measures every file of a finished page, the largest first.
///
/// # Errors
/// When the folder cannot be read or holds no finished page.
pub fn measure(folder: &Path) -> Result<Vec<Size>> {
    let weigh = |name: &str| -> Result<u64> {
        let file = fs::metadata(folder.join(name));
        Ok(file
            .with_context(|| format!("{name} is missing; run `cargo site build`."))?
            .len())
    };
    let mut sizes = fs::read_dir(folder)
        .with_context(|| format!("{} cannot be read.", folder.display()))?
        .filter_map(Result::ok)
        // Packs may lie in a folder beside the page.
        .filter(|entry| entry.path().is_file())
        .filter_map(|entry| entry.file_name().into_string().ok())
        .filter(|name| !Coding::ALL.iter().any(|coding| coding.is_of(name)))
        .map(|name| {
            Ok(Size {
                raw: weigh(&name)?,
                brotli: weigh(&format!("{name}.br"))?,
                gzip: weigh(&format!("{name}.gz"))?,
                name,
            })
        })
        .collect::<Result<Vec<_>>>()?;
    sizes.sort_by_key(|size| std::cmp::Reverse(size.raw));
    Ok(sizes)
}

/// The bytes, brotli, that a first visit fetches until the page can be used.
pub fn first_visit(sizes: &[Size]) -> u64 {
    sizes
        .iter()
        .filter(|size| size.is_needed())
        .map(|size| size.brotli)
        .sum()
}

/// Prints the sizes beside their budgets.
///
/// # Errors
/// When the folder holds no finished page.
pub fn print(folder: &Path) -> Result<()> {
    let sizes = measure(folder)?;
    println!(
        "{:<44} {:>9} {:>9} {:>9}",
        "file (bytes)", "raw", "brotli", "gzip"
    );
    for Size {
        name,
        raw,
        brotli,
        gzip,
    } in &sizes
    {
        println!("{name:<44} {raw:>9} {brotli:>9} {gzip:>9}");
    }
    let total = |pick: fn(&Size) -> u64| sizes.iter().map(pick).sum::<u64>();
    let (raw, brotli, gzip) = (total(|s| s.raw), total(|s| s.brotli), total(|s| s.gzip));
    println!(
        "{:<44} {raw:>9} {brotli:>9} {gzip:>9}",
        "everything kept for offline use"
    );
    let shell = sizes
        .iter()
        .filter(|size| size.paints())
        .map(|size| size.brotli)
        .sum();
    println!();
    row("until the shell paints (brotli)", shell, SHELL_BUDGET);
    row(
        "until the page can be used (brotli)",
        first_visit(&sizes),
        FIRST_VISIT_BUDGET,
    );
    Ok(())
}

fn row(what: &str, measured: u64, budget: u64) {
    let verdict = if measured <= budget { "within" } else { "OVER" };
    println!("{what:<44} {measured:>9} {verdict:>6} {budget}");
}

#[cfg(test)]
mod tests {
    use super::{first_visit, measure};

    #[test]
    fn a_first_visit_counts_what_is_needed_and_nothing_else() {
        let folder = tempfile::tempdir().unwrap();
        for (name, bytes) in [
            ("app-1.wasm", 100),
            ("index.html", 10),
            ("sw.js", 1000),
            ("split-cases-1.wasm", 1000),
        ] {
            for (ending, share) in [("", 1), (".br", 2), (".gz", 1)] {
                let path = folder.path().join(format!("{name}{ending}"));
                std::fs::write(path, vec![0; bytes / share]).unwrap();
            }
        }
        let sizes = measure(folder.path()).unwrap();
        assert_eq!(sizes.len(), 4);
        assert_eq!(first_visit(&sizes), 55);
    }

    #[test]
    fn a_page_without_its_smaller_copies_is_not_measured() {
        let folder = tempfile::tempdir().unwrap();
        std::fs::write(folder.path().join("index.html"), "x").unwrap();
        assert!(measure(folder.path()).is_err());
    }
}

//! Writes a page a family of drawings, in light and in dark, to look at them side by side:
//! `cargo run -p drawing --example plates -- OUTDIR [content/drawings]`.

use drawing::{Entry, Plate, Sheet};
use std::error::Error;
use std::fmt::Write;
use std::path::{Path, PathBuf};
use std::{env, fs};

const PAGE: &str = "body{margin:0;font:14px system-ui;display:flex;flex-wrap:wrap;gap:12px;\
padding:16px;background:var(--enamel);color:var(--ink)}figure{margin:0;padding:8px;width:350px;\
border:1px solid #8884}figcaption{font-weight:600}svg{margin:6px auto}";

fn svg(plate: &Plate, width: f32, height: f32) -> String {
    let scale = (width / plate.width_mm).min(height / plate.height_mm);
    let size = format!(
        "<svg style=\"width:{:.0}px;height:{:.0}px\"",
        plate.width_mm * scale,
        plate.height_mm * scale
    );
    plate.to_svg().replacen("<svg", &size, 1)
}

fn figure(entry: &Entry) -> Result<String, Box<dyn Error>> {
    let name = |fault| format!("{}: {fault}", entry.id);
    // A thing that only crosses itself is shown all the same, to see where.
    if let Err(fault) = entry.form.check().map_err(name) {
        eprintln!("{fault}");
    }
    let whole = entry.form.plate().map_err(name)?;
    let close = entry.form.working_end().map_err(name)?;
    Ok(format!(
        "<figure><figcaption>{}</figcaption>{}{}</figure>",
        entry.id,
        svg(&whole, 334.0, 150.0),
        close.map_or(String::new(), |plate| svg(&plate, 334.0, 170.0))
    ))
}

fn main() -> Result<(), Box<dyn Error>> {
    let mut args = env::args().skip(1).map(PathBuf::from);
    let out = args.next().ok_or("give the folder to write to")?;
    let here = Path::new(env!("CARGO_MANIFEST_DIR"));
    let from = args
        .next()
        .unwrap_or_else(|| here.join("../../content/drawings"));
    let read = |part: &str| fs::read_to_string(here.join("../../style").join(part));
    let style = read("tokens.css")? + &read("parts/drawing.css")? + PAGE;
    fs::create_dir_all(&out)?;
    let mut files: Vec<_> = fs::read_dir(from)?.collect::<Result<_, _>>()?;
    files.sort_by_key(fs::DirEntry::path);
    let (mut count, mut faults) = (0, 0);
    for file in files {
        let path = file.path();
        let sheet: Sheet = toml::from_str(&fs::read_to_string(&path)?)
            .map_err(|e| format!("{}: {e}", path.display()))?;
        let mut figures = String::new();
        for entry in &sheet.drawing {
            match figure(entry) {
                Ok(html) => figures += &html,
                Err(fault) => {
                    faults += 1;
                    eprintln!("{}: {fault}", path.display());
                }
            }
            count += 1;
        }
        for theme in ["light", "dark"] {
            let mut page = format!("<!doctype html><html data-theme={theme}><meta charset=utf-8>");
            write!(page, "<style>{style}</style>{figures}")?;
            let name = path.with_extension(format!("{theme}.html"));
            fs::write(out.join(name.file_name().ok_or("no file name")?), page)?;
        }
    }
    println!("{count} drawings, {faults} faults");
    Ok(())
}

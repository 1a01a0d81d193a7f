//! Walking `content/` and reading every file into the schema.

use super::{
    check,
    fault::{Fault, line_and_column},
    locate::{Path as DataPath, offset},
    markdown,
};
use crate::{
    Catalogue,
    ids::{ItemId, LessonId, ProcedureId},
};
use serde::{Deserialize, de::DeserializeOwned};
use std::{
    collections::HashMap,
    fs,
    path::{Path, PathBuf},
};

/// Reads and checks the folder `content`.
///
/// # Errors
/// Every fault found, sorted by place. A catalogue with a fault is never returned.
pub fn read(content: &Path) -> Result<Catalogue, Vec<Fault>> {
    let mut reading = Reading::default();
    reading.walk(content);
    if reading.faults.is_empty() {
        check::check(&mut reading);
    }
    if reading.faults.is_empty() {
        return Ok(reading.catalogue);
    }
    reading.faults.sort();
    reading.faults.dedup();
    Err(reading.faults)
}

/// Where one entry of the catalogue was written.
#[derive(Clone, Debug)]
pub(super) struct Origin {
    file: usize,
    path: DataPath,
}

/// The catalogue as it is being read, with the place of everything in it.
#[derive(Default)]
pub(super) struct Reading {
    pub catalogue: Catalogue,
    files: Vec<(String, String)>,
    origins: HashMap<&'static str, Vec<Origin>>,
    pub faults: Vec<Fault>,
}

impl Reading {
    /// Reports a fault at `path` below the `index`-th entry of `list`.
    pub fn report(&mut self, list: &'static str, index: usize, path: &DataPath, message: String) {
        let Some(origin) = self.origins.get(list).and_then(|o| o.get(index)) else {
            self.faults.push(Fault {
                file: format!("content ({list})"),
                line: 1,
                column: 1,
                message,
            });
            return;
        };
        let (name, text) = &self.files[origin.file];
        let whole = DataPath(origin.path.0.iter().chain(&path.0).cloned().collect());
        let (line, column) = line_and_column(text, offset(text, &whole));
        self.faults.push(Fault {
            file: name.clone(),
            line,
            column,
            message,
        });
    }

    /// Reports a fault at a byte offset of the file that the entry stands in.
    fn report_at(&mut self, file: usize, at: usize, message: String) {
        let (name, text) = &self.files[file];
        let (line, column) = line_and_column(text, at);
        self.faults.push(Fault {
            file: name.clone(),
            line,
            column,
            message,
        });
    }

    fn walk(&mut self, content: &Path) {
        self.list(&content.join("sources.toml"), "source", |c| &mut c.sources);
        self.list(&content.join("blueprint.toml"), "competency", |c| {
            &mut c.competencies
        });
        self.list(&content.join("recall.toml"), "check", |c| &mut c.checks);
        for file in toml_files(&content.join("findings"), self) {
            self.findings(&file);
        }
        for file in toml_files(&content.join("instruments"), self) {
            self.list(&file, "instrument", |c| &mut c.instruments);
        }
        for file in toml_files(&content.join("materials"), self) {
            self.list(&file, "material", |c| &mut c.materials);
        }
        for file in toml_files(&content.join("kinetics"), self) {
            self.list(&file, "kinetics", |c| &mut c.kinetics);
        }
        for file in toml_files(&content.join("plans"), self) {
            self.list(&file, "plan", |c| &mut c.plans);
        }
        for file in toml_files(&content.join("rules"), self) {
            self.list(&file, "rule", |c| &mut c.rules);
        }
        self.list(&content.join("stops.toml"), "stop", |c| &mut c.stops);
        self.list(&content.join("glossary.toml"), "term", |c| &mut c.glossary);
        for file in toml_files(&content.join("preference-cards"), self) {
            self.list(&file, "card", |c| &mut c.cards);
        }
        for file in toml_files(&content.join("cases"), self) {
            self.list(&file, "case", |c| &mut c.cases);
        }
        for file in toml_files(&content.join("drawings"), self) {
            self.drawings(&file);
        }
        self.numbers(&content.join("numbers"));
        for folder in entries(&content.join("procedures"), self) {
            if folder.is_dir() {
                self.procedure(&folder);
            }
        }
        for file in entries(&content.join("lessons"), self) {
            if file.extension().is_some_and(|e| e == "md") {
                self.lesson(&file, &stem(&file), None);
            }
        }
    }

    /// Takes in a file's text and returns its index.
    fn open(&mut self, path: &Path) -> Option<usize> {
        let name = shown(path);
        match fs::read_to_string(path) {
            Ok(text) => {
                self.files.push((name, text));
                Some(self.files.len() - 1)
            }
            Err(error) => {
                let message =
                    format!("cannot be read ({error}); the file has to be there, as UTF-8 text");
                self.faults.push(Fault {
                    file: name,
                    line: 1,
                    column: 1,
                    message,
                });
                None
            }
        }
    }

    fn parse<T: DeserializeOwned>(&mut self, path: &Path) -> Option<(usize, T)> {
        let file = self.open(path)?;
        match toml::from_str(&self.files[file].1) {
            Ok(value) => Some((file, value)),
            Err(error) => {
                let at = error.span().map_or(0, |s| s.start);
                self.report_at(file, at, error.message().replace('\n', " "));
                None
            }
        }
    }

    fn place(&mut self, list: &'static str, file: usize, count: usize) {
        let whole = DataPath::default().field(list);
        let origins = (0..count).map(|i| Origin {
            file,
            path: whole.entry(i),
        });
        self.origins.entry(list).or_default().extend(origins);
    }

    /// Reads a file that is one list of tables under one name.
    fn list<T: DeserializeOwned>(
        &mut self,
        path: &Path,
        name: &'static str,
        of: fn(&mut Catalogue) -> &mut Vec<T>,
    ) {
        let Some((file, mut tables)) = self.parse::<HashMap<String, Vec<T>>>(path) else {
            return;
        };
        let list = tables.remove(name).unwrap_or_default();
        for other in tables.keys() {
            let at = offset(&self.files[file].1, &DataPath::default().field(other));
            self.report_at(
                file,
                at,
                format!("'{other}' does not belong here; this file holds [[{name}]]"),
            );
        }
        self.place(name, file, list.len());
        of(&mut self.catalogue).extend(list);
    }

    fn findings(&mut self, path: &Path) {
        #[derive(Deserialize)]
        #[serde(deny_unknown_fields)]
        struct File {
            #[serde(default)]
            finding: Vec<crate::findings::Finding>,
            #[serde(default)]
            impossible: Vec<crate::findings::Impossible>,
        }
        if let Some((file, read)) = self.parse::<File>(path) {
            self.place("finding", file, read.finding.len());
            self.place("impossible", file, read.impossible.len());
            self.catalogue.findings.extend(read.finding);
            self.catalogue.impossible.extend(read.impossible);
        }
    }

    /// The lists of figures, one file each.
    fn numbers(&mut self, folder: &Path) {
        let at = |name: &str| folder.join(name);
        self.list(&at("solutions.toml"), "solution", |c| {
            &mut c.numbers.solutions
        });
        self.list(&at("dose-rules.toml"), "dose-rules", |c| {
            &mut c.numbers.dose_rules
        });
        self.list(
            &at("vasoconstrictor-limits.toml"),
            "vasoconstrictor-limit",
            |c| &mut c.numbers.vasoconstrictor_limits,
        );
        self.list(&at("teeth.toml"), "tooth", |c| &mut c.numbers.teeth);
        self.list(&at("formulas.toml"), "formula", |c| &mut c.numbers.formulas);
        self.list(&at("burs.toml"), "bur", |c| &mut c.numbers.burs);
        self.list(&at("bur-codes.toml"), "bur-code", |c| {
            &mut c.numbers.bur_codes
        });
        self.list(&at("file-sizes.toml"), "file-size", |c| {
            &mut c.numbers.file_sizes
        });
        self.list(&at("needles.toml"), "needle", |c| &mut c.numbers.needles);
        self.list(&at("cycles.toml"), "cycle", |c| &mut c.numbers.cycles);
        self.list(&at("limits.toml"), "limit", |c| &mut c.numbers.limits);
        self.list(&at("proportions.toml"), "proportion", |c| {
            &mut c.numbers.proportions
        });
        self.list(&at("figures.toml"), "figure", |c| &mut c.numbers.figures);
    }

    fn drawings(&mut self, path: &Path) {
        if let Some((file, read)) = self.parse::<drawing::Sheet>(path) {
            self.place("drawing", file, read.drawing.len());
            let pairs = read.drawing.into_iter().map(|e| (ItemId(e.id), e.form));
            self.catalogue.drawings.extend(pairs);
        }
    }

    fn procedure(&mut self, folder: &Path) {
        let id = stem(folder);
        if let Some((file, procedure)) =
            self.parse::<crate::procedures::Procedure>(&folder.join("procedure.toml"))
        {
            if procedure.id.as_str() != id {
                let at = offset(&self.files[file].1, &DataPath::default().field("id"));
                self.report_at(
                    file,
                    at,
                    format!("the id has to be the folder's name, '{id}'"),
                );
            }
            self.origins.entry("procedure").or_default().push(Origin {
                file,
                path: DataPath::default(),
            });
            self.catalogue.procedures.push(procedure);
        }
        self.lesson(
            &folder.join("lesson.md"),
            &id,
            Some(&ProcedureId(id.clone())),
        );
    }

    fn lesson(&mut self, path: &Path, id: &str, procedure: Option<&ProcedureId>) {
        let Some(file) = self.open(path) else { return };
        match markdown::lesson(LessonId(id.into()), procedure, &self.files[file].1) {
            Ok(lesson) => {
                self.origins.entry("lesson").or_default().push(Origin {
                    file,
                    path: DataPath::default(),
                });
                self.catalogue.lessons.push(lesson);
            }
            Err(faults) => {
                for (at, message) in faults {
                    self.report_at(file, at, message);
                }
            }
        }
    }

    /// Reports a fault in a lesson at the first place where `near` is written.
    pub fn report_in_lesson(&mut self, index: usize, near: &str, message: String) {
        let file = self.origins["lesson"][index].file;
        let at = self.files[file].1.find(near).unwrap_or(0);
        self.report_at(file, at, message);
    }
}

fn entries(folder: &Path, reading: &mut Reading) -> Vec<PathBuf> {
    match fs::read_dir(folder) {
        Ok(read) => {
            let mut paths: Vec<PathBuf> = read.filter_map(|e| Some(e.ok()?.path())).collect();
            paths.sort();
            paths
        }
        Err(error) => {
            let message = format!("the folder cannot be read ({error}); it has to be there");
            reading.faults.push(Fault {
                file: shown(folder),
                line: 1,
                column: 1,
                message,
            });
            Vec::new()
        }
    }
}

fn toml_files(folder: &Path, reading: &mut Reading) -> Vec<PathBuf> {
    let mut files = entries(folder, reading);
    files.retain(|f| f.extension().is_some_and(|e| e == "toml"));
    files
}

fn stem(path: &Path) -> String {
    path.file_stem()
        .unwrap_or_default()
        .to_string_lossy()
        .into_owned()
}

/// The path as it is shown: from the folder named `content` on.
fn shown(path: &Path) -> String {
    let parts: Vec<_> = path.iter().map(|p| p.to_string_lossy()).collect();
    let from = parts.iter().rposition(|p| p == "content").unwrap_or(0);
    parts[from..].join("/")
}

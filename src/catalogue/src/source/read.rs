//! Reading every source file into the schema.

use super::{
    check,
    fault::{Fault, line_and_column},
    files::{Files, shown},
    lists::{self, List},
    locate::{Document, Path as DataPath, document, offset},
    markdown,
};
use crate::{
    Catalogue,
    ids::{ItemId, LessonId, ProcedureId},
};
use serde::{Deserialize, de::DeserializeOwned};
use std::{
    collections::{BTreeMap, HashMap},
    path::Path,
};

/// Reads and checks the folder `content`.
///
/// # Errors
/// Every fault found, sorted by place. A catalogue with a fault is never returned.
pub fn read(content: &Path) -> Result<Catalogue, Vec<Fault>> {
    read_files(&Files::read_folder(content)?).map(|read| read.catalogue)
}

/// A catalogue, and which file each thing in it was written in.
#[derive(Clone, Debug, PartialEq)]
pub struct Read {
    /// The catalogue.
    pub catalogue: Catalogue,
    /// For each kind (`instrument`, `rule`, `procedure`, `lesson` …) the file of
    /// each entry, in the order of the catalogue.
    pub written: BTreeMap<&'static str, Vec<String>>,
}

/// Reads and checks source files, wherever they are from.
///
/// # Errors
/// Every fault found, sorted by place. A catalogue with a fault is never returned.
pub fn read_files(files: &Files) -> Result<Read, Vec<Fault>> {
    let mut reading = Reading::default();
    reading.walk(files);
    if reading.faults.is_empty() {
        check::check(&mut reading);
    }
    if reading.faults.is_empty() {
        let path = |origin: &Origin| reading.files[origin.file].0.to_owned();
        let written = reading.origins.iter();
        let written = written.map(|(list, all)| (*list, all.iter().map(path).collect()));
        return Ok(Read {
            written: written.collect(),
            catalogue: reading.catalogue,
        });
    }
    reading.faults.sort();
    reading.faults.dedup();
    Err(reading.faults)
}

/// The most faults that are told at once. Nobody mends more at a time, and a
/// file from elsewhere may hold any number of them.
const MOST_FAULTS: usize = 500;

/// Where one entry of the catalogue was written.
#[derive(Clone, Debug)]
pub(super) struct Origin {
    file: usize,
    path: DataPath,
}

/// The catalogue as it is being read, with the place of everything in it.
#[derive(Default)]
pub(super) struct Reading<'f> {
    pub catalogue: Catalogue,
    files: Vec<(&'f str, &'f str)>,
    /// The files in which a place was looked up, so that each is parsed for it once.
    documents: HashMap<usize, Option<Document<'f>>>,
    origins: HashMap<&'static str, Vec<Origin>>,
    pub faults: Vec<Fault>,
}

impl<'f> Reading<'f> {
    /// Whether no further fault is taken in.
    pub fn is_full(&self) -> bool {
        self.faults.len() >= MOST_FAULTS
    }

    /// Reports a fault at `path` below the `index`-th entry of `list`.
    pub fn report(&mut self, list: &'static str, index: usize, path: &DataPath, message: String) {
        if self.is_full() {
            return;
        }
        let Some(origin) = self.origins.get(list).and_then(|o| o.get(index)) else {
            self.faults.push(Fault {
                file: format!("content ({list})"),
                line: 1,
                column: 1,
                message,
            });
            return;
        };
        let file = origin.file;
        let whole = DataPath(origin.path.0.iter().chain(&path.0).cloned().collect());
        let at = self.offset(file, &whole);
        self.report_at(file, at, message);
    }

    /// Reports a fault at a byte offset of the file that the entry stands in.
    fn report_at(&mut self, file: usize, at: usize, message: String) {
        if self.is_full() {
            return;
        }
        let (name, text) = self.files[file];
        let (line, column) = line_and_column(text, at);
        self.faults.push(Fault {
            file: shown(name),
            line,
            column,
            message,
        });
    }

    fn offset(&mut self, file: usize, path: &DataPath) -> usize {
        let text = self.files[file].1;
        let document = self.documents.entry(file).or_insert_with(|| document(text));
        document
            .as_ref()
            .map_or(0, |document| offset(document, path))
    }

    fn walk(&mut self, files: &'f Files) {
        let sources = lists::SOURCES;
        self.list(files, "sources.toml", sources.table, |c| &mut c.sources);
        for file in files.within(sources.folder, ".toml") {
            self.list(files, file, sources.table, |c| &mut c.sources);
        }
        self.list(files, "blueprint.toml", "competency", |c| {
            &mut c.competencies
        });
        self.list(files, "recall.toml", "check", |c| &mut c.checks);
        for file in self.folder(files, "findings") {
            self.findings(files, file);
        }
        self.lists(files, lists::INSTRUMENTS, |c| &mut c.instruments);
        self.lists(files, lists::MATERIALS, |c| &mut c.materials);
        self.lists(files, lists::KINETICS, |c| &mut c.kinetics);
        self.lists(files, lists::PLANS, |c| &mut c.plans);
        self.lists(files, lists::RULES, |c| &mut c.rules);
        self.list(files, "stops.toml", "stop", |c| &mut c.stops);
        self.list(files, "glossary.toml", "term", |c| &mut c.glossary);
        self.lists(files, lists::PREFERENCE_CARDS, |c| &mut c.cards);
        self.lists(files, lists::CASES, |c| &mut c.cases);
        for file in self.folder(files, lists::DRAWINGS.folder) {
            self.drawings(files, file);
        }
        self.numbers(files);
        for id in files.folders("procedures") {
            self.procedure(files, id);
        }
        for file in files.within("lessons", ".md") {
            let name = file.rsplit('/').next().unwrap_or_default();
            let id = name.strip_suffix(".md").unwrap_or(name);
            self.lesson(files, file, id, None);
        }
    }

    /// The TOML files of a folder; without any it is a fault.
    fn folder(&mut self, files: &'f Files, folder: &'static str) -> Vec<&'f str> {
        let found = files.within(folder, ".toml");
        if found.is_empty() {
            self.faults.push(Fault {
                file: shown(folder),
                line: 1,
                column: 1,
                message: "the folder holds no file; it has to be there".into(),
            });
        }
        found
    }

    /// Takes in a file's text and returns its index.
    fn open(&mut self, files: &'f Files, path: &str) -> Option<usize> {
        let Some((path, text)) = files.entry(path) else {
            self.faults.push(Fault {
                file: shown(path),
                line: 1,
                column: 1,
                message: "is missing; the file has to be there, as UTF-8 text".into(),
            });
            return None;
        };
        self.files.push((path, text));
        Some(self.files.len() - 1)
    }

    fn parse<T: DeserializeOwned>(&mut self, files: &'f Files, path: &str) -> Option<(usize, T)> {
        let file = self.open(files, path)?;
        match toml::from_str(self.files[file].1) {
            Ok(value) => Some((file, value)),
            Err(error) => {
                let at = error.span().map_or(0, |s| s.start);
                let message = error.message().replace('\n', " ");
                let message = if message.contains("recurs") {
                    "brackets and tables stand too deep within one another".into()
                } else {
                    message
                };
                self.report_at(file, at, message);
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
    pub(super) fn list<T: DeserializeOwned>(
        &mut self,
        files: &'f Files,
        path: &str,
        name: &'static str,
        of: fn(&mut Catalogue) -> &mut Vec<T>,
    ) {
        let Some((file, mut tables)) = self.parse::<HashMap<String, Vec<T>>>(files, path) else {
            return;
        };
        let list = tables.remove(name).unwrap_or_default();
        for other in tables.keys() {
            let at = self.offset(file, &DataPath::default().field(other));
            self.report_at(
                file,
                at,
                format!("'{other}' does not belong here; this file holds [[{name}]]"),
            );
        }
        self.place(name, file, list.len());
        of(&mut self.catalogue).extend(list);
    }

    /// Reads every file of a folder of such files.
    fn lists<T: DeserializeOwned>(
        &mut self,
        files: &'f Files,
        list: List,
        of: fn(&mut Catalogue) -> &mut Vec<T>,
    ) {
        for file in self.folder(files, list.folder) {
            self.list(files, file, list.table, of);
        }
    }

    fn findings(&mut self, files: &'f Files, path: &str) {
        #[derive(Deserialize)]
        #[serde(deny_unknown_fields)]
        struct File {
            #[serde(default)]
            finding: Vec<crate::findings::Finding>,
            #[serde(default)]
            impossible: Vec<crate::findings::Impossible>,
        }
        if let Some((file, read)) = self.parse::<File>(files, path) {
            self.place("finding", file, read.finding.len());
            self.place("impossible", file, read.impossible.len());
            self.catalogue.findings.extend(read.finding);
            self.catalogue.impossible.extend(read.impossible);
        }
    }

    fn drawings(&mut self, files: &'f Files, path: &str) {
        if let Some((file, read)) = self.parse::<drawing::Sheet>(files, path) {
            self.place(lists::DRAWINGS.table, file, read.drawing.len());
            let pairs = read.drawing.into_iter().map(|e| (ItemId(e.id), e.form));
            self.catalogue.drawings.extend(pairs);
        }
    }

    fn procedure(&mut self, files: &'f Files, id: &str) {
        let path = format!("procedures/{id}/procedure.toml");
        if let Some((file, procedure)) = self.parse::<crate::procedures::Procedure>(files, &path) {
            if procedure.id.as_str() != id {
                let at = self.offset(file, &DataPath::default().field("id"));
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
        let lesson = format!("procedures/{id}/lesson.md");
        self.lesson(files, &lesson, id, Some(&ProcedureId(id.into())));
    }

    fn lesson(&mut self, files: &'f Files, path: &str, id: &str, procedure: Option<&ProcedureId>) {
        let Some(file) = self.open(files, path) else {
            return;
        };
        match markdown::lesson(LessonId(id.into()), procedure, self.files[file].1) {
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

//! What other systems are given, held to programs that other people wrote:
//! the converter citolab-qti-convert reads our QTI 2.2 and makes QTI 3.0 of it,
//! xapi-validation holds our statements to the rules of xAPI. `cargo site`
//! fetches both in the versions that it names, and tells where they are.

use crate::made::{Key, assignment, table};
use class::exchange::{
    qti::{self, Expected, Question},
    xapi,
};
use roxmltree::Document;
use serde_json::Value;
use std::{fs, path::PathBuf, process::Command};

/// Where a tool is; none, with words, where nobody says.
fn told(name: &str) -> Option<PathBuf> {
    let folder = std::env::var_os(name).map(PathBuf::from);
    if folder.is_none() {
        println!("Left out: {name} names no tool. `cargo site test` fetches it.");
    }
    folder
}

/// The items of a package in QTI 3.0, in the order of its manifest.
fn converted(questions: &[Question]) -> Option<Vec<String>> {
    let tool = told("TRAYWARD_QTI_CONVERT")?;
    let folder = tempfile::tempdir().expect("a folder");
    let (sent, made) = (folder.path().join("2.zip"), folder.path().join("3"));
    let package = qti::package("questions", questions).expect("a package");
    fs::write(&sent, package).expect("it can be written");
    let run = Command::new("python3")
        .args(["-m", "qti_convert.cli", "upgrade"])
        .args([&sent, &made])
        .env("PYTHONPATH", tool)
        .output()
        .expect("python3 runs");
    let said = String::from_utf8_lossy(&run.stderr);
    assert!(run.status.success() && said.is_empty(), "{said}");
    let read = |path: &str| fs::read_to_string(made.join(path)).expect("a converted file");
    let manifest = read("imsmanifest.xml");
    let manifest = Document::parse(&manifest).expect("XML");
    let items = manifest.descendants().filter_map(|node| {
        let item = node.attribute("type")? == "imsqti_item_xmlv3p0";
        node.attribute("href").filter(|_| item).map(read)
    });
    Some(items.collect())
}

/// An item of QTI 3.0 asks, offers and grades as the question that it was.
fn check(question: &Question, item: &str) {
    let item = Document::parse(item).expect("XML");
    let space = "http://www.imsglobal.org/xsd/imsqtiasi_v3p0";
    let all = |name: &'static str| {
        let named = move |node: &roxmltree::Node| node.has_tag_name((space, name));
        item.descendants().filter(named)
    };
    let root = item.root_element();
    assert!(
        root.has_tag_name((space, "qti-assessment-item")),
        "{root:?}"
    );
    let texts = |name| -> Vec<String> {
        all(name)
            .filter_map(|it| it.text())
            .map(str::to_owned)
            .collect()
    };
    assert_eq!(texts("qti-prompt"), [question.prompt.as_str()]);
    let labels: Vec<&String> = question.options.iter().map(|(_, label)| label).collect();
    assert_eq!(
        texts("qti-simple-choice").iter().collect::<Vec<_>>(),
        labels
    );
    let choices: Vec<&str> = all("qti-simple-choice")
        .filter_map(|it| it.attribute("identifier"))
        .collect();
    let place = |id: &String| question.options.iter().position(|(option, _)| option == id);
    let (element, cardinality, most, ids) = match &question.answer {
        Expected::One(id) => (
            "qti-choice-interaction",
            "single",
            Some("1"),
            std::slice::from_ref(id),
        ),
        Expected::All(ids) => ("qti-choice-interaction", "multiple", Some("0"), &ids[..]),
        Expected::Order(ids) => ("qti-order-interaction", "ordered", None, &ids[..]),
        // Questions with options alone are converted here.
        Expected::Between { .. } => return,
    };
    let interaction = all(element).next().expect("an interaction");
    assert_eq!(interaction.attribute("max-choices"), most);
    let declared = all("qti-response-declaration").next().expect("a response");
    assert_eq!(declared.attribute("cardinality"), Some(cardinality));
    assert_eq!(
        interaction.attribute("response-identifier"),
        declared.attribute("identifier")
    );
    let right: Vec<&str> = declared
        .descendants()
        .filter(|it| it.has_tag_name((space, "qti-value")))
        .filter_map(|it| it.text())
        .collect();
    let wanted: Vec<&str> = ids.iter().filter_map(place).map(|at| choices[at]).collect();
    assert_eq!(right, wanted);
    let graded = all("qti-response-processing").next();
    let template = graded.and_then(|it| it.attribute("template"));
    assert!(
        template
            .is_some_and(|it| it.ends_with("/match_correct") || it.ends_with("/match_correct.xml")),
        "{template:?}"
    );
}

#[test]
fn items_of_every_kind_are_converted_by_another_program() {
    let labels = ["<Mix & pat>", "Wait", "\"Carve\""];
    let question = |id: &str, answer| Question {
        id: id.into(),
        title: "What comes next".into(),
        lead: "The base is hard.".into(),
        prompt: "What comes next?".into(),
        options: (0..)
            .zip(labels)
            .map(|(n, label)| (format!("{n} o"), label.to_owned()))
            .collect(),
        answer,
    };
    let ids = || vec!["2 o".to_owned(), "0 o".to_owned()];
    let mut all = vec![
        question("one", Expected::One("1 o".into())),
        question("all", Expected::All(ids())),
        question(
            "order",
            Expected::Order([ids(), vec!["1 o".into()]].concat()),
        ),
    ];
    // And what the lessons make of it.
    all.extend(crate::cases::questions());
    let Some(items) = converted(&all) else {
        return;
    };
    assert_eq!(items.len(), all.len());
    for (question, item) in all.iter().zip(&items) {
        check(question, item);
    }
}

/// What is wrong with each statement, by the validator: it is given one at a time.
fn faults(statements: &[Value]) -> Option<Vec<usize>> {
    let modules = told("TRAYWARD_XAPI_VALIDATION")?;
    let script = "const valid = require('xapi-validation').default;
        const all = JSON.parse(require('fs').readFileSync(process.argv[1], 'utf8'));
        console.log(JSON.stringify(all.map((it) => valid(it).length)));";
    let folder = tempfile::tempdir().expect("a folder");
    let file = folder.path().join("statements.json");
    fs::write(&file, Value::from(statements).to_string()).expect("it can be written");
    let run = Command::new("node")
        .args(["-e", script])
        .arg(&file)
        .env("NODE_PATH", modules)
        .output()
        .expect("node runs");
    let said = String::from_utf8_lossy(&run.stderr);
    assert!(run.status.success(), "{said}");
    Some(serde_json::from_slice(&run.stdout).expect("a list of numbers"))
}

#[test]
fn statements_are_valid_by_another_validator() {
    let set = assignment(4);
    let key = Key::new("AAAA", true);
    let table = table(&set, &key, &["AAAB", "A..D", "...."]);
    let text = xapi::statements(&set, &table, "https://practice.example.org/");
    let mut all: Vec<Value> = serde_json::from_str(&text).expect("JSON");
    let count = all.len();
    assert_eq!(count, 15);
    // What it has to catch, to be worth asking.
    let mut broken = |change: fn(&mut Value)| {
        let mut statement = all[0].clone();
        change(&mut statement);
        all.push(statement);
    };
    broken(|it| it["result"]["score"]["scaled"] = 1.4.into());
    broken(|it| it["result"]["duration"] = "5 seconds".into());
    broken(|it| it["verb"] = Value::Null);
    broken(|it| it["object"]["id"] = "no address".into());
    let Some(faults) = faults(&all) else {
        return;
    };
    assert_eq!(faults[..count], vec![0; count], "{faults:?}");
    assert!(faults[count..].iter().all(|it| *it > 0), "{faults:?}");
}

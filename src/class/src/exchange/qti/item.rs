//! One question as an item.

use super::super::xml::escaped;
use clinic::case::{Decision, Form, Sum};
use clinic::standing::Standing;
use core::fmt::Write;

/// What answers a question fully: ids of its options.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Expected {
    /// One of them.
    One(String),
    /// All of these, in no order.
    All(Vec<String>),
    /// All options, in this order.
    Order(Vec<String>),
    /// A number that is typed, both ends included.
    Between {
        /// The least, as a plain decimal.
        from: String,
        /// The most.
        to: String,
        /// Its unit; empty where it has none.
        unit: String,
    },
}

/// A question with its options.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Question {
    /// Its id, unique in a package.
    pub id: String,
    /// A short name.
    pub title: String,
    /// What is told before it; can be empty.
    pub lead: String,
    /// The question.
    pub prompt: String,
    /// The options: id and label.
    pub options: Vec<(String, String)>,
    /// The answer.
    pub answer: Expected,
}

impl Question {
    /// A decision of a case as a question. The answer is one that scores full
    /// marks; other ways that are taught cannot be told apart from wrong ones
    /// in the form. A tray becomes the question which things belong on it, as
    /// its order has stages. None where there is nothing to choose.
    pub fn of(id: &str, decision: &Decision) -> Option<Self> {
        let answer = match decision.form {
            Form::One => Expected::One(decision.best_answer().into_iter().next()?),
            Form::All => Expected::All(decision.best_answer()),
            Form::Tray { .. } => Expected::All(
                decision
                    .choices
                    .iter()
                    .filter(|c| c.standing == Standing::Right)
                    .map(|c| c.id.clone())
                    .collect(),
            ),
            Form::Order(_) => Expected::Order(decision.best_answer()),
            Form::Number(ref sum) => return Self::of_sum(id, decision, sum),
        };
        let prompt = match decision.form {
            Form::Tray { .. } => format!(
                "{} (Choose what belongs; the order does not count here.)",
                decision.question
            ),
            _ => decision.question.clone(),
        };
        (!decision.choices.is_empty()).then(|| Self {
            id: id.into(),
            title: decision.name.clone(),
            lead: decision.lead.clone(),
            prompt,
            options: decision
                .choices
                .iter()
                .map(|c| (c.id.clone(), c.label.clone()))
                .collect(),
            answer,
        })
    }

    /// A number as a choice among common wrong results.
    fn of_sum(id: &str, decision: &Decision, sum: &Sum) -> Option<Self> {
        let all = sum.problem.options();
        let right = all.iter().position(|(_, right)| *right)?;
        let named = |at: usize| format!("number-{at}");
        let labels = all.into_iter().enumerate();
        Some(Self {
            id: id.into(),
            title: decision.name.clone(),
            lead: decision.lead.clone(),
            prompt: decision.question.clone(),
            options: labels.map(|(at, (label, _))| (named(at), label)).collect(),
            answer: Expected::One(named(right)),
        })
    }

    /// The item as XML.
    pub fn xml(&self) -> String {
        match &self.answer {
            Expected::One(id) => self.choice("single", &[id]),
            Expected::All(ids) => self.choice("multiple", &ids.iter().collect::<Vec<_>>()),
            Expected::Order(ids) => self.choice("ordered", &ids.iter().collect::<Vec<_>>()),
            Expected::Between { from, to, unit } => self.number(from, to, unit),
        }
    }

    /// What is told before it, as XML.
    fn told(&self) -> String {
        match self.lead.as_str() {
            "" => String::new(),
            lead => format!("    <p>{}</p>\n", escaped(lead)),
        }
    }

    fn choice(&self, cardinality: &str, right: &[&String]) -> String {
        let mut values = String::new();
        for id in right {
            // Writing to a String cannot fail.
            let _ = writeln!(values, "      <value>{}</value>", identifier(id));
        }
        let mut options = String::new();
        for (id, label) in &self.options {
            let _ = writeln!(
                options,
                "      <simpleChoice identifier=\"{}\">{}</simpleChoice>",
                identifier(id),
                escaped(label)
            );
        }
        let (element, bound) = match self.answer {
            Expected::One(_) => ("choiceInteraction", " maxChoices=\"1\""),
            Expected::Order(_) => ("orderInteraction", ""),
            _ => ("choiceInteraction", " maxChoices=\"0\""),
        };
        let lead = self.told();
        self.item(&format!(
            r#"  <responseDeclaration identifier="RESPONSE" cardinality="{cardinality}" baseType="identifier">
    <correctResponse>
{values}    </correctResponse>
  </responseDeclaration>
{SCORE}  <itemBody>
{lead}    <{element} responseIdentifier="RESPONSE" shuffle="false"{bound}>
      <prompt>{prompt}</prompt>
{options}    </{element}>
  </itemBody>
  <responseProcessing template="http://www.imsglobal.org/question/qti_v2p2/rptemplates/match_correct"/>
"#,
            prompt = escaped(&self.prompt),
        ))
    }

    fn number(&self, from: &str, to: &str, unit: &str) -> String {
        let lead = self.told();
        self.item(&format!(
            r#"  <responseDeclaration identifier="RESPONSE" cardinality="single" baseType="float">
    <correctResponse>
      <value>{from}</value>
    </correctResponse>
  </responseDeclaration>
{SCORE}  <itemBody>
{lead}    <p>{prompt}</p>
    <p><textEntryInteraction responseIdentifier="RESPONSE" expectedLength="12"/> {unit}</p>
  </itemBody>
  <responseProcessing>
    <responseCondition>
      <responseIf>
        <and>
          <gte>
            <variable identifier="RESPONSE"/>
            <baseValue baseType="float">{from}</baseValue>
          </gte>
          <lte>
            <variable identifier="RESPONSE"/>
            <baseValue baseType="float">{to}</baseValue>
          </lte>
        </and>
        <setOutcomeValue identifier="SCORE">
          <baseValue baseType="float">1</baseValue>
        </setOutcomeValue>
      </responseIf>
    </responseCondition>
  </responseProcessing>
"#,
            prompt = escaped(&self.prompt),
            unit = escaped(unit),
        ))
    }

    /// What every item is wrapped in.
    fn item(&self, body: &str) -> String {
        format!(
            r#"<?xml version="1.0" encoding="UTF-8"?>
<assessmentItem xmlns="http://www.imsglobal.org/xsd/imsqti_v2p2"
    xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance"
    xsi:schemaLocation="http://www.imsglobal.org/xsd/imsqti_v2p2 http://www.imsglobal.org/xsd/qti/qtiv2p2/imsqti_v2p2.xsd"
    identifier="{id}" title="{title}" adaptive="false" timeDependent="false">
{body}</assessmentItem>
"#,
            id = identifier(&self.id),
            title = escaped(&self.title),
        )
    }
}

/// The mark, which is 0 until it is earned.
const SCORE: &str = r#"  <outcomeDeclaration identifier="SCORE" cardinality="single" baseType="float">
    <defaultValue>
      <value>0</value>
    </defaultValue>
  </outcomeDeclaration>
"#;

/// An id as the form allows it: it begins with a letter, and goes on in
/// letters, digits, hyphens, underscores and points.
pub(super) fn identifier(id: &str) -> String {
    let plain = id.chars().map(|c| match c {
        c if c.is_ascii_alphanumeric() || matches!(c, '-' | '_' | '.') => c,
        _ => '_',
    });
    std::iter::once('i').chain(plain).collect()
}

//! The fragment of a place.

use super::{
    Drawn, FormSide, Place, SittingAt, View,
    query::{HIDDEN, OVER, PAPER, add_query, pairs},
};
use crate::find::words;

impl Place {
    /// The fragment, with its `#`: what a link points at.
    pub fn fragment(&self) -> String {
        match self {
            Self::Today => "#/today".into(),
            Self::Procedures => "#/procedures".into(),
            Self::Procedure(id, view, patient) => {
                let mut text = format!("#/procedures/{id}");
                if *view != View::Lesson {
                    text.push('/');
                    text.push_str(view.word());
                }
                add_query(&mut text, pairs(patient));
                text
            }
            Self::Items => "#/items".into(),
            Self::Item(id) => format!("#/items/{id}"),
            Self::AllPlates => "#/plates".into(),
            Self::Plates(family, false) => format!("#/plates/{family}"),
            Self::Plates(family, true) => format!("#/plates/{family}?{HIDDEN}"),
            Self::LifeSize(Drawn::Family(family)) => format!("#/plates/{family}/life-size"),
            Self::LifeSize(Drawn::Item(id)) => format!("#/items/{id}/life-size"),
            Self::Lesson(id) => format!("#/lessons/{id}"),
            Self::TrayCard(id, paper, patient) => {
                let mut text = format!("#/procedures/{id}/card");
                let paper = std::iter::once(format!("{PAPER}={}", paper.value()));
                add_query(&mut text, paper.chain(pairs(patient)));
                text
            }
            Self::Find(sought) if sought.trim().is_empty() => "#/find".into(),
            Self::Find(sought) => format!("#/find/{}", words::encoded(sought)),
            Self::Glossary => "#/glossary".into(),
            Self::Term(id) => format!("#/glossary/{id}"),
            Self::Cases => "#/cases".into(),
            Self::Order => "#/cases/order".into(),
            Self::Case(frame, seed, None) => format!("#/cases/{frame}/{seed}"),
            Self::Case(frame, seed, Some(with)) => format!("#/cases/{frame}/{seed}/{with}"),
            Self::Reading(laid) => {
                let mut text = String::from("#/reading");
                add_query(&mut text, laid.iter().map(ToString::to_string));
                text
            }
            Self::ReadingExercise(seed) => format!("#/reading/{seed}"),
            Self::Cards => "#/cards".into(),
            Self::Card(id, procedure, patient) => {
                let mut text = format!("#/cards/{id}");
                let over = procedure.iter().map(|over| format!("{OVER}={over}"));
                add_query(&mut text, over.chain(pairs(patient)));
                text
            }
            Self::Wish(card) => format!("#/cards/{card}/wish"),
            Self::Sitting(SittingAt::New(minutes)) => format!("#/sitting/{minutes}"),
            Self::Sitting(SittingAt::Kept(id)) => format!("#/sitting/{id}"),
            Self::Plan => "#/plan".into(),
            Self::Forms(code) if code.is_empty() => "#/form".into(),
            Self::Forms(code) => format!("#/form/code/{code}"),
            Self::Form(id, FormSide::Whole) => format!("#/form/{id}"),
            Self::Form(id, FormSide::Question(number)) => format!("#/form/{id}/{number}"),
            Self::Questions => "#/questions".into(),
            Self::QuestionFamily(family) => format!("#/questions/{family}"),
            Self::Progress => "#/progress".into(),
            Self::Bench => "#/bench".into(),
            Self::Mix(material, None) => format!("#/bench/mix/{material}"),
            Self::Mix(material, Some(usage)) => format!("#/bench/mix/{material}/{usage}"),
            Self::Tools => "#/bench/numbers".into(),
            Self::Tool(tool, entries) => {
                let mut text = format!("#/bench/numbers/{tool}");
                let pair =
                    |(id, typed): &(String, String)| format!("{id}={}", words::encoded(typed));
                add_query(&mut text, entries.iter().map(pair));
                text
            }
            Self::Exercise(family, seed) => format!("#/bench/exercise/{family}/{seed}"),
            Self::Class(place) => place.fragment(),
            Self::Record => "#/record".into(),
            Self::About => "#/about".into(),
            Self::Unknown(text) => format!("#{text}"),
        }
    }
}

//! One answer, as a school's system is told of it.

use super::session::{ScormError, span};
use crate::handin::Mark;
use crate::task::{Answer, Graded, Places, Response, Way};

/// The most letters of an id or an answer.
const MOST_LETTERS: usize = 255;

/// The options that have a letter or a digit of their own.
const LETTERED: u16 = 36;

/// The options whose letters fit an answer.
const MOST_TAKEN: usize = 100;

/// What was answered, in the forms that the standard has.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Said {
    /// Options, by their places.
    Chosen(Vec<u16>),
    /// Options in order, by their places.
    Ordered(Vec<u16>),
    /// What stands on the left, by its place, with what was matched to it, by its own.
    Matched(Vec<(u16, u16)>),
    /// A number, in figures.
    Number(String),
    /// Something that was typed.
    Typed(String),
    /// Something that was done, told by what came of it.
    Done(String),
}

/// A graded answer.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Interaction {
    /// Its id: letters, digits, hyphens, underscores and points.
    pub id: String,
    /// What was answered.
    pub said: Said,
    /// Whether it is right.
    pub right: bool,
    /// The time of day at which it was answered, in seconds from midnight.
    pub at: u32,
    /// The seconds that it took.
    pub seconds: u32,
}

impl Interaction {
    /// A response that was graded, at a task of an assignment by its place in
    /// it, at a time of day in seconds. None where nothing was answered.
    pub fn of(task: u16, response: &Response, graded: &Graded, at: u32) -> Option<Self> {
        Some(Self {
            id: identifier(&format!("task-{}.{}", task + 1, graded.item.id)),
            said: said(&response.answer, graded)?,
            right: Mark::Judged(graded.standing).right(),
            at,
            seconds: response.seconds,
        })
    }

    /// The names and values to set, below the number of the interaction.
    ///
    /// # Errors
    /// [`ScormError`] where the standard has no room for something.
    pub fn values(&self) -> Result<Vec<(&'static str, String)>, ScormError> {
        if self.id.is_empty() || identifier(&self.id) != self.id {
            return Err(ScormError::Id(self.id.clone()));
        }
        let kind = match self.said {
            Said::Chosen(_) => "choice",
            Said::Ordered(_) => "sequencing",
            Said::Matched(_) => "matching",
            Said::Number(_) => "numeric",
            Said::Typed(_) => "fill-in",
            Said::Done(_) => "performance",
        };
        let result = if self.right { "correct" } else { "wrong" };
        let day = u64::from(self.at) % 86_400;
        Ok(vec![
            ("id", self.id.clone()),
            ("type", kind.into()),
            (
                "time",
                format!("{:02}:{:02}:{:02}", day / 3600, day / 60 % 60, day % 60),
            ),
            ("student_response", self.answer()?),
            ("result", result.into()),
            ("latency", span(self.seconds.into())),
        ])
    }

    fn answer(&self) -> Result<String, ScormError> {
        let letters: Option<Vec<String>> = match &self.said {
            Said::Chosen(taken) | Said::Ordered(taken) => {
                let letters = taken.iter().map(|&place| letter(place));
                letters.map(|it| it.map(String::from)).collect()
            }
            Said::Matched(pairs) => {
                let pair = |&(left, right): &(u16, u16)| {
                    Some(format!("{}.{}", letter(left)?, letter(right)?))
                };
                pairs.iter().map(pair).collect()
            }
            Said::Number(text) | Said::Typed(text) | Said::Done(text) => return Ok(plain(text)),
        };
        letters
            .map(|letters| letters.join(","))
            .filter(|answer| answer.len() <= MOST_LETTERS)
            .ok_or_else(|| ScormError::Answer(self.id.clone()))
    }
}

/// What an answer says; none where it is blank.
fn said(answer: &Answer, graded: &Graded) -> Option<Said> {
    let text = || graded.said.as_deref().unwrap_or_default().to_owned();
    Some(match answer {
        Answer::Blank => return None,
        Answer::Number(_) if graded.item.way == Way::Number => Said::Number(text()),
        Answer::Number(_) => Said::Typed(text()),
        Answer::Typed(typed) => Said::Typed(typed.clone()),
        Answer::Options(taken) => match graded.item.places {
            Places::Paired { right } => {
                let pairs = (0..).zip(taken.iter().copied());
                let matched = pairs.filter(|(_, place)| usize::from(*place) < right);
                Said::Matched(matched.collect())
            }
            // A large tray has more options than the form has letters.
            _ if taken.len() > MOST_TAKEN || taken.iter().any(|it| *it >= LETTERED) => {
                Said::Done(ids(taken, graded))
            }
            Places::Ordered => Said::Ordered(taken.clone()),
            Places::Chosen => Said::Chosen(taken.clone()),
        },
        // What the hand did has no form there.
        Answer::Mixed(_) => Said::Done(ids(&graded.taken, graded)),
    })
}

fn ids(places: &[u16], graded: &Graded) -> String {
    let of = |place: &u16| graded.item.offered.get(usize::from(*place));
    let ids = places.iter().filter_map(of).map(|it| &*it.id);
    ids.collect::<Vec<_>>().join(",")
}

/// An id as the standard takes it: letters, digits, hyphens, underscores and
/// points, 255 at the most. Whatever else stands in it becomes an underscore.
pub fn identifier(id: &str) -> String {
    let fits = |c: &char| c.is_ascii_alphanumeric() || matches!(c, '-' | '_' | '.');
    let plain = id.chars().map(|c| if fits(&c) { c } else { '_' });
    plain.take(MOST_LETTERS).collect()
}

/// A text in the letters that no system loses, as long as it may be.
fn plain(text: &str) -> String {
    let plain = |c: char| if matches!(c, ' '..='~') { c } else { '?' };
    text.chars().map(plain).take(MOST_LETTERS).collect()
}

/// The letter of an option: the standard has one letter or digit for each.
fn letter(place: u16) -> Option<char> {
    // Letters come before digits.
    char::from_digit((u32::from(place) + 10) % 36, 36).filter(|_| place < LETTERED)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::task::{Item, Offered};
    use clinic::standing::Standing;

    /// What a system is told of an answer: the kind and the response.
    fn told(answer: Answer, way: Way, places: Places) -> Option<(String, String)> {
        let offered = ["one", "two"].map(|id| Offered::outcome(id, id, Standing::Wrong, ""));
        let graded = Graded {
            item: std::rc::Rc::new(Item {
                id: "q".into(),
                name: "q".into(),
                competency: "q".into(),
                one: true,
                way,
                places,
                offered: offered.into(),
            }),
            standing: Standing::Wrong,
            per_cent: 0,
            taken: [1].into(),
            said: Some("36 mg".into()),
        };
        let response = Response {
            answer,
            ..Response::default()
        };
        let values = Interaction::of(0, &response, &graded, 0)?.values().unwrap();
        let value = |name: &str| {
            let mut values = values.iter();
            values.find(|(it, _)| *it == name).unwrap().1.clone()
        };
        Some((value("type"), value("student_response")))
    }

    /// The forms of `student_response`: SCORM 1.2 run-time environment, 3.4.5
    /// (`CMIFeedback`). Value from memory.
    #[test]
    fn each_way_of_answering_is_told_in_its_own_form() {
        let (options, chosen) = (Answer::Options(vec![1, 0, 2]), Places::Chosen);
        for (answer, way, places, kind, response) in [
            (options.clone(), Way::Options, chosen, "choice", "b,a,c"),
            (
                options.clone(),
                Way::Outcome,
                Places::Ordered,
                "sequencing",
                "b,a,c",
            ),
            // The third was matched to nothing.
            (
                options,
                Way::Outcome,
                Places::Paired { right: 2 },
                "matching",
                "a.b,b.a",
            ),
            (
                Answer::Number(36_000),
                Way::Number,
                chosen,
                "numeric",
                "36 mg",
            ),
            // What was typed into a case travels as a code, which says nothing here.
            (Answer::Number(7), Way::Typed, chosen, "fill-in", "36 mg"),
            (
                Answer::Typed("36".into()),
                Way::Typed,
                chosen,
                "fill-in",
                "36",
            ),
            (
                Answer::Options(vec![36]),
                Way::Options,
                chosen,
                "performance",
                "",
            ),
        ] {
            let wanted = (kind.to_owned(), response.to_owned());
            assert_eq!(told(answer, way, places), Some(wanted));
        }
        assert_eq!(told(Answer::Blank, Way::Options, chosen), None);
    }

    #[test]
    fn a_mix_is_told_by_what_came_of_it() {
        let made = crate::task::Made {
            version: 1,
            room: clinic::mixing::Room::usual(),
            actions: Vec::new(),
        };
        let told = told(Answer::Mixed(made), Way::Outcome, Places::Chosen);
        assert_eq!(told, Some(("performance".into(), "two".into())));
    }
}

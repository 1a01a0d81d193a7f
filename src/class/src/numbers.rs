//! Numbers to be worked out: which one a seat draws, and grading what was
//! typed. Answers are grouped by the slip that leads to them, where it is known.

use crate::task::{
    Answer, Draw, Graded, Grader, Item, Offered, Places, Response, Task, TaskId, Way,
};
use clinic::{
    Clinic,
    numbers::exercises::{Answer as Wanted, Exercise, Family, Grade, exercise_at, grade},
    standing::Standing,
};
use std::rc::Rc;

/// The exercise that a family and a draw mean; none where there is no such
/// family, or the facts that it needs are missing.
pub fn drawn(clinic: &Clinic, family: &str, draw: Draw) -> Option<Exercise> {
    let family = Family::with_id(family)?;
    let index = draw.distinct(family.count(clinic))?;
    exercise_at(clinic, family, index)
}

/// What was typed or chosen, as a hand-in carries it: of options the place.
pub fn answer(exercise: &Exercise, typed: &str) -> Answer {
    let place = match &exercise.answer {
        Wanted::Choice { options, .. } => options.iter().position(|it| it == typed),
        _ => None,
    };
    match place.and_then(|it| u16::try_from(it).ok()) {
        Some(place) => Answer::Options(vec![place]),
        None => Answer::Typed(typed.to_owned()),
    }
}

/// What was typed or chosen, from what a hand-in carries: the other way round
/// from [`answer`]. None where it cannot have been the answer.
pub fn given(exercise: &Exercise, answer: &Answer) -> Option<String> {
    match (answer, &exercise.answer) {
        (Answer::Typed(text), _) => Some(text.clone()),
        (Answer::Options(places), Wanted::Choice { options, .. }) => match places[..] {
            [place] => options.get(usize::from(place)).cloned(),
            _ => None,
        },
        _ => None,
    }
}

/// Grades numbers that were worked out.
#[derive(Debug)]
pub struct NumberGrader(Clinic);

impl NumberGrader {
    /// A grader over the catalogue behind `clinic`.
    pub fn new(clinic: Clinic) -> Self {
        Self(clinic)
    }

    fn drawn(&self, task: &Task, draw: Draw) -> Option<Exercise> {
        let Task::Number(family) = task else {
            return None;
        };
        drawn(&self.0, family, draw)
    }
}

impl Grader for NumberGrader {
    fn parts(&self, task: &Rc<Task>, draw: Draw) -> Option<u16> {
        self.drawn(task, draw).map(|_| 1)
    }

    fn seconds(&self, task: &Rc<Task>, draw: Draw) -> Option<u32> {
        self.drawn(task, draw).map(|it| it.seconds)
    }

    fn grade(&self, task: &TaskId, draw: Draw, response: &Response) -> Option<Graded> {
        let exercise = self.drawn(&task.task, draw).filter(|_| task.part == 0)?;
        let blank = response.answer == Answer::Blank;
        let typed = (!blank)
            .then(|| given(&exercise, &response.answer))
            .flatten();
        let grade = match &typed {
            Some(typed) => Some(grade(&exercise, typed).ok()?),
            None if blank => None,
            None => return None,
        };
        let right = grade.as_ref().is_some_and(|it| it.right);
        let (offered, taken, way) = outcomes(&exercise, &response.answer, grade.as_ref(), draw);
        Some(Graded {
            item: Rc::new(Item {
                id: format!("numbers.{}", exercise.family.id()).into(),
                name: exercise.family.name().into(),
                competency: exercise.competency.as_str().into(),
                one: true,
                way,
                places: Places::Chosen,
                offered,
            }),
            standing: if right {
                Standing::Right
            } else {
                Standing::Wrong
            },
            per_cent: if right { 100 } else { 0 },
            taken: taken.into(),
            said: typed.map(Into::into),
        })
    }
}

/// What can come of it, with what came of it: the options themselves where all
/// seats have the same, else right, each slip, and what no known slip leads to.
fn outcomes(
    exercise: &Exercise,
    answer: &Answer,
    grade: Option<&Grade>,
    draw: Draw,
) -> (Vec<Offered>, Vec<u16>, Way) {
    if let (Wanted::Choice { options, right }, true) = (&exercise.answer, draw.alike) {
        let offered = options.iter().enumerate().map(|(place, text)| {
            let standing = if place == *right {
                Standing::Right
            } else {
                Standing::Wrong
            };
            Offered::outcome(&format!("option-{}", place + 1), text, standing, "")
        });
        let taken = match answer {
            Answer::Options(places) => places.clone(),
            _ => Vec::new(),
        };
        return (offered.collect(), taken, Way::Options);
    }
    let right = Offered::outcome("right", "Right", Standing::Right, "");
    let other = || Offered::outcome("other", "Wrong in another way", Standing::Wrong, "");
    let (offered, taken) = match grade {
        None => (vec![right], Vec::new()),
        Some(grade) if grade.right => (vec![right], vec![0]),
        Some(grade) => {
            let slip = |text: &String| Offered::outcome(&slug(text), text, Standing::Wrong, "");
            let wrong = grade.slip.as_ref().map_or_else(other, slip);
            (vec![right, wrong], vec![1])
        }
    };
    (offered, taken, Way::Typed)
}

/// A slip as an id: its words. Figures in it are those of one exercise, and
/// make no other slip.
fn slug(text: &str) -> String {
    const MOST: usize = 60;
    let mut slug = String::from("slip");
    for word in text.split(|c: char| !c.is_ascii_alphanumeric()) {
        let figure = word.bytes().any(|b| b.is_ascii_digit());
        if !word.is_empty() && !figure && slug.len() + word.len() < MOST {
            slug.push('-');
            slug.push_str(&word.to_ascii_lowercase());
        }
    }
    slug
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_slip_with_other_figures_is_the_same_slip() {
        let one = slug("That would be 025; the packet says 030.");
        assert_eq!(one, slug("That would be 008; the packet says 140."));
        assert_eq!(one, "slip-that-would-be-the-packet-says");
        assert_ne!(one, slug("The 32 was forgotten."));
    }
}

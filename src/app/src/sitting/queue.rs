//! Which question of a sitting comes next.

/// A showing of a question within a sitting.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Showing {
    /// The id of the question.
    pub question: String,
    /// Whether it was missed before in this sitting.
    pub again: bool,
}

/// The next question: the first that was not answered, then each that was
/// missed once more, in the order in which they were missed. A question whose
/// fact is no longer taught is passed over.
///
/// `answers` are the answers so far, in order, and whether each was right.
pub fn next(
    questions: &[String],
    answers: &[(String, bool)],
    taught: impl Fn(&str) -> bool,
) -> Option<Showing> {
    let count = |id: &str| answers.iter().filter(|(each, _)| each == id).count();
    let fresh = questions.iter().find(|id| count(id) == 0 && taught(id));
    let missed = || {
        let mut missed = answers.iter().filter(|(_, right)| !right);
        missed.find(|(id, _)| count(id) == 1 && taught(id))
    };
    let showing = |question: &String, again| Showing {
        question: question.clone(),
        again,
    };
    fresh
        .map(|id| showing(id, false))
        .or_else(|| missed().map(|(id, _)| showing(id, true)))
}

/// How many showings are done and how many there will be, as far as is known.
pub fn progress(
    questions: &[String],
    answers: &[(String, bool)],
    taught: impl Fn(&str) -> bool,
) -> (usize, usize) {
    let answered = |id: &String| answers.iter().any(|(each, _)| each == id);
    let first = questions
        .iter()
        .filter(|id| answered(id) || taught(id))
        .count();
    let mut missed: Vec<&str> = Vec::new();
    for (id, right) in answers {
        if !right && !missed.contains(&id.as_str()) {
            missed.push(id);
        }
    }
    (answers.len(), (first + missed.len()).max(answers.len()))
}

#[cfg(test)]
mod tests {
    use super::*;

    fn ids(all: &[&str]) -> Vec<String> {
        all.iter().map(|&id| id.to_owned()).collect()
    }

    fn given(all: &[(&str, bool)]) -> Vec<(String, bool)> {
        all.iter()
            .map(|&(id, right)| (id.to_owned(), right))
            .collect()
    }

    /// A question, and whether it was right or comes again.
    type Asked<'a> = (&'a str, bool);

    #[test]
    fn what_was_missed_comes_back_once_at_the_end() {
        let questions = ids(&["a", "b", "c"]);
        let rows: [(&[Asked], Option<Asked>); 6] = [
            (&[], Some(("a", false))),
            (&[("a", false)], Some(("b", false))),
            (
                &[("a", false), ("b", true), ("c", false)],
                Some(("a", true)),
            ),
            (
                &[("a", false), ("b", true), ("c", false), ("a", false)],
                Some(("c", true)),
            ),
            (
                &[
                    ("a", false),
                    ("b", true),
                    ("c", false),
                    ("a", false),
                    ("c", true),
                ],
                None,
            ),
            (&[("a", true), ("b", true), ("c", true)], None),
        ];
        for (answers, wanted) in rows {
            let next = next(&questions, &given(answers), |_| true);
            let next = next.as_ref().map(|it| (it.question.as_str(), it.again));
            assert_eq!(next, wanted, "{answers:?}");
        }
    }

    #[test]
    fn a_question_that_is_no_longer_taught_is_passed_over() {
        let questions = ids(&["a", "b"]);
        let taught = |id: &str| id != "a";
        assert_eq!(next(&questions, &[], taught).unwrap().question, "b");
        let answers = given(&[("a", false), ("b", true)]);
        assert_eq!(next(&questions, &answers, taught), None);
    }

    #[test]
    fn the_count_grows_with_what_was_missed() {
        let questions = ids(&["a", "b"]);
        assert_eq!(progress(&questions, &[], |_| true), (0, 2));
        let answers = given(&[("a", false), ("b", true)]);
        assert_eq!(progress(&questions, &answers, |_| true), (2, 3));
    }
}

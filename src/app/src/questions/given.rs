//! An answer, between the record, which knows only ids, and the question.

use catalogue::quantity::Milli;
use record::{Given, PerCent, QuestionAnswered, SittingId};
use study::question::{Answer, Question, Verdict};

/// An answer as the record keeps it.
pub fn given(answer: Answer) -> Given {
    match answer {
        Answer::One(key) => Given::One(key),
        Answer::Many(keys) => Given::Many(keys),
        Answer::Order(keys) => Given::Order(keys),
        Answer::Pairs(pairs) => Given::Pairs(pairs),
        Answer::Number(number) => Given::Number(number.to_string()),
    }
}

/// An answer from the record; a number that cannot be read is no answer.
pub fn answer(given: &Given) -> Option<Answer> {
    Some(match given {
        Given::One(key) => Answer::One(key.clone()),
        Given::Many(keys) => Answer::Many(keys.clone()),
        Given::Order(keys) => Answer::Order(keys.clone()),
        Given::Pairs(pairs) => Answer::Pairs(pairs.clone()),
        Given::Number(text) => Answer::Number(Milli::parse(text).ok()?),
    })
}

/// The verdict as the record has it. Only what is right in all counts as right.
pub fn verdict(verdict: &Verdict) -> record::Verdict {
    if verdict.right {
        record::Verdict::Right
    } else if verdict.harm {
        record::Verdict::Unsafe
    } else {
        record::Verdict::Wrong
    }
}

/// An answer to a question, judged, as the record keeps it: without a hint, and sure.
pub fn judged(
    question: &Question,
    wording: u64,
    answer: Answer,
    sitting: SittingId,
    seconds: u32,
) -> QuestionAnswered {
    let judged = question.grade(&answer);
    QuestionAnswered {
        sitting,
        question: question.id.to_string(),
        wording,
        competency: question.competency.to_string(),
        answer: given(answer),
        verdict: verdict(&judged),
        per_cent: PerCent::of(judged.per_cent),
        hint: false,
        unsure: false,
        seconds,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn an_answer_comes_back_from_the_record() {
        let text = |keys: &[&str]| keys.iter().map(|&key| key.to_owned()).collect::<Vec<_>>();
        for each in [
            Answer::One("a".into()),
            Answer::Many(text(&["a", "b"])),
            Answer::Order(text(&["b", "a"])),
            Answer::Pairs(vec![("a".into(), "x".into())]),
            Answer::Number(Milli(-1_250)),
        ] {
            assert_eq!(answer(&given(each.clone())), Some(each));
        }
        assert_eq!(answer(&Given::Number("many".into())), None);
    }
}

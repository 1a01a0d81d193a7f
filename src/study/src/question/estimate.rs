//! How hard a question is and how long it takes, before anybody has answered it.
//!
//! Both are estimates of our own without a published scale. Difficulty starts
//! from the form (choosing among four is easier than ordering or typing) and
//! moves by up to 1.2 logits either way with the closeness of the wrong options;
//! fewer than four options make guessing easier. Time is reading at three words
//! a second, five seconds of thought, and the moves the form needs.

use super::{Form, Shown};
use catalogue::cases::Level;

/// Level, difficulty in logits, and seconds, for options of this closeness from 0 to 1.
pub(crate) fn estimate(
    stem: &str,
    shown: &Shown,
    form: &Form,
    closeness: f32,
) -> (Level, f64, u32) {
    let (base, moves) = match form {
        Form::One(_) | Form::Name(_) | Form::Slip(_) => (0.0, 1),
        Form::All(all) | Form::Place(all) => (0.4, 2 * all.len()),
        Form::Order { pieces, .. } => (0.4, 4 * pieces.len()),
        Form::Match { left, .. } => (0.1, 5 * left.len()),
        Form::Number { .. } => (0.5, 8),
    };
    let few = matches!(form, Form::One(all) | Form::Name(all) if all.len() < 4);
    let difficulty =
        base + 2.4 * (f64::from(closeness.clamp(0.0, 1.0)) - 0.5) - if few { 0.3 } else { 0.0 };
    // Two decimals are more than an estimate deserves, and read well.
    let difficulty = (difficulty * 100.0).round() / 100.0;
    let level = if difficulty < -0.4 {
        Level::Basic
    } else if difficulty < 0.45 {
        Level::Core
    } else {
        Level::Demanding
    };
    let seconds = (words(stem) + shown_words(shown) + form_words(form)) / 3 + 5 + moves;
    let seconds = u32::try_from(seconds).unwrap_or(120).clamp(8, 120);
    (level, difficulty, seconds)
}

fn words(text: &str) -> usize {
    text.bytes().filter(|b| *b == b' ').count() + 1
}

fn shown_words(shown: &Shown) -> usize {
    match shown {
        Shown::Nothing => 0,
        Shown::Items(items) => 2 * items.len(),
        Shown::Drawing(_) => 9,
        Shown::Lines(lines) => lines.iter().map(|l| words(l)).sum(),
    }
}

fn form_words(form: &Form) -> usize {
    match form {
        Form::Order { pieces, .. } => pieces.iter().map(|p| words(&p.text)).sum(),
        Form::Match { left, right, .. } => left.iter().chain(right).map(|p| words(&p.text)).sum(),
        Form::Number { .. } => 0,
        _ => form.choices().iter().map(|c| words(&c.text)).sum(),
    }
}

//! Inputs of the dose tools.

use super::{
    Tool,
    form::{Entries, Fault, Form, Input},
};
use crate::numbers::{
    dose::{Given, Second, Sitting, contents},
    entry::{AGE, CARTRIDGES, Refusal, Strength, VOLUME, Volume, WEIGHT, Weight, dilution},
    exact::Exact,
    working::Working,
};
use catalogue::numbers::{Heart, Numbers};

fn solutions(id: &'static str, label: &'static str, numbers: &Numbers) -> Input {
    let all = numbers.solutions.iter();
    Input::choice(id, label, all.map(|s| (s.id.clone(), s.name.clone())))
}

pub(super) fn inputs(tool: Tool, numbers: &Numbers) -> Vec<Input> {
    let rules = numbers.dose_rules.iter();
    let common = [
        Input::choice(
            "rules",
            "Rule",
            rules.map(|r| (r.id.clone(), r.name.clone())),
        ),
        Input::field("weight", "Weight of the patient", &WEIGHT),
        Input::choice(
            "heart",
            "Heart",
            [
                ("healthy", "healthy"),
                ("diseased", "significant heart disease"),
            ]
            .map(|(a, b)| (a.into(), b.into()))
            .into_iter(),
        ),
    ];
    let mut all = Vec::new();
    match tool {
        Tool::Contents => {
            all.push(Input::text("strength", "Strength", "2 % or 20 mg/mL"));
            all.push(Input::text("ratio", "Ratio of the vasoconstrictor", "1:100 000").optional());
            all.push(Input::field("volume", "One cartridge holds", &VOLUME));
            all.push(Input::field("cartridges", "Cartridges", &CARTRIDGES));
        }
        Tool::Second => {
            all.extend(common);
            all.push(solutions("given", "Given already", numbers));
            all.push(Input::field("given-volume", "One of those held", &VOLUME));
            all.push(Input::field(
                "given-cartridges",
                "How many of those",
                &CARTRIDGES,
            ));
            all.push(solutions("solution", "Wanted now", numbers));
            all.push(Input::field("volume", "One cartridge holds", &VOLUME));
        }
        _ => {
            all.extend(common);
            all.push(solutions("solution", "Solution", numbers));
            all.push(Input::field("volume", "One cartridge holds", &VOLUME));
            all.push(Input::field("age", "Age of the patient", &AGE).optional());
        }
    }
    all
}

fn heart(text: &str) -> Option<Heart> {
    match text {
        "healthy" => Some(Heart::Healthy),
        "diseased" => Some(Heart::Diseased),
        _ => None,
    }
}

pub(super) fn work(
    tool: Tool,
    numbers: &Numbers,
    entries: &Entries,
) -> Result<Working, Vec<Fault>> {
    let mut form = Form::new(entries);
    let done: Option<Result<Working, Refusal>> = match tool {
        Tool::Contents => work_contents(&mut form).map(Ok),
        Tool::Second => second(&mut form, numbers),
        _ => maximum(&mut form, numbers),
    };
    match done {
        Some(Ok(working)) if form.faults.is_empty() => Ok(working),
        Some(Err(why)) => Err(form.failed(Some(why))),
        _ => Err(form.failed(None)),
    }
}

fn work_contents(form: &mut Form<'_>) -> Option<Working> {
    let strength = form.read("strength", Strength::read);
    let ratio = form.maybe("ratio", dilution);
    let volume = form.read("volume", Volume::read);
    let cartridges = form.read("cartridges", |text| CARTRIDGES.read(text));
    let ratio = ratio.map(|d| ("vasoconstrictor", d));
    Some(contents(strength?, ratio, volume?, cartridges?.0).working)
}

fn maximum(form: &mut Form<'_>, numbers: &Numbers) -> Option<Result<Working, Refusal>> {
    let rules = form.chosen("rules", |id| numbers.rules(id));
    let weight = form.read("weight", Weight::read);
    let heart = form.chosen("heart", heart);
    let solution = form.chosen("solution", |id| numbers.solution(id));
    let volume = form.read("volume", Volume::read);
    let years: Option<(Exact, _)> = form.maybe("age", |text| AGE.read(text));
    let sitting = Sitting {
        rules: rules?,
        solution: solution?,
        volume: volume?,
        weight: weight?,
        heart: heart?,
        years: years.map(|(years, _)| years),
    };
    Some(sitting.maximum(numbers).map(|most| most.working))
}

fn second(form: &mut Form<'_>, numbers: &Numbers) -> Option<Result<Working, Refusal>> {
    let rules = form.chosen("rules", |id| numbers.rules(id));
    let weight = form.read("weight", Weight::read);
    let heart = form.chosen("heart", heart);
    let given = form.chosen("given", |id| numbers.solution(id));
    let given_volume = form.read("given-volume", Volume::read);
    let given_cartridges = form.read("given-cartridges", |text| CARTRIDGES.read(text));
    let solution = form.chosen("solution", |id| numbers.solution(id));
    let volume = form.read("volume", Volume::read);
    let given = Given {
        solution: given?,
        volume: given_volume?,
        cartridges: given_cartridges?.0,
    };
    let second = Second {
        rules: rules?,
        given: vec![given],
        solution: solution?,
        volume: volume?,
        weight: weight?,
        heart: heart?,
    };
    Some(second.remaining(numbers).map(|(_, working)| working))
}

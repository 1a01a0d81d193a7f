//! What a seat's device makes of a task, with chance for a student.

use crate::cases::clinic;
use class::graders::Graders;
use class::questions::Questions;
use class::task::{Answer, Draw, Made, Response, Task};
use class::{cases, forms, mixes, numbers, questions};
use clinic::Clinic;
use clinic::case::{Decision, Form as DecisionForm, Seed};
use clinic::mixing::{Action, Millis, Mix, Recipe, Stroke, Units, Vigour};
use clinic::numbers::exercises::{Answer as Wanted, Exercise, grade};
use clinic::standing::Standing;
use study::item::{Bank as Items, Blueprint};
use study::question::{Answer as Given, Bank, Form, Question, measured};

/// What is taught, with all questions.
pub struct Taught {
    /// The reasoning.
    pub clinic: Clinic,
    pub written: Bank,
    pub items: Items,
}

impl Taught {
    /// With the questions as they are written.
    pub fn new() -> Self {
        let clinic = clinic();
        Self {
            written: Bank::new(&clinic),
            items: Items::default(),
            clinic,
        }
    }

    /// And as measurement sees them, which forms are put together from.
    pub fn with_items() -> Self {
        let taught = Self::new();
        let all = taught.written.ids().iter();
        let all = all.filter_map(|id| Some(measured(&taught.written.write(id, 0)?)));
        let blueprint = Blueprint::of(&taught.clinic.catalogue().competencies);
        let (items, _) = Items::new(blueprint, all);
        Self { items, ..taught }
    }

    pub fn questions(&self) -> Questions<'_> {
        Questions {
            written: &self.written,
            items: &self.items,
        }
    }

    pub fn graders(&self) -> Graders<'_> {
        Graders::new(&self.clinic, Some(self.questions()))
    }
}

/// What a device says of an answer when it is given: standing and marks.
pub type Said = (Standing, u8);

/// What a task's responses are, with what the student's device said of each.
pub type Done = Vec<(Response, Said)>;

pub fn response(answer: Answer, seconds: u32, hinted: bool) -> Response {
    Response {
        answer,
        seconds,
        hinted,
    }
}

/// A decision answered by chance: well, or with whatever is taken.
pub fn decided(decision: &Decision, chance: &mut Seed) -> (Response, Said) {
    let taken: Vec<String> = if chance.below(2) == 0 {
        decision.best_answer()
    } else {
        let mut all: Vec<String> = decision.choices.iter().map(|it| it.id.clone()).collect();
        chance.shuffle(&mut all);
        let most = match decision.form {
            DecisionForm::One => 1,
            DecisionForm::Order(_) => all.len(),
            _ => 1 + chance.below(all.len().max(1)),
        };
        all.truncate(most);
        all
    };
    let grade = decision.grade(&taken);
    let answer = cases::answer(decision, &taken);
    (
        response(answer, 20, false),
        (grade.standing, grade.per_cent),
    )
}

/// A mix made by a hand that is not always steady.
pub fn mixed(taught: &Taught, drawn: &mixes::Drawn, chance: &mut Seed) -> (Response, Said) {
    let offer = &drawn.offer;
    let catalogue = taught.clinic.catalogue();
    let recipe = Recipe::new(catalogue, &offer.material, Some(&offer.usage)).expect("a recipe");
    let mut mix = Mix::of(recipe, drawn.room);
    let act = |mix: &mut Mix, action| mix.act(action).expect("it can be done");
    let lot = [0.8, 1.0, 1.0, 1.0, 1.25][chance.below(5)];
    let powder = Units::of(offer.powder.usual.get() * lot);
    // Begun so that it is ready in time, more or less.
    let before = drawn.wanted.ready.get() - f64::from(offer.mix.middle());
    let before = before + [-30.0, 0.0, 0.0, 0.0, 40.0][chance.below(5)];
    #[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss)]
    act(
        &mut mix,
        Action::Wait(Millis((before.max(1.0) * 1000.0) as u32)),
    );
    act(&mut mix, Action::DispensePowder(powder));
    act(&mut mix, Action::DispenseLiquid(offer.liquid.usual));
    let portions = u32::try_from(offer.portions.len()).unwrap_or(1).max(1);
    let each = offer.mix.middle() * 1000 / portions;
    for share in &offer.portions {
        act(&mut mix, Action::BringIn(*share));
        let mut left = each;
        while left > 0 {
            // A screen sees a hand in frames of sixteen or seventeen milliseconds.
            let lasts = left.min(16 + u32::try_from(chance.below(700)).unwrap_or(0));
            let vigour = [Vigour::FIRM, Vigour::FIRM, Vigour::GENTLE, Vigour::HARD];
            let stroke = Stroke {
                vigour: vigour[chance.below(4)],
                area: offer.area,
            };
            act(
                &mut mix,
                Action::Spatulate {
                    stroke,
                    lasts: Millis(lasts),
                },
            );
            left -= lasts;
        }
    }
    act(&mut mix, Action::Test);
    let calm = chance.below(3) == 0;
    let ready = if calm {
        mix.clock()
    } else {
        drawn.wanted.ready
    };
    act(
        &mut mix,
        Action::HandOver {
            ready,
            placing: drawn.wanted.placing,
        },
    );
    let verdict = mix.verdict().expect("it was handed over");
    let said = (verdict.standing, verdict.marks);
    let made = Made::of(mix.replay());
    (response(Answer::Mixed(made), 120, true), said)
}

/// A number typed right, as a common slip, or anyhow.
pub fn typed(exercise: &Exercise, chance: &mut Seed) -> (Response, Said) {
    let right = || match &exercise.answer {
        Wanted::Number { value, .. } => value.text(6),
        Wanted::Between { from, .. } => from.text(6),
        other => {
            let words = other.words();
            words.split(" (").next().unwrap_or_default().to_owned()
        }
    };
    let text = match &exercise.answer {
        Wanted::Choice { options, .. } => options[chance.below(options.len())].clone(),
        _ if chance.below(2) == 0 => right(),
        _ => format!("{}", chance.below(300)),
    };
    // What is not understood is no answer, on the student's device either.
    let Ok(grade) = grade(exercise, &text) else {
        return (Response::default(), (Standing::Wrong, 0));
    };
    let said = if grade.right {
        (Standing::Right, 100)
    } else {
        (Standing::Wrong, 0)
    };
    (response(numbers::answer(exercise, &text), 45, false), said)
}

/// A question answered well, or by chance.
pub fn asked(question: &Question, chance: &mut Seed) -> (Response, Said) {
    let given = if chance.below(2) == 0 {
        question.best()
    } else {
        let mut keys: Vec<String> = match &question.form {
            Form::Order { pieces, .. } => pieces.iter().map(|it| it.key.clone()).collect(),
            form => form.choices().iter().map(|it| it.key.clone()).collect(),
        };
        chance.shuffle(&mut keys);
        match &question.form {
            Form::One(_) | Form::Name(_) | Form::Slip(_) => Given::One(keys.remove(0)),
            Form::All(_) | Form::Place(_) => {
                keys.truncate(1 + chance.below(keys.len()));
                Given::Many(keys)
            }
            Form::Order { .. } => Given::Order(keys),
            Form::Match { left, right, .. } => {
                let pair = |piece: &study::question::Piece| {
                    let said = &right[chance.below(right.len())];
                    (piece.key.clone(), said.key.clone())
                };
                Given::Pairs(left.iter().map(pair).collect())
            }
            Form::Number { .. } => {
                let number = i32::try_from(chance.below(90_000)).unwrap_or(0);
                Given::Number(catalogue::quantity::Milli(number))
            }
        }
    };
    let verdict = question.grade(&given);
    let standing = match (verdict.right, verdict.harm) {
        (true, _) => Standing::Right,
        (false, true) => Standing::Unsafe,
        (false, false) => Standing::Wrong,
    };
    let answer = questions::answer(question, &given);
    (response(answer, 25, true), (standing, verdict.per_cent))
}

/// What a seat's device makes of one task.
pub fn done(taught: &Taught, task: &Task, draw: Draw) -> Done {
    let mut chance = Seed::new(draw.seed ^ 0x5eed);
    let decisions = |all: &[Decision], chance: &mut Seed| {
        all.iter().map(|it| decided(it, chance)).collect::<Done>()
    };
    match task {
        Task::Case(order) => {
            let case = cases::case(&taught.clinic, order, draw.seed).expect("a case");
            decisions(&case.decisions, &mut chance)
        }
        Task::Reading => {
            let tray = taught.clinic.tray_reading(draw.seed).expect("a tray");
            decisions(&tray.decisions, &mut chance)
        }
        Task::Mix { material, usage } => {
            let drawn = mixes::drawn(&taught.clinic, material, usage.as_deref(), draw.seed);
            vec![mixed(taught, &drawn.expect("a mix"), &mut chance)]
        }
        Task::Number(family) => {
            let exercise = numbers::drawn(&taught.clinic, family, draw).expect("an exercise");
            vec![typed(&exercise, &mut chance)]
        }
        Task::Question(family) => {
            let question = questions::drawn(&taught.written, family, draw).expect("a question");
            vec![asked(&question, &mut chance)]
        }
        Task::Form {
            blueprint,
            questions,
        } => {
            let bank = forms::bank(&taught.items, blueprint).expect("a blueprint");
            let ids = forms::drawn(&bank, *questions, draw.seed).expect("a form");
            let code = forms::code(draw.seed);
            let one = |id: &String| {
                let question = forms::write(&taught.written, &code, id).expect("a question");
                asked(&question, &mut chance)
            };
            ids.iter().map(one).collect()
        }
    }
}

//! Simulated students, seeded: estimates agree with known abilities, forecasts
//! with what happens, and the schedule is worth its while at equal minutes.

use study::{
    day::Day,
    mastery::{LINKING, Normal, PassTable, Responses},
    memory::{Calibration, Memory, Schedule, multiplier},
    simulation::{Chance, Comparison, Setting, Student, Way, bank, compare},
    sitting::{Length, Wanted, compose},
};

fn chance_of_right(theta: f64, b: f64) -> f64 {
    1.0 / (1.0 + (b - theta).exp())
}

struct Forecast {
    predicted: f64,
    passed: bool,
}

/// Students from N(0, 1) after `tries` first answers, and a form of 100 that is
/// harder than what they practised on by N(`harder`, `spread`) logits; pass at 70
/// (the setting of the simulation that the readiness bands rest on, in Python with numpy).
fn forecasts(
    tries: usize,
    students: usize,
    harder: f64,
    spread: f64,
    linking: f64,
) -> (Vec<Forecast>, f64) {
    let mut chance = Chance::new(11);
    let form: Vec<(f64, f64)> = (0..100).map(|_| (1.0, chance.normal(-0.3, 1.0))).collect();
    let table = PassTable::new(&form, 70);
    let mut sds = 0.0;
    let list = (0..students)
        .map(|_| {
            let theta = chance.normal(0.0, 1.0);
            let mut responses = Responses::default();
            for _ in 0..tries {
                let b = chance.normal(-0.3, 1.0);
                let right = chance.happens(chance_of_right(theta, b));
                responses.add(1.0, b, right, 1.0);
            }
            let posterior = responses.posterior(Normal::STANDARD);
            sds += posterior.sd;
            let harder = chance.normal(harder, spread);
            let score = form
                .iter()
                .filter(|&&(_, b)| chance.happens(chance_of_right(theta - harder, b)))
                .count();
            Forecast {
                predicted: table.chance(&posterior, linking),
                passed: score >= 70,
            }
        })
        .collect();
    let count = f64::from(u32::try_from(students).unwrap());
    (list, sds / count)
}

/// Mean prediction and share passed in the bands of readiness, where there are
/// enough students to tell.
fn bands(list: &[Forecast]) -> Vec<(f64, f64, f64)> {
    [(0.0, 0.2), (0.2, 0.5), (0.5, 0.8), (0.8, 1.1)]
        .iter()
        .map(|&(from, to)| {
            let inside: Vec<&Forecast> = list
                .iter()
                .filter(|f| f.predicted >= from && f.predicted < to)
                .collect();
            let count = f64::from(u32::try_from(inside.len()).unwrap());
            let predicted = inside.iter().map(|f| f.predicted).sum::<f64>() / count;
            let passed = inside.iter().filter(|f| f.passed).count();
            (
                predicted,
                f64::from(u32::try_from(passed).unwrap()) / count,
                count,
            )
        })
        .collect()
}

#[test]
fn readiness_is_calibrated_when_the_model_is_right() {
    for (tries, published_sd) in [(10, 0.60), (40, 0.35)] {
        let (list, sd) = forecasts(tries, 1200, 0.0, 0.0, 0.0);
        assert!((sd - published_sd).abs() <= 0.02, "{tries}: sd {sd}");
        for (predicted, observed, count) in bands(&list) {
            // Three standard errors of a share.
            let chance = 3.0 * (predicted * (1.0 - predicted) / count).sqrt();
            assert!(
                (predicted - observed).abs() <= chance.max(0.02),
                "{tries}: {predicted} against {observed} of {count}"
            );
        }
    }
}

#[test]
fn a_harder_form_turns_out_as_published_and_is_not_promised() {
    // An independent simulation in Python with numpy: predicted .34 -> .06, .66 -> .24, .95 -> .78 where the form is 0.4
    // logits harder than ours, after 80 answers and without widening.
    let (list, _) = forecasts(80, 1000, 0.4, 0.0, 0.0);
    let published = [(0.34, 0.06), (0.66, 0.24), (0.95, 0.78)];
    for ((predicted, observed, _), wanted) in bands(&list)[1..].iter().zip(published) {
        assert!(
            (predicted - wanted.0).abs() <= 0.04,
            "{predicted} {wanted:?}"
        );
        // Their form of 100 was drawn with another generator.
        assert!((observed - wanted.1).abs() <= 0.10, "{observed} {wanted:?}");
    }
}

#[test]
fn widening_calibrates_where_forms_differ_in_hardness() {
    // Forms harder or easier by N(0, 0.4): what the linking error stands for.
    let loss = |linking: f64| {
        let (list, _) = forecasts(80, 1000, 0.0, LINKING, linking);
        let each = |f: &Forecast| {
            let p = f.predicted.clamp(1e-6, 1.0 - 1e-6);
            -(if f.passed { p } else { 1.0 - p }).ln()
        };
        let sum: f64 = list.iter().map(each).sum();
        (sum / 1000.0, bands(&list))
    };
    let ((widened, bands), (plain, _)) = (loss(LINKING), loss(0.0));
    assert!(widened < plain, "{widened} against {plain}");
    for (predicted, observed, count) in bands {
        let chance = 3.0 * (predicted * (1.0 - predicted) / count).sqrt();
        assert!(
            (predicted - observed).abs() <= chance.max(0.02),
            "{predicted} {observed}"
        );
    }
}

#[test]
fn eighty_per_cent_intervals_hold_the_truth_four_times_in_five() {
    let mut chance = Chance::new(5);
    let mut held = 0;
    for _ in 0..1000 {
        let theta = chance.normal(0.0, 1.0);
        let mut responses = Responses::default();
        for n in 0..30 {
            let b = f64::from(n % 3) - 1.0;
            responses.add(1.0, b, chance.happens(chance_of_right(theta, b)), 1.0);
        }
        let posterior = responses.posterior(Normal::STANDARD);
        held += u32::from(posterior.quantile(0.1) <= theta && theta <= posterior.quantile(0.9));
    }
    // 800 expected, standard error 12.6.
    assert!((762..=838).contains(&held), "{held}");
}

#[test]
fn the_multiplier_finds_who_holds_longer_and_betters_the_forecast() {
    let bank = bank(200, 3);
    let mut off = (0.0, 0.0);
    for seed in 0..8 {
        let mut student = Student::new(200, 900 + seed);
        let mut memory = Memory::default();
        let without = std::collections::HashSet::new();
        for ahead in 0..70 {
            let today = Day(0).plus(ahead);
            let schedule = Schedule::new(today, None, 1.0);
            let wanted = Wanted {
                length: Length::Ten,
                budget: 600,
                learning: &[],
                without: &without,
                today,
            };
            for ask in compose(&bank, &memory, &schedule, &wanted).asks {
                memory.take(&bank, &student.answer(&bank, ask.place, today));
            }
        }
        let schedule = Schedule::new(Day(70), None, 1.0);
        let found = multiplier(&schedule.model, memory.reviews());
        off.0 += (found.ln() - student.holds.ln()).abs();
        off.1 += student.holds.ln().abs();
        let table = Calibration::of(memory.reviews());
        assert!(table.reviews >= 200, "{}", table.reviews);
        assert!(table.log_loss.unwrap() < 0.7, "{:?}", table.log_loss);
    }
    assert!(
        off.0 < off.1,
        "mean error with {} and without {}",
        off.0 / 8.0,
        off.1 / 8.0
    );
}

#[test]
fn the_schedule_beats_fixed_intervals_at_equal_minutes() {
    let setting = Setting {
        students: 6,
        ..Setting::default()
    };
    let comparison: Comparison = compare(setting);
    println!("{comparison}");
    let ours = comparison.outcomes[0];
    assert_eq!(ours.way, Way::Scheduled);
    for other in &comparison.outcomes[1..] {
        assert!(ours.retention > other.retention, "{comparison}");
        assert!(
            other.minutes <= 10.0 && ours.minutes <= 10.0,
            "{comparison}"
        );
    }
}

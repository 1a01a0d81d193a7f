//! Judging a mix at its hand-over: every finding with its cause, the worst first.

use super::{
    findings::{A_LITTLE, moment, past, portions, stood, thickness, thinned, through, wet, worked},
    mix::Mix,
    offer,
    units::{Celsius, Seconds},
    verdict::{Finding, Verdict},
};
use crate::standing::Standing;
use catalogue::kinetics::Surface;

pub(super) fn verdict(mix: &Mix) -> Verdict {
    let Some(handed) = mix.handed else {
        return of(mix, Vec::new(), 0.0);
    };
    let left = mix.working_time_left().map_or(0.0, Seconds::get);
    let mut found = Vec::new();
    found.extend(past(mix, left));
    found.extend(thinned(mix));
    if left >= -A_LITTLE {
        found.extend(thickness(mix));
    }
    if left >= 0.0 {
        found.extend(moment(mix, handed, left));
    }
    found.extend(through(mix));
    found.extend(worked(mix));
    found.extend(portions(mix));
    found.extend(wet(mix));
    found.extend(stood(mix));
    of(mix, found, left)
}

fn of(mix: &Mix, mut found: Vec<Finding>, left: f64) -> Verdict {
    found.sort_by_key(|f| std::cmp::Reverse((f.standing, f.takes)));
    let standing = found.first().map_or(Standing::Right, |f| f.standing);
    let taken = found
        .iter()
        .fold(0_u8, |sum, f| sum.saturating_add(f.takes));
    let kept = 100_u8.saturating_sub(taken);
    let marks = match standing {
        Standing::Right => kept.max(90),
        Standing::Acceptable => kept.clamp(60, 89),
        Standing::Wrong => kept.min(50),
        Standing::Unsafe => 0,
    };
    let mixing = &mix.recipe.mixing;
    let fault = found
        .first()
        .and_then(|f| f.shows)
        .and_then(|shows| mixing.faults.iter().find(|f| f.shows == Some(shows)));
    let worst = found.first().cloned();
    let mend = match (fault, standing) {
        (Some(fault), _) => fault.mend.clone(),
        (None, Standing::Wrong | Standing::Unsafe) => "Throw it away and mix anew.".into(),
        (None, _) => String::new(),
    };
    Verdict {
        standing,
        marks,
        fault: worst.as_ref().map(|worst| worst.fault),
        cause: worst.as_ref().map_or_else(
            || {
                format!(
                    "Right, and in time: {} of working time are left. {}",
                    Seconds::of(left).whole(),
                    offer::ready(&mix.recipe)
                )
            },
            |w| w.sentence.clone(),
        ),
        sources: worst.map_or_else(|| mixing.sources.clone(), |w| w.sources),
        also: found.into_iter().skip(1).collect(),
        mend,
        never: fault.map(|f| f.never.clone()).unwrap_or_default(),
        next: mixing.hardens.clone(),
        sets_after: sets_after(mix),
        label: offer::label(&mix.recipe, Some((mix.room, Celsius::of(mix.bench.water)))),
    }
}

/// When it will have set in the mouth, or on the bench where it comes from a bowl.
fn sets_after(mix: &Mix) -> Option<Seconds> {
    let sets = mix.recipe.ripe_sets?;
    let mouth = !mix.recipe.kinetics.surfaces.contains(&Surface::Bowl);
    let setting = mix.setting(mouth);
    let mut mass = mix.mass;
    while mass.ripe < sets && mass.age < 20_000.0 {
        let tick = if mass.age < 600.0 { 0.1 } else { 1.0 };
        mass.step(&mix.recipe, &setting, None, tick);
    }
    Some(Seconds::of(mass.age))
}

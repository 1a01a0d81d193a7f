//! What is found of a mix at its hand-over, one thing at a time, each with its cause.

use super::{
    bench::Handed,
    causes::{self, capital},
    feel::{self, Firmness},
    mix::Mix,
    recipe::Recipe,
    units::{Celsius, Seconds},
    verdict::{Fault, Finding},
};
use crate::standing::Standing;
use catalogue::{
    ids::SourceId,
    kinetics::{IfThick, IfThin},
};

/// How far off the moment still passes, in seconds; as in [`crate::timing`].
#[expect(clippy::cast_precision_loss, reason = "a small whole number")]
const GRACE: f64 = crate::timing::GRACE as f64;

/// How far past its working time a mix still passes, in seconds; ours.
pub(super) const A_LITTLE: f64 = 10.0;

fn finding(mix: &Mix, fault: Fault, standing: Standing, takes: u8, sentence: String) -> Finding {
    Finding {
        fault,
        standing,
        takes,
        sentence,
        shows: fault.shows(),
        sources: mix.recipe.mixing.sources.clone(),
    }
}

/// A finding about how quickly it went, with the sources of its kinetics.
fn of_pace(mut finding: Finding, recipe: &Recipe) -> Finding {
    let extra: Vec<SourceId> = recipe
        .kinetics
        .sources
        .iter()
        .filter(|s| !finding.sources.contains(s))
        .cloned()
        .collect();
    finding.sources.extend(extra);
    finding
}

/// Its working time is over.
pub(super) fn past(mix: &Mix, left: f64) -> Option<Finding> {
    if left >= 0.0 {
        return None;
    }
    let word = capital(feel::word(mix.consistency()?));
    let over = Seconds::of(-left).whole();
    let until = mix.worked_until()?.whole();
    let why = causes::why_fast(mix)
        .map(|why| format!(", for {why}"))
        .unwrap_or_default();
    let sentence = format!(
        "{word}: handed over {over} past its working time, which was {until}{why}. Throw it away and mix anew; do not thin it."
    );
    let (standing, takes) = if left < -A_LITTLE {
        (Standing::Wrong, 80)
    } else {
        (Standing::Acceptable, 25)
    };
    let found = finding(mix, Fault::Past, standing, takes, sentence);
    Some(of_pace(found, &mix.recipe))
}

/// Liquid was added to a mix that takes none.
pub(super) fn thinned(mix: &Mix) -> Option<Finding> {
    let ripe = mix.course.thinned?;
    if mix.recipe.kinetics.if_thick == IfThick::AddLiquid {
        return None;
    }
    let liquid = &mix.recipe.kinetics.liquid.name;
    let (standing, sentence) = if ripe > mix.recipe.ripe_works * 0.5 {
        (
            Standing::Unsafe,
            format!(
                "A mix that had begun to set was thinned with {liquid}: it looks fresh, but it is weak, leaks, and leaves {liquid} free against the tooth."
            ),
        )
    } else {
        (
            Standing::Wrong,
            format!(
                "{} was added to the mix: its proportion is no longer known.",
                capital(liquid)
            ),
        )
    };
    Some(finding(mix, Fault::Thinned, standing, 60, sentence))
}

/// It is thinner or thicker than its use wants.
pub(super) fn thickness(mix: &Mix) -> Option<Finding> {
    let firm = mix.firmness()?;
    let off = firm.0 - Firmness::middle(mix.recipe.target.consistency).0;
    let word = capital(feel::word(firm.consistency()));
    let wanted = feel::word(mix.recipe.target.consistency);
    if let Some(harm) = &mix.recipe.kinetics.thin_harm
        && mix.recipe.part_of_ratio(&mix.mass) < 0.75
    {
        let sentence = format!("{word} because {}. {}", causes::why_thin(mix), harm.because);
        let mut found = finding(mix, Fault::Thin, Standing::Unsafe, 100, sentence);
        found.sources.clone_from(&harm.sources);
        return Some(found);
    }
    if mix.recipe.mixing.light && mix.mass.lit > 0.0 {
        let sentence =
            "The light was held over it on the pad: it sets there, and not in the tooth.";
        return Some(finding(
            mix,
            Fault::Lit,
            Standing::Wrong,
            80,
            sentence.into(),
        ));
    }
    let (standing, takes) = match off.abs() {
        d if d <= 0.55 => return None,
        d if d <= 0.85 => (Standing::Acceptable, 20),
        _ => (Standing::Wrong, 60),
    };
    if off < 0.0 {
        let mend = match mix.recipe.kinetics.if_thin {
            IfThin::AddPowder => "A little more powder would have mended it.",
            IfThin::DrawOff => "Drawing liquid off with a dry pellet would have mended it.",
            IfThin::MeasureAnew => "It is thrown away and measured anew.",
        };
        let sentence = format!(
            "{word} because {}; it should be {wanted}. {mend}",
            causes::why_thin(mix)
        );
        return Some(finding(mix, Fault::Thin, standing, takes, sentence));
    }
    let sentence = format!(
        "{word} because {}; it should be {wanted}.",
        causes::why_thick(mix)
    );
    Some(finding(mix, Fault::Thick, standing, takes, sentence))
}

/// Too early, too late, or too little time left to place it.
pub(super) fn moment(mix: &Mix, handed: Handed, left: f64) -> Option<Finding> {
    let early = handed.ready - handed.at;
    let waits = early.max(0.0);
    let spare = left - waits - handed.placing;
    let whole = |s: f64| Seconds::of(s).whole();
    if spare < -GRACE && waits > GRACE {
        let sentence = format!(
            "Too early: the dentist is ready only {} later, and its working time is over before it is placed.",
            whole(waits)
        );
        return Some(finding(mix, Fault::Early, Standing::Wrong, 60, sentence));
    }
    if spare < -GRACE {
        let sentence = format!(
            "Only {} of working time are left, and placing takes {}: it stiffens in the dentist's hands.",
            whole(left),
            whole(handed.placing)
        );
        return Some(finding(mix, Fault::Short, Standing::Wrong, 55, sentence));
    }
    if waits > GRACE {
        let sentence = format!(
            "Handed over {} before the dentist is ready; enough working time is left, but it ages on the pad.",
            whole(waits)
        );
        return Some(finding(
            mix,
            Fault::Early,
            Standing::Acceptable,
            15,
            sentence,
        ));
    }
    let late = -early;
    if late > 120.0 {
        let sentence = format!("The dentist waited {} for it: begin sooner.", whole(late));
        return Some(finding(mix, Fault::Late, Standing::Wrong, 50, sentence));
    }
    if late > GRACE {
        let sentence = format!(
            "The dentist waited {} for it: begin a little sooner.",
            whole(late)
        );
        return Some(finding(
            mix,
            Fault::Late,
            Standing::Acceptable,
            15,
            sentence,
        ));
    }
    None
}

/// Specks, lumps or streaks.
pub(super) fn through(mix: &Mix) -> Option<Finding> {
    let (standing, takes) = match mix.homogeneity() {
        h if h >= 0.95 => return None,
        h if h >= 0.88 => (Standing::Acceptable, 15),
        _ => (Standing::Wrong, 60),
    };
    let what = if mix.recipe.is_pastes() {
        "Streaks of two colours"
    } else {
        "Dry specks"
    };
    let sentence = format!(
        "{what} are left in it: it was worked for {}, and {} to {} s of firm strokes are wanted.",
        Seconds::of(mix.mass.worked).whole(),
        mix.recipe.mix_seconds().from,
        mix.recipe.mix_seconds().to,
    );
    Some(finding(mix, Fault::Unmixed, standing, takes, sentence))
}

/// It was worked far longer than its mixing time.
pub(super) fn worked(mix: &Mix) -> Option<Finding> {
    let most = f64::from(mix.recipe.mix_seconds().to);
    if mix.mass.worked <= most * 1.5 + 5.0 {
        return None;
    }
    let sentence = format!(
        "It was worked for {}, far beyond {most} s: that uses up working time.",
        Seconds::of(mix.mass.worked).whole()
    );
    Some(finding(
        mix,
        Fault::Overworked,
        Standing::Acceptable,
        12,
        sentence,
    ))
}

/// The first portion was far larger than published.
pub(super) fn portions(mix: &Mix) -> Option<Finding> {
    let published = mix.recipe.target.portions.first()?.0;
    let published = f64::from(published) / 1000.0;
    let first = mix.course.first_share?;
    if first <= (published * 1.6).max(published + 0.2) {
        return None;
    }
    let heat = if mix.recipe.kinetics.heat.is_some() {
        "; so much at once also makes heat"
    } else {
        ""
    };
    let sentence = format!(
        "{} of the {} came in first, and {} is usual: a large lot clumps{heat}.",
        capital(&causes::fraction(first)),
        mix.recipe.kinetics.powder.name,
        causes::fraction(published),
    );
    Some(finding(
        mix,
        Fault::LargeLot,
        Standing::Acceptable,
        12,
        sentence,
    ))
}

/// It was mixed where water had condensed.
pub(super) fn wet(mix: &Mix) -> Option<Finding> {
    if mix.mass.damp < 0.2 || mix.recipe.kinetics.water_speeds.is_none() {
        return None;
    }
    let sentence = format!(
        "Mixed on a wet slab: it had {}, and water condenses below {} in this room. Water gets into the mix and speeds it; a colder slab is no gain there.",
        Celsius::of(mix.bench.degrees),
        mix.room.dew_point(),
    );
    let found = finding(mix, Fault::Wet, Standing::Wrong, 55, sentence);
    Some(of_pace(found, &mix.recipe))
}

/// The liquid stood before it was mixed.
pub(super) fn stood(mix: &Mix) -> Option<Finding> {
    let stood = mix.course.liquid_stood;
    if !mix.recipe.kinetics.liquid_last || stood <= 60.0 {
        return None;
    }
    let sentence = format!(
        "The {} stood for {} before it was mixed: put it out last, for it loses water.",
        mix.recipe.kinetics.liquid.name,
        Seconds::of(stood).whole()
    );
    Some(finding(
        mix,
        Fault::Stood,
        Standing::Acceptable,
        12,
        sentence,
    ))
}

//! What can be done next, grouped as the work goes. By hand the spatula is on
//! the pad and the clock runs by itself; in words all of it stands in the list.

use super::session::Session;
use clinic::mixing::{Action, Mix, plan::Move};
use leptos::prelude::*;

/// A group of moves.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Group {
    LayOut,
    MeasureOut,
    BringIn,
    Work,
    Mend,
    Decide,
}

impl Group {
    const ALL: [Self; 6] = [
        Self::LayOut,
        Self::MeasureOut,
        Self::BringIn,
        Self::Work,
        Self::Mend,
        Self::Decide,
    ];

    fn of(action: Action) -> Self {
        match action {
            Action::LayOut { .. } | Action::WaterAt(_) => Self::LayOut,
            Action::DispensePowder(_) | Action::DispenseLiquid(_) => Self::MeasureOut,
            Action::BringIn(_) => Self::BringIn,
            Action::Spatulate { .. } | Action::Wait(_) | Action::Cure(_) => Self::Work,
            Action::AddPowder(_) | Action::AddLiquid(_) | Action::DrawOff(_) => Self::Mend,
            Action::Test | Action::Discard | Action::HandOver { .. } => Self::Decide,
        }
    }

    fn label(self) -> &'static str {
        match self {
            Self::LayOut => "Lay out",
            Self::MeasureOut => "Measure out",
            Self::BringIn => "Bring in",
            Self::Work => "Work and wait",
            Self::Mend => "Mend",
            Self::Decide => "Test and decide",
        }
    }
}

/// A stable hook for tests: what the move does.
pub fn hook(action: Action) -> String {
    match action {
        Action::LayOut {
            surface,
            temperature,
        } => format!("lay-out-{surface:?}-{}", temperature.get()).to_lowercase(),
        Action::WaterAt(degrees) => format!("water-{}", degrees.get()),
        Action::DispensePowder(units) => format!("powder-{}", units.get()),
        Action::DispenseLiquid(units) => format!("liquid-{}", units.get()),
        Action::BringIn(share) => format!("bring-in-{}", share.get()),
        Action::Spatulate { stroke, .. } => {
            format!("work-{:?}-{}", stroke.area, u8::from(stroke.vigour)).to_lowercase()
        }
        Action::Wait(lasts) => format!("wait-{}", lasts.get()),
        Action::Cure(_) => "cure".into(),
        Action::Test => "test".into(),
        Action::AddPowder(_) => "add-powder".into(),
        Action::AddLiquid(_) => "add-liquid".into(),
        Action::DrawOff(_) => "draw-off".into(),
        Action::Discard => "discard".into(),
        Action::HandOver { .. } => "give-it".into(),
    }
}

/// The moves.
#[component]
pub fn Moves(
    /// The mix.
    session: Session,
) -> impl IntoView {
    let way = session.way;
    // Some moves come and go with each portion; the list is drawn afresh only
    // when it is another one, so that focus stays where it is.
    let moves = Memo::new(move |_| {
        session.turn.track();
        let words = !way.get().by_hand();
        let mut moves = session.moves();
        moves.retain(|each| words || Group::of(each.action) != Group::Work);
        moves
    });
    let in_group = move |group: Group| {
        Memo::new(move |_| {
            moves.with(|all| {
                let all = all.iter().filter(|it| Group::of(it.action) == group);
                all.cloned().collect::<Vec<Move>>()
            })
        })
    };
    let group = move |group: Group| {
        let mine = in_group(group);
        let shown = move || mine.with(|mine| !mine.is_empty());
        let shown = Memo::new(move |_| shown());
        move || {
            shown.get().then(|| {
                view! {
                    <section class="mb-group" data-test=format!("moves-{group:?}").to_lowercase()>
                        <h2 class="stage-label" tabindex="-1">{group.label()}</h2>
                        <div class="mb-buttons">
                            <For
                                each=move || mine.get()
                                key=|it| format!("{}{}", hook(it.action), it.label)
                                let:it
                            >
                                {button(session, it)}
                            </For>
                        </div>
                    </section>
                }
            })
        }
    };
    let on = move || {
        session.turn.track();
        session.with(|mix: &Mix| format!("{}. Room: {}.", mix.lies_on(), mix.room_said()))
    };
    view! {
        <div data-test="bench-moves">
            <p class="hint" data-test="lies-on">{on}</p>
            {Group::ALL.map(group).collect_view()}
        </div>
    }
}

fn button(session: Session, it: Move) -> impl IntoView {
    let action = it.action;
    let main = matches!(action, Action::HandOver { .. });
    let class = if main {
        "button"
    } else {
        "button button-quiet"
    };
    view! {
        <button
            type="button"
            class=class
            data-test=format!("do-{}", hook(action))
            on:click=move |_| session.act(action)
        >
            {it.label}
        </button>
    }
}

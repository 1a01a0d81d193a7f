//! Long screens: the first parts are drawn with the screen, the others right
//! after it has been painted, in slices, so that the page answers a touch at
//! once. A reader who comes back to a place further down gets all at once.

use crate::browser::{
    address::Address,
    breath::{self, Sliced},
    unfinished::Unfinished,
};
use leptos::prelude::*;
use std::collections::VecDeque;

/// The parts of a list, known to all views within it.
#[derive(Clone, Copy)]
struct Turns {
    at_once: usize,
    waiting: StoredValue<Waiting>,
}

#[derive(Default)]
struct Waiting {
    begun: usize,
    turns: VecDeque<RwSignal<bool>>,
}

/// Lets whatever asks for its [`turn`] in views below wait for it, but for the
/// first few, which are drawn at once.
pub fn take_turns(at_once: usize) {
    let back = use_context::<Address>().is_some_and(Address::comes_back_down);
    provide_context(Turns {
        at_once: if back { usize::MAX } else { at_once },
        waiting: StoredValue::new(Waiting::default()),
    });
}

/// Whether it is the asking part's turn: always so where no turns are taken.
pub fn turn() -> Signal<bool> {
    use_context::<Turns>().map_or_else(|| Signal::stored(true), Turns::next)
}

/// The parts of a list, each drawn when it is its turn.
pub fn in_turn<T, V>(
    parts: impl IntoIterator<Item = T>,
    at_once: usize,
    draw: impl Fn(T) -> V + Clone + Send + 'static,
) -> Vec<AnyView>
where
    T: Clone + Send + 'static,
    V: IntoView + 'static,
{
    take_turns(at_once);
    let one = |part: T| {
        let (turn, draw) = (turn(), draw.clone());
        (move || turn.get().then(|| draw(part.clone()))).into_any()
    };
    parts.into_iter().map(one).collect()
}

/// A part of a screen, drawn when it is its turn.
#[component]
pub fn InTurn(
    /// The part.
    children: ChildrenFn,
) -> impl IntoView {
    let turn = turn();
    move || turn.get().then(|| children())
}

impl Turns {
    fn next(self) -> Signal<bool> {
        let now = self.waiting.try_update_value(|all| {
            all.begun += 1;
            all.begun <= self.at_once
        });
        if now != Some(false) {
            return Signal::stored(true);
        }
        let turn = RwSignal::new(false);
        let first = self.waiting.try_update_value(|all| {
            all.turns.push_back(turn);
            all.turns.len() == 1
        });
        if first == Some(true) {
            let unfinished = Unfinished::new();
            leptos::task::spawn_local(async move {
                self.go_on().await;
                drop(unfinished);
            });
        }
        turn.into()
    }

    async fn go_on(self) {
        breath::after_paint().await;
        let mut work = Sliced::drawing();
        // A list that has gone has no parts any more.
        while let Some(Some(turn)) = self.waiting.try_update_value(|all| all.turns.pop_front()) {
            let _ = turn.try_set(true);
            // What follows from it is drawn before the time is looked at.
            leptos::task::tick().await;
            work.rest().await;
        }
    }
}

//! What follows from how a student stands: worked out when a screen first asks
//! for it, in slices after that screen was painted, and kept for the others.

use super::{
    Questions,
    studied::{Studied, fold, known, studied_by},
};
use crate::{
    browser::{
        breath::{self, Sliced},
        unfinished::Unfinished,
    },
    log::log,
};
use leptos::{prelude::*, task::spawn_local};
use std::{
    any::{Any, TypeId},
    cell::RefCell,
    collections::HashMap,
    future::poll_fn,
    pin::pin,
    rc::Rc,
    task::Poll,
};

/// What was worked out of one student's standing, each kind of thing once.
#[derive(Default)]
pub struct Following(RefCell<HashMap<TypeId, Rc<dyn Any>>>);

impl Following {
    fn known<T: 'static>(&self) -> Option<Rc<T>> {
        let known = self.0.borrow().get(&TypeId::of::<T>()).cloned();
        known.and_then(|it| it.downcast().ok())
    }

    fn keep<T: 'static>(&self, found: T) -> Rc<T> {
        let found = Rc::new(found);
        let kept: Rc<dyn Any> = Rc::<T>::clone(&found);
        self.0.borrow_mut().insert(TypeId::of::<T>(), kept);
        found
    }
}

/// A standing and what was worked out of it.
type Found<T> = (Rc<Studied>, Rc<T>);

/// Draws what `work` makes of the standing: at once if that is known, else
/// once it is worked out. Until then a place of the class `space` says what is
/// done and is kept free, so that nothing moves when it comes.
pub fn following<T: 'static, V: IntoView + 'static>(
    questions: Questions,
    space: &'static str,
    says: &'static str,
    work: impl AsyncFnOnce(Questions, &Studied, &mut Sliced) -> T + 'static,
    draw: impl Fn(Questions, &Studied, &T) -> V + Send + 'static,
) -> impl IntoView {
    let found = RwSignal::new_local(at_once::<T>());
    if found.with_untracked(Option::is_none) {
        let (log, unfinished) = (log(), Unfinished::new());
        spawn_local(async move {
            let work = pin!(async {
                breath::after_paint().await;
                let mut slices = Sliced::begun();
                fold(log, questions, &mut slices).await;
                let studied = studied_by(log, questions);
                let made = work(questions, &studied, &mut slices).await;
                let made = studied.following.keep(made);
                found.try_set(Some((studied, made)));
            });
            while_shown(found, work).await;
            drop(unfinished);
        });
    }
    move || {
        found.with(|found| match found {
            Some((studied, made)) => draw(questions, studied, made).into_any(),
            None => view! {
                <div class=space aria-busy="true">
                    <p class="q-note">{says}</p>
                </div>
            }
            .into_any(),
        })
    }
}

/// What is known without any work.
fn at_once<T: 'static>() -> Option<Found<T>> {
    let studied = known(log())?;
    let made = studied.following.known()?;
    Some((studied, made))
}

/// Goes on with work as long as the screen is there that it is done for.
async fn while_shown<T: 'static>(
    found: RwSignal<Option<Found<T>>, LocalStorage>,
    mut work: std::pin::Pin<&mut impl Future<Output = ()>>,
) {
    poll_fn(|context| {
        if found.is_disposed() {
            return Poll::Ready(());
        }
        work.as_mut().poll(context)
    })
    .await;
}

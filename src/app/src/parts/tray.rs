//! A tray, drawn: stages in order of use, every item with its drawing, its
//! name and, on a tap, why it is there.

use super::{
    drawing::ItemDrawing,
    gradually::in_turn,
    icon::{Icon, icon},
    item_link,
    sources::SourceNotes,
};
use crate::{place::Place, taught::catalogue};
use catalogue::{Item, items};
use clinic::tray::{Change, Need, Stage, Tray, TrayItem};
use leptos::prelude::*;

/// How many stages of a tray a phone shows at first.
const AT_ONCE: usize = 1;

/// A tray in order of use.
#[component]
pub fn TrayView(
    /// The tray.
    tray: Tray,
) -> impl IntoView {
    view! {
        <div class="tray" data-test="tray">
            <ol class="tray-stages">{in_turn(tray.stages, AT_ONCE, stage)}</ol>
        </div>
        {changes(tray.changes)}
    }
}

/// One stage of use. What lies on the tray is drawn; what waits at the unit or
/// is worn is named below, since nobody lays it.
fn stage(stage: Stage) -> impl IntoView {
    let (laid, elsewhere): (Vec<TrayItem>, Vec<TrayItem>) = stage
        .items
        .into_iter()
        .partition(|each| each.place == items::Place::Tray);
    view! {
        <li class="tray-stage">
            <h3 class="stage-label">{stage.title}</h3>
            <ul class="tray-items">{laid.into_iter().map(laid_item).collect_view()}</ul>
            {(!elsewhere.is_empty())
                .then(|| {
                    view! {
                        <ul class="tray-elsewhere">
                            {elsewhere.into_iter().map(waiting_item).collect_view()}
                        </ul>
                    }
                })}
        </li>
    }
}

fn laid_item(each: TrayItem) -> impl IntoView {
    let item = catalogue().item(&each.item);
    let called = each.need == Need::IfCalled;
    let class = if called {
        "tray-item tray-item-called"
    } else {
        "tray-item"
    };
    view! {
        <li class=class data-test=format!("item-{}", each.item)>
            <details name="tray-item">
                <summary>
                    <span class="tray-item-drawing">{item.map(|item| view! { <ItemDrawing item /> })}</span>
                    <span class="tray-item-name">
                        {item_link::name(&each.item)}
                        {called.then(|| view! { <span class="called">"if called for"</span> })}
                    </span>
                </summary>
                {why(&each, item)}
            </details>
        </li>
    }
}

fn waiting_item(each: TrayItem) -> impl IntoView {
    let item = catalogue().item(&each.item);
    let place = match each.place {
        items::Place::Worn => "worn",
        items::Place::Tray | items::Place::Unit => "at the unit",
    };
    view! {
        <li data-test=format!("item-{}", each.item)>
            <details name="tray-item">
                <summary>
                    {item_link::name(&each.item)} " " <span class="waits">{place}</span>
                </summary>
                {why(&each, item)}
            </details>
        </li>
    }
}

/// Why it is there, and the way to know more.
fn why(each: &TrayItem, item: Option<Item<'static>>) -> impl IntoView + use<> {
    let more = item.map(|item| {
        let to = Place::Item(item.id().clone()).fragment();
        view! { <a href=to>"More about it" {icon(Icon::Onwards)}</a> }
    });
    view! {
        <div class="tray-item-why">
            <p>"It is there " {each.reason.clone()} "."</p>
            {more}
        </div>
    }
}

/// What the patient in hand has changed.
fn changes(changes: Vec<Change>) -> impl IntoView {
    let one = |change: Change| {
        let to = change.to.as_ref().map(item_link::name);
        view! {
            <li>
                <p class="change-items">
                    <s>{item_link::name(&change.from)}</s>
                    {match to {
                        Some(to) => view! { {icon(Icon::Onwards)} <strong>{to}</strong> }.into_any(),
                        None => view! { " " <strong>"left out"</strong> }.into_any(),
                    }}
                </p>
                <p>{change.reason.because}</p>
                <SourceNotes ids=change.reason.sources />
            </li>
        }
    };
    (!changes.is_empty()).then(|| {
        view! {
            <section class="changes" data-test="changes">
                <h3 class="stage-label">"Not as in the standard set-up"</h3>
                <ul>{changes.into_iter().map(one).collect_view()}</ul>
            </section>
        }
    })
}

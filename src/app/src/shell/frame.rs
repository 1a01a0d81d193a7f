//! The frame: header, screen, safety line and bar.

use super::{bar::Bar, notices::Notices, screen::Screen};
use crate::{
    book::Book,
    browser::{address::Address, focus, network},
    log::OpenLog,
    parts::{
        announce::{self, LiveRegion},
        icon::{Icon, icon},
    },
    place::Place,
};
use catalogue::outline::Outline;
use js_sys::Function;
use leptos::prelude::*;

/// The whole page.
#[component]
pub fn Frame(
    /// What there is, by name.
    outline: Outline,
    /// Gives a promise of the packed catalogue.
    fetch: Function,
    /// Gives a promise of the sources it was made from.
    sources: Function,
) -> impl IntoView {
    let log = OpenLog::open();
    provide_context(log);
    Book::provide(outline, fetch, sources);
    let address = Address::watch();
    provide_context(address);
    let announcer = announce::provide();
    view! {
        <div class="frame">
            <Header />
            <Bar place=address.place() />
            <main id="main" tabindex="-1">
                <Notices />
                <Screen place=address.place() />
                <SafetyLine />
            </main>
            <LiveRegion announcer />
        </div>
    }
}

/// The name of the page, a way past the bar, and whether there is a connection.
#[component]
fn Header() -> impl IntoView {
    let connected = network::connected();
    let offline = move || {
        (!connected.get()).then(|| {
            view! {
                <p class="offline" data-test="offline">
                    {icon(Icon::Offline)} "Offline. Everything here still works."
                </p>
            }
        })
    };
    view! {
        <header class="top">
            <button
                type="button"
                class="skip button"
                on:click=move |_| focus::first("#main")
            >
                "Skip to the content"
            </button>
            <a class="name" href=Place::Today.fragment()>"Trayward"</a>
            <div role="status">{offline}</div>
            <a class="find-link" href=Place::Find(String::new()).fragment() data-test="go-find">
                {icon(Icon::Find)} "Find"
            </a>
        </header>
    }
}

/// What always holds, at the end of every screen.
#[component]
fn SafetyLine() -> impl IntoView {
    view! {
        <p class="safety">
            "For study. The dentist diagnoses and chooses; local law, the practice's protocol and the material's instructions for use come first. "
            <a href=Place::About.fragment()>"About"</a>
        </p>
    }
}

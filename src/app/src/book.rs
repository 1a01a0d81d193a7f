//! What is taught, as it arrives: the outline with the page, the catalogue
//! after it. The first screen needs the outline alone.

use crate::{
    areas::{self, Stopped},
    browser::breath,
    packs::{Opened, used},
};
use catalogue::outline::Outline;
use js_sys::{Function, Promise, Uint8Array};
use leptos::prelude::*;
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::JsFuture;

/// How far the catalogue has come.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Arrival {
    /// It is on its way.
    Awaited,
    /// It is here: `taught` knows it.
    Here,
    /// It did not come; a sentence for the reader says why.
    Stopped(String),
}

/// The outline, and the arrival of the catalogue.
#[derive(Clone, Copy)]
pub struct Book {
    outline: RwSignal<&'static Outline>,
    fetch: StoredValue<Function, LocalStorage>,
    fetch_sources: StoredValue<Function, LocalStorage>,
    arrival: RwSignal<Arrival>,
    aside: RwSignal<Vec<String>>,
    with_packs: RwSignal<bool>,
    owner: StoredValue<Owner>,
}

impl Book {
    /// Makes the outline known to all views below, and sends for the catalogue.
    /// Both functions are the loader's: they give promises of packed bytes, one
    /// of the catalogue, one of the sources it was made from.
    pub fn provide(outline: Outline, fetch: Function, fetch_sources: Function) -> Self {
        let book = Self {
            outline: RwSignal::new(Box::leak(Box::new(outline))),
            fetch: StoredValue::new_local(fetch),
            fetch_sources: StoredValue::new_local(fetch_sources),
            arrival: RwSignal::new(Arrival::Awaited),
            aside: RwSignal::new(Vec::new()),
            with_packs: RwSignal::new(false),
            // What is made known later has to be known as widely as if it had
            // been there from the start.
            owner: StoredValue::new(Owner::current().unwrap_or_default()),
        };
        provide_context(book);
        book.send_for();
        book
    }

    /// How far the catalogue has come.
    pub fn arrival(self) -> Signal<Arrival> {
        self.arrival.into()
    }

    /// Which packs in use were set aside when the page opened, each in a sentence.
    pub fn aside(self) -> Signal<Vec<String>> {
        self.aside.into()
    }

    /// Whether the catalogue is being made with packs, which takes longer.
    pub fn with_packs(self) -> Signal<bool> {
        self.with_packs.into()
    }

    /// What there is, by name; it follows the packs in use.
    pub fn outline(self) -> &'static Outline {
        self.outline.get()
    }

    /// Sends for the catalogue, again if it did not come.
    pub fn send_for(self) {
        self.arrival.set(Arrival::Awaited);
        leptos::task::spawn_local(async move {
            self.arrival.set(match self.receive().await {
                Ok(()) => Arrival::Here,
                Err(Stopped(sentence)) => Arrival::Stopped(sentence),
            });
        });
    }

    /// The packed sources of the catalogue.
    pub async fn sources(self) -> Result<Vec<u8>, Stopped> {
        bytes(self.fetch_sources).await
    }

    async fn receive(self) -> Result<(), Stopped> {
        let packs = used::texts();
        self.with_packs.set(!packs.is_empty());
        let catalogue = bytes(self.fetch).await?;
        let owner = self.owner.get_value();
        if packs.is_empty() {
            return areas::open_book(catalogue, owner).await;
        }
        match self.sources().await {
            Ok(sources) => {
                // What is said of it is drawn before the work begins.
                breath::take().await;
                let Opened { outline, aside } =
                    areas::open_with_packs(catalogue, sources, packs, owner).await?;
                if let Some(outline) = outline {
                    self.outline.set(Box::leak(Box::new(outline)));
                }
                self.aside.set(aside);
                Ok(())
            }
            Err(Stopped(why)) => {
                self.aside
                    .set(vec![format!("The packs in use are set aside. {why}")]);
                areas::open_book(catalogue, owner).await
            }
        }
    }
}

/// The bytes that a function of the loader promises.
async fn bytes(fetch: StoredValue<Function, LocalStorage>) -> Result<Vec<u8>, Stopped> {
    let promised = fetch
        .with_value(|fetch| fetch.call0(&JsValue::NULL))
        .and_then(JsCast::dyn_into::<Promise>)
        .map_err(|error| Stopped::because(&error))?;
    let bytes = JsFuture::from(promised)
        .await
        .map_err(|error| Stopped::because(&error))?;
    Ok(Uint8Array::new(&bytes).to_vec())
}

/// What there is, by name.
pub fn outline() -> &'static Outline {
    expect_context::<Book>().outline()
}

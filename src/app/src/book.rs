//! What is taught, as it arrives: the outline with the page, the catalogue
//! after it. The first screen needs the outline alone.

use crate::areas::{self, Stopped};
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
    outline: &'static Outline,
    fetch: StoredValue<Function, LocalStorage>,
    arrival: RwSignal<Arrival>,
    owner: StoredValue<Owner>,
}

impl Book {
    /// Makes the outline known to all views below, and sends for the catalogue.
    /// `fetch` is the loader's: it gives a promise of the packed bytes.
    pub fn provide(outline: Outline, fetch: Function) -> Self {
        let book = Self {
            outline: Box::leak(Box::new(outline)),
            fetch: StoredValue::new_local(fetch),
            arrival: RwSignal::new(Arrival::Awaited),
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

    async fn receive(self) -> Result<(), Stopped> {
        let promised = self
            .fetch
            .with_value(|fetch| fetch.call0(&JsValue::NULL))
            .and_then(JsCast::dyn_into::<Promise>)
            .map_err(|error| Stopped::because(&error))?;
        let bytes = JsFuture::from(promised)
            .await
            .map_err(|error| Stopped::because(&error))?;
        let bytes = Uint8Array::new(&bytes).to_vec();
        areas::open_book(bytes, self.owner.get_value()).await
    }
}

/// What there is, by name.
pub fn outline() -> &'static Outline {
    expect_context::<Book>().outline
}

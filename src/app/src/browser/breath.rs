//! Letting the browser answer touches and draw in the middle of long work.

use js_sys::{Function, Promise};
use wasm_bindgen::JsValue;
use wasm_bindgen_futures::JsFuture;
use web_sys::Window;

/// Gives way to everything that waits, and goes on after it.
pub async fn take() {
    when(|window, go_on| window.set_timeout_with_callback_and_timeout_and_arguments_0(go_on, 0))
        .await;
}

/// Goes on after the screen has been painted as it is now.
pub async fn after_paint() {
    when(Window::request_animation_frame).await;
    // A frame's callbacks run just before it is painted.
    take().await;
}

/// Milliseconds by the browser's clock, to see how long work takes.
fn moment() -> f64 {
    js_sys::Date::now()
}

/// Waits for what the browser is asked to call. One that cannot goes on at its
/// next chance.
async fn when(ask: impl Fn(&Window, &Function) -> Result<i32, JsValue>) {
    let later = Promise::new(&mut |resolve, _| {
        let asked = web_sys::window().is_some_and(|window| ask(&window, &resolve).is_ok());
        if !asked {
            let _ = resolve.call0(&JsValue::NULL);
        }
    });
    let _ = JsFuture::from(later).await;
}

/// How long a slice of long work may last, in milliseconds: half of what a
/// touch may wait, for what is done between two looks at the clock takes time too.
const SLICE: f64 = 24.0;

/// The same of drawing: the browser lays out and paints what was drawn on top.
const SLICE_OF_DRAWING: f64 = 8.0;

/// Long work that takes a breath whenever a slice is over.
pub struct Sliced {
    since: f64,
    slice: f64,
}

impl Sliced {
    /// Work that begins now.
    pub fn begun() -> Self {
        Self {
            since: moment(),
            slice: SLICE,
        }
    }

    /// Drawing that begins now.
    pub fn drawing() -> Self {
        Self {
            slice: SLICE_OF_DRAWING,
            ..Self::begun()
        }
    }

    /// Gives way if the slice is over.
    pub async fn rest(&mut self) {
        if moment() - self.since >= self.slice {
            take().await;
            self.since = moment();
        }
    }
}

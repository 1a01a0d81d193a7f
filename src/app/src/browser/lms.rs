//! The object by which a school's system is told how a student does (SCORM
//! 1.2). It stands in a window above the page, or in the one that opened it;
//! where there is none, the page runs as it does everywhere else.

use super::handing::{method, property};
use wasm_bindgen::{JsCast, JsValue, closure::Closure};

/// How many windows are looked through: more are a ring.
const WINDOWS: usize = 12;

/// The system's object.
#[derive(Clone, Debug)]
pub struct Lms(JsValue);

impl Lms {
    /// Finds it up the windows, and then up from the opener.
    pub fn find() -> Option<Self> {
        let window: JsValue = web_sys::window()?.into();
        let up = |from: JsValue| above(from).find_map(|window| property(&window, "API"));
        up(window.clone())
            .or_else(|| up(property(&window, "opener")?))
            .or_else(|| up(property(&property(&window, "top")?, "opener")?))
            .map(Self)
    }

    /// Begins; false where the system does not take it.
    pub fn begin(&self) -> bool {
        self.call("LMSInitialize", &[""])
    }

    /// Sets a value; false where the system does not take it.
    pub fn set(&self, name: &str, value: &str) -> bool {
        self.call("LMSSetValue", &[name, value])
    }

    /// A value that the system keeps; none where it keeps nothing of the kind.
    pub fn get(&self, name: &str) -> Option<String> {
        let method = method(&self.0, "LMSGetValue")?;
        let value = method.call1(&self.0, &name.into()).ok()?;
        // Some systems give numbers as numbers.
        let number = || value.as_f64().map(|it| it.to_string());
        value
            .as_string()
            .or_else(number)
            .filter(|it| !it.is_empty())
    }

    /// Has what was set kept.
    pub fn commit(&self) -> bool {
        self.call("LMSCommit", &[""])
    }

    /// Ends when the page is left, after a last word.
    pub fn finish_on_leaving(self, last: impl Fn(&Self) + 'static) {
        let leave = Closure::<dyn Fn()>::new(move || {
            last(&self);
            self.commit();
            self.call("LMSFinish", &[""]);
        });
        if let Some(window) = web_sys::window() {
            let heard = leave.as_ref().unchecked_ref();
            let _ = window.add_event_listener_with_callback("pagehide", heard);
        }
        // It is needed until the page is gone.
        leave.forget();
    }

    fn call(&self, name: &str, arguments: &[&str]) -> bool {
        let Some(method) = method(&self.0, name) else {
            return false;
        };
        let arguments: js_sys::Array = arguments.iter().map(|it| JsValue::from_str(it)).collect();
        let answer = method.apply(&self.0, &arguments);
        // Some systems answer with the word, some with the value.
        answer.is_ok_and(|it| {
            it.as_bool()
                .unwrap_or_else(|| it.as_string().as_deref() == Some("true"))
        })
    }
}

/// A window and those above it, as far as the page may look.
fn above(window: JsValue) -> impl Iterator<Item = JsValue> {
    std::iter::successors(Some(window), |window| {
        property(window, "parent").filter(|parent| parent != window)
    })
    .take(WINDOWS)
}

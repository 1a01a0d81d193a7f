//! Dragging an entry of a list to another place, with mouse, pen or finger.
//!
//! The list itself listens, not its entries: an entry that moves in the page
//! would lose its hold on the pointer. An entry carries its id as `data-id`;
//! what it is taken hold of by carries `data-grip`.

use leptos::{ev::PointerEvent, prelude::*};
use wasm_bindgen::JsCast;
use web_sys::Element;

/// How far the pointer moves, in pixels, before a tap becomes a drag.
const SLACK: i32 = 6;

/// Which way the list runs.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Axis {
    /// Downwards.
    Down,
    /// Along the line.
    Along,
}

/// A drag over one list.
#[derive(Clone, Copy)]
pub struct Drag {
    axis: Axis,
    held: StoredValue<Option<Held>>,
    dragged: RwSignal<Option<String>>,
}

/// What the pointer went down on, and where.
#[derive(Clone)]
struct Held {
    id: String,
    x: i32,
    y: i32,
}

impl Drag {
    /// No drag yet.
    pub fn new(axis: Axis) -> Self {
        Self {
            axis,
            held: StoredValue::new(None),
            dragged: RwSignal::new(None),
        }
    }

    /// The entry that is being dragged, for the style sheet.
    pub fn is_dragged(self, id: &str) -> bool {
        self.dragged.with(|dragged| dragged.as_deref() == Some(id))
    }

    /// The pointer goes down.
    pub fn down(self, event: &PointerEvent) {
        let grip = target(event).and_then(|it| it.closest("[data-grip]").ok().flatten());
        let entry = grip.and_then(|it| it.closest("[data-id]").ok().flatten());
        let id = entry.and_then(|it| it.get_attribute("data-id"));
        if event.is_primary() && event.button() == 0 {
            let (x, y) = (event.client_x(), event.client_y());
            self.held.set_value(id.map(|id| Held { id, x, y }));
        }
    }

    /// The pointer moves: gives the entry that is dragged and the place it has
    /// come to, if that is a new one in this order.
    pub fn over(self, event: &PointerEvent, order: &[String]) -> Option<(String, usize)> {
        let held = self.held.get_value()?;
        let (x, y) = (event.client_x(), event.client_y());
        if self.dragged.with_untracked(Option::is_none) {
            if (x - held.x).abs().max((y - held.y).abs()) < SLACK {
                return None;
            }
            self.begin(event, &held.id);
        }
        let under = under(x, y)?;
        let over = under.get_attribute("data-id")?;
        let place = |id: &str| order.iter().position(|each| each == id);
        let (from, to) = (place(&held.id)?, place(&over)?);
        let past = self.past_middle(&under, x, y);
        // Past its middle only, or two entries of unlike size would change
        // places for ever.
        ((to > from && past) || (to < from && !past)).then_some((held.id, to))
    }

    /// The pointer goes up, or is taken away.
    pub fn up(self) {
        self.held.set_value(None);
        self.dragged.set(None);
    }

    fn begin(self, event: &PointerEvent, id: &str) {
        if let Some(list) = event
            .current_target()
            .and_then(|it| it.dyn_into::<Element>().ok())
        {
            // Without it the drag ends at the edge of the list, no worse.
            let _ = list.set_pointer_capture(event.pointer_id());
        }
        self.dragged.set(Some(id.into()));
    }

    fn past_middle(self, element: &Element, x: i32, y: i32) -> bool {
        let rect = element.get_bounding_client_rect();
        match self.axis {
            Axis::Down => f64::from(y) > rect.top() + rect.height() / 2.0,
            Axis::Along => f64::from(x) > rect.left() + rect.width() / 2.0,
        }
    }
}

fn target(event: &PointerEvent) -> Option<Element> {
    event.target()?.dyn_into().ok()
}

/// The entry under a point of the window.
fn under(x: i32, y: i32) -> Option<Element> {
    #[expect(
        clippy::cast_precision_loss,
        reason = "places on a screen are small whole numbers"
    )]
    let found = document().element_from_point(x as f32, y as f32)?;
    found.closest("[data-id]").ok().flatten()
}

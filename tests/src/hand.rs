//! A hand that works a mass on the pad, and what a browser makes of it.

use crate::browser::Page;
use anyhow::{Context, Result};
use serde::Deserialize;
use serde_json::json;

/// What a browser saw while the mass was worked.
#[derive(Debug, Deserialize)]
pub struct Motion {
    /// Milliseconds from each frame to the next.
    pub frames: Vec<f64>,
    /// How far the layout shifted, as browsers count it.
    pub shifts: f64,
}

/// Moves over an element for so many seconds, in circles as a hand does,
/// and counts frames and shifts of the layout.
///
/// # Errors
/// When the element is not there or the browser does not answer.
pub async fn work(page: &Page, on: &str, seconds: u32) -> Result<Motion> {
    let script = format!(
        "const pad = document.querySelector({});
         pad.scrollIntoView({{ block: 'center', behavior: 'instant' }});
         const box = pad.getBoundingClientRect();
         const at = (turn) => ({{
           clientX: box.x + box.width * (0.5 + 0.09 * Math.cos(turn)),
           clientY: box.y + box.height * (0.4 + 0.09 * Math.sin(turn)),
           pointerId: 1, pointerType: 'touch', isPrimary: true, bubbles: true, cancelable: true,
         }});
         const send = (kind, turn) => pad.dispatchEvent(new PointerEvent(kind, at(turn)));
         let shifts = 0;
         const observer = new PerformanceObserver((list) => {{
           for (const entry of list.getEntries()) shifts += entry.value;
         }});
         observer.observe({{ type: 'layout-shift' }});
         send('pointerdown', 0);
         const frames = [];
         const start = performance.now();
         let last = start;
         await new Promise((done) => {{
           const frame = (now) => {{
             if (now > last) frames.push(now - last);
             last = now;
             send('pointermove', (now - start) / 130);
             if (now - start < {seconds} * 1000) requestAnimationFrame(frame); else done();
           }};
           requestAnimationFrame(frame);
         }});
         send('pointerup', 0);
         observer.disconnect();
         return {{ frames, shifts }};",
        json!(on)
    );
    let seen = page.run(&script).await?;
    serde_json::from_value(seen).context("the motion cannot be read")
}

impl Motion {
    /// Milliseconds within which so many frames of a hundred came.
    pub fn within(&self, of_hundred: usize) -> f64 {
        let mut frames = self.frames.clone();
        frames.sort_by(f64::total_cmp);
        let at = (frames.len() * of_hundred / 100).min(frames.len().saturating_sub(1));
        frames.get(at).copied().unwrap_or_default()
    }
}

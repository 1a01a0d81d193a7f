//! How a reader has set up their device.

/// The colours that a reader prefers.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Scheme {
    /// Dark on light.
    Light,
    /// Light on dark.
    Dark,
}

/// The screen and the wishes of a reader.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Look {
    /// Width of the page in CSS pixels.
    pub width: u32,
    /// Height of the page in CSS pixels.
    pub height: u32,
    /// Device pixels for one CSS pixel.
    pub ratio: f64,
    /// Whether it is a phone or tablet, worked by touch.
    pub touch: bool,
    /// The colours that are preferred.
    pub scheme: Scheme,
    /// Whether reduced motion is preferred.
    pub still: bool,
    /// Whether the browser lets pages store anything.
    pub storage: bool,
}

impl Look {
    /// The phone that the page is made for first.
    pub const PHONE: Self = Self {
        width: 390,
        height: 844,
        ratio: 3.0,
        touch: true,
        scheme: Scheme::Light,
        still: false,
        storage: true,
    };

    /// The narrowest screen that must work (WCAG 2.2, 1.4.10 Reflow: 320 CSS pixels).
    pub const NARROW: Self = Self {
        width: 320,
        height: 640,
        ratio: 2.0,
        ..Self::PHONE
    };

    /// A tablet held upright.
    pub const TABLET: Self = Self {
        width: 820,
        height: 1180,
        ratio: 2.0,
        ..Self::PHONE
    };

    /// A screen on a desk.
    pub const DESK: Self = Self {
        width: 1280,
        height: 900,
        ratio: 1.0,
        touch: false,
        ..Self::PHONE
    };

    /// The screen on a desk at a zoom of 200 %: half the room, twice the ratio.
    pub const ZOOMED: Self = Self {
        width: 640,
        height: 450,
        ratio: 2.0,
        ..Self::DESK
    };

    /// The same with dark colours.
    #[must_use]
    pub const fn dark(self) -> Self {
        Self {
            scheme: Scheme::Dark,
            ..self
        }
    }

    /// The same with reduced motion.
    #[must_use]
    pub const fn still(self) -> Self {
        Self {
            still: true,
            ..self
        }
    }

    /// The same in a browser that forbids pages to store anything.
    #[must_use]
    pub const fn without_storage(self) -> Self {
        Self {
            storage: false,
            ..self
        }
    }
}

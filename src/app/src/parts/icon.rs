//! Line icons, drawn on a grid of 24.

use leptos::prelude::*;

/// An icon.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Icon {
    /// A sun over the horizon.
    Today,
    /// A tray with two instruments.
    Procedures,
    /// A chart on a clip.
    Cases,
    /// A pad with a spatula.
    Bench,
    /// A list with ticks.
    Record,
    /// A tick.
    Right,
    /// A tick in a broken ring.
    Acceptable,
    /// A cross.
    Wrong,
    /// A triangle with a mark.
    Unsafe,
    /// A ring with a small i.
    Note,
    /// An arrow onwards.
    Onwards,
    /// An empty place, dashed out.
    Missing,
    /// Two arrows that change places.
    Order,
    /// An arrow back.
    Back,
    /// An arrow up.
    Up,
    /// An arrow down.
    Down,
    /// Ridges to take hold of.
    Grip,
    /// A hand passing something on.
    Pass,
    /// A cloud crossed out.
    Offline,
    /// A speech bubble.
    Says,
    /// A clock.
    Time,
    /// A lens.
    Find,
    /// A printer.
    Print,
}

impl Icon {
    fn path(self) -> &'static str {
        match self {
            Self::Today => "M3 19h18M6 19a6 6 0 0 1 12 0M12 5v4M4.6 9.6l2.1 2.1M19.4 9.6l-2.1 2.1",
            Self::Procedures => {
                "M5 5h14a2.5 2.5 0 0 1 2.5 2.5v9A2.5 2.5 0 0 1 19 19H5a2.5 2.5 0 0 1-2.5-2.5v-9\
                 A2.5 2.5 0 0 1 5 5zM6.5 9.5H15l2.5-1M6.5 14.5h9a1.6 1.6 0 1 1 0 .1"
            }
            Self::Cases => "M7 4.5H5.5v16h13v-16H17M9 3h6v3.5H9zM9 11h6M9 14.5h6M9 18h3.5",
            Self::Bench => {
                "M3.5 14.5 12 11l8.5 3.5L12 18zM3.5 14.5V17L12 20.5l8.5-3.5v-2.5M20 3.5l-6.8 7.3\
                 a1.5 1.5 0 0 1-2-2.1z"
            }
            Self::Record => {
                "M9.5 6H20M9.5 12H20M9.5 18H20M3.5 6l1.4 1.4L7.3 5M3.5 12l1.4 1.4L7.3 11M4 18h2.5"
            }
            Self::Right => "M5 12.5l4.5 4.5L19 7.5",
            Self::Acceptable => "M7.5 12.3l3.2 3.2 6-6.5M12 3a9 9 0 0 1 9 9M12 21a9 9 0 0 1-9-9",
            Self::Wrong => "M6.5 6.5l11 11M17.5 6.5l-11 11",
            Self::Unsafe => "M12 4 2.8 20h18.4zM12 10v4.5M12 17v.4",
            Self::Note => "M12 3a9 9 0 1 1 0 18 9 9 0 0 1 0-18zM12 11v5.5M12 7.6v.4",
            Self::Onwards => "M5 12h13M13 6.5l5.5 5.5-5.5 5.5",
            Self::Missing => {
                "M4 7V4h3M10.5 4h3M17 4h3v3M20 10.5v3M20 17v3h-3M13.5 20h-3M7 20H4v-3M4 13.5v-3"
            }
            Self::Order => "M4 8h14M14 4l4 4-4 4M20 16H6M10 12l-4 4 4 4",
            Self::Back => "M19 12H6M11 6.5 5.5 12l5.5 5.5",
            Self::Up => "M12 19V6M6.5 11 12 5.5l5.5 5.5",
            Self::Down => "M12 5v13M6.5 13l5.5 5.5 5.5-5.5",
            Self::Grip => "M9 6v.2M15 6v.2M9 12v.2M15 12v.2M9 18v.2M15 18v.2",
            Self::Pass => "M3 12h11M10.5 8l4 4-4 4M18.5 4.5v15",
            Self::Offline => {
                "M7 18h10a4 4 0 0 0 .8-7.9A6 6 0 0 0 7 8.6 4.8 4.8 0 0 0 7 18zM4 4l16 16"
            }
            Self::Says => "M4 5h16v11H11l-4.5 4v-4H4z",
            Self::Find => "M10.5 4a6.5 6.5 0 1 1 0 13 6.5 6.5 0 0 1 0-13zM15.3 15.3l5.2 5.2",
            Self::Print => "M7 9V4h10v5M7 17H4V9h16v8h-3M7 14h10v6H7z",
            Self::Time => "M12 3.5a8.5 8.5 0 1 1 0 17 8.5 8.5 0 0 1 0-17zM12 7.5V12l3 2",
        }
    }
}

/// Draws an icon. It is hidden from screen readers: words stand beside it.
pub fn icon(icon: Icon) -> impl IntoView {
    view! {
        <svg class="icon" viewBox="0 0 24 24" aria-hidden="true" focusable="false">
            <path d=icon.path() />
        </svg>
    }
}

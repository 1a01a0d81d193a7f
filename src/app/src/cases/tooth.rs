//! A tooth, drawn in its place on both arches, and named in every notation.

use clinic::tooth::Tooth;
use leptos::prelude::*;
use std::f32::consts::FRAC_PI_2;

/// The tooth of a case.
#[component]
pub fn ToothPlace(
    /// Its two-digit FDI number.
    fdi: u8,
) -> impl IntoView {
    Tooth::from_fdi(fdi).map(|tooth| {
        view! {
            <div class="tooth" data-test="tooth">
                <svg class="arches" viewBox="0 0 100 112" aria-hidden="true" focusable="false">
                    {arches(tooth)}
                </svg>
                <div>
                    <p class="tooth-name">{capital(&tooth.name())}</p>
                    <dl class="notations">
                        <div><dt>"FDI"</dt><dd>{tooth.fdi()}</dd></div>
                        <div><dt>"Universal"</dt><dd>{tooth.universal()}</dd></div>
                        <div><dt>"Palmer"</dt><dd>{tooth.palmer()}</dd></div>
                    </dl>
                </div>
            </div>
        }
    })
}

/// Every tooth of the dentition as a dot on its arch; the one in question filled.
fn arches(tooth: Tooth) -> impl IntoView {
    let quadrants = if tooth.is_primary() {
        [5, 6, 7, 8]
    } else {
        [1, 2, 3, 4]
    };
    let all = quadrants.into_iter().flat_map(|quadrant| {
        (1..=8).filter_map(move |place| Tooth::from_fdi(quadrant * 10 + place))
    });
    all.map(|each| {
        let (x, y) = on_arch(each);
        let this = each == tooth;
        let class = if this { "arch-tooth arch-this" } else { "arch-tooth" };
        let r = if this { 6.0 } else { 2.6 + f32::from(each.place()) * 0.22 };
        view! { <circle class=class cx=format!("{x:.1}") cy=format!("{y:.1}") r=format!("{r:.1}") /> }
    })
    .collect_view()
}

/// Where a tooth stands, as the dentist looks into the mouth: the patient's
/// right is on the left, and each arch is half an ellipse.
fn on_arch(tooth: Tooth) -> (f32, f32) {
    let count = if tooth.is_primary() { 5.0 } else { 8.0 };
    let angle = FRAC_PI_2 * (f32::from(tooth.place()) - 0.5) / count;
    let (across, back) = (42.0 * angle.sin(), 46.0 * angle.cos());
    let x = if tooth.is_right() {
        50.0 - across
    } else {
        50.0 + across
    };
    let y = if tooth.is_upper() {
        52.0 - back
    } else {
        60.0 + back
    };
    (x, y)
}

/// The text with a large first letter.
pub fn capital(text: &str) -> String {
    let mut chars = text.chars();
    chars.next().map_or_else(String::new, |first| {
        first.to_uppercase().chain(chars).collect()
    })
}

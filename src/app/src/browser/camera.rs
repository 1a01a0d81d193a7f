//! Reading symbols with the camera: by the browser's own reader where it has
//! one, else by ours, which is fetched for it.

use super::{
    handing::{method, property},
    symbols::{self, Find, Greys},
};
use js_sys::{Array, Function, Object, Promise, Reflect, Uint8ClampedArray};
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::JsFuture;
use web_sys::HtmlElement;

/// The longest side of a picture that is looked at: symbols of ours are read
/// well at it, and a phone keeps up.
const LONGEST: f64 = 960.0;

/// Whether a page may ask for a camera here.
pub fn can_be_asked_for() -> bool {
    devices().is_some_and(|devices| method(&devices, "getUserMedia").is_some())
}

fn devices() -> Option<JsValue> {
    property(&web_sys::window()?.navigator().into(), "mediaDevices")
}

fn detector_kind() -> Option<Function> {
    method(&web_sys::window()?.into(), "BarcodeDetector")
}

/// What reads symbols.
enum Eye {
    /// The browser.
    Browser(JsValue),
    /// We do, from a canvas.
    Own(Find, JsValue),
}

/// A camera that looks for symbols.
pub struct Camera {
    eye: Eye,
    stream: JsValue,
    video: HtmlElement,
}

impl Camera {
    /// Opens the camera and shows what it sees in a video element.
    ///
    /// # Errors
    /// A sentence for the reader where there is no camera, it may not be used,
    /// or what reads symbols cannot be fetched.
    pub async fn open(video: HtmlElement) -> Result<Self, String> {
        let eye = match Self::browsers_eye() {
            Some(eye) => eye,
            None => Self::own_eye(symbols::finder().await?)
                .ok_or("This browser does not let the page look at pictures.")?,
        };
        Self::watch(eye, video).await.ok_or_else(|| {
            "The camera could not be opened. Allow this page to use it, or read the hand-ins by link or file.".to_owned()
        })
    }

    fn browsers_eye() -> Option<Eye> {
        let kinds = Object::new();
        Reflect::set(&kinds, &"formats".into(), &Array::of1(&"qr_code".into())).ok()?;
        let detector = Reflect::construct(&detector_kind()?, &Array::of1(&kinds)).ok()?;
        Some(Eye::Browser(detector))
    }

    fn own_eye(find: Find) -> Option<Eye> {
        let canvas = web_sys::window()?.document()?.create_element("canvas");
        Some(Eye::Own(find, canvas.ok()?.into()))
    }

    async fn watch(eye: Eye, video: HtmlElement) -> Option<Self> {
        let facing = Object::new();
        Reflect::set(&facing, &"facingMode".into(), &"environment".into()).ok()?;
        let wanted = Object::new();
        Reflect::set(&wanted, &"video".into(), &facing).ok()?;
        let stream = call(&devices()?, "getUserMedia", Some(&wanted)).await?;
        Reflect::set(&video, &"srcObject".into(), &stream).ok()?;
        let camera = Self { eye, stream, video };
        call(&camera.video, "play", None).await?;
        Some(camera)
    }

    /// The texts of the symbols that are seen now.
    pub async fn look(&self) -> Vec<String> {
        match &self.eye {
            Eye::Browser(detector) => {
                let found = call(detector, "detect", Some(&self.video)).await;
                let found = found.map(|found| Array::from(&found)).unwrap_or_default();
                found
                    .iter()
                    .filter_map(|symbol| property(&symbol, "rawValue")?.as_string())
                    .collect()
            }
            Eye::Own(find, canvas) => self
                .picture(canvas)
                .map_or_else(Vec::new, |greys| find(&greys)),
        }
    }

    /// What the camera sees now, in greys; none where it sees nothing yet.
    fn picture(&self, canvas: &JsValue) -> Option<Greys> {
        let side = |name| property(&self.video, name)?.as_f64();
        let (width, height) = (side("videoWidth")?, side("videoHeight")?);
        let longest = width.max(height);
        if longest < 1.0 {
            return None;
        }
        let scale = (LONGEST / longest).min(1.0);
        let (width, height) = ((width * scale).floor(), (height * scale).floor());
        for (name, size) in [("width", width), ("height", height)] {
            Reflect::set(canvas, &name.into(), &size.into()).ok()?;
        }
        let often = Object::new();
        Reflect::set(&often, &"willReadFrequently".into(), &true.into()).ok()?;
        let context = method(canvas, "getContext")?;
        let context = context.call2(canvas, &"2d".into(), &often).ok()?;
        let all = |arguments: &[JsValue]| arguments.iter().collect::<Array>();
        let frame = [0.0.into(), 0.0.into(), width.into(), height.into()];
        let drawn = [&[self.video.clone().into()], &frame[..]].concat();
        method(&context, "drawImage")?
            .apply(&context, &all(&drawn))
            .ok()?;
        let taken = method(&context, "getImageData")?
            .apply(&context, &all(&frame))
            .ok()?;
        let colours = property(&taken, "data")?.dyn_into::<Uint8ClampedArray>();
        let width = property(&taken, "width")?.as_f64()?;
        Some(Greys {
            // The canvas has given it: a whole number below a thousand.
            width: format!("{width:.0}").parse().ok()?,
            levels: colours.ok()?.to_vec().chunks_exact(4).map(grey).collect(),
        })
    }
}

/// How light a colour is: green counts as much as red and blue together.
fn grey(colour: &[u8]) -> u8 {
    let part = |at: usize| colour.get(at).map_or(0, |it| u16::from(*it));
    u8::try_from((part(0) + 2 * part(1) + part(2)) / 4).unwrap_or(u8::MAX)
}

impl Drop for Camera {
    /// Lets the camera go, light and all.
    fn drop(&mut self) {
        let tracks = method(&self.stream, "getTracks")
            .and_then(|tracks| tracks.call0(&self.stream).ok())
            .map(|tracks| Array::from(&tracks))
            .unwrap_or_default();
        for track in tracks.iter() {
            if let Some(stop) = method(&track, "stop") {
                let _ = stop.call0(&track);
            }
        }
        let _ = Reflect::set(&self.video, &"srcObject".into(), &JsValue::NULL);
    }
}

async fn call(on: &JsValue, name: &str, argument: Option<&JsValue>) -> Option<JsValue> {
    let method = method(on, name)?;
    let promise = match argument {
        Some(argument) => method.call1(on, argument),
        None => method.call0(on),
    };
    JsFuture::from(promise.ok()?.dyn_into::<Promise>().ok()?)
        .await
        .ok()
}

//! Reading symbols with the camera, by the browser's own reader. Browsers
//! without one are told apart before the camera is asked for.

use super::handing::{method, property};
use js_sys::{Array, Function, Object, Promise, Reflect};
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::JsFuture;
use web_sys::HtmlElement;

/// Whether this browser reads symbols by itself.
pub fn reads_symbols() -> bool {
    detector_kind().is_some()
}

fn detector_kind() -> Option<Function> {
    method(&web_sys::window()?.into(), "BarcodeDetector")
}

/// A camera that looks for symbols.
pub struct Camera {
    detector: JsValue,
    stream: JsValue,
    video: HtmlElement,
}

impl Camera {
    /// Opens the camera and shows what it sees in a video element.
    ///
    /// # Errors
    /// A sentence for the reader where there is no camera, or it may not be used.
    pub async fn open(video: HtmlElement) -> Result<Self, String> {
        Self::try_open(video).await.ok_or_else(|| {
            "The camera could not be opened. Allow this page to use it, or read the hand-ins by link or file.".to_owned()
        })
    }

    async fn try_open(video: HtmlElement) -> Option<Self> {
        let kinds = Object::new();
        Reflect::set(&kinds, &"formats".into(), &Array::of1(&"qr_code".into())).ok()?;
        let detector = Reflect::construct(&detector_kind()?, &Array::of1(&kinds)).ok()?;
        let navigator: JsValue = web_sys::window()?.navigator().into();
        let devices = property(&navigator, "mediaDevices")?;
        let facing = Object::new();
        Reflect::set(&facing, &"facingMode".into(), &"environment".into()).ok()?;
        let wanted = Object::new();
        Reflect::set(&wanted, &"video".into(), &facing).ok()?;
        let stream = call(&devices, "getUserMedia", Some(&wanted)).await?;
        Reflect::set(&video, &"srcObject".into(), &stream).ok()?;
        let camera = Self {
            detector,
            stream,
            video,
        };
        call(&camera.video, "play", None).await?;
        Some(camera)
    }

    /// The texts of the symbols that are seen now.
    pub async fn look(&self) -> Vec<String> {
        let found = call(&self.detector, "detect", Some(&self.video)).await;
        let found = found.map(|found| Array::from(&found)).unwrap_or_default();
        found
            .iter()
            .filter_map(|symbol| property(&symbol, "rawValue")?.as_string())
            .collect()
    }
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

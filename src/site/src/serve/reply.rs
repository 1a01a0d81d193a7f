//! What the server answers: which file, in which coding, with which headers.

use std::path::{Component, Path, PathBuf};

use crate::build::compress::Coding;
use crate::build::names::is_hashed;
use crate::build::shell::POLICY;

/// What a browser asked for, as far as the answer depends on it.
#[derive(Debug, Clone, Default)]
pub struct Asked {
    /// The path with its query, as sent.
    pub path: String,
    /// The codings the browser can read.
    pub accept_encoding: String,
    /// The state of the file that the browser still has.
    pub if_none_match: String,
}

/// An answer, ready to be sent.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Reply {
    /// The HTTP status.
    pub status: u16,
    /// Name and value of each header.
    pub headers: Vec<(&'static str, String)>,
    /// The body.
    pub body: Vec<u8>,
}

impl Reply {
    /// A plain sentence.
    pub fn sentence(status: u16, text: &str) -> Self {
        Self {
            status,
            headers: vec![("Content-Type", "text/plain; charset=utf-8".into())],
            body: text.as_bytes().to_vec(),
        }
    }

    /// The answer from a folder that is served below the path `under`, which
    /// begins and ends with a slash.
    pub fn from_folder(folder: &Path, under: &str, asked: &Asked) -> Self {
        let path = asked.path.split(['?', '#']).next().unwrap_or_default();
        let Some(below) = path.strip_prefix(under) else {
            return Self::sentence(404, &format!("Nothing is served here. Go to {under}"));
        };
        let name = if below.is_empty() {
            "index.html"
        } else {
            below
        };
        let Some(file) = inside(folder, name).filter(|file| file.is_file()) else {
            return Self::sentence(404, &format!("There is no {name} here. Go to {under}"));
        };
        Self::file(&file, name, asked)
    }

    fn file(file: &Path, name: &str, asked: &Asked) -> Self {
        let coding = Coding::ALL.into_iter().find(|coding| {
            accepts(&asked.accept_encoding, coding.token()) && copy(file, *coding).is_file()
        });
        let sent = coding.map_or_else(|| file.to_path_buf(), |coding| copy(file, coding));
        let Ok(body) = std::fs::read(&sent) else {
            return Self::sentence(500, &format!("{name} cannot be read."));
        };
        let mut headers = vec![
            ("Content-Type", media_type(name).to_owned()),
            ("Cache-Control", keeping(name).to_owned()),
            ("Vary", "Accept-Encoding".to_owned()),
            ("X-Content-Type-Options", "nosniff".to_owned()),
            ("Referrer-Policy", "no-referrer".to_owned()),
            ("Cross-Origin-Opener-Policy", "same-origin".to_owned()),
            (
                "ETag",
                format!("\"{}\"", crate::build::names::digest(&body)),
            ),
        ];
        if media_type(name).starts_with("text/html") {
            // Framing can only be forbidden by a header, not in the page.
            headers.push((
                "Content-Security-Policy",
                format!("{POLICY}; frame-ancestors 'none'"),
            ));
        }
        if headers
            .iter()
            .any(|(header, value)| *header == "ETag" && *value == asked.if_none_match)
        {
            return Self {
                status: 304,
                headers,
                body: Vec::new(),
            };
        }
        if let Some(coding) = coding {
            headers.push(("Content-Encoding", coding.token().to_owned()));
        }
        Self {
            status: 200,
            headers,
            body,
        }
    }
}

/// The path of a file inside the folder, or none if it would lead outside.
fn inside(folder: &Path, name: &str) -> Option<PathBuf> {
    let plain = |part| matches!(part, Component::Normal(_));
    Path::new(name)
        .components()
        .all(plain)
        .then(|| folder.join(name))
}

fn copy(file: &Path, coding: Coding) -> PathBuf {
    let mut name = file.as_os_str().to_owned();
    name.push(".");
    name.push(coding.extension());
    name.into()
}

/// Whether a coding is among those accepted and not refused with `q=0`.
fn accepts(accept_encoding: &str, token: &str) -> bool {
    accept_encoding.split(',').any(|entry| {
        let mut words = entry.split(';').map(str::trim);
        words.next() == Some(token)
            && !words.any(|word| matches!(word, "q=0" | "q=0.0" | "q=0.00" | "q=0.000"))
    })
}

fn keeping(name: &str) -> &'static str {
    if is_hashed(name) {
        "public, max-age=31536000, immutable"
    } else {
        "no-cache"
    }
}

fn media_type(name: &str) -> &'static str {
    match name.rsplit_once('.').map(|(_, extension)| extension) {
        Some("html") => "text/html; charset=utf-8",
        Some("css") => "text/css; charset=utf-8",
        Some("js") => "text/javascript; charset=utf-8",
        Some("wasm") => "application/wasm",
        Some("svg") => "image/svg+xml",
        Some("png") => "image/png",
        Some("webmanifest") => "application/manifest+json",
        Some("txt") => "text/plain; charset=utf-8",
        _ => "application/octet-stream",
    }
}

#[cfg(test)]
mod tests {
    use std::fs;

    use super::{Asked, Reply, accepts};

    fn ask(under: &str, path: &str, accept_encoding: &str) -> Reply {
        let folder = tempfile::tempdir().unwrap();
        for (name, text) in [
            ("index.html", "page"),
            ("app-0123456789abcdef.wasm", "raw"),
            ("app-0123456789abcdef.wasm.br", "small"),
            ("app-0123456789abcdef.wasm.gz", "smaller"),
        ] {
            fs::write(folder.path().join(name), text).unwrap();
        }
        let asked = Asked {
            path: path.into(),
            accept_encoding: accept_encoding.into(),
            ..Asked::default()
        };
        Reply::from_folder(folder.path(), under, &asked)
    }

    fn header(reply: &Reply, name: &str) -> String {
        let found = reply.headers.iter().find(|(header, _)| *header == name);
        found.map(|(_, value)| value.clone()).unwrap_or_default()
    }

    #[test]
    fn the_page_is_asked_for_anew_each_time() {
        for path in ["/", "/index.html", "/?a=b"] {
            let reply = ask("/", path, "");
            assert_eq!((reply.status, &*reply.body), (200, &b"page"[..]), "{path}");
            assert_eq!(header(&reply, "Cache-Control"), "no-cache");
            assert!(header(&reply, "Content-Security-Policy").contains("frame-ancestors 'none'"));
        }
    }

    #[test]
    fn the_smallest_copy_that_the_browser_reads_is_sent() {
        let path = "/app-0123456789abcdef.wasm";
        for (accept, coding, body) in [
            ("gzip, deflate, br", "br", "small"),
            ("gzip", "gzip", "smaller"),
            ("br;q=0, gzip;q=0.5", "gzip", "smaller"),
            ("", "", "raw"),
        ] {
            let reply = ask("/", path, accept);
            assert_eq!(header(&reply, "Content-Encoding"), coding, "{accept}");
            assert_eq!(reply.body, body.as_bytes(), "{accept}");
            assert_eq!(header(&reply, "Content-Type"), "application/wasm");
            assert!(header(&reply, "Cache-Control").contains("immutable"));
        }
    }

    #[test]
    fn a_path_below_others_is_served_alone() {
        assert_eq!(ask("/a/b/", "/a/b/", "").status, 200);
        assert_eq!(ask("/a/b/", "/index.html", "").status, 404);
    }

    #[test]
    fn nothing_outside_the_folder_is_reached() {
        for path in ["/../Cargo.toml", "//etc/passwd", "/a/../../x", "/nothing"] {
            assert_eq!(ask("/", path, "").status, 404, "{path}");
        }
    }

    #[test]
    fn a_file_that_has_not_changed_is_not_sent_again() {
        let folder = tempfile::tempdir().unwrap();
        fs::write(folder.path().join("index.html"), "page").unwrap();
        let mut asked = Asked {
            path: "/".into(),
            ..Asked::default()
        };
        asked.if_none_match = header(&Reply::from_folder(folder.path(), "/", &asked), "ETag");
        assert_eq!(Reply::from_folder(folder.path(), "/", &asked).status, 304);
    }

    #[test]
    fn a_coding_is_a_whole_word() {
        assert!(!accepts("brotli", "br"));
        assert!(accepts("gzip , br", "br"));
    }
}

//! Serves the finished page on this computer, as a good host would.

mod reply;

use std::path::PathBuf;
use std::sync::Arc;
use std::thread;

use anyhow::{Result, anyhow, bail};
use tiny_http::{Header, Method, Request, Response, Server};

use crate::build::{self, Mode};
use crate::options::Options;
use crate::repo::Repo;
pub use reply::{Asked, Reply};

const USUAL_PORT: u16 = 8080;

/// A browser opens about six connections to one host, and several tabs may be open.
const THREADS: usize = 16;

/// Builds the page and serves it until the program is ended.
///
/// # Errors
/// When the page cannot be built or the port cannot be had.
pub fn serve(repo: &Repo, options: &Options) -> Result<()> {
    let folder = options.out.clone().unwrap_or_else(|| repo.dist());
    if options.as_built {
        if !folder.join("index.html").is_file() {
            bail!(
                "{} holds no page yet. Run `cargo site build` first.",
                folder.display()
            );
        }
    } else {
        build::into_folder(repo, Mode::Finished, &folder)?.report();
    }
    let site = Site::open(options)?;
    site.announce();
    let under = site.under.clone();
    site.answer(move |asked| Reply::from_folder(&folder, &under, asked));
    Ok(())
}

/// A server that listens but does not answer yet.
pub struct Site {
    server: Server,
    /// The path below which the page is served; begins and ends with a slash.
    pub under: String,
}

impl Site {
    /// Takes the port that the options name.
    ///
    /// # Errors
    /// When another program has it.
    pub fn open(options: &Options) -> Result<Self> {
        let port = options.port.unwrap_or(USUAL_PORT);
        let server = Server::http(("127.0.0.1", port)).map_err(|error| {
            anyhow!(
                "Port {port} cannot be had ({error}). Another program may be using it: \
                 try `cargo site serve --port {}`.",
                port.wrapping_add(1)
            )
        })?;
        let path = options
            .under
            .as_deref()
            .unwrap_or_default()
            .trim_matches('/');
        let under = if path.is_empty() {
            "/".into()
        } else {
            format!("/{path}/")
        };
        Ok(Self { server, under })
    }

    /// Prints where the page is.
    pub fn announce(&self) {
        println!(
            "Trayward is at http://{}{}",
            self.server.server_addr(),
            self.under
        );
        println!("End it with Ctrl-C.");
    }

    /// Answers until the program is ended.
    pub fn answer(self, reply: impl Fn(&Asked) -> Reply + Send + Sync + 'static) {
        let shared = Arc::new((self.server, reply));
        let threads: Vec<_> = (0..THREADS)
            .map(|_| {
                let shared = Arc::clone(&shared);
                thread::spawn(move || {
                    while let Ok(request) = shared.0.recv() {
                        respond(request, &shared.1);
                    }
                })
            })
            .collect();
        for thread in threads {
            let _ = thread.join();
        }
    }
}

fn respond(request: Request, reply: impl Fn(&Asked) -> Reply) {
    let header = |name: &'static str| {
        let found = request
            .headers()
            .iter()
            .find(|header| header.field.equiv(name));
        found
            .map(|header| header.value.to_string())
            .unwrap_or_default()
    };
    let answer = match request.method() {
        Method::Get | Method::Head => reply(&Asked {
            path: request.url().to_owned(),
            accept_encoding: header("Accept-Encoding"),
            if_none_match: header("If-None-Match"),
        }),
        _ => Reply::sentence(405, "This site can only be read."),
    };
    let mut response = Response::from_data(answer.body)
        .with_status_code(answer.status)
        // Chunks would hide how long the file is.
        .with_chunked_threshold(usize::MAX);
    for (name, value) in &answer.headers {
        if let Ok(header) = Header::from_bytes(*name, value.as_bytes()) {
            response.add_header(header);
        }
    }
    // A reader who has gone away needs no answer.
    let _ = request.respond(response);
}

/// The folder that a browser is given while the page is being written.
pub fn dev_folder(repo: &Repo, options: &Options) -> PathBuf {
    options.out.clone().unwrap_or_else(|| repo.dev_dist())
}

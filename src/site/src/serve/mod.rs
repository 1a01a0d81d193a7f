//! Serves the finished page on this computer, as a good host would.

mod connection;
mod reply;

use std::io::ErrorKind;
use std::net::{Ipv4Addr, SocketAddr, TcpListener};
use std::path::PathBuf;
use std::sync::Arc;
use std::thread;

use anyhow::{Context, Result, bail};

use crate::build::{self, Mode};
use crate::options::Options;
use crate::repo::Repo;
pub use reply::{Asked, Reply};

const USUAL_PORT: u16 = 8080;

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
    listener: TcpListener,
    address: SocketAddr,
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
        let listener = match TcpListener::bind((Ipv4Addr::LOCALHOST, port)) {
            Ok(listener) => listener,
            Err(error) if error.kind() == ErrorKind::AddrInUse => bail!(
                "Another program uses port {port}. Choose another port: \
                 `cargo site serve --port {}`.",
                port.wrapping_add(1)
            ),
            Err(error) => bail!("Port {port} cannot be had: {error}."),
        };
        let address = listener.local_addr().context("The port cannot be named.")?;
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
        Ok(Self {
            listener,
            address,
            under,
        })
    }

    /// Prints where the page is.
    pub fn announce(&self) {
        println!("Trayward is at http://{}{}", self.address, self.under);
        println!("End it with Ctrl-C.");
    }

    /// Answers until the program is ended. Each connection has a thread of its
    /// own, since browsers hold connections open that they may never use.
    pub fn answer(self, reply: impl Fn(&Asked) -> Reply + Send + Sync + 'static) {
        let reply = Arc::new(reply);
        for stream in self.listener.incoming().flatten() {
            let reply = Arc::clone(&reply);
            // A reader who goes away in mid-answer needs no answer.
            thread::spawn(move || connection::converse(stream, &*reply));
        }
    }
}

/// The folder that a browser is given while the page is being written.
pub fn dev_folder(repo: &Repo, options: &Options) -> PathBuf {
    options.out.clone().unwrap_or_else(|| repo.dev_dist())
}

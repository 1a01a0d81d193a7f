//! A host of other people's making: it knows few kinds of files, sends no
//! headers of ours, and lets its pages stand in frames. School systems serve
//! packages like this.

use std::collections::BTreeMap;
use std::io::{BufRead, BufReader, Write};
use std::net::{Ipv4Addr, TcpListener, TcpStream};
use std::sync::Arc;
use std::sync::atomic::{AtomicBool, Ordering};
use std::thread;

use anyhow::{Context, Result};

/// A running host. It ends when this is dropped.
#[derive(Debug)]
pub struct Host {
    port: u16,
    over: Arc<AtomicBool>,
}

impl Host {
    /// Serves files by their paths, without a slash before them.
    ///
    /// # Errors
    /// When no port is free.
    pub fn serve(files: BTreeMap<String, Vec<u8>>) -> Result<Self> {
        let listener = TcpListener::bind((Ipv4Addr::LOCALHOST, 0)).context("No port is free.")?;
        let port = listener.local_addr()?.port();
        let over = Arc::new(AtomicBool::new(false));
        let (files, ended) = (Arc::new(files), over.clone());
        thread::spawn(move || {
            for stream in listener.incoming().flatten() {
                if ended.load(Ordering::Relaxed) {
                    return;
                }
                let files = files.clone();
                // A reader who goes away in mid-answer needs no answer.
                thread::spawn(move || answer(stream, &files));
            }
        });
        Ok(Self { port, over })
    }

    /// The address of a file.
    pub fn url(&self, path: &str) -> String {
        format!("http://127.0.0.1:{}/{path}", self.port)
    }
}

impl Drop for Host {
    fn drop(&mut self) {
        self.over.store(true, Ordering::Relaxed);
        // Wakes the thread that listens, so that it sees the end.
        drop(TcpStream::connect((Ipv4Addr::LOCALHOST, self.port)));
    }
}

fn answer(mut stream: TcpStream, files: &BTreeMap<String, Vec<u8>>) -> Option<()> {
    let mut lines = BufReader::new(stream.try_clone().ok()?).lines();
    let first = lines.next()?.ok()?;
    while !lines.next()?.ok()?.is_empty() {}
    let path = first.split(' ').nth(1)?.split(['?', '#']).next()?;
    let path = path.trim_start_matches('/');
    let (status, kind, body) = match files.get(path) {
        Some(body) => ("200 OK", media_type(path), body.as_slice()),
        None => (
            "404 Not Found",
            "text/plain",
            &b"There is no such file."[..],
        ),
    };
    let head = format!(
        "HTTP/1.1 {status}\r\nContent-Type: {kind}\r\nContent-Length: {}\r\nConnection: close\r\n\r\n",
        body.len()
    );
    stream.write_all(head.as_bytes()).ok()?;
    stream.write_all(body).ok()
}

/// Many hosts do not know what a program for the browser is.
fn media_type(path: &str) -> &'static str {
    match path.rsplit_once('.').map(|(_, ending)| ending) {
        Some("html") => "text/html; charset=utf-8",
        Some("css") => "text/css",
        Some("js") => "text/javascript",
        Some("svg") => "image/svg+xml",
        _ => "application/octet-stream",
    }
}

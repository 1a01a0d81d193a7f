//! Programs that run beside a journey and end with it.

use std::io::{self, Read, Write};
use std::net::{Ipv4Addr, TcpListener, TcpStream};
use std::process::{Child, Command, Stdio};
use std::time::{Duration, Instant};

use anyhow::{Context, Result, bail};

const PATIENCE: Duration = Duration::from_secs(20);

/// A program that is ended, by its own id, when this is dropped.
#[derive(Debug)]
pub struct Program(Child);

impl Program {
    /// Starts the program; what it prints is dropped.
    pub fn start(command: &mut Command) -> Result<Self> {
        Self::spawn(command.stdout(Stdio::null()))
    }

    /// Starts the program, leaving it to the caller where it prints.
    pub fn spawn(command: &mut Command) -> Result<Self> {
        let name = command.get_program().to_string_lossy().into_owned();
        let child = command.stdin(Stdio::null()).stderr(Stdio::null()).spawn();
        Ok(Self(
            child.with_context(|| format!("{name} cannot start."))?,
        ))
    }

    /// Starts a server and waits until it listens on the port.
    pub async fn listening(command: &mut Command, port: u16) -> Result<Self> {
        let mut program = Self::start(command)?;
        let begun = Instant::now();
        while TcpStream::connect((Ipv4Addr::LOCALHOST, port)).is_err() {
            let name = command.get_program().to_string_lossy();
            if let Ok(Some(status)) = program.0.try_wait() {
                bail!("{name} ended at once, with {status}.");
            }
            if begun.elapsed() > PATIENCE {
                bail!("{name} does not listen on port {port}.");
            }
            tokio::time::sleep(Duration::from_millis(20)).await;
        }
        Ok(program)
    }

    /// What it prints, if the caller asked for that.
    pub fn stdout(&mut self) -> Option<std::process::ChildStdout> {
        self.0.stdout.take()
    }
}

impl Drop for Program {
    fn drop(&mut self) {
        // It may have ended by itself, which is as well.
        let _ = self.0.kill();
        let _ = self.0.wait();
    }
}

/// A port that nothing listens on at this moment.
pub fn free_port() -> Result<u16> {
    let listener = TcpListener::bind((Ipv4Addr::LOCALHOST, 0)).context("No port is free.")?;
    Ok(listener.local_addr()?.port())
}

/// Has the driver on this port close its browser, and waits until it has.
pub fn close_session(port: u16, session: &str) -> io::Result<()> {
    let mut driver = TcpStream::connect((Ipv4Addr::LOCALHOST, port))?;
    driver.set_read_timeout(Some(PATIENCE))?;
    let host = format!("127.0.0.1:{port}");
    write!(
        driver,
        "DELETE /session/{session} HTTP/1.1\r\nHost: {host}\r\nConnection: close\r\n\r\n"
    )?;
    // The first word of the answer comes when the browser has been closed.
    driver.read_exact(&mut [0; 12])
}

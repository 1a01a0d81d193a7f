//! One browser's connection: requests come in, answers go out, in turn, until
//! the browser closes it or has been silent for long.

use std::io::{self, Read, Write};
use std::net::TcpStream;
use std::time::Duration;

use super::reply::{Asked, Reply};

/// Longer than any request of a browser; what is longer is not for us.
const LONGEST_REQUEST: usize = 32 * 1024;

const MOST_HEADERS: usize = 64;

/// How long a browser may keep a connection open without a word.
const SILENCE: Duration = Duration::from_secs(300);

/// Answers every request that comes in over the connection.
pub fn converse(mut stream: TcpStream, reply: &impl Fn(&Asked) -> Reply) -> io::Result<()> {
    stream.set_nodelay(true)?;
    stream.set_read_timeout(Some(SILENCE))?;
    let mut received = Vec::new();
    while let Some(length) = receive(&mut stream, &mut received)? {
        let request = Request::parse(&received[..length]);
        received.drain(..length);
        let goes_on = request.as_ref().is_some_and(|request| request.goes_on);
        let (answer, with_body) = match request {
            None => (Reply::sentence(400, "This request cannot be read."), true),
            Some(request) if request.reads => (reply(&request.asked), !request.head),
            Some(_) => (Reply::sentence(405, "This site can only be read."), true),
        };
        stream.write_all(&written(&answer, with_body, goes_on))?;
        if !goes_on {
            break;
        }
    }
    Ok(())
}

/// Reads until one whole request head is there and gives its length, or
/// nothing once the browser has closed the connection.
fn receive(stream: &mut impl Read, received: &mut Vec<u8>) -> io::Result<Option<usize>> {
    let mut part = [0; 4096];
    loop {
        if let Some(end) = received.windows(4).position(|four| four == b"\r\n\r\n") {
            return Ok(Some(end + 4));
        }
        if received.len() > LONGEST_REQUEST {
            return Ok(Some(received.len()));
        }
        match stream.read(&mut part)? {
            0 => return Ok(None),
            count => received.extend_from_slice(&part[..count]),
        }
    }
}

struct Request {
    asked: Asked,
    /// Only reading is allowed; anything else may carry a body, which we do
    /// not read, so the connection ends with it.
    reads: bool,
    head: bool,
    goes_on: bool,
}

impl Request {
    fn parse(bytes: &[u8]) -> Option<Self> {
        let mut headers = [httparse::EMPTY_HEADER; MOST_HEADERS];
        let mut parsed = httparse::Request::new(&mut headers);
        if !parsed.parse(bytes).ok()?.is_complete() {
            return None;
        }
        let header = |name: &str| {
            let found = parsed
                .headers
                .iter()
                .find(|header| header.name.eq_ignore_ascii_case(name));
            found
                .map(|header| String::from_utf8_lossy(header.value).into_owned())
                .unwrap_or_default()
        };
        let method = parsed.method?;
        let reads = matches!(method, "GET" | "HEAD");
        let stays_open =
            parsed.version == Some(1) && !header("connection").eq_ignore_ascii_case("close");
        Some(Self {
            asked: Asked {
                path: parsed.path?.to_owned(),
                accept_encoding: header("accept-encoding"),
                if_none_match: header("if-none-match"),
            },
            reads,
            head: method == "HEAD",
            goes_on: reads && stays_open,
        })
    }
}

fn written(answer: &Reply, with_body: bool, goes_on: bool) -> Vec<u8> {
    let mut bytes =
        format!("HTTP/1.1 {} {}\r\n", answer.status, reason(answer.status)).into_bytes();
    for (name, value) in &answer.headers {
        bytes.extend(format!("{name}: {value}\r\n").bytes());
    }
    if answer.status != 304 {
        bytes.extend(format!("Content-Length: {}\r\n", answer.body.len()).bytes());
    }
    let connection = if goes_on { "keep-alive" } else { "close" };
    bytes.extend(format!("Connection: {connection}\r\n\r\n").bytes());
    if with_body {
        bytes.extend(&answer.body);
    }
    bytes
}

fn reason(status: u16) -> &'static str {
    match status {
        200 => "OK",
        304 => "Not Modified",
        400 => "Bad Request",
        404 => "Not Found",
        405 => "Method Not Allowed",
        _ => "Internal Server Error",
    }
}

#[cfg(test)]
mod tests {
    use std::io::{Read, Write};
    use std::net::{Shutdown, TcpListener, TcpStream};
    use std::thread;

    use super::{Asked, Reply, converse};

    /// What comes back for what is sent, until the server closes.
    fn talk(sent: &str) -> String {
        let listener = TcpListener::bind("127.0.0.1:0").unwrap();
        let address = listener.local_addr().unwrap();
        thread::spawn(move || {
            let (stream, _) = listener.accept().unwrap();
            converse(stream, &|asked: &Asked| Reply::sentence(200, &asked.path))
        });
        let mut stream = TcpStream::connect(address).unwrap();
        stream.write_all(sent.as_bytes()).unwrap();
        stream.shutdown(Shutdown::Write).unwrap();
        let mut answer = String::new();
        stream.read_to_string(&mut answer).unwrap();
        answer
    }

    #[test]
    fn requests_on_one_connection_are_answered_in_turn() {
        let answer = talk("GET /a HTTP/1.1\r\nHost: x\r\n\r\nGET /b HTTP/1.1\r\nHost: x\r\n\r\n");
        assert_eq!(answer.matches("HTTP/1.1 200 OK").count(), 2);
        assert!(answer.find("\r\n\r\n/a").unwrap() < answer.find("\r\n\r\n/b").unwrap());
    }

    #[test]
    fn a_head_request_gets_no_body() {
        let answer = talk("HEAD /a HTTP/1.1\r\n\r\n");
        assert!(answer.contains("Content-Length: 2") && answer.ends_with("\r\n\r\n"));
    }

    #[test]
    fn what_is_not_reading_is_refused_and_ends_the_connection() {
        let answer = talk("POST /a HTTP/1.1\r\nContent-Length: 9\r\n\r\nGET / HTT");
        assert!(answer.starts_with("HTTP/1.1 405") && answer.contains("Connection: close"));
        assert!(talk("nonsense\r\n\r\n").starts_with("HTTP/1.1 400"));
    }

    #[test]
    fn an_endless_request_is_given_up() {
        let answer = talk(&format!("GET /{}", "a".repeat(33_000)));
        assert!(answer.starts_with("HTTP/1.1 400"));
    }
}

//! A web server for one person on one machine: `GET` and `HEAD`, local address only.
//!
//! By hand on `std::net`, since that is all it takes; it is a tool for looking at pages while one
//! works, never a public server.

use std::fs;
use std::io::{self, BufRead, BufReader, Read, Write};
use std::net::{Ipv4Addr, TcpListener, TcpStream};
use std::path::{Path, PathBuf};
use std::sync::Arc;
use std::thread;
use std::time::Duration;

/// Longest request head that is read.
const HEAD_LIMIT: u64 = 16 * 1024;

/// What the pages of this project promise to need; served so that a page which needs more fails here first.
const POLICY: &str = "default-src 'self'; script-src 'self' 'wasm-unsafe-eval'; base-uri 'none'; frame-ancestors 'self'";

/// Writes to a reader until there is no more to say.
pub(crate) type Stream = Box<dyn FnOnce(&mut dyn Write) -> io::Result<()>>;

/// One answer.
pub(crate) enum Answer {
    /// A whole document.
    Body {
        /// Media type.
        kind: &'static str,
        /// Bytes.
        bytes: Vec<u8>,
    },
    /// Another address of this server.
    Moved(String),
    /// An endless stream of server-sent events, written by the function until the reader leaves.
    Events(Stream),
    /// Nothing there.
    Missing,
}

/// Listens on `port` of the local address; 0 lets the system choose.
///
/// # Errors
/// When the port is taken.
pub(crate) fn listen(port: u16) -> io::Result<TcpListener> {
    TcpListener::bind((Ipv4Addr::LOCALHOST, port))
}

/// Answers requests until the process ends. A request that fails ends that connection only.
pub(crate) fn run<F>(listener: &TcpListener, answer: F)
where
    F: Fn(&str) -> Answer + Send + Sync + 'static,
{
    let answer = Arc::new(answer);
    for stream in listener.incoming().flatten() {
        let answer = Arc::clone(&answer);
        thread::spawn(move || handle(&stream, answer.as_ref()));
    }
}

/// The file of `dir` that a request path names.
pub(crate) fn file(dir: &Path, path: &str) -> Answer {
    let Some(relative) = safe(path) else {
        return Answer::Missing;
    };
    let full = dir.join(&relative);
    if full.is_dir() {
        if !path.ends_with('/') {
            return Answer::Moved(format!("{path}/"));
        }
        return body(&full.join("index.html"));
    }
    body(&full)
}

fn body(path: &Path) -> Answer {
    match fs::read(path) {
        Ok(bytes) => Answer::Body {
            kind: media_type(path),
            bytes,
        },
        Err(_) => Answer::Missing,
    }
}

/// The path below the served folder, or `None` where it would leave it.
fn safe(path: &str) -> Option<PathBuf> {
    let text = decode(path)?;
    let mut out = PathBuf::new();
    for part in text.split('/').filter(|p| !p.is_empty()) {
        // A leading dot covers `.`, `..` and hidden files; a colon or backslash means a drive or a separator elsewhere.
        if part.starts_with('.') || part.contains(['\\', ':', '\0']) {
            return None;
        }
        out.push(part);
    }
    Some(out)
}

/// Undoes percent encoding (RFC 3986, 2.1).
fn decode(path: &str) -> Option<String> {
    let mut out = Vec::with_capacity(path.len());
    let mut bytes = path.bytes();
    while let Some(byte) = bytes.next() {
        if byte == b'%' {
            let digit = |b: Option<u8>| char::from(b?).to_digit(16);
            let value = digit(bytes.next())? * 16 + digit(bytes.next())?;
            out.push(u8::try_from(value).ok()?);
        } else {
            out.push(byte);
        }
    }
    String::from_utf8(out).ok()
}

fn media_type(path: &Path) -> &'static str {
    match path
        .extension()
        .and_then(|e| e.to_str())
        .unwrap_or_default()
    {
        "html" => "text/html; charset=utf-8",
        "js" | "mjs" => "text/javascript; charset=utf-8",
        "css" => "text/css; charset=utf-8",
        "json" => "application/json",
        // Without parameters: browsers stream-compile only the bare type.
        "wasm" => "application/wasm",
        "svg" => "image/svg+xml",
        "png" => "image/png",
        "txt" | "md" | "ts" => "text/plain; charset=utf-8",
        _ => "application/octet-stream",
    }
}

fn handle(stream: &TcpStream, answer: &dyn Fn(&str) -> Answer) {
    // A reader that left is no error of ours, and there is nobody to tell.
    let _ = respond(stream, answer);
}

fn respond(mut stream: &TcpStream, answer: &dyn Fn(&str) -> Answer) -> io::Result<()> {
    stream.set_read_timeout(Some(Duration::from_secs(10)))?;
    stream.set_write_timeout(Some(Duration::from_secs(10)))?;
    let Some((method, path)) = request(stream)? else {
        return write_head(&mut stream, "400 Bad Request", "text/plain", Some(0), "");
    };
    if method != "GET" && method != "HEAD" {
        return write_head(
            &mut stream,
            "405 Method Not Allowed",
            "text/plain",
            Some(0),
            "Allow: GET, HEAD\r\n",
        );
    }
    match answer(&path) {
        Answer::Body { kind, bytes } => {
            write_head(&mut stream, "200 OK", kind, Some(bytes.len()), "")?;
            if method == "GET" {
                stream.write_all(&bytes)?;
            }
            Ok(())
        }
        Answer::Moved(to) => {
            // The path came from the request line, which holds neither space nor line break.
            write_head(
                &mut stream,
                "308 Permanent Redirect",
                "text/plain",
                Some(0),
                &format!("Location: {to}\r\n"),
            )
        }
        Answer::Events(write) => {
            write_head(&mut stream, "200 OK", "text/event-stream", None, "")?;
            if method == "GET" {
                write(&mut stream)
            } else {
                Ok(())
            }
        }
        Answer::Missing => {
            let text = b"Nothing here.\n";
            write_head(
                &mut stream,
                "404 Not Found",
                "text/plain; charset=utf-8",
                Some(text.len()),
                "",
            )?;
            stream.write_all(text)
        }
    }
}

/// Method and path of a request; `None` where it is none.
fn request(stream: &TcpStream) -> io::Result<Option<(String, String)>> {
    let mut reader = BufReader::new(stream.take(HEAD_LIMIT));
    let mut first = String::new();
    if reader.read_line(&mut first).is_err() || !first.ends_with('\n') {
        return Ok(None);
    }
    let mut local = false;
    loop {
        let mut line = String::new();
        if reader.read_line(&mut line)? == 0 {
            return Ok(None);
        }
        if line.trim().is_empty() {
            break;
        }
        if let Some((name, value)) = line.split_once(':')
            && name.eq_ignore_ascii_case("host")
        {
            // Another name that resolves to this machine would let a foreign page read local files.
            let host = value
                .trim()
                .rsplit_once(':')
                .map_or(value.trim(), |(host, _)| host);
            local = host == "localhost" || host == "127.0.0.1";
        }
    }
    let mut words = first.split_whitespace();
    let (Some(method), Some(target)) = (words.next(), words.next()) else {
        return Ok(None);
    };
    let path = target.split(['?', '#']).next().unwrap_or_default();
    Ok((local && path.starts_with('/') && !path.starts_with("//"))
        .then(|| (method.to_owned(), path.to_owned())))
}

fn write_head(
    out: &mut dyn Write,
    status: &str,
    kind: &str,
    length: Option<usize>,
    more: &str,
) -> io::Result<()> {
    let length = length
        .map(|n| format!("Content-Length: {n}\r\n"))
        .unwrap_or_default();
    write!(
        out,
        "HTTP/1.1 {status}\r\nContent-Type: {kind}\r\n{length}{more}Cache-Control: no-cache\r\n\
         X-Content-Type-Options: nosniff\r\nContent-Security-Policy: {POLICY}\r\nConnection: close\r\n\r\n"
    )
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_path_never_leaves_the_folder() {
        for path in [
            "/../secret",
            "/a/../../b",
            "/%2e%2e/secret",
            "/.git/config",
            "/a\\b",
            "/c:/x",
            "/%00",
            "/%zz",
            "/%",
        ] {
            assert_eq!(safe(path), None, "{path}");
        }
        assert_eq!(
            safe("/sets//paper%20boats.json"),
            Some(PathBuf::from("sets/paper boats.json"))
        );
        assert_eq!(safe("/"), Some(PathBuf::new()));
    }

    /// One exchange over a real connection.
    fn ask(text: &str) -> String {
        let listener = listen(0).unwrap();
        let address = listener.local_addr().unwrap();
        let server = thread::spawn(move || {
            let (stream, _) = listener.accept().unwrap();
            handle(&stream, &|path| match path {
                "/here" => Answer::Body {
                    kind: "text/plain",
                    bytes: b"found".to_vec(),
                },
                _ => Answer::Missing,
            });
        });
        let mut stream = TcpStream::connect(address).unwrap();
        stream.write_all(text.as_bytes()).unwrap();
        let mut answer = String::new();
        stream.read_to_string(&mut answer).unwrap();
        server.join().unwrap();
        answer
    }

    #[test]
    fn head_gets_the_length_and_no_body() {
        assert!(ask("GET /here HTTP/1.1\r\nHost: localhost:1\r\n\r\n").ends_with("\r\n\r\nfound"));
        let head = ask("HEAD /here HTTP/1.1\r\nHost: 127.0.0.1\r\n\r\n");
        assert!(head.contains("Content-Length: 5\r\n") && head.ends_with("\r\n\r\n"));
    }

    #[test]
    fn foreign_hosts_methods_and_noise_are_refused() {
        assert!(
            ask("GET /here HTTP/1.1\r\nHost: elsewhere.example\r\n\r\n")
                .starts_with("HTTP/1.1 400")
        );
        assert!(ask("POST /here HTTP/1.1\r\nHost: localhost\r\n\r\n").starts_with("HTTP/1.1 405"));
        assert!(ask("hello\r\n\r\n").starts_with("HTTP/1.1 400"));
        assert!(ask("GET /gone HTTP/1.1\r\nHost: localhost\r\n\r\n").starts_with("HTTP/1.1 404"));
    }
}

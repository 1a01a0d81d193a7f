//! The look: many small files in style/ become one.
//!
//! The order is fixed: tokens, base, layout, the shell, then the parts by
//! name, and print last, so that a later file may lean on an earlier one.

use std::fs;
use std::path::PathBuf;

use anyhow::{Context, Result};

use crate::repo::Repo;

/// All styles, in order, as one file.
///
/// # Errors
/// When a file cannot be read.
pub fn gather(repo: &Repo) -> Result<String> {
    let mut css = String::new();
    for path in files(repo)? {
        let text = fs::read_to_string(&path)
            .with_context(|| format!("{} cannot be read.", path.display()))?;
        css.push_str(&minify(&text));
    }
    Ok(css)
}

fn files(repo: &Repo) -> Result<Vec<PathBuf>> {
    let mut parts: Vec<PathBuf> = match fs::read_dir(repo.path("style/parts")) {
        Ok(entries) => entries
            .map(|entry| Ok(entry.context("style/parts/ cannot be read.")?.path()))
            .collect::<Result<_>>()?,
        Err(_) => Vec::new(),
    };
    parts.retain(|path| path.extension().is_some_and(|extension| extension == "css"));
    parts.sort();
    let first = ["style/tokens.css", "style/base.css", "style/layout.css"];
    let mut files: Vec<PathBuf> = first.map(|name| repo.path(name)).into();
    files.push(repo.path("src/app/glue/shell.css"));
    files.extend(parts);
    files.push(repo.path("style/print.css"));
    files.retain(|path| path.is_file());
    Ok(files)
}

/// Drops comments and the white space that means nothing. Strings stay as they
/// are, and so does every space that may separate two words or two operators.
fn minify(css: &str) -> String {
    let mut out = String::with_capacity(css.len());
    let mut rest = css.chars().peekable();
    let mut space = false;
    while let Some(char) = rest.next() {
        match char {
            '/' if rest.peek() == Some(&'*') => {
                rest.next();
                let mut before = ' ';
                for inside in rest.by_ref() {
                    if before == '*' && inside == '/' {
                        break;
                    }
                    before = inside;
                }
                space = true;
            }
            white if white.is_whitespace() => space = true,
            _ => {
                let means_nothing = sheds_space_before(char) || out.ends_with(SHEDS_SPACE_AFTER);
                if space && !means_nothing && !out.is_empty() {
                    out.push(' ');
                }
                space = false;
                if char == '}' && out.ends_with(';') {
                    out.pop();
                }
                out.push(char);
                if char == '"' || char == '\'' {
                    copy_string(char, &mut rest, &mut out);
                }
            }
        }
    }
    out
}

/// After these, a space means nothing.
const SHEDS_SPACE_AFTER: [char; 6] = ['{', '}', ';', ',', ':', '('];

fn sheds_space_before(char: char) -> bool {
    matches!(char, '{' | '}' | ';' | ',' | ')')
}

fn copy_string(quote: char, rest: &mut impl Iterator<Item = char>, out: &mut String) {
    while let Some(char) = rest.next() {
        out.push(char);
        if char == '\\' {
            out.extend(rest.next());
        } else if char == quote {
            return;
        }
    }
}

#[cfg(test)]
mod tests {
    use super::minify;

    #[test]
    fn what_means_nothing_goes() {
        assert_eq!(
            minify("/* a */ a ,\n b { color : red ; }\n"),
            "a,b{color :red}"
        );
    }

    #[test]
    fn what_means_something_stays() {
        for kept in [
            "a :hover b>c",
            "width:calc(1px + (2px - 3px)*2)",
            "content:\"a  /* b */ ; \\\" }  c\"",
            "@media (min-width:40em) and (hover)",
            "grid-template-areas:\"a  b\" \"c d\"",
            "margin:0 -1px",
        ] {
            assert_eq!(minify(kept), kept);
        }
    }

    #[test]
    fn a_comment_parts_two_words() {
        assert_eq!(minify("margin:0/**/auto"), "margin:0 auto");
    }

    #[test]
    fn an_unclosed_comment_or_string_ends_with_the_file() {
        assert_eq!(minify("a{}/* b"), "a{}");
        assert_eq!(minify("a{content:\"b"), "a{content:\"b");
    }
}

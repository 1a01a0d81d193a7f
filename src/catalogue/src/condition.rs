//! Conditions over findings: the `when` of rules, steps, variations and plans.
//!
//! ```text
//! cold = lingers and not (percussion = tender or swelling)
//! remaining-dentine <= 0.5 mm and exposure = none
//! planned-permanent in (composite, glass-ionomer)
//! ```
//!
//! A flag stands by its name alone. A number carries its unit, so that nobody
//! has to guess whether a thickness is in millimetres.

use crate::{ids::FindingId, quantity::Milli};
use serde::{Deserialize, Serialize};

/// How a number is compared.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Order {
    /// `<`
    Less,
    /// `<=`
    AtMost,
    /// `>`
    More,
    /// `>=`
    AtLeast,
}

impl Order {
    /// Whether `left` stands in this order to `right`.
    pub fn holds(self, left: Milli, right: Milli) -> bool {
        match self {
            Self::Less => left < right,
            Self::AtMost => left <= right,
            Self::More => left > right,
            Self::AtLeast => left >= right,
        }
    }
}

/// A parsed condition.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Expr {
    /// All of these.
    All(Vec<Expr>),
    /// Any of these.
    Any(Vec<Expr>),
    /// The opposite.
    Not(Box<Expr>),
    /// A flag that is set.
    Flag(FindingId),
    /// A finding that is one of these words.
    Is(FindingId, Vec<String>),
    /// A number compared with a bound in a unit.
    Compare(FindingId, Order, Milli, String),
}

/// A condition with the text it was written as. It is stored as that text, in
/// `content/` and in the packed catalogue alike.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(try_from = "String", into = "String")]
pub struct When {
    text: String,
    expr: Expr,
}

impl When {
    /// Reads a condition.
    ///
    /// # Errors
    /// A sentence that names the word at which reading stopped.
    pub fn parse(text: &str) -> Result<Self, String> {
        let mut reader = Reader {
            tokens: tokens(text)?,
            at: 0,
            depth: 0,
        };
        let expr = reader.any()?;
        match reader.peek() {
            None => Ok(Self {
                text: text.into(),
                expr,
            }),
            Some(word) => Err(format!(
                "unexpected '{word}' in the condition; join parts with 'and' or 'or'"
            )),
        }
    }

    /// What has to hold.
    pub fn expr(&self) -> &Expr {
        &self.expr
    }

    /// As it was written.
    pub fn text(&self) -> &str {
        &self.text
    }
}

impl TryFrom<String> for When {
    type Error = String;
    fn try_from(text: String) -> Result<Self, String> {
        Self::parse(&text)
    }
}

impl From<When> for String {
    fn from(when: When) -> Self {
        when.text
    }
}

impl Expr {
    /// Every atom of the condition, in the order written.
    pub fn atoms(&self) -> Vec<&Expr> {
        match self {
            Self::All(parts) | Self::Any(parts) => parts.iter().flat_map(Self::atoms).collect(),
            Self::Not(part) => part.atoms(),
            _ => vec![self],
        }
    }

    /// The finding an atom speaks of; none for a compound.
    pub fn finding(&self) -> Option<&FindingId> {
        match self {
            Self::Flag(id) | Self::Is(id, _) | Self::Compare(id, ..) => Some(id),
            _ => None,
        }
    }
}

fn tokens(text: &str) -> Result<Vec<String>, String> {
    let mut tokens = Vec::new();
    let mut chars = text.chars().peekable();
    while let Some(&c) = chars.peek() {
        if c.is_whitespace() {
            chars.next();
        } else if matches!(c, '(' | ')' | ',' | '=') {
            tokens.push(c.to_string());
            chars.next();
        } else if matches!(c, '<' | '>' | '!') {
            chars.next();
            let mut sign = c.to_string();
            if chars.next_if_eq(&'=').is_some() {
                sign.push('=');
            }
            tokens.push(sign);
        } else if c.is_ascii_alphanumeric() || c == '-' || c == '.' || c == '%' {
            let mut word = String::new();
            while let Some(c) =
                chars.next_if(|c| c.is_ascii_alphanumeric() || matches!(c, '-' | '.' | '%'))
            {
                word.push(c);
            }
            tokens.push(word);
        } else {
            return Err(format!(
                "'{c}' does not belong in a condition; use words, numbers, = < > ( ) and commas"
            ));
        }
    }
    Ok(tokens)
}

/// How deep 'not' and brackets may stand within one another: far more than
/// anybody can follow, and no more than a stack holds.
const DEEPEST: usize = 32;

struct Reader {
    tokens: Vec<String>,
    at: usize,
    depth: usize,
}

impl Reader {
    fn peek(&self) -> Option<&str> {
        self.tokens.get(self.at).map(String::as_str)
    }

    fn take(&mut self, word: &str) -> bool {
        let found = self.peek() == Some(word);
        self.at += usize::from(found);
        found
    }

    fn next(&mut self, wanted: &str) -> Result<String, String> {
        let token = self
            .peek()
            .ok_or_else(|| format!("the condition ends where {wanted} was expected"))?
            .to_string();
        self.at += 1;
        Ok(token)
    }

    fn word(&mut self, wanted: &str) -> Result<String, String> {
        let token = self.next(wanted)?;
        let plain = token.starts_with(|c: char| c.is_ascii_alphanumeric());
        if plain && !matches!(token.as_str(), "and" | "or" | "not" | "in") {
            Ok(token)
        } else {
            Err(format!("'{token}' stands where {wanted} was expected"))
        }
    }

    fn any(&mut self) -> Result<Expr, String> {
        let mut parts = vec![self.all()?];
        while self.take("or") {
            parts.push(self.all()?);
        }
        Ok(one_or(parts, Expr::Any))
    }

    fn all(&mut self) -> Result<Expr, String> {
        let mut parts = vec![self.atom()?];
        while self.take("and") {
            parts.push(self.atom()?);
        }
        Ok(one_or(parts, Expr::All))
    }

    fn deeper(&mut self) -> Result<(), String> {
        self.depth += 1;
        if self.depth > DEEPEST {
            return Err(format!(
                "more than {DEEPEST} brackets and words 'not' stand within one another; say it in simpler conditions"
            ));
        }
        Ok(())
    }

    fn atom(&mut self) -> Result<Expr, String> {
        if self.take("not") {
            self.deeper()?;
            let inner = self.atom()?;
            self.depth -= 1;
            return Ok(Expr::Not(Box::new(inner)));
        }
        if self.take("(") {
            self.deeper()?;
            let inner = self.any()?;
            self.depth -= 1;
            return if self.take(")") {
                Ok(inner)
            } else {
                Err("a bracket is not closed".into())
            };
        }
        let finding = FindingId(self.word("a finding")?);
        if self.take("=") {
            return Ok(Expr::Is(finding, vec![self.word("a value")?]));
        }
        if self.take("!=") {
            let value = self.word("a value")?;
            return Ok(Expr::Not(Box::new(Expr::Is(finding, vec![value]))));
        }
        if self.take("in") {
            return self.list(finding);
        }
        let order = match self.peek() {
            Some("<") => Order::Less,
            Some("<=") => Order::AtMost,
            Some(">") => Order::More,
            Some(">=") => Order::AtLeast,
            _ => return Ok(Expr::Flag(finding)),
        };
        self.at += 1;
        let number = Milli::parse(&self.next("a number")?)?;
        let unit = self.word("the unit of the number, such as mm")?;
        Ok(Expr::Compare(finding, order, number, unit))
    }

    fn list(&mut self, finding: FindingId) -> Result<Expr, String> {
        if !self.take("(") {
            return Err(format!(
                "'{finding} in' wants a list in brackets, such as (a, b)"
            ));
        }
        let mut values = vec![self.word("a value")?];
        while self.take(",") {
            values.push(self.word("a value")?);
        }
        if self.take(")") {
            Ok(Expr::Is(finding, values))
        } else {
            Err("a bracket is not closed".into())
        }
    }
}

fn one_or(mut parts: Vec<Expr>, many: fn(Vec<Expr>) -> Expr) -> Expr {
    if parts.len() == 1 {
        parts.remove(0)
    } else {
        many(parts)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn and_binds_tighter_than_or_and_not_tightest() {
        let when = When::parse("a or not b and c = d").unwrap();
        assert_eq!(
            when.expr(),
            &Expr::Any(vec![
                Expr::Flag("a".into()),
                Expr::All(vec![
                    Expr::Not(Box::new(Expr::Flag("b".into()))),
                    Expr::Is("c".into(), vec!["d".into()]),
                ]),
            ])
        );
    }

    #[test]
    fn numbers_carry_their_unit() {
        let when = When::parse("remaining-dentine <= 0.5 mm").unwrap();
        assert_eq!(
            when.expr(),
            &Expr::Compare(
                "remaining-dentine".into(),
                Order::AtMost,
                Milli(500),
                "mm".into()
            )
        );
        assert!(When::parse("remaining-dentine <= 0.5").is_err());
    }

    #[test]
    fn what_is_nested_too_deep_is_refused() {
        for (open, close) in [("not ", ""), ("(", ")")] {
            let nested = |n: usize| format!("{}a{}", open.repeat(n), close.repeat(n));
            assert!(When::parse(&nested(DEEPEST)).is_ok());
            assert!(When::parse(&nested(DEEPEST + 1)).is_err());
            assert!(When::parse(&nested(100_000)).is_err());
        }
    }

    #[test]
    fn what_cannot_be_read_is_said() {
        for text in [
            "", "a b", "a =", "(a", "a in b", "a in (b", "and a", "a & b", "a < x mm", "= a",
        ] {
            assert!(When::parse(text).is_err(), "{text}");
        }
    }
}

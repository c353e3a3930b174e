//! The expressions of a family file, read into trees.
//!
//! ```text
//! condition = sum [ ( < | <= | > | >= | = | != ) sum ]
//! sum       = product { ( + | - ) product }
//! product   = factor { ( * | / ) factor }
//! factor    = number | number unit | name | quantity?key=value&... | 'text'
//!           | root( sum ) | ( sum )
//! ```
//!
//! A name is a given, a value or, where there is none such, a catalogue quantity whose
//! parameters all come from the givens. In `oscillator?dial={station}&side=below` a
//! value in braces is a name, any other is taken as written, and a parameter left out
//! comes from the given of its own name. A minus sign has a space on each side, since
//! names hold hyphens.

use alloc::{boxed::Box, format, string::String, vec::Vec};
use core::fmt;

use crate::units::{Kind, parse};

use super::token::{Token, tokens};

/// An expression as a tree.
#[derive(Clone, Debug, PartialEq)]
pub enum Expression {
    /// A plain number.
    Number(f64),
    /// A number with a unit, as written.
    Quantity(String),
    /// A text to compare a choice with.
    Text(String),
    /// A given, a value or a catalogue quantity.
    Name(String),
    /// A catalogue quantity with some of its parameters bound.
    Call {
        /// Name in the catalogue.
        quantity: String,
        /// Parameter names with what they are bound to.
        bindings: Vec<(String, Binding)>,
    },
    /// A square root.
    Root(Box<Expression>),
    /// Two expressions and what joins them.
    Joined(Operator, Box<Expression>, Box<Expression>),
}

/// What a parameter is bound to.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Binding {
    /// A given or a value.
    Name(String),
    /// As written.
    Literal(String),
}

/// What joins two expressions.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Operator {
    /// `+`
    Plus,
    /// `-`
    Minus,
    /// `*`
    Times,
    /// `/`
    Over,
}

/// How two expressions are compared.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Comparison {
    /// `<`
    Under,
    /// `<=`
    AtMost,
    /// `>`
    Over,
    /// `>=`
    AtLeast,
    /// `=`
    Same,
    /// `!=`
    Other,
}

/// Two expressions compared.
#[derive(Clone, Debug, PartialEq)]
pub struct Condition {
    /// On the left of the sign.
    pub left: Expression,
    /// The sign.
    pub comparison: Comparison,
    /// On the right of the sign.
    pub right: Expression,
}

/// Why an expression could not be read.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct ExpressionError {
    says: String,
}

impl fmt::Display for ExpressionError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.says)
    }
}

impl core::error::Error for ExpressionError {}

/// Bytes of an expression; what is longer is refused unread. A tree is as deep as a sum
/// has terms, and it is walked and dropped by calls within calls.
pub const LONGEST: usize = 1000;
/// Deepest nesting of brackets that is read.
const DEEPEST: usize = 16;

impl Expression {
    /// Reads an expression.
    pub fn read(text: &str) -> Result<Expression, ExpressionError> {
        let mut reader = Reader::new(text)?;
        let expression = reader.sum(0)?;
        reader.end()?;
        Ok(expression)
    }

    /// The names and quantities that its value is made of, without what they are bound to.
    pub fn names(&self) -> Vec<&str> {
        match self {
            Expression::Name(name) | Expression::Call { quantity: name, .. } => {
                Vec::from([name.as_str()])
            }
            Expression::Root(inside) => inside.names(),
            Expression::Joined(_, left, right) => [left.names(), right.names()].concat(),
            Expression::Number(_) | Expression::Quantity(_) | Expression::Text(_) => Vec::new(),
        }
    }
}

impl Condition {
    /// Reads a condition.
    pub fn read(text: &str) -> Result<Condition, ExpressionError> {
        let mut reader = Reader::new(text)?;
        let left = reader.sum(0)?;
        let comparison = reader.comparison()?;
        let right = reader.sum(0)?;
        reader.end()?;
        Ok(Condition {
            left,
            comparison,
            right,
        })
    }
}

struct Reader<'t> {
    text: &'t str,
    tokens: Vec<Token<'t>>,
    next: usize,
}

impl<'t> Reader<'t> {
    fn new(text: &'t str) -> Result<Reader<'t>, ExpressionError> {
        if text.len() > LONGEST {
            return Err(ExpressionError {
                says: format!("an expression has at most {LONGEST} bytes; this one is longer"),
            });
        }
        Ok(Reader {
            text,
            tokens: tokens(text).map_err(|what| error(text, &what))?,
            next: 0,
        })
    }

    fn sum(&mut self, depth: usize) -> Result<Expression, ExpressionError> {
        let mut sum = self.product(depth)?;
        while let Some(operator) = self.sign(&[("+", Operator::Plus), ("-", Operator::Minus)]) {
            sum = Expression::Joined(operator, Box::new(sum), Box::new(self.product(depth)?));
        }
        Ok(sum)
    }

    fn product(&mut self, depth: usize) -> Result<Expression, ExpressionError> {
        let mut product = self.factor(depth)?;
        while let Some(operator) = self.sign(&[("*", Operator::Times), ("/", Operator::Over)]) {
            product =
                Expression::Joined(operator, Box::new(product), Box::new(self.factor(depth)?));
        }
        Ok(product)
    }

    fn factor(&mut self, depth: usize) -> Result<Expression, ExpressionError> {
        if depth > DEEPEST {
            return Err(self.error("brackets may nest at most 16 deep"));
        }
        let token = self.tokens.get(self.next).copied();
        self.next += 1;
        match token {
            Some(Token::Number(number)) => parse::value(Kind::Ratio, number, None)
                .map(Expression::Number)
                .map_err(|_| self.error(&format!("{number:?} is not a number"))),
            Some(Token::Quantity(text)) => Ok(Expression::Quantity(text.into())),
            Some(Token::Text(text)) => Ok(Expression::Text(text.into())),
            Some(Token::Call(name, query)) => self.call(name, query),
            Some(Token::Name("root")) => {
                let inside = self.bracketed(depth)?;
                Ok(Expression::Root(Box::new(inside)))
            }
            Some(Token::Name(name)) => Ok(Expression::Name(name.into())),
            Some(Token::Sign("(")) => {
                self.next -= 1;
                self.bracketed(depth)
            }
            Some(Token::Sign(sign)) => {
                Err(self.error(&format!("{sign:?} stands where a value is needed")))
            }
            None => Err(self.error("it ends where a value is needed")),
        }
    }

    fn bracketed(&mut self, depth: usize) -> Result<Expression, ExpressionError> {
        self.sign(&[("(", ())])
            .ok_or_else(|| self.error("\"(\" must follow root"))?;
        let inside = self.sum(depth + 1)?;
        self.sign(&[(")", ())])
            .ok_or_else(|| self.error("a bracket is not closed"))?;
        Ok(inside)
    }

    fn call(&self, name: &str, query: &str) -> Result<Expression, ExpressionError> {
        let mut bindings: Vec<(String, Binding)> = Vec::new();
        for pair in query.split('&') {
            let (key, value) = pair
                .split_once('=')
                .ok_or_else(|| self.error(&format!("{pair:?} must read name=value")))?;
            if bindings.iter().any(|(bound, _)| bound == key) {
                return Err(self.error(&format!("{key:?} is bound twice")));
            }
            bindings.push((key.into(), binding(value)));
        }
        Ok(Expression::Call {
            quantity: name.into(),
            bindings,
        })
    }

    fn comparison(&mut self) -> Result<Comparison, ExpressionError> {
        self.sign(&[
            ("<", Comparison::Under),
            ("<=", Comparison::AtMost),
            (">", Comparison::Over),
            (">=", Comparison::AtLeast),
            ("=", Comparison::Same),
            ("!=", Comparison::Other),
        ])
        .ok_or_else(|| self.error("a condition compares with <, <=, >, >=, = or !="))
    }

    /// Takes the next token when it is one of these signs.
    fn sign<T: Copy>(&mut self, wanted: &[(&str, T)]) -> Option<T> {
        let Some(Token::Sign(sign)) = self.tokens.get(self.next) else {
            return None;
        };
        let found = wanted.iter().find(|(text, _)| text == sign)?;
        self.next += 1;
        Some(found.1)
    }

    fn end(&self) -> Result<(), ExpressionError> {
        if self.next == self.tokens.len() {
            Ok(())
        } else {
            Err(self.error("something follows where it should end"))
        }
    }

    fn error(&self, what: &str) -> ExpressionError {
        error(self.text, what)
    }
}

fn error(text: &str, what: &str) -> ExpressionError {
    ExpressionError {
        says: format!("the expression {text:?} cannot be read: {what}"),
    }
}

fn binding(value: &str) -> Binding {
    match value
        .strip_prefix('{')
        .and_then(|rest| rest.strip_suffix('}'))
    {
        Some(name) => Binding::Name(name.into()),
        None => Binding::Literal(value.into()),
    }
}

#[cfg(test)]
mod tests;

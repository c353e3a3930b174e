use alloc::{string::ToString, vec};

use proptest::prelude::proptest;

use super::*;

fn named(name: &str) -> Box<Expression> {
    Box::new(Expression::Name(name.into()))
}

#[test]
fn names_keep_their_hyphens() {
    let read = Expression::read("f-high - f-low").unwrap();
    assert_eq!(
        read,
        Expression::Joined(Operator::Minus, named("f-high"), named("f-low"))
    );
}

#[test]
fn products_bind_closer_than_sums() {
    let read = Expression::read("dial + 2 * if").unwrap();
    let twice = Expression::Joined(
        Operator::Times,
        Box::new(Expression::Number(2.0)),
        named("if"),
    );
    assert_eq!(
        read,
        Expression::Joined(Operator::Plus, named("dial"), Box::new(twice))
    );
}

#[test]
fn equal_signs_group_from_the_left() {
    let read = Expression::read("dial - if - if").unwrap();
    let first = Expression::Joined(Operator::Minus, named("dial"), named("if"));
    assert_eq!(
        read,
        Expression::Joined(Operator::Minus, Box::new(first), named("if"))
    );
}

#[test]
fn a_quantity_binds_names_and_texts() {
    let read = Expression::read("root(image?dial={station}&side=below)").unwrap();
    let bindings = vec![
        ("dial".into(), Binding::Name("station".into())),
        ("side".into(), Binding::Literal("below".into())),
    ];
    let call = Expression::Call {
        quantity: "image".into(),
        bindings,
    };
    assert_eq!(read, Expression::Root(Box::new(call)));
}

#[test]
fn conditions_compare() {
    let read = Condition::read("image >= 1606.5 kHz").unwrap();
    assert_eq!(read.comparison, Comparison::AtLeast);
    assert_eq!(read.right, Expression::Quantity("1606.5 kHz".into()));
    let side = Condition::read("side = 'above'").unwrap();
    assert_eq!(side.right, Expression::Text("above".into()));
}

#[test]
fn slips_are_named() {
    let refused = |text: &str| Expression::read(text).unwrap_err().to_string();
    assert_eq!(
        refused("dial +"),
        "the expression \"dial +\" cannot be read: it ends where a value is needed"
    );
    assert!(refused("dial if").contains("something follows"));
    assert!(refused("(dial").contains("bracket is not closed"));
    assert!(refused("root dial").contains("must follow root"));
    assert!(refused("image?dial").contains("must read name=value"));
    assert!(refused("image?if=1&if=2").contains("bound twice"));
    assert!(refused("dial ~ if").contains("'~' has no meaning"));
    assert!(refused("1.2.3").contains("not a number"));
    assert!(refused(&"(".repeat(40)).contains("16 deep"));
    assert!(refused(&"1 + ".repeat(100_000)).contains("at most 1000 bytes"));
    assert!(
        Condition::read("dial")
            .unwrap_err()
            .to_string()
            .contains("compares with")
    );
}

proptest! {
    #[test]
    fn reading_never_panics(text in "\\PC{0,40}") {
        let _ = Expression::read(&text);
        let _ = Condition::read(&text);
    }

    #[test]
    fn near_expressions_never_panic(text in "[a-z0-9.'?&={}()<>! +*/µΩ-]{0,40}") {
        let _ = Expression::read(&text);
        let _ = Condition::read(&text);
    }
}

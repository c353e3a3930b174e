//! A figure keeps its elements whatever is moved, and its changes lead from one drawing
//! to the next.

#![allow(clippy::unwrap_used)] // in the helpers of tests, as in the tests

mod grid;

use figures::{Input, Node, View, What, changes, svg, view};

/// Every input of a grid that the core accepts, for one figure.
fn views(name: &str, rest: &str) -> Vec<View> {
    let mut all = Vec::new();
    for query in grid::inputs(name) {
        if !grid::TUNED.contains(&name) {
            all.push(view(name, &Input::parse(&[&query, rest].concat()).unwrap()).unwrap());
        }
    }
    if !all.is_empty() {
        return all;
    }
    for dial in [150, 198, 525, 653, 940, 1089, 1200, 1605] {
        for intermediate in [100, 125, 455, 470, 600] {
            for side in ["above", "below"] {
                let query = format!("dial={dial}kHz&if={intermediate}kHz&side={side}{rest}");
                all.extend(view(name, &Input::parse(&query).unwrap()));
            }
        }
    }
    assert!(all.len() > 60, "{name}: the grid has {} tunings", all.len());
    all
}

/// The figures, and for each the parameters that no handle changes.
const KINDS: [(&str, &str); 21] = [
    ("frequency-line", ""),
    ("frequency-line", "&region=2"),
    ("frequency-line", "&region=3&image=hidden"),
    ("frequency-line", "&axis=30MHz"),
    ("frequency-line", "&move=dial,side"),
    ("block-diagram", ""),
    ("resonance", ""),
    ("resonance", "&l=1mH&scale=decibels"),
    ("coupled-pair", ""),
    ("if-chain", ""),
    ("am-wave", ""),
    ("band-chart", ""),
    ("band-chart", "&region=2"),
    ("band-chart", "&image=hidden&move=dial,if"),
    ("spurious-map", ""),
    ("spurious-map", "&n=3&sender=1584kHz&move=dial"),
    ("spurious-map", "&order=4&n=4&region=2&axis=8MHz"),
    ("tracking", ""),
    ("tracking", "&l-signal=175uH&q=60"),
    ("detector", ""),
    ("agc", ""),
];

/// What of a node may never change: everything but values of attributes and texts.
fn bones(nodes: &[Node], out: &mut String) {
    for node in nodes {
        out.push_str(&format!("{}#{:?}", node.tag, node.key));
        for (name, value) in &node.attributes {
            out.push_str(&format!(" {name}"));
            if node.key.is_none() || *name == "class" {
                out.push_str(&format!("={value}"));
            }
        }
        if let (Some(text), None) = (&node.text, &node.key) {
            out.push_str(text);
        }
        out.push('{');
        bones(&node.children, out);
        out.push('}');
    }
}

fn bones_of(view: &View) -> String {
    let mut out = format!("{}x{} ", view.width, view.height);
    bones(&view.root, &mut out);
    for row in &view.table.rows {
        out.push_str(&format!(" row {} {}", row.len(), row[0].text));
    }
    for quantity in &view.quantities {
        out.push_str(&format!(" {}", quantity.name));
    }
    for control in &view.controls {
        out.push_str(&format!(" {} {}", control.parameter, control.label));
    }
    out
}

#[test]
fn the_elements_are_the_same_for_every_tuning() {
    for (name, rest) in KINDS {
        let views = views(name, rest);
        let first = bones_of(&views[0]);
        for view in &views {
            assert_eq!(bones_of(view), first, "{name}{rest}: {}", view.title);
        }
    }
}

#[test]
fn keys_are_single() {
    fn collect(nodes: &[Node], keys: &mut Vec<String>) {
        for node in nodes {
            keys.extend(node.key.clone());
            collect(&node.children, keys);
        }
    }
    for (name, rest) in KINDS {
        let mut keys = Vec::new();
        collect(&views(name, rest)[0].root, &mut keys);
        let count = keys.len();
        keys.sort_unstable();
        keys.dedup();
        assert_eq!(keys.len(), count, "{name}{rest}");
    }
}

fn find<'a>(nodes: &'a mut [Node], key: &str) -> Option<&'a mut Node> {
    for node in nodes {
        if node.key.as_deref() == Some(key) {
            return Some(node);
        }
        if let Some(found) = find(&mut node.children, key) {
            return Some(found);
        }
    }
    None
}

#[test]
fn changes_lead_from_each_drawing_to_the_next() {
    for (name, rest) in KINDS {
        let views = views(name, rest);
        for pair in views.windows(2) {
            let mut live = pair[0].clone();
            for change in changes(&pair[0], &pair[1]) {
                let node = find(&mut live.root, change.key).unwrap();
                match change.what {
                    What::Text(text) => node.text = Some(text.to_owned()),
                    What::Attribute(name, value) => {
                        let known = node.attributes.iter_mut().find(|(known, _)| *known == name);
                        value.clone_into(&mut known.unwrap().1);
                    }
                }
            }
            assert_eq!(live.root, pair[1].root, "{name}{rest}");
            assert!(changes(&pair[1], &pair[1]).is_empty());
        }
    }
}

#[test]
fn a_drawing_names_no_style_no_script_and_no_broken_number() {
    fn check(nodes: &[Node]) {
        for node in nodes {
            for (name, value) in &node.attributes {
                assert!(
                    *name != "style" && !name.starts_with("on"),
                    "{name}={value}"
                );
                assert!(
                    !value.contains("NaN") && !value.contains("inf"),
                    "{name}={value}"
                );
            }
            assert!(!["script", "style", "a", "image", "use"].contains(&node.tag));
            check(&node.children);
        }
    }
    for (name, rest) in KINDS {
        for view in views(name, rest) {
            check(&view.root);
            let text = svg(&view);
            assert_eq!(text.matches("<svg").count(), text.matches("</svg>").count());
            assert!(!text.contains(" style="), "{text}");
        }
    }
}

#[test]
fn what_is_refused_is_a_sentence_that_names_the_rule() {
    let refused = |name: &str, query: &str| {
        let input = Input::parse(query).unwrap();
        view(name, &input).unwrap_err().to_string()
    };
    for name in grid::TUNED {
        let said = refused(name, "dial=400kHz&if=470kHz&side=below");
        assert!(said.contains("dial must be above the IF"), "{said}");
        let said = refused(name, "dial=400kHz&if=470kHz&side=up");
        assert!(said.contains("above or below"), "{said}");
        let said = refused(name, "dial=400kHz&if=470kHz&side=above&colour=red");
        assert!(said.contains("'colour'"), "{said}");
        let said = refused(name, "dial=400kHz&side=above");
        assert!(said.contains("needs 'if'"), "{said}");
        let said = refused(name, "dial=400kHz&if=470kHz&side=above&move=volume");
        assert!(said.contains("'volume'"), "{said}");
    }
    for name in grid::others() {
        let said = refused(name, "colour=red");
        assert!(said.contains("'colour'"), "{said}");
        let said = refused(name, "move=volume");
        assert!(said.contains("'volume'"), "{said}");
    }
    let said = refused("agc", "signal=90dB");
    assert!(said.contains("from -20 dB to 80 dB"), "{said}");
    let said = refused("detector", "depth=120%");
    assert!(said.contains("depth"), "{said}");
    let said = refused("frequency-line", "dial=1600kHz&if=1600kHz&side=above");
    assert!(said.contains("ends at 3 MHz"), "{said}");
    let said = refused("moon", "");
    assert!(said.contains("frequency-line"), "{said}");
}

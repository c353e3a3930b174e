//! The scripts of the pages: one classic script for each wasm program, made of the
//! bindings, the start, and what is written by hand.
//!
//! `web/pages/scripts/start.js` defines `startWasm(name)`, `web/pages/scripts/NAME.js`
//! uses it; builds of one program (`study-circuits`) share its script (`study.js`). In the portable edition the wasm comes as base64 in a script of its own.

use crate::links::Links;
use crate::page::Program;
use crate::page_files::PageFiles;
use crate::wasm::Wasm;
use anyhow::{Context, Result};
use base64::Engine as _;
use base64::engine::general_purpose::STANDARD;
use maud::{Markup, html};

/// Scripts that are no assets of their own: a template and an ingredient.
const INGREDIENTS: [&str; 2] = ["sw.js", "start.js"];

/// All script and wasm assets of an edition: (name, bytes).
///
/// # Errors
/// When a script is not UTF-8.
pub fn compose(sources: &PageFiles, wasm: &Wasm, portable: bool) -> Result<Vec<(String, Vec<u8>)>> {
    let mut files = Vec::new();
    let start = script(sources, "start.js")?;
    for (name, bound) in wasm.programs() {
        let program = name.split_once('-').map_or(name, |(program, _)| program);
        let by_hand = script(sources, &format!("{program}.js"))?;
        let text = joined(&bound.script, start, by_hand);
        files.push((format!("{name}.js"), text.into_bytes()));
        if portable {
            files.push((format!("{name}-wasm.js"), wasm_script(program, &bound.wasm)));
        } else {
            files.push((format!("{name}.wasm"), bound.wasm.clone()));
        }
    }
    for (name, bytes) in sources.folder("scripts") {
        let joined_already = files.iter().any(|(taken, _)| taken == name);
        if !INGREDIENTS.contains(&name) && !joined_already {
            files.push((name.to_owned(), bytes.to_vec()));
        }
    }
    Ok(files)
}

/// A hand-written script; an absent one is empty.
fn script<'a>(sources: &'a PageFiles, name: &str) -> Result<&'a str> {
    let bytes = sources
        .bytes(&format!("scripts/{name}"))
        .unwrap_or_default();
    std::str::from_utf8(bytes).with_context(|| format!("web/pages/scripts/{name} is not UTF-8"))
}

/// One script with no global names: bindings, start, and what is written by hand.
fn joined(bindings: &str, start: &str, by_hand: &str) -> String {
    format!("(() => {{\n\"use strict\";\n{bindings}\n{start}\n{by_hand}\n}})();\n")
}

/// The wasm as a classic script, for pages that no server serves.
fn wasm_script(name: &str, wasm: &[u8]) -> Vec<u8> {
    let text = STANDARD.encode(wasm);
    format!(
        "globalThis.beforeTheBenchWasm = \
         {{ ...globalThis.beforeTheBenchWasm, {name}: \"{text}\" }};\n"
    )
    .into_bytes()
}

/// The script elements of a page, for its `<head>`: all deferred, so they run in this
/// order once the page is read.
pub fn tags(program: Program, links: &Links<'_>, portable: bool) -> Markup {
    html! {
        @if let Some(name) = program.name() {
            @if portable {
                script defer src=(links.asset(&format!("{name}-wasm.js"))) {}
                script defer src=(links.asset(&format!("{name}.js"))) {}
            } @else {
                @let wasm = links.asset(&format!("{name}.wasm"));
                // The look-up is its program; a lesson is read before its program is there.
                @if program == Program::Lookup {
                    link rel="preload" as="fetch" type="application/wasm" href=(wasm) crossorigin;
                }
                script defer src=(links.asset(&format!("{name}.js"))) data-wasm=(wasm) {}
            }
        }
        @if program == Program::Search { script defer src=(links.asset("search.js")) {} }
        script defer src=(links.asset("page.js")) {}
    }
}

#[cfg(test)]
mod tests {
    use super::compose;
    use crate::page_files::PageFiles;
    use crate::wasm::{Bound, Wasm};

    fn sources() -> PageFiles {
        let mut sources = PageFiles::default();
        sources.insert("scripts/start.js", "function startWasm() {}");
        sources.insert("scripts/lookup.js", "startWasm();");
        sources.insert("scripts/page.js", "page();");
        sources.insert("scripts/sw.js", "worker();");
        sources
    }

    fn wasm() -> Wasm {
        Wasm {
            lookup: Some(Bound {
                script: "let wasm_bindgen;".to_owned(),
                types: String::new(),
                wasm: b"\0asm".to_vec(),
            }),
            ..Wasm::default()
        }
    }

    #[test]
    fn bindings_come_before_what_uses_them() {
        let files = compose(&sources(), &wasm(), false).unwrap();
        let names: Vec<&str> = files.iter().map(|(name, _)| name.as_str()).collect();
        assert_eq!(names, ["lookup.js", "lookup.wasm", "page.js"]);
        let text = String::from_utf8(files[0].1.clone()).unwrap();
        let at = |part: &str| text.find(part).unwrap();
        assert!(at("let wasm_bindgen") < at("function startWasm"));
        assert!(at("function startWasm") < at("startWasm();"));
    }

    #[test]
    fn the_portable_edition_brings_wasm_in_a_script() {
        let files = compose(&sources(), &wasm(), true).unwrap();
        let (name, bytes) = &files[1];
        assert_eq!(name, "lookup-wasm.js");
        assert_eq!(
            String::from_utf8_lossy(bytes),
            "globalThis.beforeTheBenchWasm = \
             { ...globalThis.beforeTheBenchWasm, lookup: \"AGFzbQ==\" };\n"
        );
    }
}

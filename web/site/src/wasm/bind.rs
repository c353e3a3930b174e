//! Bindings made by wasm-bindgen's own crate, at the version Cargo.lock pins.

use super::compile::compile_alone;
use crate::page::Figures;
use anyhow::{Context, Result, bail};
use std::fs;
use std::path::Path;
use wasm_bindgen_cli_support::Bindgen;

/// One bound wasm program.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct Bound {
    /// The script that instantiates the wasm and calls into it.
    pub script: String,
    /// The script's types, as a TypeScript declaration.
    pub types: String,
    /// The wasm itself.
    pub wasm: Vec<u8>,
}

/// All wasm of the site. An absent program leaves its pages as text and tables.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct Wasm {
    /// Lessons, problems and benches, under the name of each build; empty when absent.
    pub study: Vec<(&'static str, Bound)>,
    /// The phone look-up.
    pub lookup: Option<Bound>,
    /// The page of the reader's own set.
    pub myset: Option<Bound>,
    /// The lessons' numbers for that set.
    pub numbers: Option<Bound>,
    /// The catalogue for other people's scripts, as a module.
    pub api: Option<Bound>,
}

impl Wasm {
    /// The programs that pages use, under their names.
    pub fn programs(&self) -> impl Iterator<Item = (&'static str, &Bound)> {
        let study = self.study.iter().map(|(name, bound)| (*name, bound));
        let lookup = self.lookup.iter().map(|bound| ("lookup", bound));
        let myset = self.myset.iter().map(|bound| ("myset", bound));
        let numbers = self.numbers.iter().map(|bound| ("numbers", bound));
        study.chain(lookup).chain(myset).chain(numbers)
    }

    /// All that there is to optimise.
    pub(super) fn all_mut(&mut self) -> impl Iterator<Item = &mut Bound> {
        let study = self.study.iter_mut().map(|(_, bound)| bound);
        study
            .chain(self.lookup.iter_mut())
            .chain(self.myset.iter_mut())
            .chain(self.numbers.iter_mut())
            .chain(self.api.iter_mut())
    }

    /// One package compiled by itself and bound as a program named after it, for a bench.
    ///
    /// # Errors
    /// When it does not compile, or wasm-bindgen refuses it.
    pub(crate) fn alone(root: &Path, package: &str, features: &str) -> Result<Bound> {
        let file = compile_alone(root, package, features)?;
        let folder = file.parent().context("it lies in no folder")?;
        bind(folder, package, Form::Classic)?.optimised(root)
    }

    /// Programs of a few bytes, for tests and benchmarks of what stands around them.
    pub fn stand_in() -> Self {
        let bound = Bound {
            script: "let wasm_bindgen;".to_owned(),
            types: String::new(),
            wasm: b"\0asm\x01\0\0\0".to_vec(),
        };
        Self {
            study: Figures::BUILDS
                .map(|(name, ..)| (name, bound.clone()))
                .to_vec(),
            lookup: Some(bound.clone()),
            myset: Some(bound.clone()),
            numbers: Some(bound.clone()),
            api: Some(bound),
        }
    }

    /// Binds the compiled wasm files of a folder.
    ///
    /// # Errors
    /// When a file is missing or wasm-bindgen refuses it.
    pub fn bind(folder: &Path) -> Result<Self> {
        let study = Figures::BUILDS.iter().map(|(name, ..)| *name);
        let bound = |name| Ok((name, bind(folder, name, Form::Classic)?));
        Ok(Self {
            study: study.map(bound).collect::<Result<_>>()?,
            lookup: Some(bind(folder, "lookup", Form::Classic)?),
            myset: Some(bind(folder, "myset", Form::Classic)?),
            numbers: Some(bind(folder, "numbers", Form::Classic)?),
            api: Some(bind(folder, "api", Form::Module)?),
        })
    }
}

/// How the script is loaded.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Form {
    /// By `<script>`, also from `file://`.
    Classic,
    /// By `import`.
    Module,
}

/// Binds `NAME.wasm` of a folder. The module for other scripts is named after the core.
fn bind(folder: &Path, name: &str, form: Form) -> Result<Bound> {
    let path = folder.join(format!("{name}.wasm"));
    let bytes = fs::read(&path).with_context(|| format!("cannot read {}", path.display()))?;
    let out_name = if form == Form::Module {
        "superhet"
    } else {
        name
    };
    let told = || format!("wasm-bindgen refuses {name}.wasm");
    let mut bindgen = Bindgen::new();
    bindgen
        .input_bytes(out_name, bytes)
        .web(form == Form::Module)
        .with_context(told)?
        .no_modules(form == Form::Classic)
        .with_context(told)?
        .typescript(form == Form::Module)
        .omit_default_module_path(form == Form::Classic)
        .remove_producers_section(true);
    let mut output = bindgen.generate_output().with_context(told)?;
    // A crate that could bring scripts is listed even when it brings none.
    let scripts = output.snippets().values().any(|list| !list.is_empty());
    if scripts || !output.local_modules().is_empty() {
        bail!("{name} brings JavaScript of its own; write it in web/pages/scripts instead");
    }
    Ok(Bound {
        script: output.js().to_owned(),
        types: output.ts().unwrap_or_default().to_owned(),
        wasm: output.wasm_mut().emit_wasm(),
    })
}

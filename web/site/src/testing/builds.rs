//! The three builds that are tested.

use crate::building::build;
use crate::edition::Edition;
use crate::wasm::{Wasm, target_folder};
use anyhow::Result;
use std::path::{Path, PathBuf};
use std::sync::Arc;

/// The sub-path one of them is built for; the journeys know it too.
const SUB_PATH: &str = "/club/radio/";

/// Where each build lies.
#[derive(Debug, Clone)]
pub(super) struct Builds {
    pub(super) site: PathBuf,
    pub(super) under_sub_path: PathBuf,
    pub(super) portable: PathBuf,
}

impl Builds {
    /// Builds all three.
    pub(super) fn make(root: &Path, wasm: &Arc<Wasm>) -> Result<Self> {
        let target = target_folder(root);
        let builds = Self {
            site: target.join("site-under-test"),
            under_sub_path: target.join("site-under-sub-path"),
            portable: target.join("site-portable.zip"),
        };
        let sub_path = Edition::Hosted {
            base: SUB_PATH.to_owned(),
            public_url: Some(format!("https://radio.example{SUB_PATH}")),
        };
        build(root, wasm, &Edition::at_root(), &builds.site)?;
        build(root, wasm, &sub_path, &builds.under_sub_path)?;
        build(root, wasm, &Edition::Portable, &builds.portable)?;
        Ok(builds)
    }
}

//! Brotli and gzip beside each file, so that a static host has nothing to compute.

use crate::mime::compresses;
use crate::render::Files;
use anyhow::{Context, Result};
use brotli::CompressorWriter;
use flate2::Compression;
use flate2::write::GzEncoder;
use std::collections::HashMap;
use std::io::Write as _;

/// Below this a compressed file saves nothing that a packet would notice.
const SMALLEST: usize = 256;
/// The base-2 logarithm of brotli's window: 4 MB, its default and more than any file.
const WINDOW: u32 = 22;
const BUFFER: usize = 64 * 1024;

/// How hard to try.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Effort {
    /// While somebody waits for the page they are writing.
    Quick,
    /// For a build that will be read many times.
    Thorough,
}

impl Effort {
    fn brotli(self) -> u32 {
        match self {
            Self::Quick => 5,
            Self::Thorough => 11,
        }
    }

    fn gzip(self) -> Compression {
        match self {
            Self::Quick => Compression::new(6),
            Self::Thorough => Compression::best(),
        }
    }
}

/// One file's two compressed forms.
#[derive(Debug, Clone)]
struct Packed {
    brotli: Vec<u8>,
    gzip: Vec<u8>,
}

/// Compressed forms by content, so that only what changed is compressed again.
#[derive(Debug, Default)]
pub struct Cache {
    packed: HashMap<Vec<u8>, Packed>,
}

impl Cache {
    /// Adds `path.br` and `path.gz` beside every file that gains by it. Forms of content
    /// that is no longer there are forgotten.
    ///
    /// # Errors
    /// When a compressor fails.
    pub fn add(&mut self, files: &mut Files, effort: Effort) -> Result<()> {
        let mut known = std::mem::take(&mut self.packed);
        let mut beside = Files::new();
        for (path, bytes) in files.iter() {
            if !compresses(path) || bytes.len() < SMALLEST {
                continue;
            }
            let packed = match known.remove(bytes) {
                Some(packed) => packed,
                None => pack(bytes, effort).with_context(|| format!("compressing {path}"))?,
            };
            beside.insert(format!("{path}.br"), packed.brotli.clone());
            beside.insert(format!("{path}.gz"), packed.gzip.clone());
            self.packed.insert(bytes.clone(), packed);
        }
        files.extend(beside);
        Ok(())
    }
}

fn pack(bytes: &[u8], effort: Effort) -> Result<Packed> {
    Ok(Packed {
        brotli: brotli(bytes, effort)?,
        gzip: gzip(bytes, effort)?,
    })
}

fn brotli(bytes: &[u8], effort: Effort) -> Result<Vec<u8>> {
    let mut writer = CompressorWriter::new(Vec::new(), BUFFER, effort.brotli(), WINDOW);
    writer.write_all(bytes)?;
    Ok(writer.into_inner())
}

fn gzip(bytes: &[u8], effort: Effort) -> Result<Vec<u8>> {
    let mut writer = GzEncoder::new(Vec::new(), effort.gzip());
    writer.write_all(bytes)?;
    Ok(writer.finish()?)
}

#[cfg(test)]
mod tests {
    use super::{Cache, Effort};
    use crate::render::Files;
    use std::io::Read as _;

    fn packed(effort: Effort) -> (Vec<u8>, Files) {
        let text = "signal, oscillator, image; ".repeat(40).into_bytes();
        let mut files = Files::new();
        files.insert("page.html".to_owned(), text.clone());
        files.insert("small.html".to_owned(), b"short".to_vec());
        files.insert("font.woff2".to_owned(), vec![1; 4000]);
        Cache::default().add(&mut files, effort).unwrap();
        (text, files)
    }

    #[test]
    fn both_forms_unpack_to_the_file() {
        for effort in [Effort::Quick, Effort::Thorough] {
            let (text, files) = packed(effort);
            let mut unpacked = Vec::new();
            brotli::Decompressor::new(&files["page.html.br"][..], 4096)
                .read_to_end(&mut unpacked)
                .unwrap();
            assert_eq!(unpacked, text);
            unpacked.clear();
            flate2::read::GzDecoder::new(&files["page.html.gz"][..])
                .read_to_end(&mut unpacked)
                .unwrap();
            assert_eq!(unpacked, text);
        }
    }

    #[test]
    fn what_gains_nothing_stays_alone() {
        let (_, files) = packed(Effort::Quick);
        assert_eq!(files.len(), 5, "three files, two compressed forms");
    }
}

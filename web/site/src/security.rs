//! What a page may do: its Content-Security-Policy.
//!
//! A static host may send no headers, so the policy travels in the page, as a `<meta>`.

use crate::edition::Edition;

/// The policy of every page of an edition.
///
/// No inline script or style at all; wasm may be compiled; everything comes from the
/// site itself. The portable edition alone adds `data:` to `script-src`, which its audio
/// worklet needs: a page opened from a file may load no module.
pub fn policy(edition: &Edition) -> String {
    let worklet = if edition.is_portable() { " data:" } else { "" };
    format!(
        "default-src 'none'; script-src 'self' 'wasm-unsafe-eval'{worklet}; style-src 'self'; \
         img-src 'self' data:; font-src 'self'; connect-src 'self'; manifest-src 'self'; \
         worker-src 'self'; base-uri 'none'; form-action 'self'"
    )
}

#[cfg(test)]
mod tests {
    use super::policy;
    use crate::edition::Edition;

    #[test]
    fn nothing_inline_and_nothing_from_elsewhere() {
        for edition in [Edition::at_root(), Edition::Portable] {
            let policy = policy(&edition);
            assert!(policy.starts_with("default-src 'none'; "));
            assert!(!policy.contains("unsafe-inline"));
            assert!(!policy.contains("'unsafe-eval'"));
            assert!(!policy.contains("http"));
        }
    }

    #[test]
    fn only_the_portable_edition_runs_data_addresses() {
        let script = |edition: &Edition| {
            let policy = policy(edition);
            let source = policy
                .split("; ")
                .find(|part| part.starts_with("script-src"));
            source.map(str::to_owned)
        };
        assert_eq!(
            script(&Edition::at_root()).as_deref(),
            Some("script-src 'self' 'wasm-unsafe-eval'")
        );
        assert!(script(&Edition::Portable).is_some_and(|s| s.contains("data:")));
    }
}

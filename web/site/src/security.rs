//! What a page may do: its Content-Security-Policy.
//!
//! A static host may send no headers, so the policy travels in the page, as a `<meta>`.

use crate::edition::Edition;

/// The policy of every page of an edition.
///
/// No inline script or style at all; wasm may be compiled; everything comes from the
/// site itself. The portable edition alone adds `data:` to `script-src`, which its audio
/// worklet needs, and `file:`, which is what `'self'` cannot say there.
pub fn policy(edition: &Edition) -> String {
    let here = if edition.is_portable() {
        " file: data:"
    } else {
        ""
    };
    let files = if edition.is_portable() { " file:" } else { "" };
    [
        "default-src 'none'".to_owned(),
        format!("script-src 'self' 'wasm-unsafe-eval'{here}"),
        format!("style-src 'self'{files}"),
        format!("img-src 'self' data:{files}"),
        format!("font-src 'self'{files}"),
        "connect-src 'self'".to_owned(),
        format!("manifest-src 'self'{files}"),
        "worker-src 'self'".to_owned(),
        "base-uri 'none'".to_owned(),
        "form-action 'self'".to_owned(),
    ]
    .join("; ")
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

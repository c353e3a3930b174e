//! What kind of thing each file is, and whether compressing it is worth while.

/// Ending, media type, and whether its content is text that compresses.
///
/// Types as registered with IANA; `.webmanifest` as the W3C's Web App Manifest asks.
const TYPES: [(&str, &str, bool); 17] = [
    (".html", "text/html; charset=utf-8", true),
    (".css", "text/css; charset=utf-8", true),
    (".js", "text/javascript; charset=utf-8", true),
    (".mjs", "text/javascript; charset=utf-8", true),
    (".ts", "text/plain; charset=utf-8", true),
    (".json", "application/json", true),
    (".webmanifest", "application/manifest+json", true),
    (".wasm", "application/wasm", true),
    (".svg", "image/svg+xml", true),
    (".txt", "text/plain; charset=utf-8", true),
    (".xml", "application/xml", true),
    (".woff2", "font/woff2", false),
    (".png", "image/png", false),
    (".webp", "image/webp", false),
    (".jpg", "image/jpeg", false),
    (".ico", "image/x-icon", false),
    (".zip", "application/zip", false),
];

/// The media type of a file by its name.
pub fn media_type(path: &str) -> &'static str {
    row(path).map_or("application/octet-stream", |(_, media_type, _)| media_type)
}

/// Whether a file is worth compressing.
pub fn compresses(path: &str) -> bool {
    row(path).is_some_and(|(_, _, compresses)| *compresses)
}

fn row(path: &str) -> Option<&'static (&'static str, &'static str, bool)> {
    TYPES.iter().find(|(ending, _, _)| path.ends_with(ending))
}

#[cfg(test)]
mod tests {
    use super::{compresses, media_type};

    #[test]
    fn wasm_is_typed_so_that_it_can_be_compiled_while_it_arrives() {
        assert_eq!(media_type("assets/lookup.1.wasm"), "application/wasm");
        assert_eq!(media_type("sw.js"), "text/javascript; charset=utf-8");
        assert_eq!(media_type("site.webmanifest"), "application/manifest+json");
        assert_eq!(media_type("lookup/index.html"), "text/html; charset=utf-8");
        assert_eq!(media_type("LICENSE"), "application/octet-stream");
    }

    #[test]
    fn what_is_compressed_already_stays_as_it_is() {
        assert!(compresses("a.wasm") && compresses("a.svg") && compresses("a.html"));
        assert!(!compresses("a.woff2") && !compresses("a.png") && !compresses("a.zip"));
    }
}

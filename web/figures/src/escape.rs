//! Text made safe for markup.

/// `text` as element content or inside a double-quoted attribute.
///
/// Names that readers type (of a set, of a station) come through here too: whatever
/// they hold stays text.
#[must_use]
pub fn escape(text: &str) -> String {
    let mut safe = String::with_capacity(text.len());
    for character in text.chars() {
        match character {
            '&' => safe.push_str("&amp;"),
            '<' => safe.push_str("&lt;"),
            '>' => safe.push_str("&gt;"),
            '"' => safe.push_str("&quot;"),
            '\'' => safe.push_str("&#39;"),
            other => safe.push(other),
        }
    }
    safe
}

#[cfg(test)]
mod tests {
    use super::escape;

    #[test]
    fn nothing_that_markup_reads_is_left() {
        assert_eq!(
            escape("<b onclick=\"x('&')\">"),
            "&lt;b onclick=&quot;x(&#39;&amp;&#39;)&quot;&gt;"
        );
        assert_eq!(escape("1200 kHz, 250 µH"), "1200 kHz, 250 µH");
    }
}

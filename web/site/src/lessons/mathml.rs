//! LaTeX as MathML without inline styles.

use math_core::{LatexToMathML, MathCoreConfig, MathDisplay};

/// Where a formula stands.
#[derive(Clone, Copy, Debug)]
pub(crate) enum Display {
    /// In a line of words.
    Inline,
    /// By itself.
    Block,
}

/// The styles that the converter writes, and the classes that stand for them. The page's
/// policy allows no inline style.
const CLASSES: [(&str, &str); 6] = [
    ("text-align: left;justify-items: start;", "math-left"),
    ("text-align: right;justify-items: end;", "math-right"),
    ("padding-right: 0;", "math-tight-right"),
    ("padding-left: 0;", "math-tight-left"),
    ("padding-top: 0;padding-bottom: 0;", "math-tight"),
    ("padding-left:1em;", "math-apart"),
];

/// A formula as MathML.
pub(crate) fn mathml(latex: &str, display: Display) -> Result<String, String> {
    let refuse =
        |error: &dyn std::fmt::Debug| format!("the formula \"{latex}\" cannot be drawn: {error:?}");
    let converter =
        LatexToMathML::new(MathCoreConfig::default()).map_err(|error| refuse(&error))?;
    let display = match display {
        Display::Inline => MathDisplay::Inline,
        Display::Block => MathDisplay::Block,
    };
    let converted = converter
        .convert_with_local_state(latex, display)
        .map_err(|error| refuse(&error))?;
    without_styles(&converted.mathml)
}

/// The same markup with a class in place of each style.
fn without_styles(markup: &str) -> Result<String, String> {
    let mut out = String::with_capacity(markup.len());
    let mut rest = markup;
    while let Some((before, after)) = rest.split_once(" style=\"") {
        let (style, after) = after.split_once('"').ok_or("a style without an end")?;
        out.push_str(before);
        out.push_str(&format!(" class=\"{}\"", classes(style)?));
        rest = after;
    }
    out.push_str(rest);
    Ok(out)
}

fn classes(style: &str) -> Result<String, String> {
    let mut rest = style.trim();
    let mut names = Vec::new();
    while !rest.is_empty() {
        let known = CLASSES
            .iter()
            .find_map(|(text, name)| Some((rest.strip_prefix(text)?, *name)));
        let (after, name) =
            known.ok_or_else(|| format!("no class stands for the style \"{rest}\""))?;
        names.push(name);
        rest = after.trim_start();
    }
    Ok(names.join(" "))
}

#[cfg(test)]
mod tests {
    use super::{Display, mathml};
    use superhet::catalogue::catalogue;

    #[test]
    fn every_formula_and_letter_of_the_catalogue_is_drawn() {
        for entry in catalogue() {
            let letters = entry.parameters.iter().map(|parameter| parameter.symbol);
            for latex in letters.chain([entry.symbol]) {
                let drawn = mathml(latex, Display::Inline).expect(entry.name);
                assert!(drawn.starts_with("<math"), "{drawn}");
            }
            let drawn = mathml(entry.formula, Display::Block).expect(entry.name);
            assert!(drawn.contains("display=\"block\""), "{drawn}");
            assert!(!drawn.contains("style="), "{drawn}");
        }
    }

    #[test]
    fn styles_become_classes() {
        let drawn = mathml(
            r"\begin{aligned} a &= b \\ c &= d \end{aligned}",
            Display::Block,
        )
        .expect("aligned");
        assert!(
            drawn.contains("<mtd class=\"math-right math-tight-right\">"),
            "{drawn}"
        );
        let drawn =
            mathml(r"\begin{cases} a & b \\ c & d \end{cases}", Display::Block).expect("cases");
        assert!(drawn.contains("class=\"math-left"), "{drawn}");
    }

    #[test]
    fn what_cannot_be_drawn_is_refused() {
        assert!(mathml(r"\frac{a}", Display::Inline).is_err());
        assert!(mathml(r"\color{red} a", Display::Inline).is_err());
    }
}

#!/usr/bin/env bash
# Makes noto-sans-math-formulas.woff2, the face of formulas, from the npm package of the same family.
# The result is committed, so building the site does not need this. Wants npm and python3-venv.
set -euo pipefail
here=$(cd "$(dirname "$0")" && pwd)
work=$(mktemp -d)
trap 'rm -r "$work"' EXIT
cd "$work"
npm pack --silent @fontsource/noto-sans-math@5.3.0 >/dev/null
tar xzf fontsource-noto-sans-math-5.3.0.tgz
python3 -m venv venv
venv/bin/pip --quiet install fonttools==4.68.0 brotli==1.2.1
# ASCII, no-break space, plus-minus, middle dot, multiplication and division signs, dotless i, circumflex; Greek; double
# bar, prime, ellipsis, invisible operators; script l, Planck's h (the italic h); arrows; delta, sum, minus,
# root, proportional, infinity, bars, integral; almost equal to much greater; dot, dots; ceilings, floors,
# angles; italic letters; italic Greek. The MATH table and the glyphs it stretches to are kept.
venv/bin/pyftsubset package/files/noto-sans-math-latin-400-normal.woff2 \
  --unicodes="U+20-7E,U+A0,U+B1,U+B7,U+D7,U+F7,U+131,U+2C6,U+391-3A9,U+3B1-3C9,U+2016,U+2032,U+2026,U+2061-2064,U+210E,U+2113,U+2190-2194,U+2206,U+2211,U+2212,U+221A,U+221D,U+221E,U+2223,U+2225,U+222B,U+2248,U+2260,U+2264,U+2265,U+226A,U+226B,U+22C5,U+22EF,U+2308-230B,U+27E8,U+27E9,U+1D434-1D467,U+1D6FC-1D714" \
  --name-IDs="*" --layout-features=ssty --no-hinting --desubroutinize --drop-tables+=FFTM --flavor=woff2 \
  --output-file="$here/noto-sans-math-formulas.woff2"
sed "s/[[:space:]]*$//" package/LICENSE >"$here/../noto-sans-math-licence.txt" # shipped beside the pages

#!/usr/bin/env bash
# Makes besley-semibold-latin.woff2, the heading face, from the npm package of the same family.
# The result is committed, so building the site does not need this. Wants npm and python3-venv.
set -euo pipefail
here=$(cd "$(dirname "$0")" && pwd)
work=$(mktemp -d)
trap 'rm -r "$work"' EXIT
cd "$work"
npm pack --silent @fontsource/besley@5.3.0 >/dev/null
tar xzf fontsource-besley-5.3.0.tgz
python3 -m venv venv
venv/bin/pip --quiet install fonttools==4.68.0 brotli==1.2.1
# ASCII, no-break space, micro sign, multiplication sign, dashes, curly quotes, ellipsis.
venv/bin/pyftsubset package/files/besley-latin-600-normal.woff2 \
  --unicodes="U+20-7E,U+A0,U+B5,U+D7,U+2013,U+2014,U+2018,U+2019,U+201C,U+201D,U+2026" \
  --name-IDs="*" --layout-features=kern --no-hinting --desubroutinize --flavor=woff2 \
  --output-file="$here/besley-semibold-latin.woff2"
sed "s/[[:space:]]*$//" package/LICENSE >"$here/../besley-licence.txt" # shipped beside the pages

#!/usr/bin/env bash
# Prints random suppliers' documents with seven outside engines and counts what the intake reads of them, then the same of as many
# printed by our own press: wild.sh [FROM [TO [FOLDER]]], seeds. With a folder the PDFs are kept there and not printed again. Prints
# precision, recall, wrong-unmarked and missing-unsaid for each field, engine and layout, and each field of each engine and layout.
# Fails when a value is wrong unmarked or a row missing unsaid.
set -euo pipefail
cd "$(dirname "$0")"
from=${1:-0}
to=${2:-240}
as_root() { if [ "$(id -u)" = 0 ]; then "$@"; else sudo "$@"; fi; }
packages=()
command -v soffice >/dev/null || packages+=(libreoffice-writer)
command -v chromium >/dev/null || packages+=(chromium)
command -v pdflatex >/dev/null || packages+=(texlive-latex-recommended texlive-latex-extra lmodern)
command -v weasyprint >/dev/null || packages+=(weasyprint)
[ -x "$(command -v gropdf || true)" ] || packages+=(groff)
/usr/bin/python3 -c "import reportlab" 2>/dev/null || packages+=(python3-reportlab)
command -v npm >/dev/null || packages+=(npm)
[ -e /usr/share/fonts/truetype/dejavu/DejaVuSans.ttf ] || packages+=(fonts-dejavu-core)
if [ ${#packages[@]} -gt 0 ]; then
  as_root apt-get update -qq
  as_root apt-get install -y -qq --no-install-recommends "${packages[@]}" >/dev/null
fi
if [ $# -gt 2 ]; then
  mkdir -p "$3"
  work=$(cd "$3" && pwd)
else
  work=$(mktemp -d)
  trap 'rm -rf "$work"' EXIT
fi
here=$PWD
export TYPST_MODULES=${TYPST_MODULES:-$work/typst}
[ -d "$TYPST_MODULES/node_modules/@myriaddreamin" ] ||
  npm install --silent --no-fund --no-audit --prefix "$TYPST_MODULES" @myriaddreamin/typst-ts-node-compiler@0.7.0 >/dev/null
dotnet build -c Release -v q >/dev/null
program="$here/bin/Release/net10.0/Chandlery.Sheets.dll"
dotnet "$program" wild write "$from" "$to" "$work"
cd "$work"

# What an engine cannot print is counted as missing when the PDFs are read.
print_one() {
  local f=$1
  case $f in
    *.chromium.html)
      local profile
      profile=$(mktemp -d)
      chromium --headless --no-sandbox --disable-gpu --no-pdf-header-footer "--user-data-dir=$profile" \
        "--print-to-pdf=$PWD/${f%.html}.pdf" "file://$PWD/$f" >/dev/null 2>&1
      rm -rf "$profile"
      ;;
    *.weasyprint.html) weasyprint -q "$f" "${f%.html}.pdf" 2>/dev/null ;;
    *.tex) { pdflatex -interaction=batchmode "$f" && pdflatex -interaction=batchmode "$f"; } >/dev/null ;;
    *.tr) groff -Kutf8 -t -Tpdf "$f" >"${f%.tr}.pdf" 2>/dev/null ;;
    *.json) /usr/bin/python3 "$here/reportlab_press.py" "$f" "${f%.json}.pdf" ;;
  esac || true
}
export -f print_one
export here
shopt -s nullglob
open=()
writer=()
typst=()
for f in *.html *.tex *.tr *.json *.typ; do
  base=${f%.*}
  [ -e "$base.pdf" ] && continue
  case $f in *.writer.html) writer+=("$f") ;; *.typ) typst+=("$f") ;; *) open+=("$f") ;; esac
done
if [ ${#writer[@]} -gt 0 ]; then
  soffice --headless "-env:UserInstallation=file://$work/profile" --convert-to pdf:writer_web_pdf_Export "${writer[@]}" >/dev/null 2>&1 &
fi
[ ${#typst[@]} -eq 0 ] || node "$here/typst_press.mjs" "${typst[@]}"
[ ${#open[@]} -eq 0 ] || printf '%s\0' "${open[@]}" | xargs -0 -P "$(nproc)" -I{} bash -c 'print_one "$1"' _ {}
wait
echo "outside engines"
outside=0
dotnet "$program" wild read "$work" || outside=$?
echo "our own press"
dotnet "$program" wild "$from" "$to"
exit "$outside"

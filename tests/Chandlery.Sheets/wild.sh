#!/usr/bin/env bash
# Prints random suppliers' documents with six outside engines and counts what the intake reads of them, then the same of as many
# printed by our own press: wild.sh [FROM [TO]], seeds. Fails when a value is wrong unmarked or a row missing unsaid.
set -euo pipefail
cd "$(dirname "$0")"
from=${1:-0}
to=${2:-120}
as_root() { if [ "$(id -u)" = 0 ]; then "$@"; else sudo "$@"; fi; }
packages=()
command -v soffice >/dev/null || packages+=(libreoffice-writer)
command -v chromium >/dev/null || packages+=(chromium)
command -v pdflatex >/dev/null || packages+=(texlive-latex-recommended texlive-latex-extra lmodern)
command -v weasyprint >/dev/null || packages+=(weasyprint)
[ -x "$(command -v gropdf || true)" ] || packages+=(groff)
/usr/bin/python3 -c "import reportlab" 2>/dev/null || packages+=(python3-reportlab)
[ -e /usr/share/fonts/truetype/dejavu/DejaVuSans.ttf ] || packages+=(fonts-dejavu-core)
if [ ${#packages[@]} -gt 0 ]; then
  as_root apt-get update -qq
  as_root apt-get install -y -qq --no-install-recommends "${packages[@]}" >/dev/null
fi
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
here=$PWD
dotnet build -c Release -v q >/dev/null
program="$here/bin/Release/net10.0/Chandlery.Sheets.dll"
dotnet "$program" wild write "$from" "$to" "$work"
cd "$work"
shopt -s nullglob
for f in *.writer.html; do
  soffice --headless "-env:UserInstallation=file://$work/profile" --convert-to pdf:writer_web_pdf_Export "$f" >/dev/null 2>&1
done
for f in *.chromium.html; do
  chromium --headless --no-sandbox --disable-gpu --no-pdf-header-footer "--print-to-pdf=${f%.html}.pdf" "file://$work/$f" >/dev/null 2>&1
done
for f in *.weasyprint.html; do weasyprint -q "$f" "${f%.html}.pdf" 2>/dev/null; done
for f in *.tex; do { pdflatex -interaction=batchmode "$f" && pdflatex -interaction=batchmode "$f"; } >/dev/null || true; done
for f in *.tr; do groff -k -t -Tpdf "$f" >"${f%.tr}.pdf" 2>/dev/null; done
for f in *.json; do /usr/bin/python3 "$here/reportlab_press.py" "$f" "${f%.json}.pdf"; done
echo "outside engines"
dotnet "$program" wild read "$work"
echo "our own press"
dotnet "$program" wild "$from" "$to"

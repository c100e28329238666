#!/usr/bin/env bash
# Prints the corpus of suppliers' sheets anew, with four engines. The PDFs are kept in the repository, so that the tests
# need none of these programs; run this after a change to the corpus's layouts.
set -euo pipefail
cd "$(dirname "$0")"
as_root() { if [ "$(id -u)" = 0 ]; then "$@"; else sudo "$@"; fi; }
packages=()
command -v soffice >/dev/null || packages+=(libreoffice-writer fonts-liberation)
command -v chromium >/dev/null || packages+=(chromium fonts-liberation)
command -v pdflatex >/dev/null || packages+=(texlive-latex-recommended texlive-latex-extra lmodern)
if [ ${#packages[@]} -gt 0 ]; then
  as_root apt-get update -qq
  as_root apt-get install -y -qq --no-install-recommends "${packages[@]}" >/dev/null
fi
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
dotnet run -c Release -- "$work"
cd "$work"
for f in *.writer.html; do
  soffice --headless "-env:UserInstallation=file://$work/profile" --convert-to pdf:writer_web_pdf_Export "$f" >/dev/null 2>&1
  mv "${f%.html}.pdf" "${f%.writer.html}.pdf"
done
for f in *.chromium.html; do
  chromium --headless --no-sandbox --disable-gpu --no-pdf-header-footer "--print-to-pdf=${f%.chromium.html}.pdf" "file://$work/$f" >/dev/null 2>&1
done
for f in *.tex; do
  pdflatex -interaction=batchmode "$f" >/dev/null && pdflatex -interaction=batchmode "$f" >/dev/null
done
mkdir -p "$OLDPWD/pdf"
cp ./*.pdf "$OLDPWD/pdf/"
ls -l "$OLDPWD/pdf" | awk '{s += $5} END {print NR - 1 " PDFs, " s " bytes"}'

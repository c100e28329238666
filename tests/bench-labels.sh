#!/usr/bin/env bash
# A thousand different labels in one PDF: this program, and LaTeX and LibreOffice setting the same text on as many pages (what a
# mail merge leaves to print).
# Installs them from Debian's archive when they are missing.
set -euo pipefail
cd "$(dirname "$0")/.."
count=${1:-1000}
candle=data/demo/candles/harbour-bowl.yaml
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
if ! command -v pdflatex >/dev/null; then
  apt-get update -qq
  apt-get install -y -qq --no-install-recommends texlive-latex-base texlive-latex-recommended >/dev/null
fi
if ! command -v soffice >/dev/null; then
  apt-get update -qq
  apt-get install -y -qq --no-install-recommends libreoffice-writer >/dev/null
fi
dotnet build tests/Chandlery.Bench -c Release >/dev/null
bench() { dotnet tests/Chandlery.Bench/bin/Release/net10.0/Chandlery.Bench.dll labels "$candle" "$1" "$2"; }
bench 1 "$work/one.pdf" >/dev/null
start=$(date +%s%N)
bench "$count" "$work/labels.pdf"
ours=$(( ($(date +%s%N) - start) / 1000000 ))
text=$(pdftotext "$work/one.pdf" - | tr '\n' ' ' | sed 's/[&%$#_{}]/\\&/g; s/≥/at least/g; s/·/,/g; s/\f//g')
{
  echo '\documentclass[7pt]{extarticle}\usepackage[T1]{fontenc}\usepackage[utf8]{inputenc}'
  echo '\usepackage[paperwidth=120mm,paperheight=90mm,margin=2.5mm]{geometry}\pagestyle{empty}\renewcommand\familydefault\sfdefault'
  echo '\begin{document}\tiny'
  for i in $(seq 1 "$count"); do printf '%s %s, B-%05d\\newpage\n' "$text" "$i" "$i"; done
  echo '\end{document}'
} | sed 's/extarticle/article/; s/\[7pt\]//' > "$work/labels.tex"
start=$(date +%s%N)
(cd "$work" && pdflatex -interaction=batchmode -halt-on-error labels.tex >/dev/null) || { tail -20 "$work/labels.log"; exit 1; }
latex=$(( ($(date +%s%N) - start) / 1000000 ))
plain=$(pdftotext "$work/one.pdf" - | tr '\n' ' ' | sed 's/\f//g; s/&/\&amp;/g; s/</\&lt;/g')
{
  echo '<?xml version="1.0" encoding="UTF-8"?><office:document xmlns:office="urn:oasis:names:tc:opendocument:xmlns:office:1.0" xmlns:style="urn:oasis:names:tc:opendocument:xmlns:style:1.0" xmlns:text="urn:oasis:names:tc:opendocument:xmlns:text:1.0" xmlns:fo="urn:oasis:names:tc:opendocument:xmlns:xsl-fo-compatible:1.0" office:mimetype="application/vnd.oasis.opendocument.text" office:version="1.3">'
  echo '<office:automatic-styles><style:page-layout style:name="L"><style:page-layout-properties fo:page-width="120mm" fo:page-height="90mm" fo:margin="2.5mm"/></style:page-layout><style:style style:name="P" style:family="paragraph"><style:paragraph-properties fo:break-before="page"/><style:text-properties fo:font-size="6pt"/></style:style></office:automatic-styles>'
  echo '<office:master-styles><style:master-page style:name="Standard" style:page-layout-name="L"/></office:master-styles><office:body><office:text>'
  for i in $(seq 1 "$count"); do printf '<text:p text:style-name="P">%s %s, B-%05d</text:p>\n' "$plain" "$i" "$i"; done
  echo '</office:text></office:body></office:document>'
} > "$work/merged.fodt"
start=$(date +%s%N)
soffice --headless "-env:UserInstallation=file://$work/profile" --convert-to pdf --outdir "$work" "$work/merged.fodt" >/dev/null 2>&1
office=$(( ($(date +%s%N) - start) / 1000000 ))
echo "whole process: this program $ours ms (every label fitted anew), LaTeX $latex ms and LibreOffice $office ms (text only, nothing fitted, no pictogram)"
echo "ratios: LaTeX / ours $(awk "BEGIN { printf \"%.2f\", $latex / $ours }"), LibreOffice / ours $(awk "BEGIN { printf \"%.2f\", $office / $ours }"); LibreOffice made $(pdfinfo "$work/merged.pdf" | awk '/Pages/ { print $2 }') pages"

#!/usr/bin/env bash
# A thousand different labels in one PDF, made by this program, by a mail merge in LibreOffice Writer and by LaTeX, in one run:
#   the same job   every label's name, batch and text set anew, with its pictograms; LaTeX also fits the text to its box, as we do
#   bare text      the merged text of all labels only, nothing fitted and no picture: the least that each could be asked
# What takes a second or two is run five times in turn, and the middle time stands in the table.
# Installs the other two from Debian's archive when they are missing. Usage: bench-labels.sh [COUNT [FOLDER]];
# FOLDER holds the benchmark compiled ahead of time, which is made when none is named.
set -euo pipefail
cd "$(dirname "$0")/.."
count=${1:-1000}
candle=data/demo/candles/harbour-bowl.yaml
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
as_root() { if [ "$(id -u)" = 0 ]; then "$@"; else sudo "$@"; fi; }
if [ ! -e /usr/lib/libreoffice/program/libdbaxmllo.so ] || ! kpsewhich tcolorbox.sty lmodern.sty >/dev/null; then
  as_root apt-get update -qq
  as_root apt-get install -y -qq --no-install-recommends libreoffice-writer libreoffice-base libreoffice-base-drivers python3-uno \
    texlive-latex-base texlive-latex-recommended texlive-latex-extra texlive-pictures lmodern >/dev/null
fi

now() { echo $(( $(date +%s%N) / 1000000 )); }
bench=${2:-$work/bench}
if [ ! -e "$bench/Chandlery.Benchmarks" ]; then
  # Compiled ahead of time, as the program is that users get.
  dotnet publish tests/Chandlery.Benchmarks -c Release -r linux-x64 --self-contained -o "$bench" -p:PublishAot=true \
    -p:OptimizationPreference=Speed -p:DebugType=none -p:NuGetLockFilePath=obj/publish.lock.json --artifacts-path "$work/build" >/dev/null
fi
"$bench/Chandlery.Benchmarks" label-kit "$candle" "$work/kit"
pdftotext "$work/kit/label.pdf" - | sed 's/\f//g' > "$work/kit/label.txt"
merge=$(/usr/bin/python3 tests/bench-merge.py "$work/kit" "$count")
merged=$(pdfinfo "$work/kit/merged/labels0.pdf" | awk '/Pages/ { print $2 }')

tex=$(tr '\n' ' ' < "$work/kit/label.txt" | sed 's/[&%$#_{}]/\\&/g; s/≥/at least/g; s/·/,/g')
latex() { # file: sets it
  (cd "$work/kit" && pdflatex -interaction=batchmode -halt-on-error "${@:2}" "$1" >/dev/null) || { grep -A5 "^!" "$work/kit/${1%.tex}.log" >&2; exit 1; }
}
took() { # command: its time in milliseconds
  local start
  start=$(now)
  "$@" >&2
  echo $(( $(now) - start ))
}
middle() { # file of times, a line each
  sort -n "$1" | sed -n $(( ($(wc -l < "$1") + 1) / 2 ))p
}
head='\documentclass{article}\usepackage[T1]{fontenc}\usepackage[utf8]{inputenc}\usepackage{lmodern}
\usepackage[paperwidth=120mm,paperheight=90mm,margin=2.5mm]{geometry}\pagestyle{empty}\parindent0pt\renewcommand\familydefault\sfdefault'
{
  echo "$head"'\usepackage{graphicx}\usepackage[fitting]{tcolorbox}
\newtcboxfit{\labelbox}{width=84mm,height=82mm,nobeforeafter,boxrule=0pt,colback=white,colframe=white,fit basedim=8pt}
\newcommand\Label[1]{\noindent\includegraphics[width=28mm]{drawing.pdf}\hfill\labelbox{#1}\newpage}\begin{document}'
  for i in $(seq 1 "$count"); do printf '\\Label{Harbour Bowl %d %s Batch B-%05d}\n' "$i" "$tex" "$i"; done
  echo '\end{document}'
} > "$work/kit/fitted.tex"
{
  echo "$head"'\begin{document}\tiny'
  for i in $(seq 1 "$count"); do printf '%s %s, B-%05d\\newpage\n' "$tex" "$i" "$i"; done
  echo '\end{document}'
} > "$work/kit/bare.tex"
latex fitted.tex -draftmode # makes the fonts
latex bare.tex -draftmode
fitted=$(took latex fitted.tex)
for _ in 1 2 3 4 5; do
  took "$bench/Chandlery.Benchmarks" labels "$candle" "$count" "$work/labels.pdf" >> "$work/ours"
  took latex bare.tex >> "$work/bare"
done
ours=$(middle "$work/ours")
bare=$(middle "$work/bare")

text=$(tr '\n' ' ' < "$work/kit/label.txt" | sed 's/&/\&amp;/g; s/</\&lt;/g')
{
  echo '<?xml version="1.0" encoding="UTF-8"?><office:document xmlns:office="urn:oasis:names:tc:opendocument:xmlns:office:1.0" xmlns:style="urn:oasis:names:tc:opendocument:xmlns:style:1.0" xmlns:text="urn:oasis:names:tc:opendocument:xmlns:text:1.0" xmlns:fo="urn:oasis:names:tc:opendocument:xmlns:xsl-fo-compatible:1.0" office:mimetype="application/vnd.oasis.opendocument.text" office:version="1.3">'
  echo '<office:automatic-styles><style:page-layout style:name="L"><style:page-layout-properties fo:page-width="120mm" fo:page-height="90mm" fo:margin="2.5mm"/></style:page-layout><style:style style:name="P" style:family="paragraph"><style:paragraph-properties fo:break-before="page"/><style:text-properties fo:font-size="6pt"/></style:style></office:automatic-styles>'
  echo '<office:master-styles><style:master-page style:name="Standard" style:page-layout-name="L"/></office:master-styles><office:body><office:text>'
  for i in $(seq 1 "$count"); do printf '<text:p text:style-name="P">%s %s, B-%05d</text:p>\n' "$text" "$i" "$i"; done
  echo '</office:text></office:body></office:document>'
} > "$work/bare.fodt"
start=$(now)
soffice --headless "-env:UserInstallation=file://$work/kit/profile" --convert-to pdf --outdir "$work" "$work/bare.fodt" >/dev/null 2>&1
converted=$(( $(now) - start ))

ratio() { awk "BEGIN { printf \"%.2f\", $1 / $ours }"; }
echo "| $count labels in one PDF, whole process | time | times ours |"
echo "|---|---|---|"
echo "| ours: fitted, with pictograms | $ours ms | 1 |"
echo "| LibreOffice mail merge, with pictograms ($merged pages) | $merge ms | $(ratio "$merge") |"
echo "| LaTeX, fitted, with pictograms | $fitted ms | $(ratio "$fitted") |"
echo "| LibreOffice, bare text already merged | $converted ms | $(ratio "$converted") |"
echo "| LaTeX, bare text | $bare ms | $(ratio "$bare") |"

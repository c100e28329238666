#!/usr/bin/env bash
# A thousand different labels in one PDF: this program, and LaTeX setting the same text on pages of the same size.
# Installs LaTeX from Debian's archive when it is missing.
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
echo "whole process: this program $ours ms (every label fitted anew), LaTeX $latex ms (text only, nothing fitted, no pictogram)"

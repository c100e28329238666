#!/usr/bin/env bash
# Fuzzing that is guided by the branches it reaches: AFL++ with SharpFuzz, on declarations or on suppliers' pages.
# Usage: fuzz-guided.sh declaration|sheet [SECONDS]. Ends with 1 and prints the exceptions when something crashed or hung.
set -euo pipefail
cd "$(dirname "$0")/.."
target=${1:?declaration or sheet}
seconds=${2:-600}
as_root() { if [ "$(id -u)" = 0 ]; then "$@"; else sudo "$@"; fi; }
if ! command -v afl-fuzz >/dev/null || ! command -v pdftotext >/dev/null; then
  as_root apt-get update -qq
  as_root apt-get install -y -qq --no-install-recommends afl++ poppler-utils >/dev/null
fi
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
dotnet build tests/Chandlery.Hostile -c Release -v q >/dev/null
cp -r tests/Chandlery.Hostile/bin/Release/net10.0 "$work/program"
dotnet tool install SharpFuzz.CommandLine --version 2.3.0 --tool-path "$work/tool" >/dev/null
for watched in Chandlery.Core Chandlery.Intake YamlDotNet; do "$work/tool/sharpfuzz" "$work/program/$watched.dll"; done
mkdir "$work/seeds"
if [ "$target" = sheet ]; then
  for sheet in night-fig.own-lines-en dune.latex-grid-de pine-smoke.chromium-list-fr; do
    pdftotext -layout "tests/Chandlery.Sheets/pdf/$sheet.pdf" - | grep -v "^ *$" | head -c 2500 > "$work/seeds/$sheet" || true
  done
else
  for file in data/demo/*.yaml data/demo/*/*.yaml; do grep -v '^ *#' "$file" | head -c 1500 > "$work/seeds/$(basename "$file")" || true; done
fi
AFL_SKIP_BIN_CHECK=1 AFL_SKIP_CPUFREQ=1 AFL_NO_UI=1 AFL_NO_AFFINITY=1 AFL_I_DONT_CARE_ABOUT_MISSING_CRASHES=1 \
  afl-fuzz -i "$work/seeds" -o "$work/found" -t 5000 -m none -V "$seconds" \
  dotnet "$work/program/Chandlery.Hostile.dll" guided "$target" >"$work/log" 2>&1 || { tail -20 "$work/log"; exit 1; }
grep -E '^(execs_done|corpus_count|edges_found|saved_crashes|saved_hangs) ' "$work/found/default/fuzzer_stats"
bad=0
for input in "$work"/found/default/crashes/id* "$work"/found/default/hangs/id*; do
  [ -e "$input" ] || continue
  bad=1
  echo "--- $(basename "$input")"
  timeout 20 dotnet "$work/program/Chandlery.Hostile.dll" guided "$target" <"$input" 2>&1 | grep -m 4 -E 'Exception|^   at ' || echo "no answer within 20 s"
done
exit $bad

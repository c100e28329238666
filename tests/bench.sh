#!/usr/bin/env bash
# All figures of DEVELOPERS.md, in one run: micro-benchmarks, start-up as published, a catalogue of 10,000 candles, drawing
# beside bare Skia, a thousand labels beside LaTeX and LibreOffice. Wants a quiet machine and about ten minutes.
set -euo pipefail
cd "$(dirname "$0")/.."
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
dotnet build tests/Chandlery.Bench -c Release >/dev/null
bench() { dotnet tests/Chandlery.Bench/bin/Release/net10.0/Chandlery.Bench.dll "$@"; }
bench --filter '*' | grep -E '^\| '
dotnet publish src/Chandlery.Cli -c Release -r linux-x64 --self-contained -o "$work/program" -p:PublishSingleFile=true -p:PublishReadyToRun=true \
  -p:IncludeNativeLibrariesForSelfExtract=true -p:DebugType=none -p:NuGetLockFilePath=obj/publish.lock.json >/dev/null
median() { # milliseconds of the middle one of 15 runs, after 3 to warm up
  for i in $(seq 18); do
    start=$(date +%s%N)
    "$@" >/dev/null 2>&1 || true
    echo $(( ($(date +%s%N) - start) / 1000 ))
  done | tail -15 | sort -n | sed -n 8p | awk '{ printf "%.0f", $1 / 1000 }'
}
echo "--help, as published: $(median "$work/program/chandlery" --help) ms"
echo "one label, as published: $(median "$work/program/chandlery" label data/demo/candles/fig-tin.yaml --out "$work/label") ms"
bench make-catalogue data/demo 10000 "$work/catalogue"
bench catalogue "$work/catalogue"
bench catalogue "$work/catalogue"
bench skia data/demo/candles/harbour-bowl.yaml 1000
bash tests/bench-labels.sh 1000

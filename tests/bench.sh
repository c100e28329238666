#!/usr/bin/env bash
# All figures of DEVELOPERS.md, in one run: micro-benchmarks, start-up as published, a catalogue of 10,000 candles, drawing
# beside bare Skia, a thousand labels beside LaTeX and LibreOffice. Wants a quiet machine and about ten minutes.
set -euo pipefail
cd "$(dirname "$0")/.."
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
dotnet build tests/Chandlery.Bench -c Release >/dev/null
dotnet tests/Chandlery.Bench/bin/Release/net10.0/Chandlery.Bench.dll --filter '*' | grep -E '^\| '
publish() { # project, folder, more: as src/publish.sh does it
  dotnet publish "$1" -c Release -r linux-x64 --self-contained -o "$2" -p:PublishReadyToRun=true -p:DebugType=none -p:TieredPGO=false \
    -p:NuGetLockFilePath=obj/publish.lock.json "${@:3}" >/dev/null
}
publish src/Chandlery.Cli "$work/program" -p:PublishSingleFile=true -p:IncludeNativeLibrariesForSelfExtract=true
publish tests/Chandlery.Bench "$work/bench"
median() { # runs, command: milliseconds of the middle run, after 3 to warm up
  local runs=$1
  shift
  for i in $(seq $((runs + 3))); do
    start=$(date +%s%N)
    "$@" >/dev/null 2>&1 || true
    echo $(( ($(date +%s%N) - start) / 1000 ))
  done | tail -"$runs" | sort -n | sed -n $(((runs + 1) / 2))p | awk '{ printf "%.0f", $1 / 1000 }'
}
echo "--help, as published: $(median 15 "$work/program/chandlery" --help) ms"
echo "one label, as published: $(median 15 "$work/program/chandlery" label data/demo/candles/fig-tin.yaml --out "$work/label") ms"
"$work/bench/Chandlery.Bench" make-catalogue data/demo 10000 "$work/catalogue"
echo "catalogue of 10,000, as published: $(median 5 "$work/program/chandlery" catalogue "$work/catalogue") ms"
"$work/bench/Chandlery.Bench" catalogue "$work/catalogue"
"$work/bench/Chandlery.Bench" make-catalogue data/demo 2000 "$work/fifth"
"$work/bench/Chandlery.Bench" catalogue "$work/fifth"
"$work/bench/Chandlery.Bench" skia data/demo/candles/harbour-bowl.yaml 1000
bash tests/bench-labels.sh 1000 "$work/bench"

#!/usr/bin/env bash
# All figures of DEVELOPERS.md, in one run: micro-benchmarks, the program as published beside the one that carries the runtime,
# drawing beside bare Skia, a thousand labels beside LaTeX and LibreOffice. Wants a quiet machine and about fifteen minutes.
set -euo pipefail
cd "$(dirname "$0")/.."
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
dotnet build tests/Chandlery.Benchmarks -c Release >/dev/null
dotnet tests/Chandlery.Benchmarks/bin/Release/net10.0/Chandlery.Benchmarks.dll --filter '*' | grep -E '^\| '
carrying() { # project, folder, more: a program that carries the runtime, as published for Windows and macOS
  dotnet publish "$1" -c Release -r linux-x64 --self-contained -o "$2" -p:PublishReadyToRun=true -p:DebugType=none -p:TieredPGO=false \
    -p:NuGetLockFilePath=obj/publish.lock.json "${@:3}" >/dev/null
}
bash src/publish.sh "$work/published" linux-x64 >/dev/null
ahead=$work/published/linux-x64/chandlery
carrying src/Chandlery.Cli "$work/carrying" -p:PublishSingleFile=true -p:IncludeNativeLibrariesForSelfExtract=true
runtime=$work/carrying/chandlery
carrying tests/Chandlery.Benchmarks "$work/bench"
median() { # runs, command: milliseconds of the middle run, after 3 to warm up
  local runs=$1
  shift
  for i in $(seq $((runs + 3))); do
    start=$(date +%s%N)
    "$@" >/dev/null 2>&1 || true
    echo $(( ($(date +%s%N) - start) / 1000 ))
  done | tail -"$runs" | sort -n | sed -n $(((runs + 1) / 2))p | awk '{ printf "%.0f", $1 / 1000 }'
}
peak() { # command: the most memory that it held, MB
  "$@" >/dev/null 2>&1 &
  local most=0 now
  while now=$(awk '/VmHWM/ { print $2 }' "/proc/$!/status" 2>/dev/null) && [ -n "$now" ]; do
    most=$now
    sleep 0.02
  done
  wait $! || true
  awk -v kilobytes="$most" 'BEGIN { printf "%.0f", kilobytes * 1024 / 1e6 }'
}
beside() { # what, runs, command without the program: the medians of both programs
  echo "$1: $(median "$2" "$ahead" "${@:3}") ms compiled ahead of time, $(median "$2" "$runtime" "${@:3}") ms with the runtime"
}
beside "--help" 15 --help
beside "one label" 15 label data/demo/candles/fig-tin.yaml --out "$work/label"
three=$work/three # what the demo had when the goal for its dossier was set
cp -r data/demo "$three"
find "$three/candles" -name '*.yaml' ! -name harbour-bowl.yaml ! -name fig-tin.yaml ! -name slate-jar.yaml -delete
rm -r "$three"/{batches,dispatches,incidents,sets,tests,trials,weighings}
beside "a dossier of three candles" 5 dossier "$three" --out "$work/three-dossier"
beside "the demo's dossier" 5 dossier data/demo --out "$work/dossier"
for candles in 2000 10000 40000; do
  "$work/bench/Chandlery.Benchmarks" make-catalogue data/demo $candles "$work/catalogue-$candles"
  beside "catalogue of $candles" 5 catalogue "$work/catalogue-$candles"
  echo "its peak of memory: $(peak "$ahead" catalogue "$work/catalogue-$candles") MB compiled ahead of time," \
    "$(peak "$runtime" catalogue "$work/catalogue-$candles") MB with the runtime"
done
# Candles of one recipe share its verdict: the same where hardly two have one.
"$work/bench/Chandlery.Benchmarks" make-catalogue data/demo 10000 "$work/none-alike" none-alike
beside "catalogue of 10000 of which hardly two have one recipe" 5 catalogue "$work/none-alike"
"$work/bench/Chandlery.Benchmarks" catalogue "$work/catalogue-10000"
# What a keystroke on the page takes, with the demo and with 300 candles.
"$work/bench/Chandlery.Benchmarks" make-catalogue data/demo 300 "$work/catalogue-300"
"$work/bench/Chandlery.Benchmarks" page data/demo harbour-bowl
"$work/bench/Chandlery.Benchmarks" page "$work/catalogue-300" "$(basename "$(grep -l "^name: Slate Jar" "$work"/catalogue-300/candles/*.yaml | head -1)" .yaml)"
"$work/bench/Chandlery.Benchmarks" skia data/demo/candles/harbour-bowl.yaml 1000
bash tests/bench-labels.sh 1000

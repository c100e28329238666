#!/usr/bin/env bash
# A register of many entries: bench-register.sh [ENTRIES [FILE [PROGRAM]]] makes it in FILE (kept; default: a temporary one), asks it, and
# lets the program find and verify in it. Entries are as large as the demo's; SMALL=small leaves the assessment's result out of each, which
# is what a million want (five minutes and 8 GB on two slow cores; whole ones are 37 kB each). They grow in a straight line.
set -euo pipefail
cd "$(dirname "$0")/.."
entries=${1:-20000}
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
register=${2:-$work/register.sqlite}
program=${3:-src/Chandlery.Cli/bin/Release/net10.0/chandlery.dll}
case $program in *.dll) run=(dotnet "$program") ;; *) run=("$program") ;; esac
[ -e tests/Chandlery.Benchmarks/bin/Release/net10.0/Chandlery.Benchmarks.dll ] || dotnet build tests/Chandlery.Benchmarks -c Release -v q
bench=(dotnet tests/Chandlery.Benchmarks/bin/Release/net10.0/Chandlery.Benchmarks.dll)
"${bench[@]}" register-make data/demo/candles/harbour-bowl.yaml "$entries" "$register" ${SMALL:-}
"${bench[@]}" register-measure "$register"
measured() { # what, arguments: seconds and the most memory that the program held
  local what=$1 start most=0 now
  shift
  start=$(date +%s%N)
  "${run[@]}" "$@" >"$work/said" 2>&1 &
  while now=$(awk '/VmHWM/ { print $2 }' "/proc/$!/status" 2>/dev/null) && [ -n "$now" ]; do
    most=$now
    sleep 0.05
  done
  wait $! || { cat "$work/said"; exit 1; }
  awk -v what="$what" -v ns=$(($(date +%s%N) - start)) -v kb="$most" 'BEGIN { printf "%s: %.2f s, peak %.0f MB\n", what, ns / 1e9, kb * 1024 / 1e6 }'
}
measured "program: find a batch" register find "$register" --batch "B-$((entries / 2))"
measured "program: find by part of a substance's name" register find "$register" --substance "substance 0777"
measured "program: the first 200" register find "$register"
measured "program: verify" register verify "$register"
tail -1 "$work/said"

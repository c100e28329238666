#!/usr/bin/env bash
# Installs the program in both ways that README names and tries each as a newcomer would: version, a new folder, its dossier.
# Builds all packages, so it needs NuGet and about six minutes; on linux-x64 only.
set -euo pipefail
cd "$(dirname "$0")/.."
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
bash src/publish.sh "$work/publish" >/dev/null
dotnet tool install Chandlery --tool-path "$work/tool" --source "$work/publish/tool" >/dev/null
for program in "$work/tool/chandlery" "$work/publish/linux-x64/chandlery"; do
  home=$(mktemp -d -p "$work")
  (
    cd "$home"
    "$program" version | grep -q '^eu-clp: '
    "$program" new my-candles >/dev/null
    "$program" dossier my-candles --out print >/dev/null 2>&1
    head -c 5 print/first-candle/first-candle-label.pdf | grep -q '%PDF-'
    "$program" completions bash | bash -n
    "$program" manual --roff | grep -q '^\.TH '
  )
done
for system in win-x64 osx-arm64; do
  file=$(ls "$work/publish/$system/chandlery"*)
  echo "$system: $(stat -c %s "$file" | awk '{ printf "%.0f MB", $1 / 1e6 }') built, not run here"
done
ls -l "$work/publish/tool" | awk 'NR > 1 { printf "%s: %.0f MB\n", $NF, $5 / 1e6 }'
echo "installed and tried: the tool and the program"

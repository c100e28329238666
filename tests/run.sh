#!/usr/bin/env bash
# Installs what the tests need, then formats, builds and tests. Ends with the line "N passed, N failed".
set -uo pipefail
cd "$(dirname "$0")/.."
export DOTNET_CLI_TELEMETRY_OPTOUT=1 DOTNET_NOLOGO=1

as_root() { if [ "$(id -u)" = 0 ]; then "$@"; else sudo "$@"; fi; }
fail() { echo "$1" >&2; echo "0 passed, 1 failed"; exit 1; }

# Tools that look at our PDFs from outside, and an independent transcription of CLP's statements.
packages=()
command -v pdftoppm >/dev/null || packages+=(poppler-utils)
command -v qpdf >/dev/null || packages+=(qpdf)
command -v chromium >/dev/null || packages+=(chromium)
command -v npm >/dev/null || packages+=(npm)
cache=tests/.cache
if [ ${#packages[@]} -gt 0 ] || [ ! -e $cache/ghsystem/ghsystem_english.def ]; then
  command -v apt-get >/dev/null || fail "The tests need poppler-utils, qpdf, Chromium, npm and the LaTeX package ghsystem; this script knows only apt-get."
  as_root apt-get update -qq || fail "apt-get update failed"
  if [ ${#packages[@]} -gt 0 ]; then
    as_root apt-get install -y -qq --no-install-recommends "${packages[@]}" >/dev/null || fail "could not install ${packages[*]}"
  fi
fi
if [ ! -e $cache/ghsystem/ghsystem_english.def ]; then
  unpack=$(mktemp -d)
  chmod 755 "$unpack"
  (cd "$unpack" && apt-get download -qq texlive-science && dpkg-deb -x texlive-science_*.deb .) || fail "could not fetch texlive-science"
  mkdir -p $cache/ghsystem
  cp "$unpack"/usr/share/texlive/texmf-dist/tex/latex/ghsystem/language/*.def $cache/ghsystem/
  rm -rf "$unpack"
fi

if [ ! -e $cache/axe/package/axe.min.js ]; then
  unpack=$(mktemp -d)
  (cd "$unpack" && npm pack --silent axe-core@4.10.3 >/dev/null && tar -xzf axe-core-4.10.3.tgz package/axe.min.js) || fail "could not fetch axe-core"
  mkdir -p $cache/axe/package
  cp "$unpack"/package/axe.min.js $cache/axe/package/
  rm -rf "$unpack"
fi

dotnet tool restore >/dev/null || fail "dotnet tool restore failed"
dotnet csharpier check . || fail "the code is not formatted: run 'dotnet csharpier format .'"
dotnet restore Labels.sln --locked-mode || fail "restore failed"
dotnet build Labels.sln -c Release --no-restore || fail "build failed"
log=$(mktemp)
checks=tests/Chandlery.Tests/bin/Release/net10.0/checks.txt # written by CheckCountTests
rm -f $checks
dotnet test tests/Chandlery.Tests -c Release --no-build "$@" | tee "$log"
passed=$(sed -nE 's/.*Passed: *([0-9]+).*/\1/p' "$log" | tail -1)
failed=$(sed -nE 's/.*Failed: *([0-9]+).*/\1/p' "$log" | tail -1)
rm -f "$log"
[ ! -e $checks ] || cat $checks
echo "${passed:-0} passed, ${failed:-1} failed"
[ "${failed:-1}" = 0 ] && [ "${passed:-0}" -gt 0 ]

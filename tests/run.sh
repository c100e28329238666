#!/usr/bin/env bash
# Installs what the tests need, then formats, builds and tests. Ends with the line "N passed, N failed".
set -uo pipefail
cd "$(dirname "$0")/.."
export DOTNET_CLI_TELEMETRY_OPTOUT=1 DOTNET_NOLOGO=1

fail() { echo "$1" >&2; echo "0 passed, 1 failed"; exit 1; }

# Tools that look at our PDFs from outside, and an independent transcription of CLP's statements.
packages=()
command -v pdftoppm >/dev/null || packages+=(poppler-utils)
command -v qpdf >/dev/null || packages+=(qpdf)
command -v mutool >/dev/null || packages+=(mupdf-tools)
command -v gs >/dev/null || packages+=(ghostscript)
[ -e /usr/share/fonts/opentype/ebgaramond ] || packages+=(fonts-ebgaramond)
command -v chromium >/dev/null || packages+=(chromium)
command -v npm >/dev/null || packages+=(npm)
# The same engine without a browser's windows, in which the page's tests take half the time; where it cannot be had, Chromium does.
command -v chromium-headless-shell >/dev/null || bash src/install-packages.sh chromium-headless-shell || echo "No chromium-headless-shell: the page is tried in the whole Chromium."
# Shells besides bash, for their completion scripts.
command -v zsh >/dev/null || packages+=(zsh)
command -v fish >/dev/null || packages+=(fish)
# The page in a second engine; where it cannot be had, its test says so.
command -v firefox-esr >/dev/null || bash src/install-packages.sh firefox-esr || echo "Firefox could not be installed: the page is tried in Chromium alone."
# The register is tested on a PostgreSQL server too: the tests start one of their own and stop it.
command -v initdb >/dev/null || compgen -G '/usr/lib/postgresql/*/bin/initdb' >/dev/null || packages+=(postgresql)
cache=tests/.cache
if [ ${#packages[@]} -gt 0 ] || [ ! -e $cache/ghsystem/ghsystem_english.def ]; then
  # With no package to install this still refreshes the lists, from which texlive-science is fetched.
  bash src/install-packages.sh "${packages[@]}" || fail "could not install what the tests need: ${packages[*]} and the LaTeX package ghsystem"
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
checks=tests/Chandlery.Tests/bin/Release/net10.0/checks.txt # written by CheckCountTests
rm -f $checks
passed=0
failed=0
run_tests() { # arguments of dotnet test
  local log
  log=$(mktemp)
  dotnet test tests/Chandlery.Tests -c Release --no-build "$@" | tee "$log"
  passed=$((passed + $(figure Passed 0 "$log")))
  failed=$((failed + $(figure Failed 1 "$log")))
  rm -f "$log"
}
figure() { # word, what it is when the word is missing, log
  local found
  found=$(sed -nE "s/.*$1: *([0-9]+).*/\1/p" "$3" | tail -1)
  echo "${found:-$2}"
}
if [ $# -gt 0 ]; then
  run_tests "$@"
else
  # The marked ones run every command of the documents, each in a process of its own: once is enough, by the program below.
  run_tests --filter "Program!=published"

  # The commands again, by the program as users get it, compiled ahead of time.
  published=tests/.cache/publish
  bash src/publish.sh $published linux-x64 || fail "the program could not be published"
  CHANDLERY_PROGRAM=$PWD/$published/linux-x64/chandlery run_tests \
    --filter "FullyQualifiedName~Chandlery.Tests.Cli.|FullyQualifiedName~A_PDF_that_unpacks"
fi
[ ! -e $checks ] || cat $checks
echo "$passed passed, $failed failed"
[ "$failed" = 0 ] && [ "$passed" -gt 0 ]

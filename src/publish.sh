#!/usr/bin/env bash
# Builds what users install: publish.sh [FOLDER [SYSTEM]]. Into FOLDER (default: out/publish) goes one program for each system and a
# package for 'dotnet tool install'; with SYSTEM (linux-x64, win-x64 or osx-arm64) only that system's program.
# For Linux the program is compiled ahead of time. Windows and macOS programs can be so compiled only on Windows and macOS: theirs
# carry the runtime with them.
set -euo pipefail
cd "$(dirname "$0")/.."
out=${1:-out/publish}
systems=${2:-linux-x64 win-x64 osx-arm64}
publish() { # system, more
  dotnet publish src/Chandlery.Cli -c Release -r "$1" --self-contained -o "$out/$1" --artifacts-path "out/build/$1" \
    -p:DebugType=none -p:NuGetLockFilePath=obj/publish.lock.json "${@:2}"
  rm -f "$out/$1"/*.xml "$out/$1"/*.pdb
}
for system in $systems; do
  if [ "$system" = linux-x64 ]; then
    command -v clang >/dev/null || command -v gcc >/dev/null || bash src/install-packages.sh gcc libc6-dev
    publish "$system" -p:PublishAot=true
  else
    publish "$system" -p:PublishSingleFile=true -p:PublishReadyToRun=true -p:IncludeNativeLibrariesForSelfExtract=true
  fi
done
[ $# -ge 2 ] || dotnet pack src/Chandlery.Cli -c Release -o "$out/tool" -p:NuGetLockFilePath=obj/publish.lock.json -p:PackForEachSystem=true
ls -l "$out"/*/

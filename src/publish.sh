#!/usr/bin/env bash
# Builds what users install, into the folder named (default: out/publish): one self-contained program for each system,
# and for each a package for 'dotnet tool install'.
set -euo pipefail
cd "$(dirname "$0")/.."
out=${1:-out/publish}
for system in linux-x64 win-x64 osx-arm64; do
  dotnet publish src/Chandlery.Cli -c Release -r "$system" --self-contained -o "$out/$system" \
    -p:PublishSingleFile=true -p:PublishReadyToRun=true -p:IncludeNativeLibrariesForSelfExtract=true \
    -p:DebugType=none -p:NuGetLockFilePath=obj/publish.lock.json
  rm -f "$out/$system"/*.xml "$out/$system"/*.pdb
done
dotnet pack src/Chandlery.Cli -c Release -o "$out/tool" -p:NuGetLockFilePath=obj/publish.lock.json -p:PackForEachSystem=true
ls -l "$out"/*/

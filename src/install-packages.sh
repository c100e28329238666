#!/usr/bin/env bash
# Refreshes apt's lists and installs the Debian packages named. Another program that is just installing something is waited for.
set -euo pipefail
command -v apt-get >/dev/null || { echo "Please install: $*. This script knows only apt-get." >&2; exit 1; }
as_root() { if [ "$(id -u)" = 0 ]; then "$@"; else sudo "$@"; fi; }

# apt-get waits by itself for the lock of what is installed, but not for the lock of the lists.
waited=0
until said=$(LC_ALL=C as_root apt-get update -qq 2>&1); do
  [[ $said == *"Could not get lock"* && $waited -lt 300 ]] || { echo "$said" >&2; exit 1; }
  sleep 5
  waited=$((waited + 5))
done
[ $# = 0 ] || as_root apt-get -o DPkg::Lock::Timeout=300 install -y -qq --no-install-recommends "$@" >/dev/null

#!/usr/bin/env bash
# clang-tidy over every source file of the program, without building it; the list of checks is in .clang-tidy.
# The preset `tidy` does the same while it builds.
set -euo pipefail
cd "$(dirname "$0")/../.."
cmake --preset fuzz >/dev/null # only for its list of compile commands
tidy=$(command -v clang-tidy-14 || command -v clang-tidy)
# clang-tidy counts the findings it kept silent about (in system headers) on standard error.
find src -name '*.cpp' -print0 | sort -z |
  xargs -0 -n 1 -P "$(nproc)" bash -c '"$0" --quiet -p build/fuzz "$1" 2>/dev/null || { echo "clang-tidy: $1" && exit 1; }' "$tidy"

#!/usr/bin/env bash
# clang-tidy over every source file of the program, without building it; the list of checks is in .clang-tidy, and a
# warning of the compiler is a finding too, so this also shows that each file compiles by itself (the other builds that
# CI makes are unity builds). The preset `tidy` does the same while it builds.
set -euo pipefail
cd "$(dirname "$0")/../.."
cmake --preset tidy >/dev/null # only for its list of compile commands
tidy=$(command -v clang-tidy-14 || command -v clang-tidy)
# clang-tidy counts the findings it kept silent about (in system headers) on standard error.
find src -name '*.cpp' -print0 | sort -z |
  xargs -0 -n 1 -P "$(nproc)" bash -c '"$0" --quiet -p build/tidy "$1" 2>/dev/null || { echo "clang-tidy: $1" && exit 1; }' "$tidy"

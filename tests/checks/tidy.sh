#!/usr/bin/env bash
# clang-tidy over every source file of the program, some of a folder at a time as a unity build has them, which takes an
# eighth of the time; the list of checks is in .clang-tidy, and a warning of the compiler is a finding too. The preset
# `tidy` does the same file by file while it builds.
set -euo pipefail
cd "$(dirname "$0")/../.."
at_a_time=16
cmake --preset tidy >/dev/null # only for its list of compile commands
tidy=$(command -v clang-tidy-14 || command -v clang-tidy)
together=build/tidy/together
rm -rf "$together"
mkdir -p "$together"
for folder in src src/*/; do
  find "$folder" -maxdepth 1 -name '*.cpp' | sort | sed 's|^src/*\(.*\)|#include "\1"|; s|//|/|' |
    split -a 2 -d -l "$at_a_time" --additional-suffix=.cpp - "$together/$(basename "$folder")_"
done
# clang-tidy counts the findings it kept silent about (in system headers) on standard error.
find "$together" -name '*.cpp' -print0 | sort -z | xargs -0 -n 1 -P "$(nproc)" bash -c \
  '"$0" --quiet --checks=-bugprone-suspicious-include -p build/tidy "$1" 2>/dev/null || { echo "clang-tidy: $1" && exit 1; }' "$tidy"

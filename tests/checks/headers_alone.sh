#!/usr/bin/env bash
# Fails when a header under src needs something included before it.
set -euo pipefail
cd "$(dirname "$0")/../.."
alone() {
  printf '#include "%s"\n' "${1#src/}" |
    g++ -std=c++20 -Wall -Wextra -Wpedantic -Werror -fsyntax-only -Isrc -x c++ - || { echo "not alone: $1" && return 1; }
}
export -f alone
find src -name '*.hpp' -print0 | sort -z | xargs -0 -n 1 -P "$(nproc)" bash -c 'alone "$1"' alone

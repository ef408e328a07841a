#!/usr/bin/env bash
# Shows, as a diff, each line that clang-format would write otherwise, and fails when there is one. Version 14 decides;
# others differ in small things. To put it right: clang-format -i FILE
set -euo pipefail
cd "$(dirname "$0")/../.."
formatter=$(command -v clang-format-14 || command -v clang-format)
mapfile -d '' -t files < <(find src tests -name '*.[ch]pp' -print0 | sort -z)
"$formatter" --dry-run --Werror "${files[@]}" 2>/dev/null && exit 0
for file in "${files[@]}"; do
  "$formatter" "$file" | diff -u --label "$file" --label "$file formatted" "$file" - || true
done
exit 1

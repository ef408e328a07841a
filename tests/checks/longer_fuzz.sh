#!/usr/bin/env bash
# longer_fuzz.sh SECONDS: each fuzz target for that long, from its kept inputs, the example jobs and the rate books.
# New inputs go to build/fuzz/found/<name>, a fault's input to build/fuzz/faults; a fault ends the run with a failure.
set -euo pipefail
seconds=${1:?usage: longer_fuzz.sh SECONDS}
cd "$(dirname "$0")/../.."
cmake --preset fuzz >/dev/null
cmake --build --preset fuzz >/dev/null || { cmake --build --preset fuzz && exit 1; }
mkdir -p build/fuzz/faults
shopt -s nullglob
targets=(build/fuzz/tests/fuzz/*_fuzz)
[[ ${#targets[@]} -gt 0 ]] || { echo "no fuzz target was built" >&2 && exit 1; }
for target in "${targets[@]}"; do
  name=$(basename "$target" _fuzz)
  found=build/fuzz/found/$name
  mkdir -p "$found"
  seeds=()
  for folder in "tests/fuzz/corpus/$name" jobs rates; do [[ ! -d $folder ]] || seeds+=("$folder"); done
  options=(-max_total_time="$seconds" -timeout=5 -rss_limit_mb=2048 -max_len=16384 -print_final_stats=1
    -artifact_prefix="build/fuzz/faults/$name-")
  [[ ! -f tests/fuzz/$name.dict ]] || options+=(-dict="tests/fuzz/$name.dict")
  log=build/fuzz/$name.log
  "$target" "${options[@]}" "$found" "${seeds[@]}" >"$log" 2>&1 || { tail -n 60 "$log" && exit 1; }
  printf '%s: %s runs, nothing found\n' "$name" "$(sed -n 's/^stat::number_of_executed_units: //p' "$log")"
done

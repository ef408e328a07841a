#!/usr/bin/env bash
# longer_fuzz.sh SECONDS [NAME...]: each fuzz target, or those named, for that long, from its kept inputs and, where it
# reads whole files, the example jobs, days and rate books.
# New inputs go to build/fuzz/found/<name>, a fault's input to build/fuzz/faults; a fault ends the run with a failure.
set -euo pipefail
seconds=${1:?usage: longer_fuzz.sh SECONDS [NAME...]}
shift
cd "$(dirname "$0")/../.."
cmake --preset fuzz >/dev/null
cmake --build --preset fuzz >/dev/null || { cmake --build --preset fuzz && exit 1; }
mkdir -p build/fuzz/faults build/fuzz/seeds
find jobs rates -name '*.yaml' -exec cp --parents {} build/fuzz/seeds \;
declare -A longest=([units]=128 [csv]=2048 [sheet]=8192) # bytes; these read no YAML, and short inputs are quick
shopt -s nullglob
targets=(build/fuzz/tests/fuzz/*_fuzz)
[[ ${#targets[@]} -gt 0 ]] || { echo "no fuzz target was built" >&2 && exit 1; }
names=("$@")
[[ $# -gt 0 ]] || for target in "${targets[@]}"; do names+=("$(basename "$target" _fuzz)"); done
for name in "${names[@]}"; do
  found=build/fuzz/found/$name
  mkdir -p "$found"
  seeds=("tests/fuzz/corpus/$name")
  [[ -v longest[$name] ]] || seeds+=(build/fuzz/seeds)
  options=(-max_total_time="$seconds" -timeout=5 -rss_limit_mb=2048 -max_len="${longest[$name]:-16384}"
    -print_final_stats=1 -artifact_prefix="build/fuzz/faults/$name-")
  log=build/fuzz/$name.log
  "build/fuzz/tests/fuzz/${name}_fuzz" "${options[@]}" "$found" "${seeds[@]}" >"$log" 2>&1 || { tail -n 60 "$log" && exit 1; }
  printf '%s: %s runs, nothing found\n' "$name" "$(sed -n 's/^stat::number_of_executed_units: //p' "$log")"
done

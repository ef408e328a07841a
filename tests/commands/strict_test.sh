#!/usr/bin/env bash
# --strict: a job with warnings counts as faulty, nothing is written for it, and sound jobs are done all the same.
set -u
program=$1 root=$2
out=$(mktemp -d)
trap 'rm -rf "$out"' EXIT
failed=0
expect() {  # words, wanted exit code, arguments
  local words=$1 wanted=$2
  shift 2
  "$program" "$@" >"$out/stdout" 2>"$out/stderr"
  local code=$?
  if [ "$code" != "$wanted" ]; then
    echo "$words: exit code $code, not $wanted"
    cat "$out/stderr"
    failed=1
  fi
}
cd "$root" || exit 1
warned=jobs/brewhouse-platform.yaml sound=jobs/bracket.yaml
expect "warnings alone are no fault" 0 check $warned
for verb in check estimate explain; do
  expect "$verb with warnings" 1 $verb --strict $warned
  expect "$verb without warnings" 0 $verb --strict $sound
done
expect "quote with warnings" 1 quote --strict --date 2026-05-01 --out "$out/quotes" $warned $sound
[ -e "$out/quotes/brewhouse-platform-quote.xlsx" ] && echo "a faulty job was written" && failed=1
[ -e "$out/quotes/bracket-quote.xlsx" ] || { echo "the sound job was not written"; failed=1; }
expect "plan with warnings" 1 plan --strict --date 2026-05-01 --out "$out/plans" $warned
[ -e "$out/plans/plan-2026-05-01.xlsx" ] && echo "a faulty job was planned" && failed=1
expect "plan without warnings" 0 plan --strict --date 2026-05-01 --out "$out/plans" $sound
exit $failed

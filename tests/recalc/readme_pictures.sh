#!/bin/sh
# The pictures in README.md, made by the program: readme_pictures.sh SEAMBOOK writes jobs/pictures/*.png.
set -eu
[ $# -eq 1 ] || { echo "usage: readme_pictures.sh SEAMBOOK" >&2; exit 2; }
seambook=$(realpath "$1")
cd "$(dirname "$0")/../.."
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
mkdir -p jobs/pictures
"$seambook" quote jobs/bracket.yaml jobs/brewhouse-platform.yaml --out "$work" --date 2026-05-04 --quiet >/dev/null
for job in bracket brewhouse-platform; do
  tests/recalc/pictures.sh "$work/$job-quote.xlsx" "$work" >/dev/null
done
"$seambook" plan jobs/brewhouse-platform.yaml jobs/pipe-set.yaml jobs/wash-down-cabinet.yaml --out "$work" --date 2026-05-11 --quiet \
  >/dev/null 2>&1
tests/recalc/pictures.sh "$work/plan-2026-05-11.xlsx" "$work" >/dev/null
"$seambook" new --takeoff "$work/takeoff.xlsx" --date 2026-05-04 >/dev/null
tests/recalc/pictures.sh "$work/takeoff.xlsx" "$work" >/dev/null
# BOOK NAME TITLE RESOLUTION LEFT TOP WIDTH HEIGHT: the first page on which TITLE begins a line
picture() {
  page=1
  until pdftotext -f "$page" -l "$page" "$work/$1.pdf" - | grep -q "^$3"; do page=$((page + 1)); done
  pdftoppm -png -singlefile -f "$page" -l "$page" -r "$4" -x "$5" -y "$6" -W "$7" -H "$8" "$work/$1.pdf" "jobs/pictures/$2"
}
picture bracket-quote quote "Quote bracket" 80 30 50 620 440
picture bracket-quote overview "Overview of" 80 30 30 860 500
picture brewhouse-platform-quote doubt "Doubt: " 80 30 30 860 480
picture brewhouse-platform-quote passes "Passes: " 110 50 50 1180 330
picture plan-2026-05-11 day "Quillmarsh Fabrication" 80 30 30 630 650
picture plan-2026-05-11 bars "Stations and welders" 80 30 30 880 480
picture plan-2026-05-11 list "Tue 12 May, 06:30" 110 50 50 1180 720
picture takeoff takeoff "J1" 80 30 40 890 130

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
# JOB NAME TITLE RESOLUTION LEFT TOP WIDTH HEIGHT: the first page on which TITLE begins a line
picture() {
  page=1
  until pdftotext -f "$page" -l "$page" "$work/$1-quote.pdf" - | grep -q "^$3"; do page=$((page + 1)); done
  pdftoppm -png -singlefile -f "$page" -l "$page" -r "$4" -x "$5" -y "$6" -W "$7" -H "$8" "$work/$1-quote.pdf" "jobs/pictures/$2"
}
picture bracket quote "Quote bracket" 80 30 50 620 440
picture bracket overview "Overview of" 80 30 30 860 500
picture brewhouse-platform doubt "Doubt: " 80 30 30 860 480
picture brewhouse-platform passes "Passes: " 110 50 50 1180 330

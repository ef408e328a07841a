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
# page RESOLUTION LEFT TOP WIDTH HEIGHT of a sheet's first page
picture() {
  pdftoppm -png -singlefile -f "$3" -l "$3" -r "$4" -x "$5" -y "$6" -W "$7" -H "$8" "$work/$1-quote.pdf" "jobs/pictures/$2"
}
picture bracket quote 1 80 30 50 600 300
picture bracket cost 2 80 30 30 860 580
picture brewhouse-platform passes 4 110 50 50 1180 330

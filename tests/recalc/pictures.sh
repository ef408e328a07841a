#!/bin/sh
# Pages of a workbook as pictures: pictures.sh FILE.xlsx OUTDIR writes OUTDIR/FILE.pdf and OUTDIR/FILE-1.png ...
set -eu
[ $# -eq 2 ] || { echo "usage: pictures.sh FILE.xlsx OUTDIR" >&2; exit 2; }
file=$1 out=$2
mkdir -p "$out"
profile=$(mktemp -d)
trap 'rm -rf "$profile"' EXIT
# A profile of its own: the office suite refuses to run twice on one.
timeout 120 soffice --headless --norestore "-env:UserInstallation=file://$profile" \
  --convert-to pdf --outdir "$out" "$file" >/dev/null
name=$(basename "$file" .xlsx)
pdftoppm -r "${DPI:-70}" -png "$out/$name.pdf" "$out/$name"
ls "$out/$name"*.png

#!/usr/bin/env bash
# first_hour.sh BUILD [--bare DIR]: what somebody new does with the package made of a release build, from installing it to
# a first own quote: `new`, a changed line, `check` with a fault and without, `quote`, a take-off of their own. The
# package is unpacked into a scratch folder; with --bare it is installed by apt in a bare Debian 12 in DIR (root,
# debootstrap).
set -euo pipefail
export LC_ALL=C.UTF-8
build=$(cd "$1" && pwd)
scratch=$(mktemp -d)
trap 'rm -rf "$scratch"' EXIT

fail() {
  echo "FAULT: $1" >&2
  exit 1
}

cpack --config "$build/CPackConfig.cmake" -B "$scratch/package" >"$scratch/cpack.log" 2>&1 || { cat "$scratch/cpack.log" && exit 1; }
package=$(find "$scratch/package" -maxdepth 1 -name 'seambook_*.deb')
[[ -n $package ]] || fail "no package was made"

cat >"$scratch/hour" <<'END'
set -euo pipefail
cd "$(mktemp -d)"
seambook new shop
cd shop
seambook check first-job.yaml
sed -i 's/leg: 5 mm/leg: 5 m/' first-job.yaml # a slip
seambook check first-job.yaml 2>said && { echo "a leg of 5 m was not found" && exit 1; }
grep -q 'first-job.yaml:[0-9]*:[0-9]*' said
sed -i 's/leg: 5 m,/leg: 6 mm,/; s/^job: .*/job: my-bracket/' first-job.yaml
seambook check first-job.yaml
seambook quote first-job.yaml
test -s out/my-bracket-quote.xlsx
seambook new --takeoff joints.xlsx
test -s joints.xlsx
printf 'id,weld,leg,thickness,length\nJ1,fillet,4 mm,6 mm,300 mm\nJ2,fillet,5 mm,8 mm,250 mm\n' >list.csv
seambook new --from-takeoff list.csv .
seambook quote list.yaml
test -s out/list-quote.xlsx
seambook new ../us-shop --units us
seambook quote ../us-shop/first-job.yaml --out out-us
END

if [[ ${2:-} != --bare ]]; then
  dpkg-deb -x "$package" "$scratch/root"
  PATH=$scratch/root/usr/bin:$PATH HOME=$scratch bash "$scratch/hour"
else
  mkdir -p "$3"
  root=$(cd "$3" && pwd)/hour
  rm -rf "$root"
  debootstrap --variant=minbase bookworm "$root" >"$scratch/debootstrap.log"
  apt-config dump | grep -E '^Acquire::https?::Proxy ' >"$root/etc/apt/apt.conf.d/90proxy" || true
  cp /etc/resolv.conf "$root/etc/resolv.conf"
  cp "$package" "$scratch/hour" "$root/root/"
  chroot "$root" bash -euc "apt-get -q update && apt-get -qy --no-install-recommends install /root/$(basename "$package")" \
    >"$scratch/apt.log" 2>&1 || { tail -n 40 "$scratch/apt.log" && exit 1; }
  chroot "$root" /usr/bin/env -i PATH=/usr/bin:/bin HOME=/root LC_ALL=C.UTF-8 bash /root/hour
fi
echo "from the package to own quotes in ${SECONDS} s"

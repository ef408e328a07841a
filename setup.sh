#!/usr/bin/env bash
# Brings a Debian 12 machine from a bare clone to quotes in out/ (demo) or to all tests run (test).
# Installs only what is missing, asks nothing, and says nothing about what is already there.
set -euo pipefail
export LC_ALL=C.UTF-8
cd "$(dirname "${BASH_SOURCE[0]}")"

build_packages=(g++ cmake ninja-build pkg-config libyaml-cpp-dev libboost-dev libspdlog-dev libxlsxwriter-dev libzip-dev
  libpugixml-dev zlib1g-dev doctest-dev libcli11-dev nlohmann-json3-dev)
test_packages=(git libreoffice-calc-nogui python3-jsonschema groff zsh python3-openpyxl python3-yaml clang clang-format clang-tidy
  libclang-rt-14-dev libbenchmark-dev dpkg-dev)

usage() {
  cat <<'END'
usage: ./setup.sh demo      install what is missing, build, quote the example jobs into out/
       ./setup.sh test      install what the tests need too, build with sanitizers and for release, run all tests
       ./setup.sh build     install what is missing, build build/release/seambook
       ./setup.sh packages  only install what all of these need
END
}

fail() {
  printf 'setup.sh: %s\n' "$1" >&2
  exit "${2:-1}"
}

# The packages among the arguments that are not installed.
missing() {
  local package
  for package in "$@"; do
    grep -qx installed <<<"$(dpkg-query -W -f '${db:Status-Status}\n' "$package" 2>/dev/null || true)" || echo "$package"
  done
}

as_root() {
  if [[ $EUID -eq 0 ]]; then
    "$@"
  elif [[ -t 0 ]]; then
    sudo "$@" # only sudo itself may ask, for the password
  else
    sudo -n "$@"
  fi
}

install_missing() {
  command -v dpkg-query >/dev/null && command -v apt-get >/dev/null ||
    fail "this installs Debian packages, and there is no apt-get here. Install what these hold, then run
  cmake --workflow --preset release:
  $*"
  local names wanted
  names=$(missing "$@")
  [[ -n $names ]] || return 0
  mapfile -t wanted <<<"$names"
  [[ $EUID -eq 0 ]] || command -v sudo >/dev/null ||
    fail "packages are missing, and only root may install them; there is no sudo. As root, run
  apt-get update && apt-get install --no-install-recommends ${wanted[*]}
then run this again."
  echo "installing ${wanted[*]}"
  mkdir -p build
  logged apt as_root env DEBIAN_FRONTEND=noninteractive apt-get -q update
  logged apt as_root env DEBIAN_FRONTEND=noninteractive apt-get -q -y --no-install-recommends \
    -o Dpkg::Use-Pty=0 install "${wanted[@]}"
}

# Runs a command with its output in build/<name>.log, and shows the end of that only when the command fails.
logged() {
  local log=build/$1.log status=0
  shift
  mkdir -p build
  "$@" >"$log" 2>&1 </dev/null || status=$?
  [[ $status -eq 0 ]] && return 0
  tail -n 60 "$log" >&2
  fail "'$*' failed (exit code $status); its whole output is in $log" "$status"
}

# Configures and builds a preset, or only the targets named after it. On a terminal ninja shows how far it is.
build_preset() {
  local preset=$1
  shift
  logged "configure-$preset" cmake --preset "$preset"
  local targets=("${@/#/--target=}")
  if [[ -t 1 ]]; then
    cmake --build --preset "$preset" "${targets[@]}" || fail "the $preset build failed"
  else
    logged "build-$preset" cmake --build --preset "$preset" "${targets[@]}"
  fi
}

demo() {
  install_missing "${build_packages[@]}"
  build_preset release seambook
  shopt -s nullglob
  local jobs=(jobs/*.yaml jobs/*/*.yaml) status=0
  [[ ${#jobs[@]} -gt 0 ]] || fail "no example job in jobs/"
  touch -d '1 second ago' build/demo-began
  build/release/seambook quote "${jobs[@]}" --out out --force || status=$?
  local written
  written=$(find out -name '*.xlsx' -newer build/demo-began | sort)
  if [[ -n $written ]]; then
    printf '\nOpen in a spreadsheet program:\n'
    sed 's/^/  /' <<<"$written"
  fi
  [[ $status -ne 1 ]] || echo "A job has faults, shown above; the other jobs are written." >&2
  return "$status"
}

run_tests() {
  install_missing "${build_packages[@]}" "${test_packages[@]}"
  local preset
  for preset in sanitize release; do
    build_preset "$preset"
    echo "tests of the $preset build"
    ctest --preset "$preset"
  done
}

case "${1:-}" in
  demo) demo ;;
  test) run_tests ;;
  build) install_missing "${build_packages[@]}" && build_preset release seambook ;;
  packages) install_missing "${build_packages[@]}" "${test_packages[@]}" ;;
  -h | --help | help) usage ;;
  *)
    usage >&2
    exit 2
    ;;
esac

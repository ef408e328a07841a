#!/usr/bin/env bash
# bare_root.sh DIR: runs both commands of the README, `./setup.sh demo` and `./setup.sh test`, as a newcomer would: on a
# bare Debian 12 with nothing but the minimal system and a clone of the committed tree. Needs root and debootstrap.
# DIR/bare is the pristine system, made when missing; DIR/run is a fresh copy of it for each run, left for a look.
set -euo pipefail
[[ $# -eq 1 ]] || { echo "usage: bare_root.sh DIR" >&2 && exit 2; }
cd "$(dirname "$0")/../.."
mkdir -p "$1"
dir=$(cd "$1" && pwd)

if [[ ! -e $dir/bare/made ]]; then
  rm -rf "$dir/bare"
  debootstrap --variant=minbase bookworm "$dir/bare" >"$dir/debootstrap.log"
  # The machine's own proxy, when it has one, and updates as an installed system has them.
  apt-config dump | grep -E '^Acquire::https?::Proxy ' >"$dir/bare/etc/apt/apt.conf.d/90proxy" || true
  mirror=$(awk '{print $2; exit}' "$dir/bare/etc/apt/sources.list")
  printf 'deb %s %s main\n' "$mirror" bookworm "$mirror" bookworm-updates "${mirror}-security" bookworm-security \
    >"$dir/bare/etc/apt/sources.list"
  touch "$dir/bare/made"
fi
rm -rf "$dir/run"
cp -a "$dir/bare" "$dir/run"
cp /etc/resolv.conf "$dir/run/etc/resolv.conf"
git clone --quiet --no-hardlinks . "$dir/run/root/seambook"

# In a mount namespace of its own, so that nothing stays mounted in DIR, whatever happens.
inside() {
  unshare --mount --pid --fork bash -euc '
    root=$1
    shift
    mount -t proc proc "$root/proc"
    mount --bind /dev "$root/dev"
    exec chroot "$root" /usr/bin/env -i PATH=/usr/sbin:/usr/bin:/sbin:/bin HOME=/root "$@"' \
    inside "$dir/run" "$@" </dev/null
}
for command in demo test demo; do # the second demo shows that nothing is left to do
  began=$SECONDS
  printf '\n=== ./setup.sh %s\n' "$command"
  inside bash -c "cd /root/seambook && ./setup.sh $command"
  printf -- '--- %d s\n' $((SECONDS - began))
done

# Shared by cmake/launch and cmake/check; sourced, not run. Needs bash and `set -euo pipefail`.
# shellcheck shell=bash
project=$(cd "$(dirname "${BASH_SOURCE[0]}")/.." && pwd)
cd "$project"
mkdir -p build

say() { printf '%s\n' "gazewright: $*"; }
die() {
  printf '%s\n' "gazewright: $*" >&2
  exit 1
}

# Packages that are not installed, out of those named.
missing_packages() {
  local installed package
  installed=$(dpkg-query -W -f='${Package} ${db:Status-Status}\n' "$@" 2>/dev/null || true)
  for package in "$@"; do
    grep -qxF "$package installed" <<<"$installed" || printf '%s ' "$package"
  done
}

# Installs what is missing of the named packages; does nothing, quickly, when all are there.
need_packages() {
  if ! command -v dpkg-query >/dev/null || ! command -v apt-get >/dev/null; then
    say "this is not a Debian system; going on without installing. It needs what Debian calls: $*"
    return
  fi
  local missing
  read -ra missing <<<"$(missing_packages "$@")"
  [ ${#missing[@]} -gt 0 ] || return 0

  local root=() log=build/apt.log
  if [ "$(id -u)" -ne 0 ]; then
    command -v sudo >/dev/null || die "these packages are missing and only root can install them." \
      "As root run: apt-get install ${missing[*]} - then start this again."
    root=(sudo)
  fi
  root+=(env DEBIAN_FRONTEND=noninteractive apt-get -y -qq -o DPkg::Lock::Timeout=120)
  say "installing ${#missing[@]} packages with apt (a few minutes the first time; log in $log):"
  say "  ${missing[*]}"
  "${root[@]}" update >"$log" 2>&1 || install_failed "$log" "could not fetch the package lists"
  "${root[@]}" install --no-install-recommends "${missing[@]}" >>"$log" 2>&1 ||
    install_failed "$log" "could not install them"
}

install_failed() {
  tail -n 15 "$1" >&2
  die "apt $2 (its last words are above). Check the network, the disk's free space and" \
    "/etc/apt/sources.list (Debian 12 or newer), then start this again."
}

# How many compilers at once: one per processor, but no more than one per 1.5 GB of free memory.
parallel_jobs() {
  local jobs free_kb
  jobs=$(nproc)
  free_kb=$(awk '/^MemAvailable:/ {print $2}' /proc/meminfo 2>/dev/null || true)
  if [ -n "$free_kb" ] && [ $((free_kb / 1500000)) -lt "$jobs" ]; then jobs=$((free_kb / 1500000)); fi
  [ "$jobs" -ge 1 ] || jobs=1
  printf '%s\n' "$jobs"
}

# Configures and builds one preset; more arguments go to the configure step. With `build_target` set
# only that one is built.
build_preset() {
  local preset=$1 log=build/$1.log target=${build_target:+--target $build_target}
  shift
  say "building the preset $preset (log in $log)"
  forget_moved_build "build/$preset"
  cmake --preset "$preset" "$@" >"$log" 2>&1 || build_failed "$preset" "$log"
  if [ -t 1 ]; then
    cmake --build --preset "$preset" -j "$(parallel_jobs)" $target || build_failed "$preset" /dev/null
  else
    cmake --build --preset "$preset" -j "$(parallel_jobs)" $target >>"$log" 2>&1 ||
      build_failed "$preset" "$log"
  fi
}

# A build folder that was made in another place (a copied or moved project) cannot be used again.
forget_moved_build() {
  local cache=$1/CMakeCache.txt
  [ -e "$cache" ] || return 0
  grep -qxF "CMAKE_HOME_DIRECTORY:INTERNAL=$project" "$cache" && return 0
  say "$1 was made elsewhere; building it anew"
  rm -rf "$1"
}

build_failed() {
  grep -nE -A5 'error|Error|FAILED' "$2" | head -n 40 >&2 || true
  tail -n 15 "$2" >&2
  die "the preset $1 does not build: the first error is above. If you changed nothing, remove the" \
    "folder build/$1 and start this again; a full disk also ends here (see: df -h .)."
}

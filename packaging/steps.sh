# Steps that run.sh and test.sh share: packages, configuring, building. Sourced, not run.
set -euo pipefail
root=$(cd "$(dirname "${BASH_SOURCE[0]}")/.." && pwd)

build_packages=(g++ cmake ninja-build ccache mold qt6-base-dev libqt6opengl6-dev qt6-charts-dev qt6-svg-dev
  libxkbcommon-dev libboost-dev libeigen3-dev nlohmann-json3-dev libcli11-dev fonts-inter fonts-dejavu-core)
test_packages=(libgtest-dev locales python3-jsonschema python3-fluids)

say() { printf '\n== %s\n' "$*"; }
fail() {
  printf 'error: %s\n' "$*" >&2
  exit 1
}

is_installed() { [ "$(dpkg-query -W -f='${db:Status-Status}' "$1" 2>/dev/null)" = installed ]; }

# Installs the packages of the list that are missing; with none missing it asks nobody for anything.
install_missing() {
  if ! command -v dpkg-query >/dev/null; then
    say "This is no Debian system; it is assumed that the counterparts of these are installed: $*"
    return
  fi
  local missing=() package
  for package in "$@"; do
    is_installed "$package" || missing+=("$package")
  done
  if [ ${#missing[@]} -eq 0 ]; then
    say "All $# Debian packages needed are installed"
    return
  fi
  say "Installing ${#missing[@]} Debian packages: ${missing[*]}"
  local as_root=()
  if [ "$(id -u)" -ne 0 ]; then
    command -v sudo >/dev/null || fail "not root and no sudo; as root run: apt-get install --no-install-recommends ${missing[*]}"
    as_root=(sudo)
  fi
  "${as_root[@]}" env DEBIAN_FRONTEND=noninteractive apt-get update -q ||
    fail "apt-get update failed; is there a network, and are Debian's sources set up?"
  "${as_root[@]}" env DEBIAN_FRONTEND=noninteractive apt-get install -y -q --no-install-recommends "${missing[@]}" ||
    fail "apt-get could not install ${missing[*]}"
}

# A folder of the session for Qt, when the system gives none. Goes away with the script.
session_folder=""
clean_up() { if [ -n "$session_folder" ]; then rm -rf "$session_folder"; fi; }
trap clean_up EXIT
ensure_session_folder() {
  if [ -z "${XDG_RUNTIME_DIR:-}" ] || [ ! -d "${XDG_RUNTIME_DIR:-}" ]; then
    session_folder=$(mktemp -d)
    chmod 0700 "$session_folder"
    export XDG_RUNTIME_DIR=$session_folder
  fi
}

# configure_and_build PROFILE [TARGET...]: into build/PROFILE below the project, compiled once for all checkouts.
configure_and_build() {
  local profile=$1
  shift
  export CCACHE_BASEDIR=$root CCACHE_NOHASHDIR=1 NINJA_STATUS="[$profile %f/%t, %e s] "
  local launcher=()
  if command -v ccache >/dev/null; then launcher=(-DCMAKE_CXX_COMPILER_LAUNCHER=ccache); fi
  cmake -C "$root/packaging/profiles/$profile.cmake" -S "$root" -B "$root/build/$profile" -G Ninja "${launcher[@]}" &&
    ninja -C "$root/build/$profile" -j "${jobs:-$(nproc)}" "$@"
}

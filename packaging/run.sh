#!/usr/bin/env bash
# Installs what is missing, builds Sumpwright and opens it on the demo plan, or on the plan named.
# Without a display it says so, writes a picture of the plan instead and ends well.
. "$(dirname "${BASH_SOURCE[0]}")/steps.sh"

if [ "${1:-}" = --help ] || [ "${1:-}" = -h ]; then
  printf 'usage: %s [PLAN.sumpwright]\nInstalls the Debian packages that are missing, builds into build/release, opens the plan.\n' "$0"
  exit 0
fi
[ $# -le 1 ] || fail "one plan at most; see $0 --help"
[ $# -eq 0 ] || [ -r "$1" ] || fail "the plan $1 cannot be read"

demo_plan() {
  local examples=$root/resources/examples
  if [ -f "$examples/community_shed.sumpwright" ]; then
    printf '%s' "$examples/community_shed.sumpwright"
  else
    find "$examples" -name '*.sumpwright' 2>/dev/null | sort | head -n 1
  fi
}

write_picture() {
  local picture=$root/build/release/plan.png
  say "No display here ($1): writing a picture of the plan instead"
  QT_QPA_PLATFORM=offscreen "$program" --picture "$picture" "$plan" || fail "the picture could not be written"
  [ -s "$picture" ] || fail "the picture $picture is empty"
  say "The picture is $picture"
}

install_missing "${build_packages[@]}"
say "Building the release in $root/build/release with $(nproc) processors"
configure_and_build release || fail "the build failed; the first error above says why"

program=$root/build/release/sumpwright
plan=${1:-$(demo_plan)}
[ -n "$plan" ] || fail "no example plan below $root/resources/examples"
ensure_session_folder

if [ -z "${DISPLAY:-}${WAYLAND_DISPLAY:-}" ]; then
  write_picture "neither DISPLAY nor WAYLAND_DISPLAY is set"
  exit 0
fi
say "Opening $plan"
said=$XDG_RUNTIME_DIR/sumpwright-said
status=0
"$program" "$plan" 2> >(tee "$said" >&2) || status=$?
if [ "$status" -ne 0 ] && grep -q 'could not connect to display' "$said"; then
  write_picture "DISPLAY is ${DISPLAY:-empty}, but nothing answers there"
  status=0
fi
rm -f "$said"
exit "$status"

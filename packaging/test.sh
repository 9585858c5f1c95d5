#!/usr/bin/env bash
# Installs what is missing, builds Sumpwright and runs all tests (with --all under sanitizers too). Ends with CTest's own closing lines
# of the dev profile; the exit status is 0 only when every profile built and every test passed.
. "$(dirname "${BASH_SOURCE[0]}")/steps.sh"

usage() {
  cat <<'EOT'
usage: test.sh [--quick | --all] [--only PROFILE]... [--jobs N]
  --quick         the dev profile only
  --all           the sanitizers too; without it dev and core-only
  --only PROFILE  dev, core-only, asan or tsan; may be given several times
  --jobs N        processes for building and testing; without it one for each processor
dev        all tests
core-only  the core, its tests and the command line, with Qt hidden
asan       address and undefined-behaviour sanitizers over all tests
tsan       thread sanitizer over the engine
EOT
}

# Sanitizers want the address space they know: where the system allows it, everything runs without randomisation.
if [ -z "${SUMPWRIGHT_PLAIN_ADDRESSES:-}" ] && setarch "$(uname -m)" -R true 2>/dev/null; then
  SUMPWRIGHT_PLAIN_ADDRESSES=1 exec setarch "$(uname -m)" -R "${BASH_SOURCE[0]}" "$@"
fi

all=(dev core-only asan tsan)
profiles=()
jobs=$(nproc)
while [ $# -gt 0 ]; do
  case "$1" in
    --quick) profiles=(dev) ;;
    --all) profiles=("${all[@]}") ;;
    --only)
      case " ${all[*]} " in *" ${2:-} "*) profiles+=("$2") ;; *) fail "no profile '${2:-}'; there are: ${all[*]}" ;; esac
      shift ;;
    --jobs)
      [[ "${2:-}" =~ ^[1-9][0-9]*$ ]] || fail "--jobs wants a whole number"
      jobs=$2
      shift ;;
    --help | -h) usage; exit 0 ;;
    *) usage >&2; fail "unknown option $1" ;;
  esac
  shift
done
[ ${#profiles[@]} -gt 0 ] || profiles=(dev core-only)

# Compile-fail tests look at the compiler, not at running code: once, in dev, is enough.
test_profile() {
  local profile=$1 folder=$root/build/$1 options=()
  case "$profile" in
    dev) ;;
    core-only) options=(-LE compile_fail) ;;
    asan) options=(-LE compile_fail) ;;
    tsan) options=(-LE compile_fail -E '_NOT_BUILT$') ;;
  esac
  ctest --test-dir "$folder" --output-on-failure -j "$jobs" --no-tests=error \
    --output-junit "$folder/tests.xml" "${options[@]}" 2>&1 | tee "$folder/tests.txt"
}

build_profile() {
  case "$1" in
    tsan) configure_and_build tsan test_engine ;;
    *) configure_and_build "$1" ;;
  esac
}

# The command line of the core-only profile must not have found its way to Qt.
look_for_qt() {
  local program=$root/build/core-only/sumpwright
  if [ "$1" != core-only ] || [ ! -x "$program" ]; then return 0; fi
  if ldd "$program" | grep -i 'libqt'; then
    printf 'error: the core-only program needs Qt\n' >&2
    return 1
  fi
  say "core-only: the program needs no Qt"
}

# One of the counts CTest wrote: tests, failures, skipped.
count_of() {
  sed -n "s/^[[:space:]]*$2=\"\([0-9]*\)\".*/\1/p" "$root/build/$1/tests.xml" 2>/dev/null | head -n 1 || true
}

table=()
failed=()
run_profile() {
  local profile=$1 started=$SECONDS built result=passed
  say "Profile $profile: building in $root/build/$profile"
  rm -f "$root/build/$profile/tests.xml" "$root/build/$profile/tests.txt"
  if build_profile "$profile"; then
    built=$((SECONDS - started))
    say "Profile $profile: testing"
    test_profile "$profile" || result="tests failed"
    look_for_qt "$profile" || result="needs Qt"
  else
    built=$((SECONDS - started))
    result="build failed"
  fi
  [ "$result" = passed ] || failed+=("$profile: $result")
  local tests failures skipped
  tests=$(count_of "$profile" tests)
  failures=$(count_of "$profile" failures)
  skipped=$(count_of "$profile" skipped)
  table+=("$(printf '%-10s %6s %7s %8s %8s s %8s s  %s' "$profile" "${tests:--}" "${failures:--}" "${skipped:--}" \
    "$built" "$((SECONDS - started - built))" "$result")")
}

# One test needs a desktop with a decimal comma; where its locale cannot be made, that test says it was skipped.
make_comma_locale() {
  local folder=$root/build/locales
  mkdir -p "$folder"
  if [ -d "$folder/de_DE.UTF-8" ] || localedef -i de_DE -f UTF-8 "$folder/de_DE.UTF-8" >/dev/null 2>&1; then
    export LOCPATH=$folder
  fi
}

install_missing "${build_packages[@]}" "${test_packages[@]}"
make_comma_locale
ensure_session_folder
export QT_QPA_PLATFORM=${QT_QPA_PLATFORM:-offscreen} CTEST_OUTPUT_ON_FAILURE=1
export UBSAN_OPTIONS=print_stacktrace=1
for profile in "${profiles[@]}"; do run_profile "$profile"; done

say "Profiles"
printf '%-10s %6s %7s %8s %10s %10s  %s\n' profile tests failed skipped built tested result
printf '%s\n' "${table[@]}"
for line in "${failed[@]}"; do printf 'FAILED %s\n' "$line"; done
printf '\n'
for profile in "${profiles[@]}"; do
  if [ "$profile" = dev ] || [[ " ${profiles[*]} " != *" dev "* ]]; then
    sed -n '/tests passed,/,$p' "$root/build/$profile/tests.txt" 2>/dev/null || true
  fi
done
[ ${#failed[@]} -eq 0 ]

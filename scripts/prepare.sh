#!/bin/sh
# prepare.sh modules: installs the packages that package-lock.json names, if they are not there.
# prepare.sh command: that, and builds dist/cli.cjs.
# Says what it does on standard error. Any number of these may run at once: one works, the rest
# wait, and then find the work done.
set -u

root=$(CDPATH='' cd -- "${0%/*}/.." && pwd -P) || exit 1
cd "$root" || exit 1
lock=.holdturn-lock
installed=node_modules/.package-lock.json # npm writes it last
stamp=dist/.stamp

say() { printf 'holdturn: %s\n' "$*" >&2; }
fail() {
  say "$*"
  exit 1
}

need_node() {
  found=$(node --version 2>/dev/null) ||
    fail 'Node is not installed. Holdturn needs Node 20.19 or newer: https://nodejs.org/en/download'
  major=${found#v}
  minor=${major#*.}
  major=${major%%.*}
  minor=${minor%%.*}
  [ "$major" -gt 20 ] || { [ "$major" -eq 20 ] && [ "$minor" -ge 19 ]; } ||
    fail "Node $found is too old. Holdturn needs Node 20.19 or newer: https://nodejs.org/en/download"
}

# The lock is a symbolic link that points at its owner's number: it is made in one step, so it
# never stands without an owner.
take_lock() {
  told=
  until ln -s "$$" "$lock" 2>/dev/null; do
    [ -w . ] || fail "Cannot write in $root. Run this as the owner of that folder, once."
    owner=$(readlink "$lock") || continue
    if ! kill -0 "$owner" 2>/dev/null && [ ! -d "/proc/$owner" ]; then
      mv "$lock" "$lock.$$" 2>/dev/null && rm -f "$lock.$$"
      continue
    fi
    [ -n "$told" ] || say "another run (process $owner) is installing or building; waiting for it"
    told=yes
    sleep 1
  done
  trap 'rm -f "$lock"' EXIT
  trap 'exit 130' HUP INT TERM
}

install_modules() {
  [ -f "$installed" ] && [ -z "$(find package-lock.json -newer "$installed")" ] && return
  command -v npm >/dev/null || fail 'npm is not installed. On Debian: apt-get install npm'
  say 'installing the packages that it needs (npm ci)'
  npm ci --include=dev --no-audit --no-fund --loglevel=error >&2 ||
    fail 'npm could not install the packages; its reason is above. Then run this again.'
  touch "$installed"
}

build_command() {
  [ -f dist/cli.cjs ] && [ -f "$stamp" ] && [ "$(cat "$stamp")" = "$(command -v node)" ] &&
    [ -z "$(find src trains package.json package-lock.json tsconfig.json vite.config.ts scripts \
      -newer "$stamp")" ] && return
  say 'building the command'
  mkdir -p dist
  # Made before the build reads a file: what is edited during the build is newer.
  command -v node >"$stamp.new"
  node scripts/build.mjs command >&2 || fail 'the build failed; the reason is above.'
  mv "$stamp.new" "$stamp"
}

need_node
take_lock
install_modules
case ${1-} in
  modules) ;;
  command) build_command ;;
  *) fail 'say what to prepare: modules or command' ;;
esac

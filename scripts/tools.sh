#!/bin/sh
# What the tests need beside Node: a browser for the screen, and a reader of PDFs for the sheets.
# Debian's packages are installed where this runs as root; elsewhere it says what is missing.
set -u

missing=
[ -x "${CHROMIUM:-/usr/bin/chromium}" ] || missing="$missing chromium"
command -v pdftotext >/dev/null || missing="$missing poppler-utils"
[ -n "$missing" ] || exit 0

if [ "$(id -u)" -eq 0 ] && command -v apt-get >/dev/null; then
  printf 'holdturn: installing%s\n' "$missing" >&2
  # shellcheck disable=SC2086
  apt-get update -qq && DEBIAN_FRONTEND=noninteractive apt-get install -y -qq $missing >/dev/null
else
  printf 'holdturn: the tests need%s. On Debian: apt-get install%s\n' "$missing" "$missing" >&2
  exit 1
fi

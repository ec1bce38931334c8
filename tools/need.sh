#!/bin/sh
# Makes sure that commands are there: tools/need.sh COMMAND:DEBIAN-PACKAGE ...
# As root on Debian it installs what is missing; otherwise it prints the line to type, and fails.
set -eu

missing=
for pair in "$@"; do
    command -v "${pair%%:*}" >/dev/null 2>&1 || missing="$missing ${pair#*:}"
done
[ -n "$missing" ] || exit 0

if [ "$(id -u)" = 0 ] && command -v apt-get >/dev/null 2>&1; then
    echo "installing:$missing"
    apt-get update -qq
    # shellcheck disable=SC2086 # a list of packages
    DEBIAN_FRONTEND=noninteractive apt-get install -y -qq --no-install-recommends $missing >/dev/null
else
    echo "Missing. Type this, then try again:" >&2
    echo "  sudo apt-get install --no-install-recommends$missing" >&2
    exit 1
fi

#!/usr/bin/env bash
# Copies the database of the running containers to a file, while it is in use.
#   bash deploy/backup.sh FILE
set -euo pipefail

fail() { printf '%s\n' "$*" >&2; exit 1; }

(($# == 1)) || fail "usage: bash deploy/backup.sh FILE"
file=$(realpath -m "$1")
[[ ! -e $file ]] || fail "$file is there already; name a new file."
cd "$(dirname "${BASH_SOURCE[0]}")/.."

umask 077
trap 'rm -f "$file.part"' EXIT
docker compose exec -T db pg_dump --username=postgres --format=custom labvolatility >"$file.part"
docker compose exec -T db pg_restore --list <"$file.part" >/dev/null || fail "The copy can't be read again; nothing was kept."
mv "$file.part" "$file"
echo "Backed up to $file, $(stat -c %s "$file") bytes."

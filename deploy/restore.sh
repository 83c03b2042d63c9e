#!/usr/bin/env bash
# Puts a copy into the empty database of the containers; records are never written over.
#   docker compose stop web
#   bash deploy/restore.sh FILE
set -euo pipefail

fail() { printf '%s\n' "$*" >&2; exit 1; }

(($# == 1)) || fail "usage: bash deploy/restore.sh FILE"
file=$(realpath "$1")
cd "$(dirname "${BASH_SOURCE[0]}")/.."

[[ -z $(docker compose ps -q web) || $(docker inspect -f '{{.State.Running}}' "$(docker compose ps -q web)") == false ]] ||
  fail "The application is running: docker compose stop web"
for _ in {1..60}; do # just started, it may still be making itself
  ! docker compose exec -T db pg_isready --quiet --host=127.0.0.1 --username=postgres || break
  sleep 1
done
tables=$(docker compose exec -T db psql --username=postgres --dbname=labvolatility --tuples-only --no-align \
  --command="SELECT count(*) FROM pg_tables WHERE schemaname = 'public'")
[[ $tables == 0 ]] || fail "The database holds tables already, and records are never written over. deploy/README.md says how to make room."

# What the application's role may do is granted anew when it starts.
docker compose exec -T db pg_restore --username=labvolatility_owner --dbname=labvolatility \
  --no-owner --no-privileges --exit-on-error --single-transaction <"$file"
echo "Restored from $file. Run \"records check\" and \"replay\" before the laboratory is used."

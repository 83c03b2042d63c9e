#!/usr/bin/env bash
# Builds the solution, publishes the application and runs every test, against a PostgreSQL of its own
# and a real browser. Needs Debian and the .NET SDK; brings PostgreSQL and Chromium itself if they are missing.
#
#   bash tests/all.sh                                  everything
#   bash tests/all.sh --filter-class '*Rounding*'      what matches; any option of the test runner
#
# Ends with a line "N passed, N failed". Exit code 0 only if every project ran and nothing failed.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/.."

export DOTNET_CLI_TELEMETRY_OPTOUT=1 DOTNET_NOLOGO=1 DOTNET_CLI_UI_LANGUAGE=en
# No build server or compiler server may outlive the run.
export MSBUILDDISABLENODEREUSE=1 DOTNET_CLI_USE_MSBUILD_SERVER=0 UseSharedCompilation=false

passed=0 failed=0 finished=no
child='' scratch='' bin='' cluster=()

say() { printf '%s\n' "-- $*"; }
fail() { printf '%s\n' "tests/all.sh: $*" >&2; exit 1; }

stop_child() {
  [[ -n $child ]] || return 0
  kill -TERM -- "-$child" 2>/dev/null || return 0
  for _ in {1..50}; do kill -0 -- "-$child" 2>/dev/null || return 0; sleep 0.1; done
  kill -KILL -- "-$child" 2>/dev/null || true
}

leave() {
  local code=$?
  trap - EXIT; trap '' INT TERM HUP
  stop_child
  if [[ -n $scratch ]]; then
    [[ ! -f $scratch/data/postmaster.pid ]] || "${cluster[@]}" "$bin/pg_ctl" -D "$scratch/data" -m immediate -s stop || true
    rm -rf "$scratch"
  fi
  [[ $finished == yes ]] || failed=$((failed + 1))
  if ((code == 0 && failed > 0)); then code=1; fi
  echo "$passed passed, $failed failed"
  exit "$code"
}
trap leave EXIT
trap 'exit 130' INT
trap 'exit 143' TERM HUP

# In a process group of its own, so that an interrupted run can stop all that it started; without the lock, so that
# nothing it starts can hold it.
run() {
  local code=0
  set -m
  "$@" </dev/null {lock}>&- &
  child=$!
  set +m
  wait "$child" || code=$?
  child=''
  return "$code"
}

as_administrator() {
  if ((EUID == 0)); then "$@"
  elif command -v sudo >/dev/null && { [[ -t 0 ]] || sudo -n true 2>/dev/null; }; then sudo "$@"
  else fail "'$*' needs root or sudo; run it as an administrator, then start again"
  fi
}

install_packages() {
  command -v apt-get >/dev/null || fail "missing: $*; no apt-get on this machine to bring them, install them by hand"
  say "installing $*"
  local apt=(env DEBIAN_FRONTEND=noninteractive apt-get -q -o DPkg::Lock::Timeout=600)
  as_administrator "${apt[@]}" update || fail "'apt-get update' failed; needed to install: $*"
  as_administrator "${apt[@]}" install -y --no-install-recommends "$@" || fail "could not install: $*"
}

find_postgres() {
  local candidate
  for candidate in $(printf '%s\n' /usr/lib/postgresql/*/bin | sort -rV) "$(dirname "$(command -v initdb || echo /none/initdb)")"; do
    if [[ -x $candidate/initdb && -x $candidate/pg_ctl && -x $candidate/postgres ]]; then bin=$candidate; return 0; fi
  done
  return 1
}

find_chromium() { browser=$(command -v chromium || command -v chromium-browser); }

bring_tools() {
  local missing=()
  find_postgres || missing+=(postgresql)
  find_chromium || missing+=(chromium)
  ((${#missing[@]} == 0)) || install_packages "${missing[@]}"
  find_postgres || fail "no PostgreSQL server binaries (initdb, pg_ctl, postgres) found after the installation"
  find_chromium || fail "no chromium found after the installation"
}

build() {
  say "restore"
  run dotnet restore LabVolatility.sln || fail "the restore failed"
  say "build"
  run dotnet build LabVolatility.sln -c Release --no-restore || fail "the build failed"
  say "publish"
  rm -rf "$artifacts/tested-application"
  run dotnet publish src/LabVolatility.Web -c Release -r linux-x64 --self-contained false --no-restore \
    -o "$artifacts/tested-application" || fail "the publish failed"
}

# The server refuses to run as root: then it runs as PostgreSQL's own account, or as nobody.
choose_account() {
  ((EUID == 0)) || return 0
  local account=nobody
  ! id -u postgres >/dev/null 2>&1 || account=postgres
  cluster=(runuser -u "$account" --)
  chown "$account" "$scratch"
}

start_postgres() {
  say "starting a PostgreSQL for the tests ($("$bin/postgres" --version))"
  choose_account
  cd "$scratch" # the other account may not be allowed into the project's folder
  "${cluster[@]}" "$bin/initdb" -D "$scratch/data" -U postgres -A trust -N -E UTF8 --locale=C.UTF-8 >"$scratch/initdb.log" 2>&1 ||
    { cat "$scratch/initdb.log" >&2; fail "initdb failed in $scratch"; }
  local try port=''
  for try in {1..20}; do
    port=$((20000 + (RANDOM * 32768 + RANDOM) % 12000))
    "${cluster[@]}" tee "$scratch/data/postgresql.auto.conf" >/dev/null <<SETTINGS
listen_addresses = '127.0.0.1'
port = $port
unix_socket_directories = '$scratch'
max_connections = 200
fsync = off
synchronous_commit = off
full_page_writes = off
SETTINGS
    if "${cluster[@]}" "$bin/pg_ctl" -D "$scratch/data" -w -s -l "$scratch/data/server.log" start \
      </dev/null >/dev/null 2>&1 {lock}>&-; then break; fi
    ((try < 20)) || { tail -20 "$scratch/data/server.log" >&2; fail "PostgreSQL did not start"; }
  done
  cd "$OLDPWD"
  export LABVOLATILITY_TEST_POSTGRES="Host=127.0.0.1;Port=$port;Username=postgres;Database=postgres;Include Error Detail=true"
}

count() { grep -aE "^ +$1: [0-9]+$" "$2" | tail -1 | grep -oE '[0-9]+$' || echo 0; }

test_project() {
  local project=$1 code=0 log good bad
  shift
  log=$scratch/$project.log
  say "$project"
  run test_logged "$project" "$log" "$@" || code=$?
  good=$(count succeeded "$log") bad=$(count failed "$log")
  # 8: no test ran. Only a filter makes that right for one project, and never for all of them.
  if ((code == 8 && $# > 0)); then code=0; fi
  # A crash or a broken start reports no failed test of its own.
  if ((code != 0 && bad == 0)); then
    local what="broke off with code $code"
    ((code != 8)) || what="no test ran"
    bad=1
    echo "$project: $what" >>"$scratch/failures"
  fi
  grep -aE '^failed ' "$log" | sed "s/^failed /$project: /" >>"$scratch/failures" || true
  passed=$((passed + good)) failed=$((failed + bad))
}

test_logged() {
  dotnet test --project "tests/$1" -c Release --no-build --no-ansi --no-progress --timeout 30m --fail-skips on "${@:3}" 2>&1 | tee "$2"
}

command -v dotnet >/dev/null || fail "no dotnet on the path; install the .NET SDK that global.json names"
artifacts=${ArtifactsPath:-$PWD/.artifacts}
mkdir -p "$artifacts"
artifacts=$(cd "$artifacts" && pwd)
export ArtifactsPath=$artifacts

exec {lock}>"$artifacts/tests.lock"
flock -n "$lock" || { say "another run uses $artifacts; waiting for it"; flock "$lock"; }

bring_tools
build
scratch=$(mktemp -d -t labvolatility.XXXXXXXX)
chmod 755 "$scratch"
start_postgres
export LABVOLATILITY_TEST_CHROMIUM=$browser
export LABVOLATILITY_TEST_APP=$artifacts/tested-application/LabVolatility.Web.dll

install -m 666 /dev/null "$scratch/failures"
for project in tests/*.Tests/; do
  test_project "$(basename "$project")" "$@"
done

if [[ -s $scratch/failures ]]; then
  printf '\nFailed:\n'
  sed 's/^/  /' "$scratch/failures"
  echo
fi
if ((passed + failed == 0)); then echo "No test ran." >&2; failed=1; fi
finished=yes

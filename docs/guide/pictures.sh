#!/usr/bin/env bash
# Makes the pictures of the guide anew: publishes the application, runs the demo on a free port of this machine in a
# folder that is thrown away, and takes each picture in a headless Chromium.
#   bash docs/guide/pictures.sh
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/../.."

fail() { printf '%s\n' "$*" >&2; exit 1; }

browser=$(command -v chromium || command -v chromium-browser) || fail "No Chromium here; 'bash tests/all.sh' installs one."
scratch=$(mktemp -d -t labvolatility-guide.XXXXXXXX)
trap 'rm -rf "$scratch"' EXIT
mkdir "$scratch/pictures"

dotnet publish src/LabVolatility.Web -c Release -r linux-x64 --self-contained false -o "$scratch/application"
LABVOLATILITY_TEST_APP=$scratch/application/LabVolatility.Web.dll LABVOLATILITY_TEST_CHROMIUM=$browser \
  LABVOLATILITY_GUIDE_PICTURES=$scratch/pictures \
  dotnet test --project tests/LabVolatility.Browser.Tests -c Release --filter-class '*GuideTests'

mkdir -p docs/guide/pictures
find docs/guide/pictures -name '*.webp' -delete
cp "$scratch"/pictures/*.webp docs/guide/pictures/
du -sh docs/guide/pictures

#!/usr/bin/env bash
# Until the first release: writes the Initial migration of both engines anew from the model.
# After it a change of the model is one more migration for each engine, and this script goes.
set -euo pipefail
cd "$(dirname "$0")/.."
for engine in Sqlite Postgres; do
  folder="Storage/$engine/Migrations"
  rm -f "$folder"/*_Initial.cs "$folder"/*_Initial.Designer.cs "$folder"/*ModelSnapshot.cs
  dotnet ef migrations add Initial --context "${engine}LabContext" --output-dir "$folder"
  for file in "$folder"/*_Initial*.cs; do
    stamp=$(basename "$file" | cut -d_ -f1)
    sed -i "s/${stamp}_Initial/20261125000001_Initial/; 1s/^\xEF\xBB\xBF//" "$file"
    mv "$file" "${file/$stamp/20261125000001}"
  done
done

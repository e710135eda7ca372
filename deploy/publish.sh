#!/usr/bin/env bash
# Publishes the web application and the `logbook` command side by side into one folder.
# Usage: deploy/publish.sh FOLDER
set -euo pipefail
[ $# = 1 ] || { echo "usage: deploy/publish.sh FOLDER" >&2; exit 2; }
mkdir -p "$1"
out=$(cd "$1" && pwd)
cd "$(dirname "${BASH_SOURCE[0]}")/.."
export DOTNET_CLI_TELEMETRY_OPTOUT=1 DOTNET_NOLOGO=1
dotnet publish src/LogBook.Web -c Release -o "$out/web"
dotnet publish src/LogBook.Cli -c Release -o "$out/command"

#!/usr/bin/env bash
# Makes one backup of a running LogBook and keeps the newest 96 (a day of quarter hours).
# Usage: backup.sh LOGBOOK-COMMAND.dll DATABASE FOLDER
set -euo pipefail
[ $# = 3 ] || { echo "usage: backup.sh COMMAND DATABASE FOLDER" >&2; exit 2; }
mkdir -p "$3"
dotnet "$1" backup "$3" --database "$2"
# Newest first by name, since the name carries the time.
find "$3" -maxdepth 1 -name 'logbook-*.db' -printf '%f\n' | sort -r | tail -n +97 | while read -r old; do rm -- "$3/$old"; done

#!/usr/bin/env bash
# Runs the container file's steps and the backup note on this machine, without a container engine:
# publish, start as the container would, wait until ready, back up while it runs, restore the backup, verify.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/.."
work=$(mktemp -d)
pid=
trap '[ -z "$pid" ] || kill "$pid" 2>/dev/null || true; rm -rf "$work"' EXIT

deploy/publish.sh "$work/out" >"$work/publish.log" 2>&1 || { tail -20 "$work/publish.log" >&2; exit 1; }
mkdir "$work/state"
# An ordinary firm, not the demo: the web application opens a demo only with --demo.
dotnet "$work/out/command/logbook.dll" demo --systems 2 --years 0.2 --out "$work/firm.json"
dotnet "$work/out/command/logbook.dll" import "$work/firm.json" --database "$work/state/logbook.db"
port=$((20000 + RANDOM % 20000))
(cd "$work/state" && ASPNETCORE_ENVIRONMENT=Production exec dotnet "$work/out/web/LogBook.Web.dll" --database "$work/state/logbook.db" --urls "http://127.0.0.1:$port") >"$work/web.log" 2>&1 &
pid=$!
for _ in $(seq 120); do
    curl -fsS "http://127.0.0.1:$port/health/ready" >/dev/null 2>&1 && break
    kill -0 "$pid" 2>/dev/null || { tail -20 "$work/web.log" >&2; exit 1; }
    sleep 0.5
done
curl -fsS "http://127.0.0.1:$port/health/ready" >/dev/null

# Pages come with their looks, although the service runs in the folder of its data.
curl -fsS -o /dev/null "http://127.0.0.1:$port/app.css"

# The form without signal: its worker installs all files of its list or none, and they are brought over a telephone's line once.
listed=0
bytes=0
for file in $(curl -fsS "http://127.0.0.1:$port/capture/assets.js" | grep -o '"url": *"[^"]*"' | cut -d '"' -f 4); do
    size=$(curl -fsS -H 'Accept-Encoding: br' -o /dev/null -w '%{size_download}' "http://127.0.0.1:$port/$file") || { echo "the form without signal lacks $file" >&2; exit 1; }
    listed=$((listed + 1))
    bytes=$((bytes + size))
done
[ "$listed" -gt 30 ] || { echo "the form without signal lists only $listed files" >&2; exit 1; }
[ "$bytes" -le 3000000 ] || { echo "the form without signal brings $bytes bytes, more than 3 MB" >&2; exit 1; }
echo "deploy: the form without signal brings $listed files, $bytes bytes"

deploy/backup.sh "$work/out/command/logbook.dll" "$work/state/logbook.db" "$work/backups"
backup=$(find "$work/backups" -name 'logbook-*.db' | sort | tail -n 1)
[ -n "$backup" ] || { echo "no backup was made" >&2; exit 1; }
kill -TERM "$pid"; wait "$pid" || true; pid=
dotnet "$work/out/command/logbook.dll" restore "$backup" --database "$work/restored.db"
dotnet "$work/out/command/logbook.dll" verify --database "$work/restored.db"
echo "deploy: published, started, backed up, restored and verified"

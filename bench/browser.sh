#!/bin/sh
# What a solve costs in a browser: publishes the measuring page, serves it, opens it in Chromium without a window and prints
# its console. Needs the .NET 10 SDK, python3 and chromium.
set -eu
cd "$(dirname "$0")"
out=$(mktemp -d)
port=$((20000 + $$ % 20000))
dotnet publish Emberwright.Bench.Browser -c Release -v q --nologo -o "$out"
python3 -m http.server $port --bind 127.0.0.1 --directory "$out/wwwroot" > "$out/server.log" 2>&1 &
server=$!
trap 'kill $server ${browser:-} 2> /dev/null || true' EXIT
sleep 1
chromium --headless --no-sandbox --disable-gpu --enable-logging=stderr --user-data-dir="$out/profile" http://127.0.0.1:$port/ 2> "$out/console.log" > /dev/null &
browser=$!
for _ in $(seq 1 300); do
  if grep -q '"measured"' "$out/console.log"; then break; fi
  sleep 1
done
sed -n 's/.*"\(| .* |\)".*/\1/p' "$out/console.log"

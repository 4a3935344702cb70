#!/usr/bin/env bash
# Prints the table "Measured: drip" of DEVELOPERS.md: the hydraulic solve of 100 rows of 100 outlets
# off one header, beside the EPA's engine (npm epanet-js 0.9.0) on the same network where the command
# `node` and that package are there. The engine is a peer to measure against and nothing else. Both
# in processor time, reading of the network apart, warm, median of seven.
#
#   plugins/water/benchmark.sh [folder]     the folder in which `npm i epanet-js@0.9.0` was run
set -euo pipefail
root=$(cd "$(dirname "$0")/../.." && pwd)
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT

cd "$root"
if [ -z "${YARDLOOM_CLASSES:-}" ]; then
  mvn -q -o -pl plugins/water -am test-compile
  YARDLOOM_CLASSES=plugins/water/target/test-classes:$(find kernel plugins -path '*/target/classes' -type d | LC_ALL=C sort | tr '\n' ':')
fi
echo "machine: $(nproc) cores of $(sed -n 's/^model name[^:]*: //p' /proc/cpuinfo | head -n 1)," \
  "$(java -version 2>&1 | sed -n 2p), load $(cut -d ' ' -f 1 /proc/loadavg)"
ours=$(java -cp "$YARDLOOM_CLASSES" yardloom.water.bench.DripBenchmark)
echo "$ours"
folder=${1:-$root}
if ! command -v node > /dev/null || [ ! -d "$folder/node_modules/epanet-js" ]; then
  echo "engine: node or epanet-js is not there, so no ratio"
  exit 0
fi
cat > "$folder/yardloom-bench.mjs" <<'JS'
import { Project, Workspace } from 'epanet-js';
const rows = 100, outlets = 100;
let joints = '[TITLE]\nbench\n[JUNCTIONS]\n', pipes = '[PIPES]\n', emitters = '[EMITTERS]\n', id = 0;
for (let i = 1; i <= rows; i++) {
  joints += `M${i} 0 0\n`;
  pipes += `P${++id} ${i == 1 ? 'S' : 'M' + (i - 1)} M${i} 0.5 50 0.0015 0 Open\n`;
  for (let j = 1; j <= outlets; j++) {
    joints += `E${i}_${j} 0 0\n`;
    pipes += `P${++id} ${j == 1 ? 'M' + i : 'E' + i + '_' + (j - 1)} E${i}_${j} 0.3 14.5 0.0015 0 Open\n`;
    emitters += `E${i}_${j} ${(2.0 / 3600) / Math.sqrt(10)}\n`;
  }
}
const options = '[OPTIONS]\nUNITS LPS\nHEADLOSS D-W\nACCURACY 1e-6\nTRIALS 200\nEMITTER EXPONENT 0.5\n[TIMES]\nDURATION 0\n[END]\n';
const ws = new Workspace();
if (ws.loadModule) await ws.loadModule();
ws.writeFile('n.inp', joints + '[RESERVOIRS]\nS 15\n' + pipes + emitters + options);
const ms = [];
let first, last;
for (let k = 0; k < 12; k++) {
  const model = new Project(ws);
  model.open('n.inp', 'r.rpt', 'o.bin');
  model.openH();
  const start = process.cpuUsage();
  model.initH(0);
  model.runH();
  const used = process.cpuUsage(start);
  if (k >= 5) ms.push((used.user + used.system) / 1e3);
  first = model.getNodeValue(model.getNodeIndex('E1_1'), 11);
  last = model.getNodeValue(model.getNodeIndex('E100_100'), 11);
  model.closeH();
  model.close();
}
ms.sort((a, b) => a - b);
console.log(`engine: processor ms median ${ms[3].toFixed(2)} min ${ms[0].toFixed(2)} max ${ms[6].toFixed(2)} p first ${first.toFixed(5)} p last ${last.toFixed(5)}`);
JS
engine=$(cd "$folder" && node yardloom-bench.mjs)
rm -f "$folder/yardloom-bench.mjs"
echo "$engine"
printf '%s\n%s\n' "$ours" "$engine" | awk '
  { median[NR] = $5; first[NR] = $12; last[NR] = $15 }
  END {
    a = first[1] - first[2]; b = last[1] - last[2]
    if (a < 0) a = -a; if (b < 0) b = -b
    printf "ratio %.1f, pressures differ by %.5f and %.5f m\n", median[2] / median[1], a, b
  }'

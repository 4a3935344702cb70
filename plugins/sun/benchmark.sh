#!/usr/bin/env bash
# Prints the table "Measured: sun" of DEVELOPERS.md: the engine beside a brute-force ray test of the
# same scene and, where the command `grass` is installed (Debian: grass-core), beside that general
# GIS on a raster of the same scene. The GIS is a peer to measure against and nothing else.
#
#   plugins/sun/benchmark.sh [stride]     the ray test takes every stride-th cell, 97 unless told
#
# Run it on a quiet machine; about three minutes on two cores.
set -euo pipefail
root=$(cd "$(dirname "$0")/../.." && pwd)
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT

cd "$root"
mvn -q -o -pl plugins/sun -am test-compile
libs=$(find "${MAVEN_REPO:-$HOME/.m2/repository}" \
  \( -name 'jts-core-1.20.0.jar' -o -name 'solarpositioning-*.jar' -o -name 'jackson-*.jar' \) | LC_ALL=C sort | tr '\n' ':')
classes=$(find kernel plugins -path '*/target/classes' -type d | LC_ALL=C sort | tr '\n' ':')
bench() {
  java -Xmx512m -cp "plugins/sun/target/test-classes:$classes$libs" \
    yardloom.sun.bench.SunBenchmark "$@"
}

echo "machine: $(nproc) cores of $(sed -n 's/^model name[^:]*: //p' /proc/cpuinfo | head -n 1)," \
  "$(java -version 2>&1 | sed -n 2p), load $(cut -d ' ' -f 1 /proc/loadavg)"
echo
echo "| what | seconds | processor seconds | worst cell | mean |"
echo "| --- | --- | --- | --- | --- |"
for run in 1 2 3; do
  bench cold
done
bench table "${1:-97}"
bench dsm > "$work/dsm.asc"
if command -v grass > /dev/null; then
  cat > "$work/horizons.sh" <<'GIS'
r.in.gdal input=dsm.asc output=dsm -o --o --q
g.region raster=dsm
clock() { date +%s.%N; }
used() { awk '{ printf "%.2f", ($16 + $17) / '"$(getconf CLK_TCK)"' }' "/proc/$$/stat"; }
start=$(clock); used0=$(used)
r.horizon elevation=dsm step=5 output=hor --o --q
middle=$(clock); used1=$(used)
for day in 17 47 75 105 135 162 198 228 258 288 318 344; do
  r.sun elevation=dsm aspect_value=0 slope_value=0 horizon_basename=hor horizon_step=5 \
    insol_time=it$day day=$day step=0.0833 nprocs=2 --o --q
done
end=$(clock); used2=$(used)
row() { awk -v w="$1" -v a="$2" -v b="$3" -v c="$4" -v d="$5" 'BEGIN { printf "| %s | %.2f | %.2f | | |\n", w, b - a, d - c }'; }
row "general GIS: 72 horizons of 5° of a raster" "$start" "$middle" "$used0" "$used1"
row "general GIS: twelve days at 5-minute steps" "$middle" "$end" "$used1" "$used2"
row "general GIS: both" "$start" "$end" "$used0" "$used2"
GIS
  cd "$work"
  grass -c EPSG:32616 db -e > grass.log 2>&1
  grass db/PERMANENT --exec bash horizons.sh 2>> grass.log || { tail -n 5 grass.log >&2; exit 1; }
else
  echo "| general GIS | not installed | | | |"
fi

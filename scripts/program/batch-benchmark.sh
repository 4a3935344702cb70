#!/usr/bin/env bash
# Prints how near `batch` comes to ideal: one job's time for the lots divided by the cores, against
# the time on all cores, and how much memory it holds after a tenth of the lots and after all.
#
#   scripts/program/batch-benchmark.sh [LOTS] [YARDLOOM]   1,000 lots unless told
#
# Needs a quiet machine: both times are by the clock. A tenth of the lots is drawn by one job and
# scaled up. A ratio of 1.00 is ideal; start-up counts on both sides.
set -euo pipefail
here=$(cd "$(dirname "$0")" && pwd)
lots=${1:-1000}
yardloom=${2:-"$here/../yardloom"}
cores=$(nproc)
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT

cat > "$work/plan.groovy" << 'PLAN'
plan 'Lot', units: 'us'
site 'Urbana, Illinois', latitude: 40.11.deg, longitude: -88.21.deg, elevation: 222.m, zone: 'America/Chicago'
climate 'urbana-il'
def wide = param('wide', 40.ft, 'width of the lot')
def deep = param('deep', 60.ft, 'depth of the lot')
lot([point(0.ft, 0.ft), point(wide, 0.ft), point(wide, deep), point(0.ft, deep)])
building 'house', rect(8.ft, 10.ft, 24.ft, 20.ft), eaves: 10.ft
path 'walk', line([point(20.ft, 31.ft), point(20.ft, 56.ft)]), width: 3.ft, use: 'barrow'
sheetMulch { chips perennial: 12.inch, annual: 2.inch, path: 4.inch ; compost annual: 3.inch }
bed('kitchen bed', rect(4.ft, 36.ft, 4.ft, 16.ft), use: 'annual') { plant 'tomato' }
PLAN
list() {
  echo "lot,wide,deep"
  for ((i = 0; i < $1; i++)); do echo "lot-$i,$((40 + i % 37))ft,$((60 + i % 41))ft"; done
}

# Runs batch; gives seconds by the clock and the most memory held, in MB.
run() {
  list "$1" > "$work/lots.csv"
  local from peak=0 now
  from=$(date +%s.%N)
  "$yardloom" batch "$work/plan.groovy" "$work/lots.csv" --out "$work/out-$1-$2" --jobs "$2" > "$work/log" 2>&1 &
  local pid=$!
  while kill -0 "$pid" 2> /dev/null; do
    now=$(awk '/VmHWM/ { print int($2 / 1024) }' "/proc/$pid/status" 2> /dev/null || echo 0)
    [ "${now:-0}" -gt "$peak" ] && peak=$now
    sleep 0.5
  done
  wait "$pid" || { [ $? -le 1 ] || { tail -n 3 "$work/log" >&2; exit 1; }; }
  echo "$(awk -v a="$from" -v b="$(date +%s.%N)" 'BEGIN { printf "%.1f", b - a }') $peak"
}

tenth=$((lots / 10 > 0 ? lots / 10 : 1))
read -r one one_mb <<< "$(run "$tenth" 1)"
read -r all all_mb <<< "$(run "$lots" "$cores")"
echo "| lots | jobs | seconds | of ideal | most memory |"
echo "| --- | --- | --- | --- | --- |"
echo "| $tenth | 1 | $one | | $one_mb MB |"
awk -v n="$lots" -v t="$tenth" -v c="$cores" -v one="$one" -v all="$all" -v mb="$all_mb" \
  'BEGIN { printf "| %d | %d | %s | %.2f | %d MB |\n", n, c, all, one * n / t / c / all, mb }'

#!/usr/bin/env bash
# Prints the table "Measured: commands" of DEVELOPERS.md: processor seconds of the packaged program's
# commands, each against something measured in the same run, so that a busy or slow machine cancels.
#
#   scripts/program/benchmark.sh [PATHS...]     numbers of paths for `check`, 10 and 100 unless told
#
# Needs a built program (scripts/yardloom --version builds it). Run it on a quiet machine.
set -euo pipefail
here=$(cd "$(dirname "$0")" && pwd)
yardloom="$here/../yardloom"
demo="$here/../samples/urbana-yard.groovy"
[ $# -gt 0 ] || set -- 10 100
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
export TMPDIR="$work"

"$yardloom" --version > /dev/null
java=${JAVA_HOME:+$JAVA_HOME/bin/}java
groovy=$(find "$here/target/yardloom/lib" -name 'groovy-[0-9]*.jar')

# Processor seconds of a command, user and system; a plan with findings may end with 1.
seconds() {
  local TIMEFORMAT='%U %S' used
  used=$({ time "$@" > "$work/log" 2>&1 || [ $? -le 1 ] || echo failed >&2; } 2>&1)
  case "$used" in
    *failed*) echo "$* failed:" >&2; tail -n 5 "$work/log" >&2; exit 1 ;;
  esac
  echo "$used" | awk '{ printf "%.2f", $1 + $2 }'
}

row() { awk -v w="$1" -v s="$2" -v by="$3" -v b="$4" 'BEGIN { printf "| %s | %.1f | %.1f × %s |\n", w, s, s / b, by }'; }

# Beds in rows of twenty on a lot that holds them, and paths between the columns.
many() {
  cat << PLAN
plan 'Many beds', units: 'us'
site 'Urbana, Illinois', latitude: 40.11.deg, longitude: -88.21.deg, elevation: 222.m, zone: 'America/Chicago'
climate 'urbana-il'
lot([point(0.ft, 0.ft), point(144.ft, 0.ft), point(144.ft, 220.ft), point(0.ft, 220.ft)])
sheetMulch { chips perennial: 12.inch, annual: 2.inch, path: 4.inch ; compost annual: 3.inch }
for (int i = 0; i < 300; i++) {
  def x = 2.ft + 7.ft * (i % 20)
  def y = 2.ft + 14.ft * ((i - i % 20) / 20)
  bed("bed \$i", rect(x, y, 4.ft, 10.ft), use: 'annual') { plant 'tomato' }
}
for (int i = 0; i < $1; i++) {
  def x = 7.5.ft + 7.ft * (i % 20)
  def y = 1.ft + 8.ft * ((i - i % 20) / 20)
  path "path \$i", line([point(x, y), point(x, y + 7.ft)]), width: 2.5.ft
}
PLAN
}

hello() { seconds "$java" -Xshare:auto -XX:TieredStopAtLevel=1 -XX:+UseSerialGC -cp "$groovy" groovy.ui.GroovyMain "$work/hello.groovy"; }

echo "println 'hello'" > "$work/hello.groovy"
echo "machine: $(nproc) cores of $(sed -n 's/^model name[^:]*: //p' /proc/cpuinfo | head -n 1)," \
  "$("$java" -version 2>&1 | sed -n 2p), load $(cut -d ' ' -f 1 /proc/loadavg), $(date +%F)"
echo
echo "| what | processor seconds | ratio |"
echo "| --- | --- | --- |"
hello > /dev/null
hi=$(hello)
row "JVM and a Groovy hello script" "$hi" "itself" "$hi"
once=$(seconds "$yardloom" draw "$demo" --out "$work/out")
row "cold draw of the demo (SVG, CSV, JSON)" "$once" "hello" "$hi"
again=$(seconds "$yardloom" draw "$demo" --out "$work/out")
row "the same again, script unchanged" "$again" "hello" "$hi"
# Further copies of the demo in one process: what one costs more is a warm redraw.
copies=()
for n in 1 2 3 4 5 6; do
  sed "s/^plan '/plan '$n /" "$demo" > "$(dirname "$demo")/.bench-$$-$n.groovy"
  copies+=("$(dirname "$demo")/.bench-$$-$n.groovy")
done
trap 'rm -rf "$work" "${copies[@]}"' EXIT
six=$(seconds "$yardloom" draw "${copies[@]}" --out "$work/out")
row "warm redraw in one process (mean of five)" "$(awk -v a="$six" -v b="$again" 'BEGIN { print (a - b) / 5 }')" "hello" "$hi"
row "full export (SVG, PNG, PDF, HTML, CSV, JSON), cold" \
  "$(seconds "$yardloom" draw "$demo" --out "$work/out" --as svg,png,pdf,html,csv,json)" "hello" "$hi"

# Processor ticks of a process.
ticks() { awk '{ print $14 + $15 }' "/proc/$1/stat"; }
# The watched demo, from the save of a moved bed until the page is answered.
watched() {
  local beds="$(dirname "$demo")/.bench-$$-watch.groovy" said="$work/watch.log" at pid seen before began
  cp "$demo" "$beds"
  copies+=("$beds")
  "$yardloom" watch "$beds" > "$said" 2>&1 &
  pid=$!
  until at=$(sed -n 's/.* is shown at \(http[^ ]*\).*/\1/p' "$said") && [ -n "$at" ]; do sleep 0.5; done
  curl -s "${at}state?-1" > "$work/state"
  for moved in 0.1 0.2 0.3 0.4 0.5 0.6 0.7; do
    seen=$(grep -o '"version":[0-9]*' "$work/state" | head -n 1 | cut -d : -f 2)
    sed "s/rect(3\.5\.ft + 7\.ft \* i, 64/rect(3.5.ft + 7.ft * i + (i == 7 ? $moved.ft : 0.ft), 64/" "$demo" > "$work/next"
    before=$(ticks "$pid")
    began=$(date +%s.%N)
    cp "$work/next" "$beds"
    curl -s "${at}state?$seen" > "$work/state"
    echo "$before $(ticks "$pid") $began $(date +%s.%N)" >> "$work/redraws"
  done
  kill "$pid"
  wait "$pid" 2> /dev/null || true
}
watched
# The first redraws still warm up.
median() { tail -n 5 "$work/redraws" | awk "{ print $1 }" | sort -n | sed -n 3p; }
row "watch: redraw after a bed moved, until the page is answered (median of five)" \
  "$(median "(\$2 - \$1) / $(getconf CLK_TCK)")" "hello" "$hi"
row "the same by the clock" "$(median '$4 - $3')" "hello" "$hi"
check=$(seconds "$yardloom" check "$demo")
row "check of the demo" "$check" "hello" "$hi"
for paths in "$@"; do
  many "$paths" > "$work/many.groovy"
  row "check of 300 beds and $paths paths" "$(seconds "$yardloom" check "$work/many.groovy")" "the demo's check" "$check"
done

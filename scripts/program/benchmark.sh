#!/usr/bin/env bash
# Prints the table "Measured: commands" of DEVELOPERS.md: processor seconds of the packaged program's
# commands, each against something measured in the same run, so that a busy or slow machine cancels.
#
#   scripts/program/benchmark.sh                 all parts
#   scripts/program/benchmark.sh redraw many     these alone
#
#   draw    cold draw, the same again, script changed, warm draws, full export     3 minutes
#   redraw  redraws after a bed moved, in one process, with every reader's time, the sheet
#           in view first (IN_VIEW, layout if not given)                           2 minutes
#   watch   the same through the watched page                                      1 minute
#   many    check of 300 beds and 10 paths, and of 100 beds in mulched ground      2 minutes
#   batch   batch-benchmark.sh with 100 lots                                       2 minutes
#
# Needs a built program (scripts/yardloom --version builds it). Processor seconds bear other work on
# the machine; seconds by the clock do not. The minutes are those of a quiet machine; every part
# measures what it is divided by itself, and none may last longer than PART_SECONDS (400).
set -euo pipefail
here=$(cd "$(dirname "$0")" && pwd)
yardloom="$here/../yardloom"
[ $# -gt 0 ] || set -- draw redraw watch many batch
for part in "$@"; do
  case "$part" in
    draw | redraw | watch | many | batch) ;;
    *) echo "$part is no part: draw, redraw, watch, many, batch" >&2; exit 2 ;;
  esac
done
part_seconds=${PART_SECONDS:-400}
work=$(mktemp -d)
watcher=
trap 'rm -rf "$work"; [ -z "$watcher" ] || kill "$watcher" 2> /dev/null || true' EXIT
export TMPDIR="$work" XDG_CACHE_HOME="$work/cache"
# Further plans are written beside the demo, which includes others; and nobody else's are touched.
cp -r "$here/../samples" "$work/samples"
demo="$work/samples/urbana-yard.groovy"

"$yardloom" --version > /dev/null
java=${JAVA_HOME:+$JAVA_HOME/bin/}java
groovy=$(find "$here/target/yardloom/lib" -name 'groovy-[0-9]*.jar')

# Seconds of a command, of the processor (user and system) and by the clock; a plan with findings may
# end with 1.
seconds() {
  local TIMEFORMAT='%U %S %R' used
  used=$({ time timeout "$part_seconds" "$@" > "$work/log" 2>&1 || [ $? -le 1 ] || echo failed >&2; } 2>&1)
  case "$used" in
    *failed*) echo "$* failed:" >&2; tail -n 5 "$work/log" >&2; exit 1 ;;
  esac
  echo "$used" | awk '{ printf "%.2f %.2f", $1 + $2, $3 }'
}

# The same with nothing kept from earlier runs.
cold() {
  rm -rf "$XDG_CACHE_HOME"
  seconds "$@"
}

# A row: what, "processor clock", by what it is divided, and how many seconds that took. What has no
# clock, or was measured by the clock alone, has 0 there.
row() {
  [ -n "$2" ] && [ -n "$4" ] || { echo "| $1 | not measured | | | |"; return; }
  awk -v w="$1" -v both="$2" -v by="$3" -v base="$4" 'BEGIN {
    split(both, s, " "); split(base, b, " ")
    clock = s[2] > 0 ? sprintf("%.1f | %.1f ×", s[2], s[2] / b[2]) : "|"
    used = s[1] > 0 ? sprintf("%.1f | %.1f × %s", s[1], s[1] / b[1], by) : "| "
    printf "| %s | %s | %s |\n", w, used, clock }'
}

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

# Beds in rows of twenty in ground that is mulched whole, with a gate and a heap: ways over open ground.
mulched() {
  cat << PLAN
plan 'Beds in mulch', units: 'us'
site 'Urbana, Illinois', latitude: 40.11.deg, longitude: -88.21.deg, elevation: 222.m, zone: 'America/Chicago'
climate 'urbana-il'
lot([point(0.ft, 0.ft), point(144.ft, 0.ft), point(144.ft, 230.ft), point(0.ft, 230.ft)])
gate 'drive gate', point(72.ft, 0.ft)
mulchedGround 'all', rect(0.ft, 0.ft, 144.ft, 229.ft)
dropZone 'drive', rect(60.ft, 0.ft, 12.ft, 1.5.ft)
sheetMulch { chips perennial: 12.inch, annual: 2.inch, path: 4.inch ; compost annual: 3.inch }
for (int i = 0; i < $1; i++) {
  def x = 2.ft + 7.ft * (i % 20)
  def y = 2.ft + 14.ft * ((i - i % 20) / 20)
  bed("bed \$i", rect(x, y, 4.ft, 10.ft), use: 'annual') { plant 'tomato' }
}
PLAN
}

# As anybody starts it, and with the options that yardloom starts with.
hello() { seconds "$java" "$@" -cp "$groovy" groovy.ui.GroovyMain "$work/hello.groovy"; }

echo "println 'hello'" > "$work/hello.groovy"
echo "machine: $(nproc) cores of $(sed -n 's/^model name[^:]*: //p' /proc/cpuinfo | head -n 1)," \
  "$("$java" -version 2>&1 | sed -n 2p), load $(cut -d ' ' -f 1 /proc/loadavg), $(date +%F)"
echo
echo "| what | processor seconds | ratio | by the clock | ratio |"
echo "| --- | --- | --- | --- | --- |"
hello > /dev/null
hi=$(hello)
row "JVM and a Groovy hello script" "$hi" "itself" "$hi"
lean=$(hello -Xshare:auto -XX:TieredStopAtLevel=1 -XX:+UseSerialGC)
row "the same with the options of yardloom (lean hello)" "$lean" "hello" "$hi"
mean() { awk -v a="$1" -v b="$2" 'BEGIN { split(a, x, " "); split(b, y, " "); print (x[1] - y[1]) / 3, (x[2] - y[2]) / 3 }'; }
draw_part() {
  local once copies four n
  once=$(cold "$yardloom" draw "$demo" --out "$work/out")
  row "cold draw of the demo (SVG, CSV, JSON), empty cache" "$once" "hello" "$hi"
  row "the same draw against the lean hello" "$once" "lean hello" "$lean"
  row "the same again, nothing changed" "$(seconds "$yardloom" draw "$demo" --out "$work/out")" "hello" "$hi"
  # Another title, so that only the compiled includes are of use.
  sed "s/^plan '/plan 'Once more: /" "$demo" > "$work/samples/once-more.groovy"
  row "the same, script changed" \
    "$(seconds "$yardloom" draw "$work/samples/once-more.groovy" --out "$work/out")" "hello" "$hi"
  # Further copies of the demo in one process: what one costs more is a warm redraw.
  copies=()
  for n in 1 2 3 4; do
    sed "s/^plan '/plan '$n /" "$demo" > "$work/samples/copy-$n.groovy"
    copies+=("$work/samples/copy-$n.groovy")
  done
  four=$(cold "$yardloom" draw "${copies[@]}" --out "$work/out")
  row "warm redraw in one process (mean of three)" "$(mean "$four" "$once")" "hello" "$hi"
  row "full export (SVG, PNG, PDF, HTML, CSV, JSON), empty cache" \
    "$(cold "$yardloom" draw "$demo" --out "$work/out" --as svg,png,pdf,html,csv,json)" "hello" "$hi"
}

# Processor ticks of a process.
ticks() { awk '{ print $14 + $15 }' "/proc/$1/stat"; }
# The page's question; it is answered when the plan has been drawn again, or late as it was.
ask() { curl -s -m 300 "$1" > "$work/state" || { echo "the watched page does not answer" >&2; return 1; }; }
# The watched demo, from the save of a moved bed until the page is answered.
watched() {
  local beds="$work/samples/watched.groovy" said="$work/watch.log" at pid seen before began
  cp "$demo" "$beds"
  "$yardloom" watch "$beds" > "$said" 2>&1 &
  pid=$!
  watcher=$pid
  until at=$(sed -n 's/.* is shown at \(http[^ ]*\).*/\1/p' "$said") && [ -n "$at" ]; do
    kill -0 "$pid" 2> /dev/null || { echo "watch ended:" >&2; cat "$said" >&2; return; }
    sleep 0.5
  done
  ask "${at}state?-1" || { kill "$pid"; return 0; }
  for moved in 0.1 0.2 0.3 0.4 0.5 0.6 0.7; do
    seen=$(grep -o '"version":[0-9]*' "$work/state" | head -n 1 | cut -d : -f 2)
    # A bed that another picture has elsewhere; a change that changed nothing would never be answered.
    sed "s/rect(3\.5\.ft + 7\.ft \* i, 64/rect(3.5.ft + 7.ft * i + (i == 7 ? $moved.ft : 0.ft), 64/" "$demo" > "$work/next"
    cmp -s "$work/next" "$beds" && { echo "the demo has no bed that this moves" >&2; break; }
    before=$(ticks "$pid")
    began=$(date +%s.%N)
    cp "$work/next" "$beds"
    ask "${at}state?$seen" || break
    echo "$before $(ticks "$pid") $began $(date +%s.%N)" >> "$work/redraws"
  done
  kill "$pid"
  wait "$pid" 2> /dev/null || true
  watcher=
}
# The first redraws still warm up.
median() { tail -n 5 "$work/redraws" | awk "{ print $1 }" | sort -n | sed -n 3p; }
watch_part() {
  watched
  if [ -f "$work/redraws" ]; then
    row "watch: redraw after a bed moved, until the page is answered (median of five)" \
      "$(median "(\$2 - \$1) / $(getconf CLK_TCK)") $(median '$4 - $3')" "hello" "$hi"
  fi
}

# Thread milliseconds of the benchmark in the test classes; the program itself is what was built.
redraw_part() {
  local classes="$here/target/test-classes" said in_view=${IN_VIEW:-layout}
  if [ ! -f "$classes/yardloom/program/cli/RedrawBenchmark.class" ]; then
    echo "redraw needs the test classes: mvn -o -q -pl scripts/program -am test-compile" >&2
    return
  fi
  # With the options that `watch` is started with.
  said=$(timeout "$part_seconds" "$java" -Xmx512m -XX:+UseSerialGC \
    -cp "$classes:$(find "$here/target/yardloom/lib" -name '*.jar' | LC_ALL=C sort | tr '\n' ':')" \
    yardloom.program.cli.RedrawBenchmark "$demo" 20 readers "$in_view") || { echo "redraw did not end" >&2; return; }
  echo "$said" > "$here/target/redraws.txt"
  row "until the sheet in view ($in_view) is drawn after a bed moved (median of the later ten)" \
    "$(echo "$said" | sed -n 's/^median until .* \([0-9]*\) ms$/\1/p' | awk '{ printf "%.3f 0", $1 / 1000 }')" "hello" "$hi"
  row "the rest of it: study, all sheets, their SVG (median of the later ten)" \
    "$(echo "$said" | sed -n 's/^median \([0-9]*\) ms.*/\1/p' | awk '{ print $1 / 1000, 0 }')" "hello" "$hi"
  row "the same in the watched page by the clock, from the save: the sheet in view" \
    "$(echo "$said" | sed -n 's/^page by the clock.* in view \([0-9]*\) ms.*/\1/p' | awk '{ print 0, $1 / 1000 }')" "hello" "$hi"
  row "the same in the watched page by the clock, from the save: all" \
    "$(echo "$said" | sed -n 's/^page by the clock.* all \([0-9]*\) ms$/\1/p' | awk '{ print 0, $1 / 1000 }')" "hello" "$hi"
  echo "$said" | tail -n 1 >&2
}

many_part() {
  local check
  check=$(cold "$yardloom" check "$demo")
  row "check of the demo" "$check" "hello" "$hi"
  many 10 > "$work/many.groovy"
  row "check of 300 beds and 10 paths" "$(cold "$yardloom" check "$work/many.groovy")" "the demo's check" "$check"
  mulched 100 > "$work/mulched.groovy"
  row "check of 100 beds in mulched ground" "$(cold "$yardloom" check "$work/mulched.groovy")" "the demo's check" "$check"
}

# Its own table: one job against all cores.
batch_part() {
  echo
  timeout "$part_seconds" "$here/batch-benchmark.sh" 100 "$yardloom"
}

for part in "$@"; do
  "${part}_part" || echo "$part was not measured whole" >&2
done

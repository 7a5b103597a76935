#!/bin/sh
# The whole process, from the shell and back: judging the record of 405 entries beside a program that only says hello, by
# turns, so that whatever else the machine does burdens both. Prints medians in milliseconds and their ratio.
# Usage, after mvn -B -q package -DskipTests: sh src/bench/whole-process.sh [TURNS]
set -eu
cd "$(dirname "$0")/../.."
turns=${1:-15}
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
printf 'public class Hello { public static void main(String[] a) { System.out.println("hello"); } }' > "$work/Hello.java"
javac -d "$work" "$work/Hello.java"
timed() {
  start=$(date +%s%N); "$@" > /dev/null; end=$(date +%s%N)
  echo $(((end - start) / 1000000))
}
i=0
while [ $i -lt "$turns" ]; do
  timed java -XX:+UseSerialGC -XX:TieredStopAtLevel=1 -cp "$work" Hello >> "$work/hello"
  timed target/chock assess --as-of 2026-11-25T13:00 docs/examples/merle-released.yaml >> "$work/merle"
  timed target/chock assess --as-of 2026-11-25T13:00 docs/examples/lark-released.yaml >> "$work/lark"
  i=$((i + 1))
done
median() { sort -n "$work/$1" | sed -n "$(((turns + 1) / 2))p"; }
spread() { sort -n "$work/$1" | sed -n "1p;${turns}p" | tr '\n' ' '; }
for what in hello lark merle; do
  echo "$what: median $(median $what) ms, least and most $(spread $what)"
done
echo "ratio to hello: lark $(($(median lark) * 10 / $(median hello)))/10, merle $(($(median merle) * 10 / $(median hello)))/10"

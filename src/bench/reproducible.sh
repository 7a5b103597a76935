#!/bin/sh
# Builds what was committed last twice, in two fresh clones in folders of different length and with different languages
# and time zones of the shell, and compares the programs and the lists of libraries byte by byte. Ends with 1 when they differ.
# Usage: sh src/bench/reproducible.sh [further options for mvn, such as -o]
set -eu
cd "$(dirname "$0")/../.."
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
git clone -q "$(pwd)" "$work/a"
git clone -q "$work/a" "$work/another-folder-with-a-longer-name"
build() {
  (cd "$work/$1" && shift && TZ=$1 LC_ALL=$2 && export TZ LC_ALL && shift 2 && mvn -B -q package -DskipTests "$@" > build.log 2>&1) \
    || { tail -20 "$work/$1/build.log" >&2; exit 3; }
}
build a Europe/London C "$@"
build another-folder-with-a-longer-name Pacific/Auckland C.UTF-8 "$@"
status=0
for file in chock.jar sbom.json; do
  one="$work/a/target/$file" other="$work/another-folder-with-a-longer-name/target/$file"
  if cmp -s "$one" "$other"; then
    echo "$file equal, sha256:$(sha256sum "$one" | cut -d' ' -f1)"
  else
    echo "$file differs"
    status=1
    if [ "$file" = chock.jar ]; then
      unzip -lv "$one" | awk '{print $8, $7}' | sort > "$work/one"
      unzip -lv "$other" | awk '{print $8, $7}' | sort > "$work/other"
      diff "$work/one" "$work/other" | head -40
    fi
  fi
done
exit $status

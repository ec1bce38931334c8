#!/usr/bin/env bash
# Fails when the app calls something of Android or Java that Android 8.0 (API 26) does not have and that newer-than-26.txt does not name with
# its guard. Asked twice: R8's TraceReferences looks at all that is packed, beside Robolectric's android-all of 8.0, which has no java.*;
# animal-sniffer looks at the app's own classes and the bindings, beside the signatures of gummy-bears, which have it.
set -euo pipefail

package=$(cd "$(dirname "$0")" && pwd)
packed=$(cd "$package/../.." && pwd)/target/android
jars=$packed/jars
jdk=$(dirname "$(dirname "$(readlink -f "$(command -v java)")")")
work=$packed/framework
rm -rf "$work"
mkdir -p "$work/control" "$work/app"

fail() {
    echo "FAILED: $*" >&2
    exit 1
}

# What a file of classes calls that Android 8.0 lacks, a line each.
traced() {
    java -cp "$jars/r8.jar" com.android.tools.r8.tracereferences.TraceReferences --check --lib "$jdk" --lib "$jars/android-26.jar" \
        --source "$1" >"$work/log" 2>&1 || grep -q 'Missing ' "$work/log" || fail "$(cat "$work/log")"
    sed -n 's/^\(Error: \)\?Missing \(.*\) (referenced from: .*/\2/p' "$work/log" | sort -u
}

# The same for a folder of classes.
sniffed() {
    java -cp "$jars/animal-sniffer.jar:$jars/asm.jar" "$package/JavaApi.java" "$jars/gummy-bears-api-26.signature" "$1" >"$work/log" || fail "$(cat "$work/log")"
    sed -n 's/.*Undefined reference: //p' "$work/log" | sort -u
}

echo "apk-test: the app calls nothing that Android 8.0 lacks, but where it asks first"
# Both see a call of API 28, and one of Java 11.
echo 'class Newer { static Object call(android.content.Context c) { return c.getMainExecutor() + "a".repeat(2); } }' >"$work/Newer.java"
javac -proc:none -cp "$jars/android-all.jar" -d "$work/control" "$work/Newer.java"
(cd "$work/control" && zip -q ../control.jar Newer.class)
traced "$work/control.jar" | grep -q getMainExecutor || fail "R8 does not see a call of API 28"
test "$(sniffed "$work/control" | grep -c -e getMainExecutor -e repeat)" = 2 || fail "animal-sniffer does not see a call of API 28 or Java 11"

traced "$packed/dex/classes.dex" >"$work/traced"
for jar in app bindings; do unzip -q -o "$packed/$jar.jar" -d "$work/app"; done
sniffed "$work/app" >"$work/sniffed"
sed '/^#/d; s/ *#.*//' "$package/newer-than-26.txt" | sort -u >"$work/guarded"
unguarded=$(sort -u "$work/traced" "$work/sniffed" | comm -23 - "$work/guarded")
test -z "$unguarded" || fail "newer than Android 8.0, and not in newer-than-26.txt:
$unguarded"
echo "ok: $(sort -u "$work/traced" "$work/sniffed" | wc -l) names newer than API 26, all guarded"

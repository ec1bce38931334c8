#!/usr/bin/env bash
# Runs tests of the app on its classes as R8 leaves them: shrunk.sh TEST.... What the tests themselves name is kept for them; all that lies
# behind it is what R8 found, with the rules of the APK. A class that only JNA, the manifest or a layout finds would be missed here.
set -euo pipefail

package=$(cd "$(dirname "$0")" && pwd)
repo=$(cd "$package/../.." && pwd)
packed=$repo/target/android
desktop=$repo/android/desktop/target
out=$packed/shrunk
jdk=$(dirname "$(dirname "$(readlink -f "$(command -v java)")")")
r8() { java -cp "$packed/jars/r8.jar" "com.android.tools.r8.$@"; }

rm -rf "$out"
mkdir -p "$out"
(cd "$desktop/classes" && zip -q -r "$out/tests.jar" . -i '*.class')
(cd "$desktop/test-classes" && zip -q -r "$out/tests.jar" . -i '*.class')

app=("$packed/app.jar" "$packed/bindings.jar" "$packed/jna/classes.jar" "$packed/jars/kotlin-stdlib.jar" "$packed/jars/annotations.jar")
# What the tests bring along: all but the app itself, the two libraries that are shrunk with it, and the framework.
mapfile -t others < <(tr ':' '\n' <"$desktop/classpath" | grep -v -e '/android/app/' -e '/android/bindings/' -e '/kotlin-stdlib-' -e '/annotations-13' -e '/jna-' -e '/laydown-' -e '/android-all-')
libraries=(--lib "$jdk" --lib "$packed/jars/android-all.jar")
for jar in "${others[@]}"; do libraries+=(--lib "$jar"); done
targets=()
for jar in "${app[@]}"; do targets+=(--target "$jar"); done
r8 tracereferences.TraceReferences --keep-rules "${libraries[@]}" "${targets[@]}" --source "$out/tests.jar" --output "$out/tests.pro" \
    --map-diagnostics:MissingDefinitionsDiagnostic error info 2>"$out/trace.log"

r8 R8 --classfile --release --lib "$jdk" --lib "$packed/jars/android-all.jar" \
    --pg-conf "$package/base.pro" --pg-conf "$repo/android/app/rules.pro" --pg-conf "$packed/manifest.pro" --pg-conf "$out/tests.pro" \
    --output "$out/app.jar" "${app[@]}"

path=$desktop/classes:$desktop/test-classes:$out/app.jar
for jar in "${others[@]}" "$packed/jars/android-all.jar" "$packed/jars/jna.jar"; do path+=:$jar; done
exec java @"$desktop/classes/jvm.options" -Djna.library.path="$repo/target/${LAYDOWN_PROFILE:-desk}" -cp "$path" org.junit.runner.JUnitCore "$@"

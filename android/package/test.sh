#!/usr/bin/env bash
# What `make apk-test` looks at in the native half, without a phone. Each step says what it looks at, and stops at what is wrong.
set -euo pipefail

package=$(cd "$(dirname "$0")" && pwd)
repo=$(cd "$package/../.." && pwd)
packed=$repo/target/android
work=$packed/test
rm -rf "$work"
mkdir -p "$work"

step() { echo "apk-test: $*"; }
fail() {
    echo "FAILED: $*" >&2
    exit 1
}

step "the two traps work: a name newer than Android 8.0 does not link, and headers that nobody mended do not compile"
for processor in aarch64 x86_64; do
    cc=$packed/bin/$processor-cc ld=$packed/bin/$processor-ld
    # glob has been there always only in newer ones (API 28); getenv always.
    echo 'int glob(void); int call(void) { return glob(); }' >"$work/newer.c"
    echo 'char *getenv(const char *); char *call(void) { return getenv("A"); }' >"$work/older.c"
    for age in newer older; do
        "$cc" -c "$work/$age.c" -o "$work/$age.o"
        if "$ld" -shared "$work/$age.o" -o "$work/$age.so" 2>"$work/$age.log"; then linked=yes; else linked=no; fi
        case $age-$linked in
            newer-yes) fail "$processor: glob, of API 28, links" ;;
            older-no) fail "$processor: getenv does not link: $(cat "$work/$age.log")" ;;
        esac
    done
    grep -q 'undefined symbol: glob' "$work/newer.log" || fail "$processor: another error: $(cat "$work/newer.log")"
    zig=$(echo "$packed"/zig/lib/python3*/site-packages/ziglang)
    headers=$zig/lib/libc/include
    if "$zig/zig" clang --target="$processor-linux-android26" -nostdlibinc -isystem "$headers/$processor-linux-musl" -isystem "$headers/generic-musl" \
        -isystem "$headers/any-linux-any" -isystem "$zig/lib/include" -c "$package/shim/layout.c" -o "$work/layout.o" 2>"$work/layout.log"; then
        fail "$processor: layout.c compiles against headers that are not mended"
    fi
    grep -q 'sizeof(pthread_mutexattr_t)' "$work/layout.log" || fail "$processor: another error: $(cat "$work/layout.log")"
done

step "the check of pages sees a library that a phone with pages of 16 KB could not map"
python3 - "$packed/unsigned.apk" "$work/crooked.apk" <<'PYTHON'
import sys, zipfile
with zipfile.ZipFile(sys.argv[1]) as packed, zipfile.ZipFile(sys.argv[2], "w") as crooked:
    for entry in packed.infolist():
        crooked.writestr(zipfile.ZipInfo(entry.filename), packed.read(entry))
PYTHON
if python3 "$package/pages.py" "$work/crooked.apk" >"$work/crooked.log"; then fail "libraries that begin anywhere pass"; fi
grep -q 'no multiple of 16384' "$work/crooked.log" || fail "another error: $(cat "$work/crooked.log")"

step "the C parts call nothing of the system that nobody has looked at"
for processor in aarch64 x86_64; do
    release=$repo/target/$processor-linux-android/phone
    readelf -sW "$release"/build/*/out/*.a "$packed/$processor/libunwind.a" 2>/dev/null | sed 's/ *\[[A-Z_ ]*\]//' | awk '
        $7 == "UND" && $8 != "" { wanted[$8] = 1 }
        $7 ~ /^[0-9]+$/ && ($5 == "GLOBAL" || $5 == "WEAK") { given[$8] = 1 }
        END { for (name in wanted) if (!(name in given)) print name }' | sort >"$work/called-$processor"
    test -s "$work/called-$processor" || fail "$processor: no C was compiled"
    sed '/^#/d; s/ .*//' "$package/shim/called.txt" | sort -u >"$work/known"
    new=$(comm -23 "$work/called-$processor" "$work/known" | tr '\n' ' ')
    test -z "$new" || fail "$processor: not in shim/called.txt: $new"
done

step "each library asks for nothing but Android's own, and only names that are in the lists"
for processor in aarch64 x86_64; do
    library=$repo/target/$processor-linux-android/phone/liblaydown_bindings.so
    needed=$(readelf -dW "$library" | sed -n 's/.*Shared library: \[\(.*\)\]/\1/p' | sort | tr '\n' ' ')
    test "$needed" = "libc.so libdl.so liblog.so libm.so " || fail "$processor needs $needed"
    readelf --dyn-syms -W "$library" | awk '$7 == "UND" && $5 == "GLOBAL" { sub(/@.*/, "", $8); print $8 }' | sort >"$work/asked"
    sed 's/ .*//' "$package"/symbols/*.txt | sort >"$work/listed"
    test -s "$work/asked" || fail "$processor asks for nothing"
    new=$(comm -23 "$work/asked" "$work/listed" | tr '\n' ' ')
    test -z "$new" || fail "$processor asks for $new"
    # A weak name may be missing: Rust's library looks for it and does without.
    weak=$(readelf --dyn-syms -W "$library" | awk '$7 == "UND" && $5 == "WEAK" { print $8 }' | tr '\n' ' ')
    readelf -lW "$library" | grep -q 'GNU_STACK.*RW ' || fail "$processor: the stack can be run"
    echo "ok: $processor: $(wc -l <"$work/asked") names, and if they are there: $weak"
done

step "the arm64 library lives a day under qemu, with glibc in the place of Android's C library"
root=/usr/aarch64-linux-gnu
run=$work/run
mkdir -p "$run" "$work/studio"
zig=$(echo "$packed"/zig/lib/python3*/site-packages/ziglang)
gnu() { "$zig/zig" clang --target=aarch64-linux-gnu -nostdlibinc -isystem "$zig/lib/libc/include/aarch64-linux-gnu" -isystem "$zig/lib/libc/include/generic-glibc" \
    -isystem "$zig/lib/libc/include/aarch64-linux-any" -isystem "$zig/lib/libc/include/any-linux-any" -isystem "$zig/lib/include" -O1 -fPIC "$@"; }
# libc.so, libm.so, libdl.so and liblog.so, by Android's names: the first bridges to glibc and brings it, the others are empty.
gnu -c "$package/glibc.c" -o "$run/glibc.o"
"$packed/bin/aarch64-stub" -soname libc.so "$run/glibc.o" --no-as-needed "$root/lib/libc.so.6" "$root/lib/libm.so.6" -o "$run/libc.so"
echo >"$run/empty.c"
gnu -c "$run/empty.c" -o "$run/empty.o"
for name in libm libdl liblog; do "$packed/bin/aarch64-stub" -soname $name.so "$run/empty.o" -o "$run/$name.so"; done
gnu -c "$package/session.c" -o "$run/session.o"
gnu -c "$package/start.c" -o "$run/start.o"
"$zig/zig" ld.lld -m aarch64linux -pie -dynamic-linker /lib/ld-linux-aarch64.so.1 "$run/start.o" "$run/session.o" "$run/libc.so" "$root/lib/libc.so.6" \
    --allow-shlib-undefined -o "$run/session"
cp "$repo/target/aarch64-linux-android/phone/liblaydown_bindings.so" "$run/"
cargo run --quiet -p laydown-tests --example sample_backup -- "$work/backup"
qemu-aarch64-static -L "$root" -E LD_LIBRARY_PATH="$run" "$run/session" "$run/liblaydown_bindings.so" "$work/backup/backup.zip" "$work/studio" | tee "$work/said"
stamp=$(sed -n 's/.*BUILD_STAMP: String = "\(.*\)"/\1/p' "$repo/bindings/kotlin/studio/laydown/core/BuildStamp.kt")
grep -qx "stamp: $stamp" "$work/said" || fail "the library's stamp is not $stamp"
# The first line says when it was made and by whom; the events are the same in any order.
cmp <(tail -n +2 "$work/backup/journal.jsonl" | sort) <(tail -n +2 "$work/studio/journal.jsonl" | sort) || fail "the journal is another one"
python3 -c 'import sqlite3, sys; print("ok: SQLite here says of its file:", *sqlite3.connect(sys.argv[1]).execute("PRAGMA integrity_check").fetchone())' \
    "$work/studio/studio.laydown" | tee "$work/integrity"
grep -q 'file: ok$' "$work/integrity" || fail "the file is damaged"

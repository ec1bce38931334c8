#!/bin/sh
# Compiles what every library for Android is linked with: runtime.sh PROCESSOR FOLDER. Rust's library needs an unwinder, which the
# NDK would bring; the wheel has its source. It also compares the stand-in headers with Android's layout.
set -eu

package=$(dirname "$0")
cc=$package/../../target/android/bin/$1-cc
ar=$package/../../target/android/bin/$1-ar
out=$2
unwind=$(echo "$package"/../../target/android/zig/lib/python3*/site-packages/ziglang/lib/libunwind)

"$cc" -c "$package/shim/layout.c" -o "$out/layout.o"
"$cc" -O2 -c "$package/shim/crt.c" -o "$out/crt.o"
for part in UnwindLevel1.c UnwindLevel1-gcc-ext.c UnwindRegistersRestore.S UnwindRegistersSave.S libunwind.cpp; do
    language=
    [ "${part##*.}" = cpp ] && language="-std=c++17 -nostdinc++ -fno-exceptions -fno-rtti"
    # shellcheck disable=SC2086 # a list of flags
    "$cc" -O2 $language -fvisibility=hidden -funwind-tables -DNDEBUG -D_LIBUNWIND_HIDE_SYMBOLS -I"$unwind/include" -c "$unwind/src/$part" -o "$out/$part.o"
done
rm -f "$out/libunwind.a"
"$ar" crs "$out/libunwind.a" "$out"/*.c.o "$out"/*.S.o "$out"/*.cpp.o
